/**
 * One invented mating season, day by day and cow by cow: what happens, and what the farm writes down of it. Nothing here
 * comes from the program's own calculations: the numbers are the published ones that its rules name, drawn one by one.
 */
import type { Random } from '../../sample-herd/growing/random.ts'

/** How this season truly is. Shares, 0 to 1. */
export interface Truth {
  readonly heatSeen: number
  readonly cowConception: number
  readonly maidenConception: number
  readonly naturalConception: number
  /** Share of pregnant animals that show one heat, which is seen and served like any other. */
  readonly heatInCalf: number
}

/** What the farm writes down: by animal, on a season day. */
export type Written =
  | { readonly kind: 'calving' | 'heat'; readonly day: number }
  | { readonly kind: 'service'; readonly day: number; readonly straw: 'conventional' | 'beef' }
  | {
      readonly kind: 'check'
      readonly day: number
      readonly result: 'pregnant' | 'empty'
      readonly age: number
    }

/** One animal: what was written down, and what is true. */
export interface Life {
  readonly maiden: boolean
  readonly lactation: number
  readonly written: Written[]
  /** Pregnancies, the day each was lost or Infinity. */
  readonly pregnancies: { readonly conceived: number; readonly lost: number }[]
}

export const AI_END = 41
export const BULL_END = 62
/** The check that finds the empty ones. */
export const FINAL = 104
/** Scanning visits. */
const VISITS = [40, 75, FINAL]
/** Paint and watching begin. */
const WATCH_FROM = -35
const CHANCES = 2
const READY_AFTER = 42

/**
 * Cycle: mode 22 days, 21 in first-calvers (Remnant et al. 2015, J Dairy Sci 98:889-897), 70 % of true cycles within 18-24
 * days (Survey of reproductive performance in dairy herds: patterns of progesterone in milk, Animal Science).
 */
function within(random: Random, mean: number, spread: number, from: number, to: number): number {
  for (;;) {
    const day = Math.round(random.normal(mean, spread))
    if (day >= from && day <= to) return day
  }
}

/** One in twenty failed services comes late, its embryo having died: fitted to Nation et al. 2003, Aust Vet J 81:63-65. */
const LATE = 0.05

/** Losses: 10 % from day 30 to 60, 2 % to 90, 3 % later: JDS Communications 4:144-148, 2023; Lopez-Gatius et al. 2004. */
function daysToLoss(random: Random): number {
  if (random.chance(0.1)) return random.whole(31, 60)
  if (random.chance(0.02)) return random.whole(61, 90)
  return random.chance(0.03) ? random.whole(91, 280) : Number.POSITIVE_INFINITY
}

/** First heats: nine in ten cycle by about 40 days, one in ten is late (Irish and UK advice, common practice). */
const firstHeat = (random: Random): number =>
  random.chance(0.9) ? within(random, 38, 12, 14, 80) : within(random, 95, 20, 45, 150)

interface Cow extends Life {
  readonly calved: number
  next: number
  inCalf: { conceived: number; lost: number } | undefined
  showsOn: number
  chances: number
  lastService: number
}

const cycle = (random: Random, cow: Cow): number =>
  within(random, cow.maiden || cow.lactation === 1 ? 21 : 22, 3.2, 8, 40)

function conceives(random: Random, cow: Cow, truth: Truth, day: number): void {
  cow.inCalf = { conceived: day, lost: day + daysToLoss(random) }
  cow.pregnancies.push(cow.inCalf)
  cow.next = Number.POSITIVE_INFINITY
  cow.showsOn = random.chance(truth.heatInCalf) ? day + random.whole(12, 160) : Number.POSITIVE_INFINITY
}

function fails(random: Random, cow: Cow, day: number): void {
  cow.next = day + (random.chance(LATE) ? within(random, 34, 5, 22, 48) : cycle(random, cow))
}

/** A heat that is seen in the weeks of AI: written down, and served where she is ready and has a chance left. */
function servedByAi(random: Random, cow: Cow, truth: Truth, day: number): void {
  cow.written.push({ kind: 'heat', day })
  const tooSoon = day - cow.lastService < 18
  if (day < cow.calved + READY_AFTER || cow.chances >= CHANCES || tooSoon) return
  cow.chances += 1
  cow.lastService = day
  cow.written.push({ kind: 'service', day, straw: day > AI_END - 7 ? 'beef' : 'conventional' })
  if (cow.inCalf !== undefined) {
    // A second service ends about half of the pregnancies: NZ artificial-breeding series, part VIII.
    if (random.chance(0.54)) {
      cow.pregnancies[cow.pregnancies.length - 1] = { conceived: cow.inCalf.conceived, lost: day }
      cow.inCalf = undefined
      fails(random, cow, day)
    }
    return
  }
  const rate = cow.maiden ? truth.maidenConception : truth.cowConception
  if (random.chance(rate)) conceives(random, cow, truth, day)
  else fails(random, cow, day)
}

function heatOf(random: Random, cow: Cow, truth: Truth, day: number): void {
  if (cow.inCalf === undefined) cow.next = day + cycle(random, cow)
  if (day > AI_END) {
    const served = day <= BULL_END && day >= cow.calved + READY_AFTER && random.chance(0.9)
    if (!served || cow.inCalf !== undefined) return
    if (random.chance(truth.naturalConception)) conceives(random, cow, truth, day)
    else fails(random, cow, day)
  } else if (day >= WATCH_FROM && random.chance(truth.heatSeen)) {
    if (day >= 0) servedByAi(random, cow, truth, day)
    else cow.written.push({ kind: 'heat', day })
  }
}

/** Scans who was served long enough ago and was not found in calf, and at the end all; each scan is right. */
function scan(cow: Cow, day: number): void {
  const found = cow.written.findLast((one) => one.kind === 'check')
  const due = day === FINAL || (cow.lastService >= 0 && day - cow.lastService >= 30)
  if (!due || (day < FINAL && found?.kind === 'check' && found.result === 'pregnant')) return
  const age = cow.inCalf === undefined ? 0 : day - cow.inCalf.conceived
  const pregnant = age >= 30
  cow.written.push({ kind: 'check', day, result: pregnant ? 'pregnant' : 'empty', age: pregnant ? age : 0 })
}

function oneCow(random: Random, truth: Truth): Life {
  const maiden = random.chance(0.2)
  const calved = maiden ? Number.NEGATIVE_INFINITY : Math.round(random.normal(-58, 22))
  const cow: Cow = {
    maiden,
    lactation: maiden ? 0 : random.whole(1, 6),
    written: maiden ? [] : [{ kind: 'calving', day: calved }],
    pregnancies: [],
    calved,
    next: maiden ? WATCH_FROM - 40 + random.whole(0, 21) : calved + firstHeat(random),
    inCalf: undefined,
    showsOn: Number.POSITIVE_INFINITY,
    chances: 0,
    lastService: Number.NEGATIVE_INFINITY,
  }
  const first = Math.min(cow.next, maiden ? WATCH_FROM : calved)
  for (let day = first; day <= FINAL; day += 1) {
    if (cow.inCalf?.lost === day) {
      cow.inCalf = undefined
      cow.showsOn = Number.POSITIVE_INFINITY
      cow.next = day + cycle(random, cow)
    }
    if (cow.next === day || cow.showsOn === day) heatOf(random, cow, truth, day)
    if (VISITS.includes(day)) scan(cow, day)
  }
  return cow
}

/** The animals of a block through one season. */
export const oneSeason = (random: Random, animals: number, truth: Truth): Life[] =>
  Array.from({ length: animals }, () => oneCow(random, truth))

/** Whether she is in calf at the end of a day, of a pregnancy that began by another. */
export const inCalfOn = ({ pregnancies }: Life, day: number, conceivedBy = day): boolean =>
  pregnancies.some(({ conceived, lost }) => conceived <= conceivedBy && conceived <= day && lost > day)
