/** Every form by its name. */
import { bullServiceForm, fromBullForm, withBullForm } from './bull.ts'
import { checkForm } from './check.ts'
import { farmForm } from './farm.ts'
import type {
  Field,
  Form,
  FormName,
  HerdForm,
  HerdFormName,
  HerdSetting,
  Reading,
  Setting,
  Values,
} from './form.ts'
import { examinedForm, holdForm, noteForm, scoreForm } from './health.ts'
import { heatForm } from './heat.ts'
import {
  barForm,
  blockForm,
  calvingForm,
  dryForm,
  leftForm,
  lossForm,
  toBullForm,
  unbarForm,
} from './life.ts'
import { newFromTablesForm, newHerdForm } from './new-herd.ts'
import { nitrogenForm } from './nitrogen.ts'
import { recordForm } from './record.ts'
import { seasonForm } from './season.ts'
import { serviceForm } from './service.ts'
import { settingForm } from './setting.ts'
import { deliveryForm, spoiledForm, stockTakeForm } from './straws.ts'

export const forms: Readonly<Record<FormName, Form>> = {
  heat: heatForm,
  service: serviceForm,
  check: checkForm,
  examined: examinedForm,
  hold: holdForm,
  'to-bull': toBullForm,
  note: noteForm,
  block: blockForm,
  bar: barForm,
  unbar: unbarForm,
  calving: calvingForm,
  loss: lossForm,
  left: leftForm,
  score: scoreForm,
  dry: dryForm,
  'with-bull': withBullForm,
  'from-bull': fromBullForm,
  'bull-service': bullServiceForm,
}

/** Every form about the herd as a whole by its name. */
export const herdForms: Readonly<Record<HerdFormName, HerdForm>> = {
  delivery: deliveryForm,
  'stock-take': stockTakeForm,
  spoiled: spoiledForm,
  nitrogen: nitrogenForm,
  farm: farmForm,
  season: seasonForm,
  setting: settingForm,
  record: recordForm,
  'new-herd': newHerdForm,
  'new-from-tables': newFromTablesForm,
}

/** A form by its name, with what it knows. */
interface ChosenForAnimal {
  readonly name: FormName
  readonly setting: Setting
}
interface ChosenForHerd {
  readonly name: HerdFormName
  readonly setting: HerdSetting
}
export type Chosen = ChosenForAnimal | ChosenForHerd

/** Whether a form is about the herd as a whole. */
export const isForHerd = (chosen: Chosen): chosen is ChosenForHerd => chosen.name in herdForms

/** What a form does once it knows what it needs. */
interface FormInHand {
  readonly fields: () => readonly Field[]
  readonly begin: () => Values
  readonly read: (values: Values) => Reading
  readonly follow: (changed: string, values: Values) => Values
  readonly danger: (values: Values) => string | undefined
}

const inHand = <S extends HerdSetting>(form: Form<S, FormName | HerdFormName>, setting: S): FormInHand => ({
  fields: () => form.fields(setting),
  begin: () => form.begin(setting),
  read: (values) => form.read(values, setting),
  follow: (changed, values) => form.follow?.(changed, values, setting) ?? values,
  danger: (values) => form.danger?.(values, setting),
})

/** The form that is chosen. */
export const formInHand = (chosen: Chosen): FormInHand =>
  isForHerd(chosen)
    ? inHand(herdForms[chosen.name], chosen.setting)
    : inHand(forms[chosen.name], chosen.setting)
