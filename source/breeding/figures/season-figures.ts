/**
 * The figures of one season of a block, as known on the morning of a day.
 */
import type { HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import { type Season, seasonDay } from '../season.ts'
import type { Standing } from '../standing.ts'
import { finished, mapInSteps, type Steps } from '../steps.ts'
import { type CalvingFigures, calvingFigures, calvingToFirstService, type DaysFigure } from './calving.ts'
import { cohortInSteps, type Member, servicesIn } from './cohort.ts'
import {
  aiServices,
  type ConceptionGroup,
  conceptionBy,
  type Grouping,
  groupings,
  heldOf,
  type OrderedService,
  servicesPerPregnancy,
} from './conception.ts'
import type { Figure } from './figure.ts'
import { heatDetection } from './heat-detection.ts'
import { type InCalf, inCalfFigures } from './in-calf.ts'
import { type Outcome, outcomeOf } from './outcome.ts'
import { intervalsBetween, nonReturn, type ReturnIntervals, returnIntervals } from './returns.ts'
import type { ServiceResult } from './service-results.ts'
import { type Submission, submission } from './submission.ts'

export interface SeasonFigures {
  readonly season: Season
  /** Season day of the morning. */
  readonly s: number
  /** Animals of the cohort. */
  readonly cohort: number
  readonly submission: Submission
  readonly heatDetection: Figure
  readonly conception: Figure
  readonly conceptionBy: Readonly<Record<Grouping, readonly ConceptionGroup[]>>
  readonly servicesPerPregnancy: ReturnType<typeof servicesPerPregnancy>
  readonly nonReturn24: Figure
  readonly nonReturn56: Figure
  readonly returnIntervals: ReturnIntervals
  readonly inCalf: InCalf
  readonly calving: CalvingFigures
  readonly calvingToFirstService: DaysFigure
}

/** Whom and what the figures of a season are counted from. */
export interface Counted {
  readonly members: readonly Member[]
  /** What became of each member, in the same order. */
  readonly outcomes: readonly Outcome[]
  /** Services of every animal of the block in the season, an animal a list; and those by AI with their order. */
  readonly services: readonly (readonly ServiceResult[])[]
  readonly ai: readonly OrderedService[]
}

/**
 * What the figures of a season are counted from. Shares of animals are of the cohort; services and returns are of every
 * animal of the block.
 *
 * @param standings of all animals on the day, those that left too
 * @example countedIn(book, standings, season, today).members.length // 148
 */
export const countedIn = (
  book: HerdBook,
  standings: readonly Standing[],
  season: Season,
  today: Day,
): Counted => finished(countedInSteps(book, standings, season, today))

/** The same in small steps. */
export function* countedInSteps(
  book: HerdBook,
  standings: readonly Standing[],
  season: Season,
  today: Day,
): Steps<Counted> {
  const members = yield* cohortInSteps(book, season, standings, today)
  yield
  const inCohort = new Set(members.map(({ animal }) => animal))
  const others = standings.filter(
    ({ animal, female, block }) => female && block === season.block && !inCohort.has(animal),
  )
  const services = [
    ...members.map((member) => member.services),
    ...others.map((standing) => servicesIn(standing, book, season)),
  ]
  return {
    members,
    outcomes: yield* mapInSteps(members, (member) => outcomeOf(member, book, season)),
    services,
    ai: aiServices(services),
  }
}

/**
 * The figures of a season, of what has been counted in it.
 *
 * @param season one that has begun or is to come; a past one too
 * @example figuresOf(countedIn(book, standings, season, today), book, season, today).inCalf.sixWeeks
 *   // { numerator: 84, denominator: 148, unknown: 21, ... }
 */
export function figuresOf(
  { members, outcomes, services, ai }: Counted,
  book: HerdBook,
  season: Season,
  today: Day,
): SeasonFigures {
  const s = seasonDay(season, today)
  return {
    season,
    s,
    cohort: members.length,
    submission: submission(members, book, season, s),
    heatDetection: heatDetection(members, book, season),
    conception: heldOf(ai),
    conceptionBy: Object.fromEntries(
      groupings.map((grouping) => [grouping, conceptionBy(ai, grouping)]),
    ) as Record<Grouping, ConceptionGroup[]>,
    servicesPerPregnancy: servicesPerPregnancy(ai),
    nonReturn24: nonReturn(ai, 24, book.policy),
    nonReturn56: nonReturn(ai, 56, book.policy),
    returnIntervals: returnIntervals(intervalsBetween(services)),
    inCalf: inCalfFigures(outcomes, season),
    calving: calvingFigures(members, book, season),
    calvingToFirstService: calvingToFirstService(members),
  }
}
