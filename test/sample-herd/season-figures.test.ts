/**
 * Two finished seasons of the sample herd against counts made apart from the program: a script in another language that
 * read the raw facts and the rules in words alone. The six-week figure is left out: foetal age within days of the
 * bull's first day is for the rules of conception, not for counting. Counted by hand since a later age keeps the
 * conception of the result before: 346, named the service of 28 May, failed to that of 8 May (she calved 283 days after
 * the 28th); 201, in calf to the bull about 8 January, 15 days after her AI, whose end is not known by that.
 */
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import { dayIso, isoDay } from '../../source/breeding/day.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { countedIn, figuresOf } from '../../source/breeding/figures/season-figures.ts'
import { standingOn } from '../../source/breeding/standing.ts'

const { facts } = JSON.parse(
  readFileSync(new URL('../../sample-herd/sample-herd.json', import.meta.url), 'utf8'),
) as { facts: readonly Fact[] }

const counted = [
  {
    block: 'spring',
    start: '2025-05-01',
    on: '2025-10-14',
    cohort: 162,
    served: 112,
    inCalf: 121,
    empty: 41,
    intervals: [5, 39, 6, 4, 3],
    held: { '1': [74, 145, 6], '2': [24, 44, 2] },
  },
  {
    block: 'autumn',
    start: '2025-11-20',
    on: '2026-04-28',
    cohort: 121,
    served: 95,
    inCalf: 94,
    empty: 24,
    intervals: [7, 23, 9, 3, 0],
    held: { '2': [17, 35, 2] },
  },
] as const

test.each(counted)('$block $start', (one) => {
  const book = openBook(facts)
  const day = isoDay(one.on)
  const season = book.seasons.get(one.block)?.find(({ matingStart }) => dayIso(matingStart) === one.start)
  if (season === undefined) throw new Error('no such season')
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, day))
  const figures = figuresOf(countedIn(book, standings, season, day), book, season, day)
  expect(figures.submission.all).toMatchObject({ numerator: one.served, denominator: one.cohort })
  expect(figures.inCalf.all.numerator).toBe(one.inCalf)
  expect(figures.inCalf.empty.numerator).toBe(one.empty)
  expect(Object.values(figures.returnIntervals.counts)).toEqual(one.intervals)
  for (const [order, [numerator, denominator, unknown]] of Object.entries(one.held)) {
    const found = figures.conceptionBy.order.find(({ key }) => key === order)?.figure
    expect(found, order).toMatchObject({ numerator, denominator, unknown })
  }
})
