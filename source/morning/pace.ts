/** Submission pace of a block in its first three weeks of AI, against the target. */
import type { HerdBook } from '../breeding/book.ts'
import type { BlockDay } from '../breeding/list.ts'
import { dayOfSeason } from '../breeding/season.ts'
import { standingOn } from '../breeding/standing.ts'

export interface Pace {
  /** Animals of the cohort served on season days 0 to today, 20 at most. */
  readonly served: number
  /** Animals of the block intended for breeding at the mating start. */
  readonly of: number
  /** Share that should be served by now: 30, 60, 90 % at days 7, 14, 21, evenly between. */
  readonly target: number
}

/** Season days on which a service counts. */
const LAST_DAY = 20
/** Source: agriland.ie, Achieving your breeding targets for 2021 (Teagasc): 90 % in 21 days, 4.3 % of the herd a day. */
const TARGET = 0.9

const known = new WeakMap<HerdBook, Map<string, Pace>>()

/**
 * The pace of a block on the day shown; undefined outside the AI weeks.
 *
 * @example paceOf(book, springOnDay7) // { served: 41, of: 118, target: 0.34 }
 */
export function paceOf(book: HerdBook, { block, season, phase, day }: BlockDay): Pace | undefined {
  if (phase !== 'ai') return undefined
  const kept = known.get(book) ?? new Map<string, Pace>()
  known.set(book, kept)
  const key = `${block} ${season.matingStart} ${day}`
  let pace = kept.get(key)
  if (pace === undefined) {
    pace = counted(book, block, season, day)
    kept.set(key, pace)
  }
  return pace
}

function counted(book: HerdBook, block: string, season: BlockDay['season'], day: number): Pace {
  const start = season.matingStart
  const last = Math.min(day, LAST_DAY)
  let served = 0
  let of = 0
  for (const animal of book.animals.values()) {
    if (animal.record.sex !== 'F') continue
    const standing = standingOn(book, animal, start)
    if (!standing.inHerd || standing.block !== block || standing.barred || !standing.ready) continue
    of += 1
    const wasServed = animal.happenings.some(
      ({ fact, day: on }) =>
        fact.kind === 'service' && fact.natural !== true && on >= start && on <= dayOfSeason(season, last),
    )
    if (wasServed) served += 1
  }
  return { served, of, target: (TARGET * (last + 1)) / (LAST_DAY + 1) }
}
