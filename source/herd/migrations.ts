import { currentFormat } from './format.ts'

/**
 * Brings the facts of one format to the next. Pure: data in, data out, no clock and no file.
 * Each old format keeps a frozen sample file in the tests.
 */
export interface Migration {
  /** The format it reads; it gives the facts of `from + 1`. */
  readonly from: number
  readonly migrate: (facts: readonly unknown[]) => readonly unknown[]
}

/** Every step there is, oldest first. Format 1 is the first format, so there is none yet. */
export const migrations: readonly Migration[] = []

/**
 * The facts of an old format in today's.
 *
 * @param format the format they were written in, older than today's
 * @returns undefined where a step is missing, so that the format is unknown
 */
export function migrated(
  facts: readonly unknown[],
  format: number,
  steps = migrations,
): readonly unknown[] | undefined {
  let now = facts
  for (let from = format; from < currentFormat; from += 1) {
    const step = steps.find((each) => each.from === from)
    if (step === undefined) return undefined
    now = step.migrate(now)
  }
  return now
}
