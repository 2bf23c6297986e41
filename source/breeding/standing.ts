/**
 * Where an animal stands on the morning of a day: everything the rules ask about her, derived from her facts.
 * Facts that the list of the day does not know yet (see cycle.ts) are left out here too.
 */
import type { AnimalRecord, HerdBook } from './book.ts'
import { type BullPeriod, bullPeriods, bullWeeks, lastDayWithBull } from './bull-period.ts'
import {
  type Calving,
  type Check,
  type Cycle,
  type CycleEvent,
  cyclesOn,
  type Heat,
  type Service,
} from './cycle.ts'
import { type Day, plusDays } from './day.ts'
import type { AnimalFact, ExaminedFact } from './facts.ts'
import { dryOffDay, gestationDays } from './gestation.ts'
import { marksOn } from './marks.ts'
import { countsFor, type Pregnancy, pregnancyOf } from './pregnancy.ts'
import { type Phase, PRE_MATING, phaseOf, type Season, seasonDay, seasonOn } from './season.ts'
import { sireOf } from './sire.ts'

export interface Standing {
  readonly animal: AnimalRecord
  readonly today: Day
  /** Her block's season of the day; undefined where she has no block or her block no season. */
  readonly block: string | undefined
  readonly season: Season | undefined
  readonly phase: Phase | undefined
  /** Season day of today. */
  readonly s: number | undefined
  /** Born, and not left. */
  readonly inHerd: boolean
  readonly leftOn: Day | undefined
  readonly female: boolean
  readonly barred: boolean
  /** Not a maiden, or a maiden marked ready and of an age for it, once served or in calf. */
  readonly ready: boolean
  readonly parity: number
  readonly maiden: boolean
  readonly calvings: readonly Calving[]
  readonly losses: readonly Day[]
  /** Day that "days calved" counts from: the last calving, or a loss at 120 days of pregnancy or more. */
  readonly waitFrom: Day | undefined
  readonly waitSince: CycleEvent | undefined
  readonly cycles: readonly Cycle[]
  /** The open cycle. */
  readonly cycle: Cycle
  readonly heats: readonly Heat[]
  readonly latestHeat: Heat | undefined
  readonly latestSureHeat: Heat | undefined
  readonly services: readonly Service[]
  readonly lastService: Service | undefined
  readonly checks: readonly Check[]
  readonly lastCheck: Check | undefined
  /** The last check that counts for the last service. */
  readonly countingCheck: Check | undefined
  readonly pregnancy: Pregnancy | undefined
  readonly inCalf: boolean
  readonly due: Day | undefined
  readonly dryOff: Day | undefined
  /** Heats served by AI from season day -35 on, across losses. */
  readonly chancesUsed: number
  readonly leftToBull: boolean
  readonly onHold: boolean
  readonly bullPeriods: readonly BullPeriod[]
  /** The last day on which a bull was with her: by her own facts, else in the bull weeks of her block. */
  readonly lastWithBull: Day | undefined
  readonly examinedOn: Day | undefined
  /** The last day before today on which she was dried off. */
  readonly driedOff: Day | undefined
  /** A fixed-time service planned for today. */
  readonly fixedTime: ExaminedFact | undefined
  /** The latest day before today for which a fixed-time service was planned. */
  readonly plannedBefore: Day | undefined
  /** Score of the last 60 days. */
  readonly condition: number | undefined
  /** Facts dated today, those that tick included. */
  readonly todays: readonly AnimalFact[]
}

/**
 * Days of age before which no maiden counts as ready: the mark has no date, and must not put the calf that she was
 * on the lists and into the seasons of her first year. Common practice, no source: served at 13 to 15 months.
 */
const YOUNGEST_READY = 330

/** Whether a maiden was old enough on a day to be meant for service; so is one whose birth is not known. */
export const oldEnoughToServe = (animal: AnimalRecord, day: Day): boolean =>
  animal.born === undefined || day - animal.born >= YOUNGEST_READY

/** A score counts for so many days. */
const SCORE_DAYS = 60

/**
 * Her standing on the morning of a day.
 *
 * @param book the herd book, @param animal a record of it, @param today the list's day
 * @example standingOn(book, cow, isoDay('2026-05-28')).chancesUsed // 1
 */
export function standingOn(book: HerdBook, animal: AnimalRecord, today: Day): Standing {
  const { cycles, calvings, losses, parity } = cyclesOn(animal, today)
  const marks = marksOn(animal, today)
  const block = marks.block ?? animal.record.block ?? blockByCalving(book, calvings.at(-1)?.day)
  const seasons = block === undefined ? [] : (book.seasons.get(block) ?? [])
  const season = seasonOn(seasons, today)
  const recorded = bullPeriods(animal, (day) => day < today)
  const weeks = bullWeeks(seasons)
  const periodsOf = (cycle: Cycle): readonly BullPeriod[] => {
    const own = recorded.filter(
      (period) => cycle.opened === undefined || (period.to ?? today) >= cycle.opened,
    )
    return own.length > 0 ? own : weeks
  }
  const cycle = cycles[cycles.length - 1] as Cycle
  const pregnancy = pregnancyOf(cycle, periodsOf(cycle), book.policy)
  const services = cycle.services
  const lastService = services.at(-1)
  const maiden = parity === 0
  const wait = waitOf(book, cycles, calvings, periodsOf)
  const condition =
    marks.condition !== undefined && today - marks.condition.day <= SCORE_DAYS
      ? marks.condition.value
      : undefined
  const due = dueDay(book, pregnancy, cycle.parity)
  const chancesFrom = season === undefined ? undefined : season.matingStart + PRE_MATING
  return {
    animal,
    today,
    block,
    season,
    phase: season === undefined ? undefined : phaseOf(season, today),
    s: season === undefined ? undefined : seasonDay(season, today),
    inHerd: (animal.born === undefined || animal.born <= today) && marks.leftOn === undefined,
    leftOn: marks.leftOn,
    female: animal.record.sex === 'F',
    barred: marks.barred,
    ready:
      !maiden ||
      (animal.record.ready === true && oldEnoughToServe(animal, today)) ||
      cycles.some((one) => one.services.length > 0 || one.checks.some(isPregnant)),
    parity,
    maiden,
    calvings,
    losses,
    waitFrom: wait.from,
    waitSince: wait.since,
    cycles,
    cycle,
    heats: cycle.heats,
    latestHeat: cycle.heats.at(-1),
    latestSureHeat: cycle.heats.findLast((heat) => heat.sure),
    services,
    lastService,
    checks: cycle.checks,
    lastCheck: cycle.checks.at(-1),
    countingCheck:
      lastService === undefined
        ? undefined
        : cycle.checks.findLast((check) => countsFor(check, lastService, book.policy)),
    pregnancy,
    inCalf: pregnancy !== undefined,
    due,
    dryOff: due === undefined ? undefined : dryOffDay(due, parity, (condition ?? 5) < 3, book.policy),
    chancesUsed: chancesFrom === undefined ? 0 : chancesSince(cycles, chancesFrom),
    leftToBull: chancesFrom !== undefined && marks.toBull.some((day) => day >= chancesFrom),
    onHold: marks.onHold,
    bullPeriods: recorded,
    lastWithBull: lastDayWithBull(
      periodsOf(cycle),
      services.flatMap((service) => (service.ai ? [] : [service.day])),
      today,
    ),
    examinedOn: marks.examinedOn,
    driedOff: marks.driedOff,
    fixedTime: marks.fixedTime,
    plannedBefore: marks.plannedBefore,
    condition,
    todays: marks.todays,
  }
}

const isPregnant = (check: Check): boolean => check.fact.result === 'pregnant'

/** Heats served by AI on a day or later, in all cycles. */
function chancesSince(cycles: readonly Cycle[], from: number): number {
  let chances = 0
  for (const cycle of cycles) {
    for (const service of cycle.services) if (service.ai && service.day >= from) chances += 1
  }
  return chances
}

/** The block of the first season in which she can be bred: its day B lies 42 days or more after her last calving. */
function blockByCalving(book: HerdBook, calved: Day | undefined): string | undefined {
  if (calved === undefined) return undefined
  return book.allSeasons.find(
    (season) => season.matingStart + season.bullEnd - calved >= book.policy.calvedToServe,
  )?.block
}

/** Days calved count from the last calving, or from a later loss at 120 days of pregnancy or more. */
function waitOf(
  book: HerdBook,
  cycles: readonly Cycle[],
  calvings: readonly Calving[],
  periodsOf: (cycle: Cycle) => readonly BullPeriod[],
): { from: Day | undefined; since: CycleEvent | undefined } {
  for (let i = cycles.length - 1; i > 0; i -= 1) {
    const cycle = cycles[i] as Cycle
    if (cycle.openedBy === 'calving') break
    const opened = cycle.opened as Day
    const lost = cycles[i - 1] as Cycle
    const from = pregnancyOf(lost, periodsOf(lost), book.policy)?.conception?.day ?? lost.services.at(-1)?.day
    if (from === undefined || opened - from >= book.policy.lossIsCalvingDays) {
      return { from: opened, since: 'loss' }
    }
  }
  const calved = calvings.at(-1)?.day
  return { from: calved, since: calved === undefined ? undefined : 'calving' }
}

function dueDay(book: HerdBook, pregnancy: Pregnancy | undefined, parity: number): Day | undefined {
  const conception = pregnancy?.conception
  if (conception === undefined) return undefined
  const sire = conception.sire === undefined ? {} : sireOf(book, conception.sire)
  return plusDays(conception.day, gestationDays(sire, parity === 0, book.policy))
}
