import { expect } from 'vitest'
import type { HerdBook } from '../../../source/breeding/book.ts'
import { behind, type Counts, type FigureName } from '../../../source/breeding/figures/behind.ts'
import { groupings } from '../../../source/breeding/figures/conception.ts'
import type { Figure } from '../../../source/breeding/figures/figure.ts'
import { intervalClasses } from '../../../source/breeding/figures/returns.ts'
import type { Counted, SeasonFigures } from '../../../source/breeding/figures/season-figures.ts'
import type { Season } from '../../../source/breeding/season.ts'

/**
 * Asks that as many animals stand behind each figure of a season as it counts.
 *
 * @returns the sum of all numerators, so that a caller can ask that there was something to count
 */
export function asManyBehind(asked: {
  readonly counted: Counted
  readonly figures: SeasonFigures
  readonly book: HerdBook
  readonly season: Season
}): number {
  const { figures } = asked
  let seen = 0
  const count = (name: FigureName): Record<Counts, number> => {
    const all = behind(name, asked)
    const of = (counts: Counts): number => all.filter((one) => one.counts === counts).length
    return { yes: of('yes'), no: of('no'), unknown: of('unknown') }
  }
  /** Whether the animals not known are among those that the figure divides by. */
  const agrees = (name: FigureName, { numerator, denominator, unknown }: Figure, among: boolean): void => {
    const counts = count(name)
    expect(counts.yes, name.of).toBe(numerator)
    expect(counts.unknown, name.of).toBe(unknown)
    expect(counts.yes + counts.no + (among ? counts.unknown : 0), name.of).toBe(denominator)
    seen += numerator
  }
  agrees({ of: 'submission' }, figures.submission.all, true)
  agrees({ of: 'submission-ready' }, figures.submission.ready, true)
  agrees({ of: 'heat-detection' }, figures.heatDetection, true)
  agrees({ of: 'conception' }, figures.conception, false)
  for (const by of groupings)
    for (const { key, figure } of figures.conceptionBy[by])
      agrees({ of: 'conception', by, key }, figure, false)
  agrees({ of: 'non-return', days: 24 }, figures.nonReturn24, true)
  agrees({ of: 'non-return', days: 56 }, figures.nonReturn56, true)
  agrees({ of: 'six-weeks' }, figures.inCalf.sixWeeks, true)
  agrees({ of: 'in-calf' }, figures.inCalf.all, true)
  agrees({ of: 'empty' }, figures.inCalf.empty, true)
  agrees({ of: 'calved-by', day: 21 }, figures.calving.byDay21, true)
  agrees({ of: 'calved-by', day: 42 }, figures.calving.byDay42, true)
  expect(count({ of: 'left' }).yes).toBe(figures.inCalf.leftBefore)
  for (const one of intervalClasses)
    expect(count({ of: 'interval', class: one }).yes).toBe(figures.returnIntervals.counts[one])
  const first = behind({ of: 'first-service' }, asked)
  expect(first.length).toBe(figures.calvingToFirstService.animals)
  const mean = first.reduce((sum, { days: after = 0 }) => sum + after, 0) / first.length
  if (first.length > 0) expect(mean).toBeCloseTo(figures.calvingToFirstService.mean ?? 0)
  return seen
}
