import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import { isoDay } from '../../../source/breeding/day.ts'
import { behind, type Counts, type FigureName } from '../../../source/breeding/figures/behind.ts'
import { groupings } from '../../../source/breeding/figures/conception.ts'
import type { Figure } from '../../../source/breeding/figures/figure.ts'
import { intervalClasses } from '../../../source/breeding/figures/returns.ts'
import { countedIn, figuresOf } from '../../../source/breeding/figures/season-figures.ts'
import { standingOn } from '../../../source/breeding/standing.ts'

const { facts } = JSON.parse(
  readFileSync(new URL('../../../sample-herd/sample-herd.json', import.meta.url), 'utf8'),
)
const book = openBook(facts)

/** Days from before a mating start to after the season, in both blocks. */
const days = [
  '2025-04-20',
  '2025-05-21',
  '2025-06-12',
  '2025-07-30',
  '2025-09-25',
  '2026-01-15',
  '2026-05-28',
]

for (const date of days)
  test(`as many animals stand behind each figure of ${date} as it counts`, () => {
    const day = isoDay(date)
    const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, day))
    let seen = 0
    for (const season of book.allSeasons) {
      if (season.matingStart > day + 35) continue
      const counted = countedIn(book, standings, season, day)
      const figures = figuresOf(counted, book, season, day)
      const count = (name: FigureName): Record<Counts, number> => {
        const all = behind(name, { counted, figures, book, season })
        const of = (counts: Counts): number => all.filter((one) => one.counts === counts).length
        return { yes: of('yes'), no: of('no'), unknown: of('unknown') }
      }
      /** Whether the animals not known are among those that the figure divides by. */
      const agrees = (
        name: FigureName,
        { numerator, denominator, unknown }: Figure,
        among: boolean,
      ): void => {
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
      const first = behind({ of: 'first-service' }, { counted, figures, book, season })
      expect(first.length).toBe(figures.calvingToFirstService.animals)
      const mean = first.reduce((sum, { days: after = 0 }) => sum + after, 0) / first.length
      if (first.length > 0) expect(mean).toBeCloseTo(figures.calvingToFirstService.mean ?? 0)
    }
    expect(seen).toBeGreaterThan(500)
  })
