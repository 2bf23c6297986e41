/** Days on which a scanning visit would find many animals ready. */
import type { HerdBook } from '../book.ts'
import { type Day, plusDays, weekday } from '../day.ts'
import { checkCountsFrom } from '../pregnancy.ts'
import { returned, unchecked } from '../questions.ts'
import type { Season } from '../season.ts'
import type { Standing } from '../standing.ts'

export interface ScanningDay {
  readonly day: Day
  readonly block: string
  /** Animals whose last service is old enough by then, as far as is known today. */
  readonly ready: number
  /** Foetal age then tells calves by AI from calves by the bull. */
  readonly tellsSires: boolean
}

/** Foetal age tells calves by AI from calves by the bull on s A+35..98. */
export const SIRES_FROM = 35
export const SIRES_TO = 98

/**
 * Days on which a scanning visit would find animals ready.
 *
 * @param from @param to both included
 * @returns every day with at least one animal ready, by block and date
 * @example scanningDays(book, standings, today, plusDays(today, 56)).at(-1)?.ready // 87
 */
export function scanningDays(
  book: HerdBook,
  standings: readonly Standing[],
  from: Day,
  to: Day,
): readonly ScanningDay[] {
  const found: ScanningDay[] = []
  for (const [block, group] of Map.groupBy(standings, (standing) => standing.block ?? '')) {
    const readyFrom = group.flatMap((standing) => readyDay(standing, book) ?? [])
    const season = group.find((standing) => standing.season !== undefined)?.season
    if (season === undefined) continue
    for (let day = from; day <= to; day = plusDays(day, 1)) {
      const ready = readyFrom.filter((one) => one <= day).length
      if (ready > 0) found.push({ day, block, ready, tellsSires: tellsSires(season, day) })
    }
  }
  return found
}

/**
 * Whether on a day the foetal age tells calves by AI from calves by the bull.
 * Source: Clutha Vets, Getting the most from pregnancy testing.
 */
export function tellsSires(season: Season, day: Day): boolean {
  const s = day - season.matingStart
  return s >= season.aiEnd + SIRES_FROM && s <= SIRES_TO
}

/** The first day on which a check of her last service counts, by the herd's method. */
function readyDay(standing: Standing, book: HerdBook): Day | undefined {
  const { policy } = book
  const service = standing.lastService
  const asked = standing.inHerd && standing.female && !standing.barred && !standing.inCalf
  if (!asked || service === undefined || !unchecked(standing) || returned(standing, policy.watchFrom)) {
    return undefined
  }
  return plusDays(service.day, checkCountsFrom(policy.checkMethod, standing.maiden, policy))
}

/** Monday of the week. */
const weekOf = (day: Day): number => day - ((weekday(day) + 6) % 7)
const isWorkingDay = (day: Day): boolean => weekday(day) >= 1 && weekday(day) <= 5

/**
 * Of each week the working day that a visit is worth most on: the first with as many ready as the week will have, and in
 * the week in which foetal age begins to tell the sires the first on which it does. A week that adds nothing is left out.
 *
 * @param days as scanningDays gives them
 * @returns by block and date
 * @example bestScanningDays(scanningDays(book, standings, today, to)).map(({ ready }) => ready) // [28, 53, 98, 121, 121]
 */
export function bestScanningDays(days: readonly ScanningDay[]): readonly ScanningDay[] {
  const best: ScanningDay[] = []
  for (const ofBlock of Map.groupBy(days, ({ block }) => block).values()) {
    let before: ScanningDay | undefined
    for (const week of Map.groupBy(
      ofBlock.filter(({ day }) => isWorkingDay(day)),
      ({ day }) => weekOf(day),
    ).values()) {
      const last = week[week.length - 1]
      const telling = before?.tellsSires === true ? [] : week.filter((one) => one.tellsSires)
      const found = (telling.length > 0 ? telling : week).find((one) => one.ready === last?.ready)
      const adds = found !== undefined && (found.ready > (before?.ready ?? 0) || telling.length > 0)
      if (found === undefined || !adds) continue
      best.push(found)
      before = found
    }
  }
  return best
}
