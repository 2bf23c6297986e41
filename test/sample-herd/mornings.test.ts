/**
 * Mornings of both herds, approved as text: what a herdsperson reads. After a change that is meant, write them anew
 * and read what has changed: `UPDATE_MORNINGS=1 npx vitest run test/sample-herd/mornings.test.ts`.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { growHerd } from '../../sample-herd/growing/herd.ts'
import { caseFacts } from '../../sample-herd/hand-made/herd.ts'
import { type HerdBook, openBook } from '../../source/breeding/book.ts'
import { isoDay } from '../../source/breeding/day.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import { listText } from '../../source/exchange/list/text.ts'

const mornings = {
  'sample-herd': [
    '2025-05-22', // the first round is over, the watch is on
    '2025-06-10', // a scanning visit
    '2025-06-12', // the bulls go out
    '2025-09-25', // the last scan of the season
    '2025-12-11', // the autumn block in its fourth week
    '2026-03-27', // heats are recorded from today
    '2026-04-24', // a week before the mating start
    '2026-05-01', // the mating start
    '2026-05-19', // the first returns
    '2026-05-28', // the morning that the herd is shown on
  ],
  cases: [
    '2026-05-24',
    '2026-05-25',
    '2026-05-26',
    '2026-05-27',
    '2026-05-28', // every code
    '2026-05-29',
    '2026-05-30',
    '2026-05-31',
    '2026-06-01',
    '2026-06-02',
  ],
} as const

const books: Record<keyof typeof mornings, HerdBook> = {
  'sample-herd': openBook(growHerd()),
  cases: openBook(caseFacts()),
}

const all = Object.entries(mornings).flatMap(([herd, dates]) => dates.map((date) => [herd, date] as const))

test.each(all)('%s %s', (herd, date) => {
  const book = books[herd as keyof typeof mornings]
  const text = listText(book, morningList(book, isoDay(date)))
  const file = new URL(`mornings/${herd}-${date}.txt`, import.meta.url)
  if (process.env.UPDATE_MORNINGS === '1') writeFileSync(file, text)
  if (!existsSync(file)) throw new Error(`${herd} ${date} is not approved yet`)
  expect(text).toBe(readFileSync(file, 'utf8'))
})
