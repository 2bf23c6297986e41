/** Seasons and calvings of the herd. */
import { isoDay } from '../../../source/breeding/day.ts'
import type { SeasonFact } from '../../../source/breeding/facts.ts'
import type { Figure } from './figure.ts'
import { countsOn, type Ledger, type Life } from './ledger.ts'
import { conceived, endOf, servicesIn } from './matings.ts'

export function seasonFigures(ledger: Ledger, seasons: readonly SeasonFact[]): Figure[] {
  const figures: Figure[] = []
  for (const season of seasons) {
    const start = isoDay(season.matingStart)
    const cohort = ledger.lives.filter((life) => countsOn(life, season.block, start))
    const name = `${season.block} ${season.matingStart.slice(0, 4)}`
    const served = cohort.filter((life) => servicesIn(life, season).some((day) => day - start <= 20))
    const day = (life: Life): number => (conceived(life, season) ?? Number.POSITIVE_INFINITY) - start
    const stayed = cohort.filter((life) => life.left === undefined || life.left - start > endOf(season) + 30)
    figures.push(
      {
        name: `${name}: served in 21 days`,
        counted: served.length,
        of: cohort.length,
        published: '80 % in one herd, 90 % the target',
        source: 'agriland.ie, monitoring submission rates; J. Baird, Field margins, 2024',
      },
      {
        name: `${name}: in calf in six weeks`,
        counted: cohort.filter((life) => day(life) <= 46).length,
        of: cohort.length,
        published: '78 %, the target',
        source: 'Farming Connect (Welsh Government), block-calving project',
      },
      {
        name: `${name}: not in calf at the end`,
        counted: stayed.filter((life) => day(life) === Number.POSITIVE_INFINITY).length,
        of: stayed.length,
        published: '10 %, a target for twelve weeks',
        source: 'Farming Connect (Welsh Government), block-calving project',
      },
    )
  }
  return figures
}

export function calvingFigures(ledger: Ledger): Figure[] {
  const figures: Figure[] = []
  const starts: readonly (readonly [string, string])[] = [
    ['spring', '2024-02-06'],
    ['autumn', '2024-08-27'],
    ['spring', '2025-02-05'],
    ['autumn', '2025-08-27'],
    ['spring', '2026-02-05'],
  ]
  for (const [block, start] of starts) {
    const from = isoDay(start)
    const days = ledger.lives
      .flatMap((life) => life.calvings)
      .filter((day) => day >= from - 20 && day < from + 120)
      .map((day) => day - from)
    const source = 'Irish Independent, calving targets, 2011'
    figures.push(
      {
        name: `${block} ${start.slice(0, 4)}: calved in three weeks`,
        counted: days.filter((day) => day <= 20).length,
        of: days.length,
        published: '50 %, the target',
        source,
      },
      {
        name: `${block} ${start.slice(0, 4)}: calved in six weeks`,
        counted: days.filter((day) => day <= 41).length,
        of: days.length,
        published: '90 %, the target',
        source,
      },
    )
  }
  return figures
}
