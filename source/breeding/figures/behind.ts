/**
 * The animals behind a figure: those that count for it, against it, and those of whom it is not known. What each figure
 * asks of an animal or a service is asked here of the same functions that count it.
 */
import type { AnimalRecord, HerdBook } from '../book.ts'
import { type IntervalClass, intervalClass } from '../cycle.ts'
import type { Day } from '../day.ts'
import { dayOfSeason, type Season, SIX_WEEKS } from '../season.ts'
import type { Standing } from '../standing.ts'
import { calvedBefore, servedAfterCalving } from './calving.ts'
import type { Member } from './cohort.ts'
import { countedEnd, type Grouping, keyOf } from './conception.ts'
import { inHeatTest, seenInHeatTest } from './heat-detection.ts'
import { openAfter } from './in-calf.ts'
import type { Outcome } from './outcome.ts'
import { cameBackBy, countsForNonReturn } from './returns.ts'
import type { Counted, SeasonFigures } from './season-figures.ts'
import type { ServiceResult } from './service-results.ts'
import { firstServed, LAST_DAY, readyInTime } from './submission.ts'

/** A figure, as the animals behind it are asked for. */
export type FigureName =
  | { readonly of: 'submission' }
  | { readonly of: 'submission-ready' }
  | { readonly of: 'heat-detection' }
  | { readonly of: 'conception'; readonly by?: Grouping; readonly key?: string | undefined }
  | { readonly of: 'non-return'; readonly days: 24 | 56 }
  | { readonly of: 'interval'; readonly class: IntervalClass }
  | { readonly of: 'six-weeks' }
  | { readonly of: 'in-calf' }
  | { readonly of: 'empty' }
  | { readonly of: 'left' }
  | { readonly of: 'calved-by'; readonly day: 21 | 42 }
  | { readonly of: 'first-service' }

export type Counts = 'yes' | 'no' | 'unknown'

/** An animal, or one of her services, behind a figure. */
export interface Behind {
  readonly animal: AnimalRecord
  readonly standing: Standing
  readonly counts: Counts
  /** The day that decides: served, calved, conceived, left. */
  readonly day: Day | undefined
  /** The service, where the figure is one of services. */
  readonly service: ServiceResult['service'] | undefined
  /** Days, where the figure is one of days: between services, from calving to the first service. */
  readonly days: number | undefined
}

interface Asked {
  readonly counted: Counted
  readonly figures: SeasonFigures
  readonly book: HerdBook
  readonly season: Season
}

type Said = Partial<Pick<Behind, 'day' | 'service' | 'days'>>

const one = (standing: Standing, counts: Counts, said: Said = {}): Behind => ({
  animal: standing.animal,
  standing,
  counts,
  day: said.day,
  service: said.service,
  days: said.days,
})

const yesNo = (holds: boolean): Counts => (holds ? 'yes' : 'no')

/**
 * The animals behind a figure of a season. As many count for it as the figure's numerator says, and as many for and
 * against it (of the cohort's figures: and not known) as its denominator.
 *
 * @param counted what the figures were counted from, @param figures the figures
 * @example behind({ of: 'submission' }, asked).filter(({ counts }) => counts === 'yes').length // 116
 */
export function behind(name: FigureName, asked: Asked): readonly Behind[] {
  const { counted, figures, book, season } = asked
  const { members } = counted
  switch (name.of) {
    case 'submission':
      return members.map((member) => served(member, season))
    case 'submission-ready':
      return members
        .filter((member) => readyInTime(member, book, season))
        .map((member) => served(member, season))
    case 'heat-detection':
      return members
        .filter((member) => inHeatTest(member, book))
        .map((member) => one(member.now, yesNo(seenInHeatTest(member, season))))
    case 'conception':
      return counted.ai
        .filter((result) => name.by === undefined || keyOf[name.by](result) === name.key)
        .map((result) => ofService(result, ends[countedEnd(result)]))
    case 'non-return':
      return counted.ai
        .filter((result) => countsForNonReturn(result, name.days))
        .map((result) => ofService(result, yesNo(!cameBackBy(result, name.days, book.policy))))
    case 'interval':
      return intervals(counted.services, name.class)
    case 'six-weeks':
    case 'in-calf':
    case 'empty':
    case 'left':
      return counted.outcomes.flatMap((outcome, i) => {
        const member = members[i]
        return member === undefined ? [] : ofOutcome(name.of, outcome, member, season)
      })
    case 'calved-by':
      return members.flatMap((member) => calvedBy(member, figures.calving.plannedStart, name.day, season))
    case 'first-service':
      return members.flatMap((member) => {
        const her = servedAfterCalving(member)
        return her === undefined
          ? []
          : [one(member.now, 'yes', { day: her.served, days: her.served - her.calved })]
      })
  }
}

const ends = { held: 'yes', failed: 'no', unknown: 'unknown' } as const

function served(member: Member, season: Season): Behind {
  const s = firstServed(member, season)
  const day = s === undefined ? undefined : dayOfSeason(season, s)
  return one(member.now, yesNo(s !== undefined && s <= LAST_DAY), { ...(day === undefined ? {} : { day }) })
}

const ofService = ({ standing, service }: ServiceResult, counts: Counts, days?: number): Behind =>
  one(standing, counts, { day: service.day, service, ...(days === undefined ? {} : { days }) })

function intervals(animals: Counted['services'], wanted: IntervalClass): Behind[] {
  return animals.flatMap((services) =>
    services.flatMap((result, i) => {
      const before = services[i - 1]
      if (before === undefined || before.cycle !== result.cycle) return []
      const days = result.service.day - before.service.day
      return intervalClass(days) === wanted ? [ofService(result, 'yes', days)] : []
    }),
  )
}

function ofOutcome(
  figure: 'six-weeks' | 'in-calf' | 'empty' | 'left',
  outcome: Outcome,
  { now }: Member,
  season: Season,
): Behind[] {
  const day = outcome.kind === 'in-calf' ? dayOfSeason(season, outcome.day) : undefined
  const said = day === undefined ? {} : { day }
  if (figure === 'left')
    return outcome.kind === 'left'
      ? [one(now, 'yes', now.leftOn === undefined ? {} : { day: now.leftOn })]
      : []
  if (figure === 'empty')
    return [one(now, outcome.kind === 'unknown' ? 'unknown' : yesNo(outcome.kind === 'empty'), said)]
  const last = figure === 'six-weeks' ? SIX_WEEKS : season.bullEnd
  const unknown = figure === 'six-weeks' ? openAfter(outcome, SIX_WEEKS) : outcome.kind === 'unknown'
  const yes = outcome.kind === 'in-calf' && outcome.day <= last
  return [one(now, unknown ? 'unknown' : yesNo(yes), said)]
}

function calvedBy(member: Member, plannedStart: Day, day: number, season: Season): Behind[] {
  const calved = calvedBefore(member, plannedStart, season)
  if (calved !== undefined) return [one(member.now, yesNo(calved < plannedStart + day), { day: calved })]
  const { now, then } = member
  const over = now.today >= plannedStart + day
  return then.due === undefined ? [] : [one(now, over ? 'no' : 'unknown', { day: then.due })]
}
