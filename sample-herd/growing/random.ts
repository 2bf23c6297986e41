/** Chance from a seed: the same seed gives the same herd on every machine. */

export interface Random {
  /** A share, 0 or more and below 1. */
  share(): number
  /** true so often: `chance(0.55)`. */
  chance(share: number): boolean
  /** A whole number between two, both included. */
  whole(from: number, to: number): number
  pick<T>(list: readonly T[]): T
  /** Bell-shaped about a mean: twelve even numbers summed, so that no system's logarithm has a say in it. */
  normal(mean: number, spread: number): number
  /** Letters and digits of an id. */
  id(): string
}

const letters = '0123456789abcdefghjkmnpqrstvwxyz'

/**
 * The generator known as mulberry32: 32 bits of state, good enough for an invented herd.
 *
 * @param seed a whole number
 */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0
  const share = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
  const whole = (from: number, to: number): number => from + Math.floor(share() * (to - from + 1))
  return {
    share,
    whole,
    chance: (wanted) => share() < wanted,
    pick: <T>(list: readonly T[]): T => list[whole(0, list.length - 1)] as T,
    normal: (mean, spread) => {
      let sum = -6
      for (let i = 0; i < 12; i += 1) sum += share()
      return mean + sum * spread
    },
    id: () => Array.from({ length: 12 }, () => letters[whole(0, 31)]).join(''),
  }
}
