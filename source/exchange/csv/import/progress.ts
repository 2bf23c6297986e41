/** How far an import has got, for who waits before a screen. */

/** `reading` cells, `comparing` rows with the herd, `saving` facts. */
type ImportStep = 'reading' | 'comparing' | 'saving'

/** Told now and then. @param done, @param all rows or facts of the step */
export type Progress = (step: ImportStep, done: number, all: number) => void

/** Rows between two words. */
const EVERY = 1000

/**
 * Counts the rows of a step and tells it after each thousand, from the first thousand on.
 *
 * @param all rows of the step
 * @returns what is called for so many rows done
 * @example counted(progress, 'reading', 100_000)(1) // nothing is told yet
 */
export function counted(
  progress: Progress | undefined,
  step: ImportStep,
  all: number,
): (rows: number) => void {
  let done = 0
  return (rows) => {
    const before = Math.floor(done / EVERY)
    done += rows
    if (Math.floor(done / EVERY) > before) progress?.(step, done, all)
  }
}
