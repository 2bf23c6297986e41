/**
 * The figures of one season of a block, as known on the morning of a day.
 */
import type { HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import { type Season, seasonDay } from '../season.ts'
import type { Standing } from '../standing.ts'
import { type CalvingFigures, calvingFigures, calvingToFirstService, type DaysFigure } from './calving.ts'
import { cohortOf, servicesIn } from './cohort.ts'
import {
  aiServices,
  type ConceptionGroup,
  conceptionBy,
  type Grouping,
  groupings,
  heldOf,
  servicesPerPregnancy,
} from './conception.ts'
import type { Figure } from './figure.ts'
import { heatDetection } from './heat-detection.ts'
import { type InCalf, inCalfFigures } from './in-calf.ts'
import { outcomeOf } from './outcome.ts'
import { intervalsBetween, nonReturn, type ReturnIntervals, returnIntervals } from './returns.ts'
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

/**
 * The figures of a season. Shares of animals are of the cohort; services and returns are of every animal of the block.
 *
 * @param standings of all animals on the day, those that left too
 * @param season one that has begun or is to come; a past one too
 * @example seasonFigures(book, standings, season, today).inCalf.sixWeeks // { numerator: 84, denominator: 148, unknown: 21, ... }
 */
export function seasonFigures(
  book: HerdBook,
  standings: readonly Standing[],
  season: Season,
  today: Day,
): SeasonFigures {
  const members = cohortOf(book, season, standings, today)
  const s = seasonDay(season, today)
  const inCohort = new Set(members.map(({ animal }) => animal))
  const others = standings.filter(
    ({ animal, female, block }) => female && block === season.block && !inCohort.has(animal),
  )
  const services = [
    ...members.map((member) => member.services),
    ...others.map((standing) => servicesIn(standing, book, season)),
  ]
  const ai = aiServices(services)
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
    inCalf: inCalfFigures(
      members.map((member) => outcomeOf(member, book, season)),
      season,
    ),
    calving: calvingFigures(members, book, season),
    calvingToFirstService: calvingToFirstService(members),
  }
}
