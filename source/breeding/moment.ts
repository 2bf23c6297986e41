/** Wall times on the farm: minutes of the day, milkings, and the order of facts within a day. */
import type { FactKind, TimeOfDay } from './facts.ts'

/** Minutes since midnight by the clock on the wall, 0-1439. */
export type Minute = number

export const standardMilkings: readonly string[] = ['05:30', '15:30']

/**
 * Minute of the day of a time written `HH:MM`.
 *
 * @example minuteOf('05:30') // 330
 */
export const minuteOf = (time: string): Minute => Number(time.slice(0, 2)) * 60 + Number(time.slice(3))

/**
 * The minute that a time of day counts from: a time from itself, `morning` from the first milking, `evening` from
 * the last, nothing from the first.
 *
 * @param milkings one or two wall times in order
 * @example momentOf('evening', ['05:30', '15:30']) // 930
 */
export function momentOf(time: TimeOfDay | undefined, milkings: readonly string[]): Minute {
  if (time === undefined || time === 'morning') return minuteOf(milkings[0] ?? '05:30')
  if (time === 'evening') return minuteOf(milkings[milkings.length - 1] ?? '05:30')
  return minuteOf(time)
}

/** Minutes of the times of a herd, each worked out once: a herd has few different ones. */
export class Clock {
  readonly #milkings: readonly string[]
  readonly #minutes = new Map<TimeOfDay | undefined, Minute>()

  /** @param milkings one or two wall times in order */
  constructor(milkings: readonly string[]) {
    this.#milkings = milkings
  }

  /** The minute that a time of day counts from, as momentOf. */
  minute(time: TimeOfDay | undefined): Minute {
    let minute = this.#minutes.get(time)
    if (minute === undefined) {
      minute = momentOf(time, this.#milkings)
      this.#minutes.set(time, minute)
    }
    return minute
  }
}

/**
 * Facts of one day at the same time run in this order, then in the order of recording: what opens a cycle first,
 * what is found next, what ends it last; a bar before it is lifted. So the same facts read from a file in another
 * order make the same state.
 */
const kindsInOrder: readonly FactKind[] = [
  'block',
  'calving',
  'heat',
  'service',
  'looked',
  'check',
  'examined',
  'loss',
  'score',
  'dry',
  'hold',
  'bar',
  'unbar',
  'to-bull',
  'with-bull',
  'from-bull',
  'note',
  'left',
]
const rankOf = new Map(kindsInOrder.map((kind, rank) => [kind, rank]))

/** Rank of a kind among facts at the same moment, 0-17. */
export const kindRank = (kind: FactKind): number => rankOf.get(kind) ?? kindsInOrder.length
