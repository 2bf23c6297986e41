/**
 * The days of one animal's forecast: what a day's heats, services and losses do to the weights.
 */
import { type DaysToHeat, daysToHeat, servedAfter } from '../chances/cycle.ts'
import { survivalByAge } from '../chances/losses.ts'
import { type Rates, serviceClass } from '../chances/rates.ts'
import type { StrawKind } from '../facts.ts'
import { type Start, startOf } from './anchor.ts'
import { type AnimalOutlook, type SeasonDays, type ServedBy, strawOn, tooSoon } from './outlook.ts'
import { emptyTrack, type Step, type StrawCount, spread, type Track } from './track.ts'

/** What the days of the loop work on. */
export interface Course {
  readonly animal: AnimalOutlook
  readonly season: SeasonDays
  readonly rates: Rates
  readonly start: Start
  readonly afterHeat: DaysToHeat
  readonly afterService: DaysToHeat
  /** The same to the next heat that is served, by the days after a service that are too soon; made when needed. */
  readonly afterAi: DaysToHeat[]
  /** Day of the first entry of the tracks. */
  readonly from: number
  /** The next day of the loop. */
  day: number
  tracks: Track[]
  /** Conceptions of the loop by what the animal was served with, as the tracks count days; losses not taken off. */
  readonly conceived: Partial<Record<ServedBy, number[]>>
  readonly straws: Record<StrawKind, number[]>
  services: number
  /** The straws have been counted: AI is over. */
  aiEnded: boolean
  /** In calf on each morning from today on. */
  readonly inCalf: number[]
}

export const strawKinds: readonly StrawKind[] = ['conventional', 'sexed', 'beef']

/** Pregnancies lost on a day; the animal comes again a cycle later. */
export function lose({ from, rates, afterHeat }: Course, track: Track, day: number): void {
  if (track.inCalf === 0) return
  const survival = survivalByAge(rates.losses)
  const youngest = day - 1 - (rates.losses[0]?.from ?? 0)
  let lost = 0
  for (let conceived = Math.max(from, day - survival.length + 1); conceived <= youngest; conceived += 1) {
    const age = day - conceived
    const share = track.conceived[conceived - from] as number
    lost += share * ((survival[age - 1] as number) - (survival[age] as number))
  }
  if (lost === 0) return
  track.inCalf -= lost
  spread(track, day - from, lost, afterHeat)
}

/** An empty result: what it would have found did not happen. What was lost before it did, and comes again. */
export function ruleOut({ from, rates, tracks, conceived }: Course, to: number, day: number): void {
  const survival = survivalByAge(rates.losses)
  const alive = (on: number): number => survival[Math.min(day - on, survival.length - 1)] as number
  for (let on = from; on <= to; on += 1) {
    for (const track of tracks) {
      const share = track.conceived[on - from] as number
      track.inCalf = Math.max(0, track.inCalf - share * alive(on))
      track.conceived[on - from] = 0
    }
    if (conceived.natural) conceived.natural[on - from] = 0
  }
}

/** Days to the next heat that is served. */
function comesAgain(course: Course, day: number, by: ServedBy): DaysToHeat {
  const { season, afterService, afterHeat, afterAi } = course
  const until = by === 'natural' ? 0 : tooSoon(season, day)
  afterAi[until] ??= servedAfter(afterService, afterHeat, 0, until)
  return afterAi[until]
}

/** A service: some conceive, the others come again after it. */
function serve(course: Course, track: Track, day: number, weight: number, by: ServedBy): void {
  const { animal, rates, from } = course
  const share = weight * rates.conception[serviceClass(animal.maiden, by)]
  spread(track, day - from, weight - share, comesAgain(course, day, by))
  const byDay = course.conceived[by] ?? new Array<number>(track.conceived.length).fill(0)
  course.conceived[by] = byDay
  byDay[day - from] = (byDay[day - from] as number) + share
  track.conceived[day - from] = (track.conceived[day - from] as number) + share
  track.inCalf += share
}

/** The step of those that take one more straw; made when it is first needed. */
function stepOf({ tracks, season }: Course, track: Track, taken: StrawCount, straw: StrawKind): Step {
  const found = track.steps[straw]
  if (found) return found
  const more = { ...taken, [straw]: taken[straw] + 1 }
  const used = track.used + 1
  const last = used >= season.chances
  let to = tracks.find((other) =>
    last ? other.taken === undefined : strawKinds.every((kind) => other.taken?.[kind] === more[kind]),
  )
  if (to === undefined) {
    to = emptyTrack(last ? undefined : more, used, track.heats.length)
    tracks.push(to)
  }
  const step: Step = { taken: more, to, weight: 0 }
  track.steps[straw] = step
  return step
}

/**
 * Whether a heat on a day that is over would have been seen, and have changed what is known of her: one too soon after
 * her service changes nothing, seen or not.
 */
function tellsSomething({ anchor, unwatched }: AnimalOutlook, season: SeasonDays, day: number): boolean {
  if (day > season.lastBullDay || unwatched.has(day)) return false
  return anchor.kind !== 'served' || day >= anchor.day + season.returnsFrom
}

/** The heats of a day: unseen ones pass, the others are served by AI or, in his weeks, by the bull. */
export function heatsOf(course: Course, track: Track, day: number, bullFinds: number): void {
  const { animal, season, rates, from, start } = course
  let weight = track.heats[day - from] as number
  if (weight === 0) return
  track.heats[day - from] = 0
  const past = day < season.today
  const certain = start.servedForCertain === true && day === start.day
  if (past && tellsSomething(animal, season, day)) weight *= 1 - rates.heatSeen
  const mayBeServed = day >= animal.earliestDay
  let served = 0
  if (day > season.lastAiDay) {
    served = mayBeServed && day <= season.lastBullDay ? weight * bullFinds : 0
    if (served > 0) serve(course, track, day, served, 'natural')
  } else if (!past && track.taken !== undefined && (certain || (mayBeServed && !animal.leftToBull))) {
    served = certain ? weight : weight * rates.heatSeen
    const straw = strawOn(animal, track.used, day)
    const step = stepOf(course, track, track.taken, straw)
    step.weight += served
    serve(course, step.to, day, served, straw)
  }
  spread(track, day - from, weight - served, course.afterHeat)
}

/** The course of an animal before its first day. */
export function begin(animal: AnimalOutlook, season: SeasonDays, rates: Rates): Course {
  const start = startOf(animal, season, rates)
  const { conceived } = start
  const from = Math.min(start.day, start.heatsFrom, conceived?.day ?? start.day)
  const last = Math.max(season.lastBullDay, season.today - 1, from, conceived?.day ?? from)
  const taken = { conventional: 0, sexed: 0, beef: 0 }
  const mayTakeMore = animal.chancesUsed < season.chances
  const track = emptyTrack(mayTakeMore ? taken : undefined, animal.chancesUsed, last + 1 - from)
  const course: Course = {
    animal,
    season,
    rates,
    start,
    afterHeat: daysToHeat('heat', animal.cycleMean, rates),
    afterService: daysToHeat('service', animal.cycleMean, rates),
    afterAi: [],
    from,
    day: Math.min(start.day, season.today),
    tracks: [track],
    conceived: {},
    straws: { conventional: [], sexed: [], beef: [] },
    services: 0,
    aiEnded: false,
    inCalf: [],
  }
  if (conceived) {
    track.conceived[conceived.day - from] = conceived.share
    track.inCalf = conceived.now
  }
  spread(track, start.heatsFrom - from, 1 - track.inCalf, start.heats)
  return course
}
