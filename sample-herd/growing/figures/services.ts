/** Returns and conceptions of the herd. */
import { isoDay } from '../../../source/breeding/day.ts'
import type { SeasonFact } from '../../../source/breeding/facts.ts'
import type { Figure } from './figure.ts'
import { type Ledger, maidenOn } from './ledger.ts'
import { aiDays, conceived, heldAtScan, serviceOf, servicesIn } from './matings.ts'

const remnant =
  'Remnant 2019, Measuring dairy herd heat detection (University of Nottingham), best-quarter herds'
const series = 'NZ artificial-breeding series part VIII, 207,884 re-services'
const nation = 'Nation et al. 2003, Aust Vet J 81:63-65'

export function returnFigures(ledger: Ledger, seasons: readonly SeasonFact[]): Figure[] {
  const intervals: number[] = []
  let followed = 0
  let seen = 0
  let neither = 0
  for (const season of seasons) {
    const start = isoDay(season.matingStart)
    for (const life of ledger.lives) {
      const services = servicesIn(life, season)
      services.forEach((day, index) => {
        const next = services[index + 1]
        if (next !== undefined) intervals.push(next - day)
      })
      const first = services[0]
      if (first === undefined || first - start > aiDays(season) - 25) continue
      if (heldAtScan(life, first) || serviceOf([first], conceived(life, season)) !== undefined) continue
      followed += 1
      const back = life.heats.some((heat) => heat - first >= 18 && heat - first <= 24)
      const short = life.heats.some((heat) => heat - first >= 2 && heat - first < 18)
      if (back) seen += 1
      else if (!short) neither += 1
    }
  }
  const share = (from: number, to: number): number =>
    intervals.filter((days) => days >= from && days <= to).length
  const total = intervals.length
  return [
    {
      name: 'return interval 2-17 days',
      counted: share(2, 17),
      of: total,
      published: '6 %; 25 % in another count',
      source: `${remnant}; ${series}`,
    },
    {
      name: 'return interval 18-24 days',
      counted: share(18, 24),
      of: total,
      published: '40 %; 65 % in another count',
      source: `${remnant}; ${series}`,
    },
    {
      name: 'return interval 25-35 days',
      counted: share(25, 35),
      of: total,
      published: '16 %',
      source: remnant,
    },
    {
      name: 'return interval 36-48 days',
      counted: share(36, 48),
      of: total,
      published: '19 %',
      source: remnant,
    },
    {
      name: 'open after the first service, back on days 18-24',
      counted: seen,
      of: followed,
      published: '63 %',
      source: nation,
    },
    {
      name: 'open after the first service, not seen before day 25',
      counted: neither,
      of: followed,
      published: '37 % less short intervals',
      source: nation,
    },
  ]
}

export function conceptionFigures(ledger: Ledger, seasons: readonly SeasonFact[]): Figure[] {
  const tally = new Map<string, { held: number; all: number }>()
  for (const season of seasons) {
    for (const life of ledger.lives) {
      const services = servicesIn(life, season)
      const held = serviceOf(services, conceived(life, season))
      for (const day of services) {
        const fact = life.services.find((one) => one.day === day)?.fact
        const key = `${maidenOn(life, day) ? 'maidens' : 'cows'}, ${fact?.straw === 'sexed' ? 'sexed' : 'other'} straws`
        const entry = tally.get(key) ?? { held: 0, all: 0 }
        entry.all += 1
        if (day === held) entry.held += 1
        tally.set(key, entry)
      }
    }
  }
  const published: Record<string, readonly [string, string]> = {
    'cows, other straws': ['55 %, less a service in seven lost later', 'common practice, no source'],
    'maidens, other straws': ['65 %, less losses', 'common practice, no source'],
    'cows, sexed straws': ['0.846 of conventional', 'Maicas et al. 2019, J Dairy Sci 102:10530-10542'],
    'maidens, sexed straws': ['0.867 of conventional', 'Maicas et al. 2019, J Dairy Sci 102:10530-10542'],
  }
  return Object.entries(published).map(([key, [text, source]]) => ({
    name: `service held to calving or the last scan: ${key}`,
    counted: tally.get(key)?.held ?? 0,
    of: tally.get(key)?.all ?? 0,
    published: text,
    source,
  }))
}
