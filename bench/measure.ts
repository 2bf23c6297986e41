/** What every measurement is made with: medians of interleaved runs, so that a busy machine troubles both sides alike. */

/** One line of the table. */
export interface Finding {
  readonly what: string
  readonly value: string
  /** What it is measured against, and what that took. */
  readonly against?: string
  /** How many times as much it takes. */
  readonly ratio?: number
  /** The ratio that it should not pass. */
  readonly bar?: number
  /** Why it was not measured. */
  readonly skipped?: string
}

/** The middle of some numbers, at least one. */
export function median(numbers: readonly number[]): number {
  const sorted = numbers.toSorted((a, b) => a - b)
  const middle = sorted.length >> 1
  const upper = sorted[middle] ?? Number.NaN
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? Number.NaN) + upper) / 2
}

/** Milliseconds that something takes. */
export async function time(run: () => unknown): Promise<number> {
  const start = performance.now()
  await run()
  return performance.now() - start
}

/**
 * Runs two things in turn and takes the median of each.
 *
 * @param rounds how often each is measured
 * @param warmUps how often each runs before, unmeasured
 * @param measure returns milliseconds; each side has its own
 */
export async function inTurn(
  rounds: number,
  warmUps: number,
  one: () => Promise<number>,
  other: () => Promise<number>,
): Promise<{ one: number; other: number; ratio: number }> {
  const ones: number[] = []
  const others: number[] = []
  for (let round = -warmUps; round < rounds; round += 1) {
    const [a, b] = [await one(), await other()]
    if (round < 0) continue
    ones.push(a)
    others.push(b)
  }
  const [a, b] = [median(ones), median(others)]
  return { one: a, other: b, ratio: a / b }
}

export const ms = (milliseconds: number): string => `${milliseconds.toFixed(milliseconds < 10 ? 2 : 1)} ms`
