/** seasons.csv: the mating seasons of each block. */
import { date, dates, whole, word } from '../cells.ts'
import { column, required } from '../columns.ts'

export const seasonColumns = [
  required(column('block', word)),
  required(column('mating_start', date, 'matingStart')),
  required(column('ai_weeks', whole(1, 20), 'aiWeeks')),
  required(column('bull_weeks', whole(0, 20), 'bullWeeks')),
  column('scan_dates', dates, 'scanDates'),
]
