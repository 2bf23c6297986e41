/** A service that may come: what the choice of a straw asks about the animal and the day. */
import { hardCalving } from '../cycle.ts'
import { type Day, plusDays } from '../day.ts'
import { onHeat } from '../questions.ts'
import { dayOfSeason } from '../season.ts'
import type { Serving } from '../session.ts'
import type { Standing } from '../standing.ts'

export interface Occasion {
  /** Season day of the service, and the last season day of AI; undefined where she has no season. */
  readonly s: number | undefined
  readonly lastAiDay: number | undefined
  readonly chancesUsed: number
  readonly maiden: boolean
  /** Calvings before the service. */
  readonly parity: number
  /** Days calved on that day; undefined for maidens and unknown calvings. */
  readonly calved: number | undefined
  /** Body condition score, 1-5, where one was taken lately. */
  readonly condition: number | undefined
  /** A sure heat was seen before the heat to be served. */
  readonly seenCycling: boolean
  /** The last calving was hard. */
  readonly hardCalving: boolean
  /** A pregnancy was lost since the last calving. */
  readonly lostCalf: boolean
  /** The vet treated her since, other than for a fixed-time service. */
  readonly treated: boolean
  readonly plan: 'dairy' | 'beef'
  /** Her sire and her dam are named. */
  readonly parentsKnown: boolean
  /** Where the session is known; undefined on a day ahead, whose hours may still suit. */
  readonly serving: Serving | undefined
}

/** For maidens and for cows calved longer ago than this a heat counts from season day -42 on. */
const CALVED_LONG = 150
const CYCLING_FROM = -42

/**
 * The service of today.
 *
 * @param serving the session where she is served; undefined where none is due
 * @example occasionToday(standing, serving).chancesUsed // 0
 */
export function occasionToday(standing: Standing, serving: Serving | undefined): Occasion {
  const { maiden, parity, waitFrom, today, s } = standing
  return {
    ...lasting(standing),
    s,
    chancesUsed: standing.chancesUsed,
    maiden,
    parity,
    calved: waitFrom === undefined ? undefined : today - waitFrom,
    seenCycling: seenCycling(standing),
    serving,
  }
}

/**
 * Services on days ahead, as far as they are known today: by then she will have been seen cycling. One who is in calf
 * is taken to calve on her due date, without trouble.
 *
 * @returns for the chances used before that service and its season day
 * @example occasionsAhead(standing)(0, 20).calved // 61
 */
export function occasionsAhead(standing: Standing): (chancesUsed: number, s: number) => Occasion {
  const { season, due, maiden, parity } = standing
  const from = due ?? standing.waitFrom
  const calves = { hardCalving: false, lostCalf: false, treated: false, condition: undefined }
  const known = {
    ...lasting(standing),
    ...(due === undefined ? { maiden, parity } : { ...calves, maiden: false, parity: parity + 1 }),
    seenCycling: true,
    serving: undefined,
  }
  return (chancesUsed, s) => ({
    ...known,
    s,
    chancesUsed,
    calved: season === undefined || from === undefined ? undefined : dayOfSeason(season, s) - from,
  })
}

function lasting(standing: Standing) {
  const { animal, season, condition, calvings } = standing
  const last = calvings.at(-1)
  return {
    lastAiDay: season?.aiEnd,
    condition,
    hardCalving: last !== undefined && hardCalving(last),
    lostCalf: standing.losses.some((day) => last === undefined || day > last.day),
    treated: treatedSince(standing, last?.day),
    plan: animal.record.plan ?? 'dairy',
    parentsKnown: animal.record.sire !== undefined && animal.record.dam !== undefined,
  }
}

/** Heats of the cycle but the one she is on; for maidens and cows calved long ago those since season day -42. */
function seenCycling(standing: Standing): boolean {
  const { maiden, waitFrom, today, season, heats, latestHeat } = standing
  const now = onHeat(standing) ? latestHeat : undefined
  const long = maiden || (waitFrom !== undefined && today - waitFrom > CALVED_LONG)
  const from = long && season !== undefined ? plusDays(season.matingStart, CYCLING_FROM) : undefined
  return heats.some((heat) => heat.sure && heat !== now && (from === undefined || heat.day >= from))
}

/** Treated by the vet after her last calving (maidens: ever), but not to be served at a fixed time. */
const treatedSince = (standing: Standing, calved: Day | undefined): boolean =>
  standing.animal.happenings.some(
    ({ fact, day }) =>
      fact.kind === 'examined' &&
      fact.treatment !== undefined &&
      fact.serveOn === undefined &&
      day < standing.today &&
      (calved === undefined || day >= calved),
  )
