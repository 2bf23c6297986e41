/** animals.csv: who is in the herd. */
import { choice, date, whole, word, yesNo } from '../cells.ts'
import { column, required } from '../columns.ts'

export const animalColumns = [
  required(column('number', word)),
  column('name', word),
  column('official_id', word, 'officialId'),
  column('electronic_id', word, 'electronicId'),
  column('international_id', word, 'internationalId'),
  column('sex', choice(['F', 'M'])),
  column('born', date),
  column('breed', word),
  column('sire', word),
  column('dam', word),
  column('block', word),
  column('lactation', whole(0, 30)),
  column('ready', yesNo),
  column('easy_calving', yesNo, 'easyCalving'),
  column('gestation_days', whole(260, 300), 'gestationDays'),
  column('plan', choice(['dairy', 'beef'])),
]
