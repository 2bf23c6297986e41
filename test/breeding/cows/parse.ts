/**
 * The cows in words. A file holds a group: settings of the herd, then one block a cow:
 *
 *     ## title
 *     cow                          or: maiden · maiden, not ready · cow, lactation 4
 *     20 Feb  calved               what happened, one fact a line, the year 2026 unless said
 *     list 27 Mar - 10 Jul         the days that are looked at
 *     27 Mar  -35  heat-record none-seen
 *     10 Apr  -21  -               the morning list, one line a change: date, season day, where she stands
 */
import { type Day, isoDay } from '../../../source/breeding/day.ts'

export interface CowBlock {
  readonly title: string
  readonly animal: string
  readonly facts: readonly { readonly date: string; readonly words: string }[]
  readonly from: Day
  readonly to: Day
  readonly expected: readonly string[]
}

export interface Group {
  /** `scan 10 Jun`, `set checkMethod milk`: of the herd, above the first cow. */
  readonly settings: readonly string[]
  readonly cows: readonly CowBlock[]
}

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']

/** @example dateOf('3 May') // '2026-05-03' */
export function dateOf(words: string): string {
  const [day = '', month = '', year = '2026'] = words.trim().split(/\s+/)
  const number = months.indexOf(month) + 1
  if (number === 0) throw new Error(`no date: ${words}`)
  return `${year}-${String(number).padStart(2, '0')}-${day.padStart(2, '0')}`
}

const dated = /^(\d{1,2} [A-Z][a-z]{2}(?: 20\d\d)?)\s+(.+)$/
const listed = /^\d{1,2} [A-Z][a-z]{2}\s+-?\d+\s+\S/

/** Reads a group; lines that begin with # and no second # are remarks. */
export function parseGroup(text: string): Group {
  const [head = '', ...blocks] = text.split(/^## /m)
  const plain = (part: string): string[] =>
    part
      .split('\n')
      .map((line) => line.trim())
      .filter((line) => line !== '' && !line.startsWith('#'))
  return { settings: plain(head), cows: blocks.map((block) => parseCow(plain(block))) }
}

function parseCow([title = '', animal = '', ...lines]: string[]): CowBlock {
  const cut = lines.findIndex((line) => line.startsWith('list '))
  if (cut === -1) throw new Error(`${title}: no list`)
  const [from = '', to = ''] = (lines[cut] ?? '').slice('list '.length).split(' - ')
  return {
    title,
    animal,
    facts: lines.slice(0, cut).map((line) => {
      const found = dated.exec(line)
      if (found === null) throw new Error(`${title}: ${line}`)
      return { date: dateOf(found[1] ?? ''), words: found[2] ?? '' }
    }),
    from: isoDay(dateOf(from)),
    to: isoDay(dateOf(to)),
    expected: lines.slice(cut + 1).map((line) => {
      if (!listed.test(line)) throw new Error(`${title}: ${line}`)
      return line.split(/\s+/).join(' ')
    }),
  }
}
