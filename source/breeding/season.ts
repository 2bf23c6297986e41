/** A mating season of one block and the phases that its days fall into. */
import { type Day, isoDay, plusDays } from './day.ts'
import type { SeasonFact } from './facts.ts'

export type Phase = 'before' | 'ai' | 'bull' | 'closing' | 'closed'

/** Pre-mating weeks begin on season day -35. */
export const PRE_MATING = -35
/** Closing weeks end 84 days after the bull went out. */
export const CLOSING_DAYS = 84
/** Last season day of the first six weeks: the in-calf rate of six weeks counts conceptions up to it. */
export const SIX_WEEKS = 41

export interface Season {
  readonly factId: string
  readonly block: string
  /** Season day 0. */
  readonly matingStart: Day
  /** Last season day of AI, A = 7 x AI weeks - 1. */
  readonly aiEnd: number
  /** Last season day of the sweep bull, B = A + 7 x bull weeks. */
  readonly bullEnd: number
  /** Planned scanning visits, in order. */
  readonly scanDays: readonly Day[]
}

/** The season that a season fact tells of. */
export function seasonFrom(fact: SeasonFact): Season {
  const aiEnd = 7 * fact.aiWeeks - 1
  return {
    factId: fact.id,
    block: fact.block,
    matingStart: isoDay(fact.matingStart),
    aiEnd,
    bullEnd: aiEnd + 7 * fact.bullWeeks,
    scanDays: (fact.scanDates ?? []).map(isoDay).sort((a, b) => a - b),
  }
}

/**
 * Season day: days since the mating start, negative before it.
 *
 * @example seasonDay(season, plusDays(season.matingStart, 27)) // 27
 */
export const seasonDay = (season: Season, day: Day): number => day - season.matingStart

/** The calendar day of a season day. */
export const dayOfSeason = (season: Season, s: number): Day => plusDays(season.matingStart, s)

/**
 * Phase of a day: -35..-1 `before`, 0..A `ai`, A+1..B `bull`, B+1..B+84 `closing`, otherwise `closed`.
 *
 * @example phaseOf(seasonOf6And3Weeks, dayOfSeason(season, 42)) // 'bull'
 */
export function phaseOf(season: Season, day: Day): Phase {
  const s = seasonDay(season, day)
  if (s < PRE_MATING) return 'closed'
  if (s < 0) return 'before'
  if (s <= season.aiEnd) return 'ai'
  if (s <= season.bullEnd) return 'bull'
  if (s <= season.bullEnd + CLOSING_DAYS) return 'closing'
  return 'closed'
}

/** The last day, included, of the phase that the day lies in; undefined when closed. */
export function phaseEnd(season: Season, day: Day): Day | undefined {
  const ends = { before: -1, ai: season.aiEnd, bull: season.bullEnd, closing: season.bullEnd + CLOSING_DAYS }
  const phase = phaseOf(season, day)
  return phase === 'closed' ? undefined : dayOfSeason(season, ends[phase])
}

/**
 * The season of a block on a day: the last whose day -35 has come, else the first to come.
 *
 * @param seasons the seasons of one block, by mating start
 */
export function seasonOn(seasons: readonly Season[], day: Day): Season | undefined {
  let found = seasons[0]
  for (const season of seasons) if (seasonDay(season, day) >= PRE_MATING) found = season
  return found
}
