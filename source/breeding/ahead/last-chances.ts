/** Late calvers and empties: until when each can be served in this block, and what becomes of her then. */
import type { HerdBook } from '../book.ts'
import { type Day, plusDays } from '../day.ts'
import type { Member } from '../figures/cohort.ts'
import { outcomeOf } from '../figures/outcome.ts'
import { isForecast } from '../forecast/outlook-of.ts'
import { dayOfSeason, PRE_MATING, type Season, seasonDay } from '../season.ts'
import type { Standing } from '../standing.ts'
import { asUndecided, type Decided, decidedOf } from './decided.ts'

/** Why she is on this list. */
export type LastChanceReason =
  /** Still to calve, or calved: ready after the first three weeks. */
  | 'calves-late'
  | 'calved-late'
  /** Found empty after the season. */
  | 'empty'

export interface LastChance {
  readonly standing: Standing
  readonly reason: LastChanceReason
  /** Her calving, or the day she is due; undefined for empties. */
  readonly calves: Day | undefined
  /** First day she can be served, 42 days after it. */
  readonly readyFrom: Day | undefined
  /** Last day on which AI, and any service at all (the bull's), can still put her in calf in this block. */
  readonly lastAi: Day | undefined
  readonly last: Day | undefined
  /** By AI in this block; by the bull in this block; in the other block; in none of those planned: cull. */
  readonly becomes: 'ai' | 'bull' | 'other-block' | 'cull'
  /** The next season of another block that she can be served in. */
  readonly otherBlock: Season | undefined
  /** What was decided of her; she stays on the list with it. */
  readonly decided: Decided | undefined
}

/** Until when an animal can still be served in a season, from today on: by AI, and at all; undefined where not any more. */
export interface TimeLeft {
  readonly lastAi: Day | undefined
  readonly last: Day | undefined
}

/**
 * Until when an animal that is not a late calver can still be served: by AI as long as she has a chance left and is not
 * left to the bull.
 *
 * @param chances by AI that an animal has in a season
 * @example timeLeft(standing, spring, 2) // { lastAi: 11 June, last: 2 July }
 */
export function timeLeft(standing: Standing, season: Season, chances: number): TimeLeft {
  const [lastAi, last] = [dayOfSeason(season, season.aiEnd), dayOfSeason(season, season.bullEnd)]
  const byAi = standing.today <= lastAi && standing.chancesUsed < chances && !standing.leftToBull
  return {
    lastAi: byAi ? lastAi : undefined,
    last: standing.today <= last && (byAi || season.bullEnd > season.aiEnd) ? last : undefined,
  }
}

/** Before it is known where she could go, and what was decided. */
type Found = Omit<LastChance, 'otherBlock' | 'decided'>

/** Ready for service after this season day: a late calver. */
const FIRST_ROUND = 20

/** The first season of another block that she can still be served in from a day on. */
function otherBlockFrom(book: HerdBook, season: Season, ready: Day): Season | undefined {
  return book.allSeasons.find(
    (other) =>
      other.block !== season.block &&
      other.matingStart > season.matingStart &&
      dayOfSeason(other, other.bullEnd) >= ready,
  )
}

function lateCalver(standing: Standing, book: HerdBook, season: Season): Found | undefined {
  const due = standing.due && (Math.max(standing.due, standing.today) as Day)
  const stillToCalve = standing.inCalf && due !== undefined
  const conceived = standing.pregnancy?.conception?.day
  if (conceived !== undefined && seasonDay(season, conceived) >= PRE_MATING) return undefined
  const calves = stillToCalve ? due : standing.waitFrom
  if (calves === undefined || (standing.inCalf && !stillToCalve)) return undefined
  const readyFrom = plusDays(calves, book.policy.calvedToServe)
  if (seasonDay(season, readyFrom) <= FIRST_ROUND) return undefined
  const [lastAi, last] = [dayOfSeason(season, season.aiEnd), dayOfSeason(season, season.bullEnd)]
  const reason = stillToCalve ? 'calves-late' : 'calved-late'
  const known = { standing, reason, calves, readyFrom } as const
  if (readyFrom <= lastAi) return { ...known, lastAi, last, becomes: 'ai' }
  if (readyFrom <= last) return { ...known, lastAi: undefined, last, becomes: 'bull' }
  return { ...known, lastAi: undefined, last: undefined, becomes: 'other-block' }
}

/** Empties of the cohort that are still here, and may be bred, or were until that was decided. */
function empties(members: readonly Member[], book: HerdBook, season: Season, undecided: Undecided): Found[] {
  return members
    .map((member) => ({ ...member, now: undecided(member.now) }))
    .filter((member) => {
      const { now } = member
      const here = now.inHerd && !now.barred && !now.inCalf && now.block === season.block
      return here && outcomeOf(member, book, season).kind === 'empty'
    })
    .map(({ now }) => ({
      standing: now,
      reason: 'empty' as const,
      calves: undefined,
      readyFrom: undefined,
      lastAi: undefined,
      last: undefined,
      becomes: 'other-block' as const,
    }))
}

type Undecided = (standing: Standing) => Standing

/**
 * Animals whose time in this block is short or over. Until day 20 all that are ready only after the first three weeks;
 * later those that are ready only after the bull's last day; from the final check on the empties too. Whether she then
 * goes to the other block or is culled is the farmer's to say: the other block is named where a season of it is planned.
 * Who was decided about stays, with what was decided.
 *
 * @param standings of all animals on the day, @param members the cohort of the season on the day
 * @returns by the last day she can be served, those without one last
 * @example lastChances(book, standings, members, spring, today)[0]?.becomes // 'bull'
 */
export function lastChances(
  book: HerdBook,
  standings: readonly Standing[],
  members: readonly Member[],
  season: Season,
  today: Day,
): readonly LastChance[] {
  const s = seasonDay(season, today)
  const decided = ({ animal }: Standing): Decided | undefined => decidedOf(animal, season, today)
  const undecided: Undecided = (standing) => asUndecided(standing, decided(standing), book, season)
  const found = standings
    .map(undecided)
    .filter((standing) => isForecast(standing, season))
    .flatMap((standing) => lateCalver(standing, book, season) ?? [])
    .filter(({ becomes }) => s <= FIRST_ROUND || becomes === 'other-block')
  if (s >= season.bullEnd + book.policy.finalCheckDays)
    found.push(...empties(members, book, season, undecided))
  return found
    .map((one): LastChance => {
      const other = otherBlockFrom(book, season, one.readyFrom ?? today)
      return {
        ...one,
        otherBlock: other,
        becomes: one.becomes === 'other-block' && !other ? 'cull' : one.becomes,
        decided: decided(one.standing),
      }
    })
    .sort(
      (a, b) =>
        (a.last ?? Number.MAX_SAFE_INTEGER) - (b.last ?? Number.MAX_SAFE_INTEGER) ||
        (a.readyFrom ?? today) - (b.readyFrom ?? today),
    )
}
