/** Words of the screens' frame and of the morning list. */

import type { StrawKind } from '../../breeding/facts.ts'
import type { BlockDay, Row } from '../../breeding/list.ts'
import { capital } from '../../words/capital.ts'
import { counted } from '../../words/counted.ts'
import { shortDate } from '../../words/dates.ts'
import { phaseWords } from '../../words/list.ts'
import { safeText } from '../../words/safe.ts'

export const screenWords = {
  tooSmall: (columns: number, rows: number): string =>
    `dawnlist needs 60 x 16 characters; this is ${columns} x ${rows}`,
  saved: 'all saved',
  saving: 'saving',
  notSaved: (count: number): string => `NOT SAVED: ${count}`,
  readOnly: 'read only',
  ahead: 'still to come, to look at only',
  past: 'a past list',
  pastThen: 'as it was known then',
  noInitials: 'no initials',
  nothing: 'Nothing to do on this list.',
  /** Why there is nothing: heats come at any time, but not to a herd without animals. */
  nothingWhy: (animals: number): string =>
    animals === 0 ? 'No animal is on record yet.' : 'Heats can still be recorded: type her number, then h.',
  progress: (done: number, all: number): string => `${done} of ${all} done`,
  also: (count: number): string => `Also recorded (${count})`,
  withBull: (count: number): string => `${count} with the bull`,
  fold: { open: 'O folds them away', closed: 'O shows them' },
  visit: (ready: number, when: string): string => `${ready} ready on ${when}, the scanning visit`,
  toDo: (count: number): string => `${count} to do`,
  done: (count: number): string => `${count} done`,
  animals: (count: number): string => counted(count, 'animal'),
  typed: (typed: string): string => `Number ${typed}`,
  goTitle: 'Go to',
  searchTitle: 'Name, number or ear tag',
  searchNone: 'No animal like that.',
  dayTitle: 'The list of which day?',
  dayHint: '28 May, 2026-05-28, yesterday, tomorrow',
  moveDayTitle: 'Which day was it, or will it be?',
  dayWrong: {
    'no-date': 'That is not a date. Write 28 May, or 2026-05-28.',
    'move-outside-season': 'That day lies outside the season: type one within it.',
  },
  initialsTitle: 'Who is recording? Initials, or nothing',
  leavingTitle: (count: number): string => `${counted(count, 'fact is', 'facts are')} not saved`,
  leaving: 'They are lost if you leave now. S saves a copy of the whole herd elsewhere. Leave all the same?',
  keptResults: (count: number): string => `${counted(count, 'result')} of a scanning visit to settle`,
  opensIt: 'Enter opens it',
  herFacts: 'her facts',
  olderTitle: 'An older copy stands in the place of the file',
  older: 'What it lacks is added to it and saved. Save over it?',
  copyTitle: 'Save a copy of the whole herd, the unsaved facts too, as which new file?',
  copyHint: 'a new name, on a stick or in another folder',
  more: 'more',
  openingTitle: 'Before you start',
  noticeTitle: 'What is said',
  menuTitle: (who: string): string => `Record about ${who}`,
  day: (days: number): string => `day ${days}`,
} as const

/** @example 'Spring block: AI day 28 of 42, closes Thu 11 Jun' */
export function blockWords({ block, phase, day, season, closes }: BlockDay): string {
  const until =
    closes === undefined ? '' : `, ${phase === 'before' ? 'last day' : 'closes'} ${shortDate(closes)}`
  return `${capital(safeText(block))} block: ${phaseWords(phase, day, season.aiEnd, season.bullEnd)}${until}`
}

/** When: the milking of a service, else the days that count. Short, for a column. */
export function whenWords(row: Row): string {
  if (row.session === 'next-morning') return 'tomorrow early'
  if (row.session === 'next-evening') return 'tomorrow late'
  if (row.session !== undefined) return `this ${row.session}`
  if (row.days === undefined || row.since === undefined) return ''
  if (row.since === 'heat')
    return row.days === 0 ? 'seen today' : row.days === 1 ? 'seen yesterday' : `heat day ${row.days}`
  if (row.since === 'calving') return `calved ${row.days} d`
  return `day ${row.days}`
}

/** Kinds of straw, short for a column. */
const shortKinds: Readonly<Record<StrawKind, string>> = {
  conventional: 'conv.',
  sexed: 'sexed',
  beef: 'beef',
}

/** The straw or the chance that matters in the row. */
export function lastWords(row: Row): string {
  if (row.straw !== undefined) return `${safeText(row.straw.sire)} ${shortKinds[row.straw.straw]}`
  if (row.chance === undefined) return ''
  if (row.chance === 1) return ''
  const percent = `${(row.chance * 100).toFixed(row.chance < 0.1 ? 1 : 0)} %`
  return row.section === 'repeat-heat-watch' ? `${percent} today` : `${percent} in calf`
}
