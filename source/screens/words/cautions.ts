/** Which caution stands in a form; the words are shared with what is printed. */
import type { AnyFormName } from '../../morning/forms/form.ts'
import type { CautionName } from '../../words/cautions.ts'

/** The caution that stands in a form. */
export const cautionOfForm: Readonly<Partial<Record<AnyFormName, CautionName>>> = {
  service: 'crush',
  check: 'crush',
  examined: 'hormones',
  'with-bull': 'bull',
  'from-bull': 'bull',
  'bull-service': 'bull',
  calving: 'catching',
  loss: 'catching',
  delivery: 'nitrogen',
  'stock-take': 'nitrogen',
  spoiled: 'nitrogen',
  nitrogen: 'nitrogen',
}
