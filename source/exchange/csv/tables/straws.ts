/** straws.csv: what was counted in the flask, and what is known of the sires. */
import { choice, date, decimal, timeOfDay, whole, word, yesNo } from '../cells.ts'
import { column, required } from '../columns.ts'

export const strawKinds = ['conventional', 'sexed', 'beef'] as const

/** Which was recorded first, of facts of one kind on a date: the other columns do not tell. */
export const order = column('order', whole(1, 999_999))

export const strawColumns = [
  column('date', date),
  column('time', timeOfDay),
  required(column('sire', word)),
  column('name', word, 'sireName'),
  required(column('kind', choice(strawKinds), 'straw')),
  column('breed', word),
  column('batch', word),
  column('flask', word),
  column('canister', word),
  required(column('count', whole(0, 100_000))),
  column('volume_ml', decimal(0.1, 5), 'volumeMl'),
  column('easy_calving', yesNo, 'easyCalving'),
  column('gestation_days', whole(260, 300), 'gestationDays'),
  order,
]
