/** Every form by its name. */
import { bullServiceForm, fromBullForm, withBullForm } from './bull.ts'
import { checkForm } from './check.ts'
import type { Form, FormName } from './form.ts'
import { examinedForm, holdForm, noteForm, scoreForm } from './health.ts'
import { heatForm } from './heat.ts'
import { barForm, calvingForm, dryForm, leftForm, lossForm, toBullForm, unbarForm } from './life.ts'
import { serviceForm } from './service.ts'

export const forms: Readonly<Record<FormName, Form>> = {
  heat: heatForm,
  service: serviceForm,
  check: checkForm,
  examined: examinedForm,
  hold: holdForm,
  'to-bull': toBullForm,
  note: noteForm,
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
