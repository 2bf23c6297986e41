/**
 * The morning list in TypeScript beside the same list in SQL, row by row: section, reasons, what the days count from
 * and how many, milking, warnings, the section beside Take care, ticked or not, and the order. Straws and chances have
 * tests of their own. Where the two differ, one of them is wrong.
 */
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { benchDay, benchHerd } from '../../bench/herd.ts'
import { openBook } from '../../source/breeding/book.ts'
import { type Day, isoDay, plusDays } from '../../source/breeding/day.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import type { Row } from '../../source/breeding/list.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import { compareNumbers } from '../../source/breeding/order.ts'
import { reasonsOf, sections, strawWarnings, warnings } from '../../source/breeding/sections.ts'
import { anyMorning } from '../breeding/histories.ts'
import {
  calving,
  cow,
  dayAt,
  empty,
  factsOf,
  type Happening,
  on,
  pregnant,
  service,
  unsure,
  withBull,
} from '../breeding/support.ts'
import { Twin, type TwinRow } from './twin.ts'

/** Warnings that SQL works out too: those it names. */
const sectionsSql = readFileSync(new URL('sections.sql', import.meta.url), 'utf8')
const inSql: readonly string[] = warnings.filter((code) => sectionsSql.includes(`'${code}'`))
const ofStraws: readonly string[] = strawWarnings
for (const code of warnings)
  if (!inSql.includes(code) && !ofStraws.includes(code))
    test.skip(`the warning ${code}, which sections.sql does not work out yet`, () => {})

/** A list as both tell it: the watch, whose order is that of the chances, goes by number. */
function told(rows: readonly Row[]): readonly TwinRow[] {
  const watched = (row: Row): string => (row.section === 'repeat-heat-watch' ? String(row.block) : '')
  const inOrder = [...Map.groupBy(rows, watched)].flatMap(([watch, ofBlock]) =>
    watch === '' ? [] : ofBlock.toSorted((a, b) => compareNumbers(a.number, b.number)),
  )
  let next = 0
  return rows.map((row) => {
    const { chance, straw, moment, ...shown } = watched(row) === '' ? row : (inOrder[next++] as Row)
    return { ...shown, warnings: shown.warnings.filter((warning) => inSql.includes(warning)) }
  })
}

/** Holds the lists of some days against each other; returns the sections and reasons that were seen. */
function compare(facts: readonly Fact[], days: readonly Day[]): ReadonlySet<string> {
  const book = openBook(facts)
  const twin = new Twin(facts)
  const seen = new Set<string>()
  for (const day of days) {
    const rows = told(morningList(book, day).rows)
    expect(twin.rows(day)).toEqual(rows)
    for (const row of rows) for (const reason of row.reasons) seen.add(`${row.section} ${reason}`)
  }
  twin.close()
  return seen
}

const every = (from: string, step: number, count: number): readonly Day[] =>
  Array.from({ length: count }, (_, index) => plusDays(isoDay(from), index * step))

const factsIn = (herd: string): readonly Fact[] =>
  (
    JSON.parse(readFileSync(new URL(`../../sample-herd/${herd}.json`, import.meta.url), 'utf8')) as {
      facts: readonly Fact[]
    }
  ).facts

test('the hand-made cases, on the day that shows every code and around it', () => {
  const codes = sections.flatMap((section) => reasonsOf[section].map((reason) => `${section} ${reason}`))
  expect([...compare(factsIn('cases'), every('2026-05-14', 1, 30))].sort()).toEqual(codes.sort())
})

describe('the sample herd', () => {
  const facts = factsIn('sample-herd')

  test.each([
    ['from its first spring on, every four weeks or so', every('2023-03-28', 29, 42)],
    ['day by day around the mating start of a spring', every('2026-04-28', 1, 8)],
    ['day by day around the mating start of an autumn', every('2025-11-18', 1, 6)],
    ['day by day when the bulls go out', every('2025-06-09', 1, 6)],
    ['day by day when they come home', every('2024-02-10', 1, 5)],
  ])(
    '%s',
    (_, days) => {
      expect(compare(facts, days).size).toBeGreaterThan(3)
    },
    120_000,
  )
})

test.each([3, 4, 5, 6, 7, 8])('herds made for measuring, seed %i', (seed) => {
  const days = [-40, -28, -20, -3, 0, 1, 7, 15, 16, 30, 60, 100].map((later) => plusDays(benchDay, later))
  expect(compare(benchHerd(60, benchDay, seed), days).size).toBeGreaterThan(8)
})

test('cows found in calf twice: when they are overdue tells which result counts', () => {
  const none: readonly Happening[] = []
  const served = [none, [service(0)], [service(0), service(14)], [service(0), service(15)]]
  const bulls = [none, [withBull(12, { bull: 'B1' })]]
  const firsts = [
    none,
    [pregnant(38)],
    [pregnant(38, { foetalAge: 34 })],
    [pregnant(38, { serviceDate: on(0) })],
  ]
  const meanwhile = [none, [empty(55)], [pregnant(55)], [service(60)]]
  const lasts = [-16, -15, 9, 14, 15, 16].flatMap((day) => [
    [pregnant(80, { foetalAge: 80 - day })],
    [pregnant(38, { foetalAge: 38 - day }), unsure(80)],
  ])
  const each = (parts: readonly (readonly Happening[])[], more: readonly (readonly Happening[])[]) =>
    parts.flatMap((part) => more.map((one) => [...part, ...one]))
  const stories = [served, bulls, firsts, meanwhile, lasts].reduce(each, [[calving(-60)]])
  const herd = stories.map((story, place) => cow({ number: String(place + 1) }, ...story))
  // Conceived on day 0, they are overdue on day 297.
  const days = [296, 297, 311].map(dayAt)
  expect(compare(factsOf(herd, { bullWeeks: 0 }), days)).toContain('take-care overdue')
}, 120_000)

test('random herds, plausible or not, on any day', () => {
  fc.assert(
    fc.property(anyMorning(6), ({ facts, s }) => {
      compare(facts, [dayAt(s)])
    }),
    { numRuns: 120 },
  )
})
