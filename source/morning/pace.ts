/** Submission pace of a block in its first three weeks of AI, against the target: as the season's figures count it. */
import type { AnimalRecord, HerdBook } from '../breeding/book.ts'
import { plusDays } from '../breeding/day.ts'
import { cohortOf } from '../breeding/figures/cohort.ts'
import { firstServed, LAST_DAY, paceTarget } from '../breeding/figures/submission.ts'
import type { BlockDay } from '../breeding/list.ts'
import { dayOfSeason } from '../breeding/season.ts'
import { standingOn } from '../breeding/standing.ts'

export interface Pace {
  /** Animals of the cohort served by AI on season days 0 to today, 20 at most. */
  readonly served: number
  /** Animals of the block intended for breeding at the mating start. */
  readonly of: number
  /** Percent that should be served by now: 30, 60, 90 at days 7, 14, 21, evenly between. */
  readonly target: number
  /** The three weeks are over: the pace is what it was. */
  readonly over: boolean
}

const known = new WeakMap<HerdBook, Map<string, Pace>>()

/**
 * The pace of a block on the day shown; undefined outside the AI weeks.
 *
 * @example paceOf(book, springOnDay7) // { served: 41, of: 118, target: 34.3, over: false }
 */
export function paceOf(book: HerdBook, block: BlockDay): Pace | undefined {
  if (block.phase !== 'ai') return undefined
  const kept = known.get(book) ?? new Map<string, Pace>()
  known.set(book, kept)
  const key = `${block.season.factId} ${block.day}`
  const pace = kept.get(key) ?? counted(book, block)
  kept.set(key, pace)
  return pace
}

function counted(book: HerdBook, { season, day }: BlockDay): Pace {
  const last = Math.min(day, LAST_DAY)
  let served = 0
  let of = 0
  for (const animal of book.animals.values()) {
    if (animal.record.sex !== 'F') continue
    const first = firstServiceOf(book, animal, { season, day })
    if (first === undefined) continue
    of += 1
    if (first <= last) served += 1
  }
  return { served, of, target: paceTarget(last), over: day > LAST_DAY }
}

interface Kept {
  readonly key: string
  readonly policy: HerdBook['policy']
  readonly seasons: HerdBook['allSeasons']
  readonly first: number | undefined
}
const ofAnimals = new WeakMap<AnimalRecord, Kept>()

/**
 * Season day of her first service, tonight's included; infinite where she has none, undefined where she is not of the
 * cohort. Kept while nothing happens to her: the pace is counted anew after every tick.
 */
function firstServiceOf(
  book: HerdBook,
  animal: AnimalRecord,
  { season, day }: Pick<BlockDay, 'season' | 'day'>,
): number | undefined {
  const tonight = plusDays(dayOfSeason(season, day), 1)
  const key = `${season.factId} ${tonight}`
  const kept = ofAnimals.get(animal)
  if (kept?.key === key && kept.policy === book.policy && kept.seasons === book.allSeasons) return kept.first
  const [member] = cohortOf(book, season, [standingOn(book, animal, tonight)], tonight)
  const first = member === undefined ? undefined : (firstServed(member, season) ?? Number.POSITIVE_INFINITY)
  ofAnimals.set(animal, { key, policy: book.policy, seasons: book.allSeasons, first })
  return first
}
