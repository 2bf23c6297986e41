/** The morning list as CSV: one row a line, lists joined by a space, yes and no. */
import { dayIso } from '../../breeding/day.ts'
import type { MorningList } from '../../breeding/list.ts'
import { csvText } from '../csv/writing.ts'

const listColumns = [
  'date',
  'block',
  'section',
  'animal',
  'session',
  'days',
  'since',
  'chance',
  'sire',
  'kind',
  'reasons',
  'warnings',
  'done',
] as const

/**
 * The list as CSV with a header line.
 *
 * @example listCsv(list).split('\r\n')[1] // '2026-05-28,spring,serve,412,morning,1,heat,0.55,S17,conventional,on-heat,,no'
 */
export const listCsv = (list: MorningList): string =>
  csvText(
    listColumns,
    list.rows.map((row) => [
      dayIso(list.day),
      row.block ?? '',
      row.section,
      row.number,
      row.session ?? '',
      row.days === undefined ? '' : String(row.days),
      row.since ?? '',
      row.chance === undefined ? '' : String(Math.round(row.chance * 10_000) / 10_000),
      row.straw?.sire ?? '',
      row.straw?.straw ?? '',
      row.reasons.join(' '),
      row.warnings.join(' '),
      row.done ? 'yes' : 'no',
    ]),
  )
