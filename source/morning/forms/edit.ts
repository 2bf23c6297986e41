/** An open form, and what single keys do to it. Pure: form in, form out. */
import { dayIso, plusDays } from '../../breeding/day.ts'
import type { AnimalFact, NewFact } from '../../breeding/facts.ts'
import type { Problem } from '../../breeding/problem.ts'
import type { Field, FormName, HerdFormName, HerdSetting, Pick, Setting, Values } from './form.ts'
import { type Chosen, formInHand } from './forms.ts'
import { readTypedDay } from './reader.ts'

export type OpenForm = Chosen & {
  readonly fields: readonly Field[]
  readonly values: Values
  /** What stood in the fields when the form opened. */
  readonly begun: Values
  /** Index of the field that keys go to. */
  readonly at: number
  /** The field was just entered: the first character typed replaces what stands in it. */
  readonly fresh: boolean
  readonly wrong: Readonly<Record<string, Problem>>
  /** Code of a danger that was shown; recording once more confirms it. */
  readonly danger: string | undefined
  /** The fact that is changed: voided when the form is recorded. */
  readonly changes?: AnimalFact
}

/**
 * Opens a form about an animal.
 *
 * @param values that are known already; @param at name of the field to begin in
 * @example openForm('check', setting, { result: 'pregnant' }, 'age').values.result // 'pregnant'
 */
export const openForm = (name: FormName, setting: Setting, values?: Values, at?: string): OpenForm =>
  opened({ name, setting }, values, at)

/**
 * Opens a form about the herd as a whole.
 *
 * @example openHerdForm('nitrogen', setting, { flask: 'house' }, 'depth').values.flask // 'house'
 */
export const openHerdForm = (
  name: HerdFormName,
  setting: HerdSetting,
  values?: Values,
  at?: string,
): OpenForm => opened({ name, setting }, values, at)

function opened(chosen: Chosen, values: Values = {}, at?: string): OpenForm {
  const form = formInHand(chosen)
  const fields = form.fields()
  const index = at === undefined ? 0 : fields.findIndex((field) => field.name === at)
  const begun = { ...form.begin(), ...values }
  return {
    ...chosen,
    fields,
    values: begun,
    begun,
    at: Math.max(0, index),
    fresh: true,
    wrong: {},
    danger: undefined,
  }
}

const changed = (form: OpenForm, values: Values): OpenForm => {
  const field = form.fields[form.at]
  const { [field?.name ?? '']: _mended, ...wrong } = form.wrong
  const followed = formInHand(form).follow(field?.name ?? '', { ...form.values, ...values })
  return { ...form, values: followed, wrong, fresh: false, danger: undefined }
}

/** To the next field or the one before, round at the ends. */
export function toField(form: OpenForm, by: number): OpenForm {
  const count = form.fields.length
  return { ...form, at: (form.at + by + count) % count, fresh: true }
}

/**
 * Types text into the field: a choice takes the next choice that begins so, a pick completes itself.
 *
 * @param text one character, or what was pasted
 */
export function typeInto(form: OpenForm, text: string): OpenForm {
  const field = form.fields[form.at]
  if (field === undefined || text === '') return form
  const before = form.values[field.name] ?? ''
  if (field.input === 'choice') {
    const choices = field.choices ?? []
    const from = choices.indexOf(before)
    const round = [...choices.slice(from + 1), ...choices.slice(0, from + 1)]
    const found = round.find((choice) => choice !== '' && choice.startsWith(text.toLowerCase()))
    return found === undefined ? form : choose(form, field.name, found)
  }
  const typed = (form.fresh ? '' : before) + text.replaceAll(/[\r\n\t]+/g, ' ')
  if (field.input === 'pick') {
    const pick = pickOf(field, typed)
    return changed(form, { ...pick?.fills, [field.name]: typed })
  }
  return changed(form, { [field.name]: typed })
}

/** Sets a choice; where a suggestion has filled it (a straw's kind), what else it filled follows. */
function choose(form: OpenForm, name: string, choice: string): OpenForm {
  const filler = form.fields.find((field) => field.picks?.some((pick) => pick.fills[name] !== undefined))
  if (filler === undefined) return changed(form, { [name]: choice })
  const chosen = form.values[filler.name]
  const match = filler.picks?.find(
    (pick) => pick.fills[name] === choice && pick.fills[filler.name] === chosen,
  )
  if (match === undefined && filler.open === true) return changed(form, { [name]: choice })
  const others = Object.keys(filler.picks?.[0]?.fills ?? {}).filter(
    (other) => other !== name && other !== filler.name,
  )
  const cleared = Object.fromEntries(others.map((other) => [other, match?.fills[other] ?? '']))
  return changed(form, { ...cleared, [name]: choice })
}

/** The first suggestion that begins with what is typed; of a field where something new may be typed, that is it. */
export function pickOf(field: Field, typed: string): Pick | undefined {
  const text = typed.trim().toLowerCase()
  if (text === '') return undefined
  return field.picks?.find((pick) => {
    const whole = pick.fills[field.name]?.toLowerCase()
    return field.open === true ? whole === text : whole?.startsWith(text)
  })
}

/** Takes the last character of the field away. */
export function rubIn(form: OpenForm): OpenForm {
  const field = form.fields[form.at]
  if (field === undefined) return form
  if (field.input === 'choice') return field.optional === true ? changed(form, { [field.name]: '' }) : form
  const rest = [...(form.values[field.name] ?? '')].slice(0, -1).join('')
  return changed(form, { [field.name]: rest })
}

/** Turns the field to its next or last value: a choice, a suggestion, a day. */
export function turn(form: OpenForm, by: 1 | -1): OpenForm {
  const field = form.fields[form.at]
  if (field === undefined) return form
  const value = form.values[field.name] ?? ''
  if (field.input === 'choice') {
    const choices = field.choices ?? []
    const next = choices[(choices.indexOf(value) + by + choices.length) % choices.length]
    return next === undefined ? form : choose(form, field.name, next)
  }
  if (field.input === 'pick') {
    const picks = field.picks ?? []
    if (picks.length === 0) return form
    const fits = (pick: Pick): boolean =>
      Object.entries(pick.fills).every(([name, text]) => (form.values[name] ?? '') === text)
    const now = picks.findIndex(fits)
    const next = picks[now < 0 ? (by > 0 ? 0 : picks.length - 1) : (now + by + picks.length) % picks.length]
    return next === undefined ? form : changed(form, next.fills)
  }
  if (field.input === 'date') {
    const { now } = form.setting
    const day = readTypedDay(value, now.day, field.ahead === true)
    return changed(form, { [field.name]: dayIso(day === undefined ? now.day : plusDays(day, by)) })
  }
  return form
}

/** The values as they are meant: a pick that was begun is completed. */
function completed(form: OpenForm): Values {
  let values = form.values
  for (const field of form.fields) {
    if (field.input !== 'pick') continue
    const pick = pickOf(field, values[field.name] ?? '')
    const already = field.picks?.some((one) => one.fills[field.name] === values[field.name]) === true
    if (pick !== undefined && !already) values = { ...values, ...pick.fills }
  }
  return values
}

/**
 * Reads the form.
 *
 * @returns its facts; or the form with what is wrong, at the first wrong field; or the form with a danger to confirm
 */
export function accept(form: OpenForm): { facts: readonly NewFact[] } | { form: OpenForm } {
  const values = completed(form)
  const inHand = formInHand(form)
  const read = inHand.read(values)
  if (read.wrong !== undefined) {
    const at = form.fields.findIndex((field) => read.wrong[field.name] !== undefined)
    return { form: { ...form, values, wrong: read.wrong, at: Math.max(0, at), fresh: true } }
  }
  const danger = inHand.danger(values)
  if (danger !== undefined && form.danger !== danger) return { form: { ...form, values, danger } }
  return { facts: read.facts }
}

/** Whether a form that changes something on record leaves everything as it was. */
export function leavesAsItWas(form: OpenForm): boolean {
  if (form.changes === undefined && form.setting.about === undefined && form.name !== 'farm') return false
  const values = completed(form)
  return form.fields.every(({ name }) => (values[name] ?? '') === (form.begun[name] ?? ''))
}
