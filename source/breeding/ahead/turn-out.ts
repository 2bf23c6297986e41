/** The move to the bull weeks and out of them: who goes with the bull, who is kept from him and why, which bulls there are. */
import type { AnimalRecord, HerdBook } from '../book.ts'
import { bullPeriods } from '../bull-period.ts'
import { type Day, plusDays } from '../day.ts'
import { marksOn } from '../marks.ts'
import { tooYoung } from '../questions.ts'
import { dayOfSeason, type Season } from '../season.ts'
import { type Standing, standingOn } from '../standing.ts'

export type KeptReason = 'hold' | 'ready-after-bull' | 'barred' | 'maiden-not-ready'

export interface TurnOut {
  readonly season: Season
  /** First day with the bull, and the last. */
  readonly from: Day
  readonly to: Day
  /** Not known to be in calf, and may go with him. */
  readonly goes: readonly Standing[]
  /** In calf: they may stay in the group or not. */
  readonly inCalf: readonly Standing[]
  readonly kept: readonly { readonly standing: Standing; readonly reason: KeptReason }[]
  readonly bulls: readonly BullOfFarm[]
}

export interface BullOfFarm {
  readonly bull: AnimalRecord
  /** Under 2 years on the turn-out day; false where his birth is not known. */
  readonly young: boolean
  /** A health hold that outlasts the day: he does not work. */
  readonly onHold: boolean
}

const YOUNG_BULL_DAYS = 730
/** A bull named in a fact of the past so many days works on the farm: he was with the cows last season or this. */
const NAMED_DAYS = 400

/**
 * What the move to the bull weeks of a block would be, on the facts of a day.
 *
 * @param from the turn-out day; season day A+1 where it is not moved
 * @example turnOut(book, season, dayOfSeason(season, 42), today).goes.length // 61
 */
export function turnOut(book: HerdBook, season: Season, from: Day, today: Day): TurnOut {
  const to = dayOfSeason(season, season.bullEnd)
  const goes: Standing[] = []
  const inCalf: Standing[] = []
  const kept: { standing: Standing; reason: KeptReason }[] = []
  for (const animal of book.animals.values()) {
    if (animal.record.sex !== 'F') continue
    const standing = standingOn(book, animal, today)
    const place = placeOf(standing, book, season)
    if (place === undefined) continue
    if (place === 'in-calf') inCalf.push(standing)
    else if (place === 'goes') goes.push(standing)
    else kept.push({ standing, reason: place })
  }
  return { season, from, to, goes, inCalf, kept, bulls: bullsOnHand(book, from) }
}

/** Whether she goes with him, needs no bull, or is kept from him and why; undefined where she is not of the block. */
function placeOf(
  standing: Standing,
  book: HerdBook,
  season: Season,
): KeptReason | 'in-calf' | 'goes' | undefined {
  if (!standing.inHerd || standing.block !== season.block) return undefined
  if (standing.inCalf) return 'in-calf'
  return keptReason(standing, book.policy.calvedToServe, dayOfSeason(season, season.bullEnd)) ?? 'goes'
}

interface Kept {
  readonly key: string
  readonly policy: HerdBook['policy']
  readonly seasons: HerdBook['allSeasons']
  readonly goes: boolean
}
const known = new WeakMap<AnimalRecord, Kept>()

/**
 * Whether an animal goes with the bull of a block, on the facts of a day. Kept while nothing happens to her.
 *
 * @example goesWithBull(book, cow, season, today) // true: of the block, not known to be in calf, not kept from him
 */
export function goesWithBull(book: HerdBook, animal: AnimalRecord, season: Season, today: Day): boolean {
  if (animal.record.sex !== 'F') return false
  const key = `${season.factId} ${today}`
  const kept = known.get(animal)
  if (kept?.key === key && kept.policy === book.policy && kept.seasons === book.allSeasons) return kept.goes
  const goes = placeOf(standingOn(book, animal, today), book, season) === 'goes'
  known.set(animal, { key, policy: book.policy, seasons: book.allSeasons, goes })
  return goes
}

function keptReason(standing: Standing, calvedToServe: number, to: Day): KeptReason | undefined {
  if (standing.barred) return 'barred'
  if (!standing.ready || tooYoung(standing)) return 'maiden-not-ready'
  if (standing.onHold) return 'hold'
  return standing.waitFrom !== undefined && standing.waitFrom + calvedToServe > to
    ? 'ready-after-bull'
    : undefined
}

/** Whether a bull is with her at the end of a day, by her own facts. */
export const isWithBull = (animal: AnimalRecord, day: Day): boolean =>
  bullPeriods(animal, (on) => on <= day).some((period) => period.to === undefined)

/**
 * The bulls of the farm at the end of a day: males marked ready, and those that a fact of the past 400 days names with
 * a cow, which have not left. Sires of straws are neither.
 *
 * @example bullsOfFarm(book, turnOutDay).map(({ bull }) => bull.number) // ['B10', 'B11']
 */
export function bullsOfFarm(book: HerdBook, day: Day): readonly BullOfFarm[] {
  const named = bullsNamed(book, day)
  const bulls: BullOfFarm[] = []
  for (const animal of book.animals.values()) {
    if (animal.record.sex !== 'M') continue
    if (animal.record.ready !== true && !named.has(animal.number)) continue
    const left = animal.happenings.some(({ fact, day: on }) => fact.kind === 'left' && on <= day)
    if (left) continue
    const young = animal.born !== undefined && day - animal.born < YOUNG_BULL_DAYS
    bulls.push({ bull: animal, young, onHold: marksOn(animal, plusDays(day, 1)).onHold })
  }
  return bulls
}

/** The bulls of the farm that can work: those on hold cannot. */
export const bullsOnHand = (book: HerdBook, day: Day): readonly BullOfFarm[] =>
  bullsOfFarm(book, day).filter(({ onHold }) => !onHold)

function bullsNamed(book: HerdBook, day: Day): ReadonlySet<string> {
  const named = new Set<string>()
  for (const { happenings } of book.animals.values())
    for (const { fact, day: on } of happenings)
      if (fact.kind === 'with-bull' && fact.bull !== undefined && day - on <= NAMED_DAYS) named.add(fact.bull)
  return named
}
