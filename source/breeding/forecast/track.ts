/**
 * The weights of one animal's possible seasons. Those that have taken the same straws since today and may take more run
 * on one track; those that may take no more share a track of their own.
 */
import type { DaysToHeat } from '../chances/cycle.ts'
import type { StrawKind } from '../facts.ts'

/** Straws taken since today, by kind. */
export type StrawCount = Readonly<Record<StrawKind, number>>

/** One more straw: where those that take it go on, and how much weight has done so. */
export interface Step {
  readonly taken: StrawCount
  readonly to: Track
  weight: number
}

export interface Track {
  /** Undefined on the track of those that may take no more. */
  readonly taken: StrawCount | undefined
  /** AI services of the season so far, those before today included. */
  readonly used: number
  readonly steps: Partial<Record<StrawKind, Step>>
  /** Weight by the day of the next heat; the first entry is the first day of the loop. */
  readonly heats: number[]
  /** Weight of a next heat after the last day of the loop. */
  later: number
  /** Weight by the day of conception, as conceived: losses are not taken off. */
  readonly conceived: number[]
  /** Weight in calf now: losses are taken off. */
  inCalf: number
}

/** An empty track for so many days. */
export const emptyTrack = (taken: StrawCount | undefined, used: number, days: number): Track => ({
  taken,
  used,
  steps: {},
  heats: new Array<number>(days).fill(0),
  later: 0,
  conceived: new Array<number>(days).fill(0),
  inCalf: 0,
})

/** Lays a weight over the days of the next heat, counted from entry `from` of the track. */
export function spread(track: Track, from: number, weight: number, days: DaysToHeat): void {
  const { heats } = track
  const last = Math.min(days.length, heats.length - from) - 1
  for (let d = 0; d <= last; d += 1)
    heats[from + d] = (heats[from + d] as number) + weight * (days[d] as number)
  let later = 0
  for (let d = last + 1; d < days.length; d += 1) later += days[d] as number
  track.later += weight * later
}

/** Weight of a track from entry `from` on. */
export function weightOf(track: Track, from: number): number {
  let weight = track.later + track.inCalf
  for (let i = from; i < track.heats.length; i += 1) weight += track.heats[i] as number
  return weight
}

/** Multiplies all that is still to come from entry `from` on, and all pregnancies, by a factor. */
export function scale(track: Track, from: number, factor: number): void {
  for (let i = from; i < track.heats.length; i += 1) track.heats[i] = (track.heats[i] as number) * factor
  for (let i = 0; i < track.conceived.length; i += 1)
    track.conceived[i] = (track.conceived[i] as number) * factor
  track.later *= factor
  track.inCalf *= factor
}

/** Lays several tracks together into one that takes no more straws. */
export function together(tracks: readonly Track[]): Track {
  const days = tracks[0]?.heats.length ?? 0
  const all = emptyTrack(
    undefined,
    tracks.reduce((most, { used }) => Math.max(most, used), 0),
    days,
  )
  for (const track of tracks) {
    for (let i = 0; i < days; i += 1) {
      all.heats[i] = (all.heats[i] as number) + (track.heats[i] as number)
      all.conceived[i] = (all.conceived[i] as number) + (track.conceived[i] as number)
    }
    all.later += track.later
    all.inCalf += track.inCalf
  }
  return all
}
