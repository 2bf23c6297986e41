import type { Outcome } from '../breeding/problem.ts'
import { Refusal } from './herd-file.ts'

/** The result of work that may be refused, as data. A failure of the program itself goes on as an error. */
export async function asOutcome<T>(work: () => Promise<T>): Promise<Outcome<T>> {
  try {
    return { ok: true, value: await work() }
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, problems: error.problems }
    throw error
  }
}
