/** What the days ahead will ask for, as far as today's facts tell. */

import { returnsExpected } from '../animal-chances.ts'
import type { HerdBook } from '../book.ts'
import { type Day, plusDays } from '../day.ts'
import type { MorningList, Section } from '../list.ts'
import { morningList } from '../morning-list.ts'
import { checkCountsFrom } from '../pregnancy.ts'
import { returned, type Standing, standingOn, unchecked } from '../standing.ts'

export interface DayAhead {
  readonly day: Day
  readonly list: MorningList
  readonly counts: ReadonlyMap<Section, number>
  /** Returns expected to be seen on the day, the sum of the chances as known today. */
  readonly returns: number
}

/**
 * The lists of the days after today, made as if nothing else happened.
 *
 * @param days how many, 1-60
 * @example daysAhead(book, today, 14)[6]?.counts.get('repeat-heat-watch') // 19
 */
export function daysAhead(book: HerdBook, today: Day, days: number): readonly DayAhead[] {
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, today))
  return Array.from({ length: days }, (_, index) => {
    const day = plusDays(today, index + 1)
    const list = morningList(book, day)
    const counts = new Map<Section, number>()
    for (const row of list.rows) counts.set(row.section, (counts.get(row.section) ?? 0) + 1)
    const returns = standings.reduce((sum, standing) => sum + returnsExpected(standing, book, day), 0)
    return { day, list, counts, returns }
  })
}

export interface ScanningDay {
  readonly day: Day
  readonly block: string
  /** Animals whose last service is old enough by then, as far as is known today. */
  readonly ready: number
  /** Foetal age then tells calves by AI from calves by the bull. */
  readonly tellsSires: boolean
}

/**
 * Days on which a scanning visit would find many animals ready.
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
    if (block === '' || season === undefined || readyFrom.length === 0) continue
    for (let day = from; day <= to; day = plusDays(day, 1)) {
      const ready = readyFrom.filter((one) => one <= day).length
      const s = day - season.matingStart
      if (ready > 0) found.push({ day, block, ready, tellsSires: s >= season.aiEnd + 35 && s <= 98 })
    }
  }
  return found
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
