/**
 * Cycles: what lies between two calvings or losses. Heat records and services become heats, checks stand beside
 * them. A calving or any loss closes a cycle; its heats, services and checks do not count for the state that follows.
 */
import type { AnimalRecord, Happening } from './book.ts'
import type { Day } from './day.ts'
import type {
  CalvingFact,
  CheckFact,
  HeatFact,
  HeatSource,
  ServiceFact,
  StrawKind,
  TimeOfDay,
} from './facts.ts'
import type { Minute } from './moment.ts'

/** The services of one heat: one service, on its last date; AI if any of them is. */
export interface Service {
  readonly day: Day
  readonly ai: boolean
  /** Sire and straw of the last AI among them, else of the last. */
  readonly sire: string | undefined
  readonly straw: StrawKind | undefined
  readonly facts: readonly ServiceFact[]
  /** She had not calved yet. */
  readonly maiden: boolean
  /** Calvings before it. */
  readonly parity: number
}

/** Heat records and services, each at most one day after the one before. */
export interface Heat {
  /**
   * Day and minute of the first sure record; of a heat that is suspect in all its records of the first, or of every
   * other day that the suspicion goes on.
   */
  readonly day: Day
  readonly minute: Minute
  readonly time: TimeOfDay | undefined
  /** How it was seen then; undefined where that record is a service. */
  readonly how: HeatSource | undefined
  /** Sure unless all its records are suspect; a service is a sure record. */
  readonly sure: boolean
  /** Day of its first sure record. */
  readonly sureOn: Day | undefined
  readonly service: Service | undefined
}

export interface Check {
  readonly day: Day
  readonly fact: CheckFact
  readonly maiden: boolean
}

export type CycleEvent = 'calving' | 'loss'

export interface Cycle {
  /** What opened it, and when; undefined for the first cycle in the file. */
  readonly openedBy: CycleEvent | undefined
  readonly opened: Day | undefined
  /** Her calvings when it opened, the opening one included. */
  readonly parity: number
  readonly heats: readonly Heat[]
  /** The services of its heats. */
  readonly services: readonly Service[]
  readonly checks: readonly Check[]
}

/** One calving: facts 0-1 day apart are one. */
export interface Calving {
  readonly day: Day
  readonly lastDay: Day
  readonly facts: readonly CalvingFact[]
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] }

interface OpenHeat extends Mutable<Heat> {
  lastDay: Day
}

interface OpenCycle extends Mutable<Omit<Cycle, 'heats' | 'services' | 'checks'>> {
  heats: OpenHeat[]
  services: Service[]
  checks: Check[]
}

/**
 * Whether the list of a day knows a fact: every fact dated before the day and, of the day itself, heats, calvings,
 * losses and changed blocks; services of the day as heats. The others tick her row and move nothing until midnight.
 */
export function isSeen(happening: Happening, today: Day): boolean {
  if (happening.day < today) return true
  if (happening.day > today) return false
  const kind = happening.fact.kind
  return kind === 'heat' || kind === 'calving' || kind === 'loss' || kind === 'block' || kind === 'service'
}

/**
 * Cycles and calvings of an animal as the list of a day sees them.
 *
 * @param animal her record with its facts in order
 * @param today the list's day
 * @returns at least one cycle, oldest first; her calvings, oldest first; her losses, of which two at most a day
 *   apart are one, as calvings are; her parity (lactation at entry + calvings)
 */
export function cyclesOn(
  animal: AnimalRecord,
  today: Day,
): { cycles: readonly Cycle[]; calvings: readonly Calving[]; losses: readonly Day[]; parity: number } {
  let parity = animal.record.lactation ?? 0
  let cycle: OpenCycle = {
    openedBy: undefined,
    opened: undefined,
    parity,
    heats: [],
    services: [],
    checks: [],
  }
  const cycles: OpenCycle[] = [cycle]
  const calvings: Mutable<Calving>[] = []
  const losses: Day[] = []
  for (const happening of animal.happenings) {
    if (!isSeen(happening, today)) continue
    const { fact, day } = happening
    switch (fact.kind) {
      case 'heat':
      case 'service':
        joinHeat(cycle, fact, happening, parity, day < today)
        break
      case 'check':
        cycle.checks.push({ day, fact, maiden: parity === 0 })
        break
      case 'calving': {
        const last = calvings[calvings.length - 1]
        if (last !== undefined && day - last.lastDay <= 1) {
          last.lastDay = day
          last.facts = [...last.facts, fact]
          break
        }
        calvings.push({ day, lastDay: day, facts: [fact] })
        parity += 1
        cycle = { openedBy: 'calving', opened: day, parity, heats: [], services: [], checks: [] }
        cycles.push(cycle)
        break
      }
      case 'loss':
        if (cycle.openedBy === 'loss' && cycle.opened !== undefined && day - cycle.opened <= 1) break
        losses.push(day)
        cycle = { openedBy: 'loss', opened: day, parity, heats: [], services: [], checks: [] }
        cycles.push(cycle)
        break
      default:
    }
  }
  return { cycles, calvings, losses, parity }
}

function joinHeat(
  cycle: OpenCycle,
  fact: HeatFact | ServiceFact,
  { day, minute }: Happening,
  parity: number,
  counts: boolean,
): void {
  const sure = fact.kind === 'service' || fact.certainty === 'sure'
  const last = cycle.heats[cycle.heats.length - 1]
  let heat = last
  if (heat === undefined || day - heat.lastDay > 1) {
    heat = {
      day,
      minute,
      time: fact.time,
      how: fact.kind === 'heat' ? fact.how : undefined,
      sure,
      sureOn: sure ? day : undefined,
      service: undefined,
      lastDay: day,
    }
    cycle.heats.push(heat)
  } else {
    heat.lastDay = day
    // Rubbed paint goes before standing heat: the hours run from what is sure. What goes on for longer than a heat lasts
    // tells of one itself: a suspicion, or a service. Before that a service belongs to the heat that put her on the list.
    if (!heat.sure && (day - heat.day > 1 || (sure && fact.kind === 'heat')))
      Object.assign(heat, { day, minute, time: fact.time, how: fact.kind === 'heat' ? fact.how : undefined })
    heat.sure ||= sure
    if (sure) heat.sureOn ??= day
  }
  if (fact.kind !== 'service' || !counts) return
  if (heat.service !== undefined) cycle.services.pop()
  heat.service = joinService(heat.service, fact, day, parity)
  cycle.services.push(heat.service)
}

function joinService(before: Service | undefined, fact: ServiceFact, day: Day, parity: number): Service {
  const ai = fact.natural !== true
  const facts = before === undefined ? [fact] : [...before.facts, fact]
  const names = before?.ai && !ai ? before : { sire: fact.sire, straw: ai ? fact.straw : undefined }
  return {
    day,
    ai: ai || before?.ai === true,
    sire: names.sire,
    straw: names.straw,
    facts,
    maiden: parity === 0,
    parity,
  }
}

export type IntervalClass =
  | 'short-irregular'
  | 'short-regular'
  | 'long-irregular'
  | 'long-regular'
  | 'extended'

/**
 * Class of the days between two services.
 * Source: Remnant 2019, Measuring dairy herd heat detection (University of Nottingham).
 *
 * @param days 2 or more
 * @example intervalClass(24) // 'short-regular'
 */
export function intervalClass(days: number): IntervalClass {
  if (days <= 17) return 'short-irregular'
  if (days <= 24) return 'short-regular'
  if (days <= 35) return 'long-irregular'
  if (days <= 48) return 'long-regular'
  return 'extended'
}

/** A hard calving: ease 4 or 5, twins or more, or a dead calf. */
export function hardCalving(calving: Calving): boolean {
  const calves = calving.facts.reduce((sum, fact) => sum + (fact.calves ?? 1), 0)
  return calves >= 2 || calving.facts.some((fact) => (fact.ease ?? 1) >= 4 || (fact.dead ?? 0) > 0)
}
