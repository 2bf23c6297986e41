/** The morning list as plain text of at most 80 columns, for a pipe, a line printer or a terminal that cannot draw. */

import { movesDue } from '../../breeding/ahead/moves-due.ts'
import type { HerdBook } from '../../breeding/book.ts'
import type { BlockDay, MorningList, Row, VisitAhead } from '../../breeding/list.ts'
import { rowsBySection } from '../../breeding/morning-list.ts'
import { counted } from '../../words/counted.ts'
import { dateInWords, shortDate } from '../../words/dates.ts'
import {
  moveWords,
  phaseWords,
  reasonWords,
  sectionNames,
  sessionNames,
  warningWords,
} from '../../words/list.ts'
import { safeText } from '../../words/safe.ts'

const WIDTH = 80

/**
 * The list as lines of text.
 *
 * @param book the herd's book, for the farm and the names of the animals
 * @example listText(book, list).split('\n')[0] // 'Hazel Bank, Thu 28 May 2026'
 */
export function listText(book: HerdBook, list: MorningList): string {
  const lines = [`${safeText(book.farm.name)}, ${dateInWords(list.day)}`]
  for (const block of list.blocks) lines.push(blockLine(block))
  for (const move of movesDue(book, list)) lines.push(moveWords(move))
  for (const visit of list.visits) lines.push(visitLine(visit))
  for (const [section, rows] of rowsBySection(list)) {
    const done = rows.filter((row) => row.done).length
    lines.push('', `${sectionNames[section]}: ${rows.length - done} to do, ${done} done`)
    for (const row of rows) lines.push(...rowLines(book, row))
  }
  if (list.rows.length === 0) lines.push('', 'Nothing to do today.')
  return `${lines.join('\n')}\n`
}

/** @example 'spring block: AI day 28 of 42, closes Thu 11 Jun' */
export const blockLine = (block: BlockDay): string => {
  const { aiEnd, bullEnd } = block.season
  const closes =
    block.closes === undefined
      ? ''
      : `, ${block.phase === 'before' ? 'last day' : 'closes'} ${shortDate(block.closes)}`
  return `${safeText(block.block)} block: ${phaseWords(block.phase, block.day, aiEnd, bullEnd)}${closes}`
}

const visitLine = (visit: VisitAhead): string =>
  `${safeText(visit.block)} block: ${visit.ready} ready for the scanning visit on ${shortDate(visit.visit)}`

function rowLines(book: HerdBook, row: Row): string[] {
  const name = book.animals.get(row.animal)?.record.name ?? ''
  const said = [
    ...row.reasons.map((reason) => reasonWords[reason].phrase),
    sinceWords(row),
    row.session === undefined ? '' : sessionNames[row.session],
    row.straw === undefined ? '' : `straw ${safeText(row.straw.sire)} ${row.straw.straw}`,
    chanceWords(row),
    ...row.warnings.map((warning) => `! ${warningWords[warning].phrase}`),
    row.also === undefined ? '' : `else: ${sectionNames[row.also].toLowerCase()}`,
  ].filter((part) => part !== '')
  const head = `${row.done ? '[x]' : '[ ]'} ${safeText(row.number).padStart(5)}  ${safeText(name).slice(0, 12).padEnd(12)}  `
  return wrapped(said.join(', '), head, WIDTH)
}

/** @example '21 days from service' */
export const sinceWords = (row: Row): string => {
  if (row.since === undefined || row.days === undefined) return ''
  if (row.since === 'heat' && row.days <= 1) return row.days === 0 ? 'seen today' : 'seen yesterday'
  return `${counted(row.days, 'day')} from ${row.since}`
}

/** @example 'in calf 88 %' */
export const chanceWords = (row: Row): string => {
  if (row.chance === undefined) return ''
  const percent = `${Math.round(row.chance * 100)} %`
  if (row.section === 'repeat-heat-watch') return `back today ${(row.chance * 100).toFixed(1)} %`
  return row.section === 'pregnancy-check' ? `in calf ${percent}` : `holds ${percent}`
}

/** Words set in lines, the first behind a head, the rest indented as far. */
function wrapped(text: string, head: string, width: number): string[] {
  const lines: string[] = []
  let line = head
  for (const word of text.split(' ')) {
    if (line.length + word.length > width && line.trim() !== '' && line.length > head.length) {
      lines.push(line.trimEnd())
      line = ' '.repeat(head.length)
    }
    line += `${word} `
  }
  lines.push(line.trimEnd())
  return lines
}
