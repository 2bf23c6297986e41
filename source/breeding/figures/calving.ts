/**
 * Calving: its pattern before the season, and the days from it to the first service.
 */
import type { HerdBook } from '../book.ts'
import { type Day, plusDays, plusYears } from '../day.ts'
import { calvingPattern } from '../forecast/calving-pattern.ts'
import { dayOfSeason, type Season } from '../season.ts'
import type { Member } from './cohort.ts'
import { type Figure, figureOf } from './figure.ts'

/** A week of calving, counted from the planned start: week 1 begins on it, week 0 and below come before. */
export interface CalvedWeek {
  readonly week: number
  readonly calved: number
  /** Still to come in the week, as expected by the due dates. */
  readonly expected: number
  /** Calved and expected of this week and the weeks before. */
  readonly cumulative: number
}

export interface CalvingFigures {
  /** Planned start of the calving before this season. */
  readonly plannedStart: Day
  /** Calved by day 21 and by day 42 of calving, of the cows of the cohort that calved in it or are still to. */
  readonly byDay21: Figure
  readonly byDay42: Figure
  /** Weeks from the first with a calving to the last, without gaps. */
  readonly weeks: readonly CalvedWeek[]
}

/** Calvings longer before the planned start belong to another time. */
const EARLIEST = 42

function calvedWeeks(calved: readonly Day[], due: readonly Day[], plannedStart: Day): CalvedWeek[] {
  const expected = new Map<number, number>()
  for (const day of due)
    for (const one of calvingPattern({ first: day, expected: [1] }, plannedStart))
      expected.set(one.week, (expected.get(one.week) ?? 0) + one.expected)
  const counts = new Map<number, number>()
  for (const day of calved) {
    const week = Math.floor((day - plannedStart) / 7) + 1
    counts.set(week, (counts.get(week) ?? 0) + 1)
  }
  const all = [...counts.keys(), ...expected.keys()]
  if (all.length === 0) return []
  const first = Math.min(...all)
  let cumulative = 0
  return Array.from({ length: Math.max(...all) - first + 1 }, (_, i) => {
    const week = {
      week: first + i,
      calved: counts.get(first + i) ?? 0,
      expected: expected.get(first + i) ?? 0,
    }
    cumulative += week.calved + week.expected
    return { ...week, cumulative }
  })
}

/** Her calving in the calving before the season; undefined where she did not calve in it, or has not yet. */
export const calvedBefore = ({ now }: Member, plannedStart: Day, season: Season): Day | undefined =>
  now.calvings.find(({ day }) => day >= plannedStart - EARLIEST && day <= dayOfSeason(season, season.bullEnd))
    ?.day

/** Her first AI service of the season and the calving before it. */
export function servedAfterCalving({ now, services }: Member): { served: Day; calved: Day } | undefined {
  const served = services.find(({ service }) => service.ai)?.service.day
  const calved = now.calvings.findLast(({ day }) => served !== undefined && day <= served)?.day
  return served === undefined || calved === undefined ? undefined : { served, calved }
}

/**
 * Pattern of the calving that this season follows.
 *
 * @source Irish Independent, calving targets, 2011: half calved in three weeks; Teagasc, Breeding management, 2021: 90 %
 *   in six
 * @example calvingFigures(members, book, season).byDay21.percent // 57.9
 */
export function calvingFigures(members: readonly Member[], book: HerdBook, season: Season): CalvingFigures {
  const plannedStart = plusYears(plusDays(season.matingStart, book.policy.defaultGestation), -1)
  const calved: Day[] = []
  const waiting: Member[] = []
  for (const member of members) {
    const day = calvedBefore(member, plannedStart, season)
    if (day !== undefined) calved.push(day)
    else if (member.then.due !== undefined) waiting.push(member)
  }
  const by = (day: number, target: number, source: string): Figure => {
    const end = plannedStart + day - 1
    return figureOf(calved.filter((one) => one <= end).length, calved.length + waiting.length, {
      unknown: waiting.filter(({ now }) => now.today <= end).length,
      target,
      source,
    })
  }
  const due = waiting.flatMap(({ now }) =>
    now.due === undefined || !now.inHerd ? [] : [Math.max(now.due, now.today) as Day],
  )
  return {
    plannedStart,
    byDay21: by(21, 50, 'Irish Independent, calving targets, 2011'),
    byDay42: by(42, 90, 'Teagasc, Breeding management, 2021'),
    weeks: calvedWeeks(calved, due, plannedStart),
  }
}

export interface DaysFigure {
  readonly animals: number
  readonly mean: number | undefined
  readonly median: number | undefined
}

/**
 * Days from calving to the first AI service of the season, of the cows that had one.
 *
 * @example calvingToFirstService(members).median // 71
 */
export function calvingToFirstService(members: readonly Member[]): DaysFigure {
  const days = members
    .flatMap((member) => {
      const her = servedAfterCalving(member)
      return her === undefined ? [] : [her.served - her.calved]
    })
    .sort((a, b) => a - b)
  const middle = (days.length - 1) / 2
  const [low, high] = [days[Math.floor(middle)], days[Math.ceil(middle)]]
  return {
    animals: days.length,
    mean: days.length === 0 ? undefined : days.reduce((a, b) => a + b, 0) / days.length,
    median: low === undefined || high === undefined ? undefined : (low + high) / 2,
  }
}
