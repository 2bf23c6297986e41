/**
 * The season ahead of one animal: exact, by one loop over the days from the last fact that fixes her cycle to the last
 * day with the bull. Before today a heat that would have been seen did not happen; from today on heats are served.
 */
import type { Rates } from '../chances/rates.ts'
import type { StrawKind } from '../facts.ts'
import { begin, type Course, heatsOf, lose, ruleOut, strawKinds } from './course.ts'
import type { AnimalOutlook, Conception, SeasonDays } from './outlook.ts'
import { type StrawCount, scale, type Track, together, weightOf } from './track.ts'

/** Chances of one animal; all 0 to 1. */
export interface AnimalForecast {
  /** In calf on a morning: entry i is the morning of today + i; the last one is the morning after the bull's last day. */
  readonly inCalf: readonly number[]
  /** Entry n of a kind is the chance that she takes n more straws of it. */
  readonly straws: Readonly<Record<StrawKind, readonly number[]>>
  /** Expected straws of all kinds from today on. */
  readonly services: number
  readonly conceptions: readonly Conception[]
}

/** What is left of the past becomes her state: it sums to 1. Where nothing is left, no heat is known to come. */
function settle(course: Course, day: number): void {
  const from = Math.max(0, day - course.from)
  const total = course.tracks.reduce((sum, track) => sum + weightOf(track, from), 0)
  if (total === 0) {
    for (const track of course.tracks) track.later = 1
    return
  }
  for (const track of course.tracks) scale(track, from, 1 / total)
  course.conceived.natural &&= course.conceived.natural.map((share) => share / total)
}

/** After the last day of AI no more straws are taken: they are counted, and one track is enough. */
export function endAi(course: Course, day: number): void {
  if (course.aiEnded) return
  course.aiEnded = true
  const count = (taken: StrawCount, weight: number): void => {
    for (const kind of strawKinds) {
      const chances = course.straws[kind]
      while (chances.length <= taken[kind]) chances.push(0)
      chances[taken[kind]] = (chances[taken[kind]] as number) + weight
      course.services += weight * taken[kind]
    }
  }
  const [first] = course.tracks
  if (first && first.taken === undefined) count({ conventional: 0, sexed: 0, beef: 0 }, 1)
  for (const track of course.tracks) {
    if (track.taken) count(track.taken, weightOf(track, Math.max(0, day - course.from)))
    for (const step of Object.values(track.steps))
      if (step.to.taken === undefined) count(step.taken, step.weight)
  }
  course.tracks = [together(course.tracks)]
}

/** The conception her anchor tells of, and those of the loop. */
function conceptionsOf({ animal, from, tracks, conceived, start }: Course): Conception[] {
  const conceptions: Conception[] = []
  if (start.conceived) {
    const share = (tracks[0] as Track).conceived[start.conceived.day - from] as number
    conceptions.push({ ...start.conceived, share })
  }
  for (const by of ['natural', ...strawKinds] as const) {
    const byDay = conceived[by] ?? []
    for (let i = 0; i < byDay.length; i += 1) {
      const share = byDay[i] as number
      if (share > 0) conceptions.push({ day: from + i, by, share, gestation: animal.gestation[by] })
    }
  }
  return conceptions
}

function morning({ tracks, inCalf }: Course): void {
  inCalf.push(tracks.reduce((sum, track) => sum + track.inCalf, 0))
}

/**
 * Runs the days of a course before a day.
 *
 * @param bullFinds chance that a bull finds her in heat, 0 to 1
 */
export function runTo(course: Course, before: number, bullFinds: number): void {
  const { start, season } = course
  const { emptyCheck } = course.animal
  const aiEnds = Math.max(season.today, season.lastAiDay + 1)
  for (; course.day < before; course.day += 1) {
    const { day } = course
    if (day === season.today) settle(course, day)
    if (day === aiEnds) endAi(course, day)
    if (day >= season.today) morning(course)
    if (day < start.day) continue
    for (const track of course.tracks) {
      lose(course, track, day)
      heatsOf(course, track, day, bullFinds)
    }
    if (day === emptyCheck?.on) ruleOut(course, emptyCheck.rulesOutTo, day)
  }
}

/** Runs a course to its end and reads it. */
export function finish(course: Course, bullFinds: number): AnimalForecast {
  const { today, lastBullDay } = course.season
  const end = Math.max(lastBullDay + 1, today)
  runTo(course, end, bullFinds)
  if (today > lastBullDay) settle(course, today)
  endAi(course, end)
  morning(course)
  const { inCalf, straws, services } = course
  return { inCalf, straws, services, conceptions: conceptionsOf(course) }
}

/**
 * The season ahead of one animal.
 *
 * @param animal what is known of her, @param season its days, @param rates the rates, taken as certain
 * @param bullFinds chance that a bull finds her in heat, 0 to 1; lower than `rates.bullFinds` where bulls are short
 * @returns her chances on every morning from today on, the straws she takes, her conceptions
 * @source our own loop; with two even rounds of submission s and conception p it gives 1-(1-s p)^2, as agriland.co.uk,
 *   High submission, conception rates needed for six-week in-calf rate
 * @example forecastAnimal(cow, season, defaultRates).inCalf.at(-1) // 0.83
 */
export const forecastAnimal = (
  animal: AnimalOutlook,
  season: SeasonDays,
  rates: Rates,
  bullFinds = rates.bullFinds,
): AnimalForecast => finish(begin(animal, season, rates), bullFinds)
