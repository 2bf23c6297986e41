/** How often bands held, and how far chances were off. */

/** One count ahead: its band, and what came. */
interface Seen {
  readonly low: number
  readonly middle: number
  readonly high: number
  readonly came: number
}

export class Bands {
  readonly #seen: Seen[] = []

  add(seen: Seen): void {
    this.#seen.push(seen)
  }

  /** Percent that lay within, below and above; mean of what came less the middle; mean width. */
  get summary() {
    const share = (test: (seen: Seen) => boolean): number =>
      (100 * this.#seen.filter(test).length) / this.#seen.length
    const mean = (value: (seen: Seen) => number): number =>
      this.#seen.reduce((sum, seen) => sum + value(seen), 0) / this.#seen.length
    return {
      within: share(({ low, high, came }) => came >= low && came <= high),
      below: share(({ low, came }) => came < low),
      above: share(({ high, came }) => came > high),
      bias: mean(({ middle, came }) => came - middle),
      width: mean(({ low, high }) => high - low),
    }
  }
}

/** Mean squared distance of chances from what came: Brier 1950, Verification of forecasts expressed in terms of probability. */
export class Brier {
  #sum = 0
  #count = 0

  add(chance: number, came: boolean): void {
    this.#sum += (chance - (came ? 1 : 0)) ** 2
    this.#count += 1
  }

  get score(): number {
    return this.#sum / this.#count
  }

  get count(): number {
    return this.#count
  }
}
