import type { Fact } from '../breeding/facts.ts'
import type { Problem } from '../breeding/problem.ts'
import type { Header, Lines } from './format.ts'

/** A herd as one revision of its file has it. Never changed: a save makes a new one. */
export interface HerdFile extends Header {
  /** Format of the bytes on disk; older than today's where the next save will migrate them. */
  readonly format: number
  readonly facts: readonly Fact[]
  /** The same facts as lines of today's format. */
  readonly lines: Lines
}

/**
 * What the bytes of a file turned out to be. `sound`: the sum is right, this program wrote it. `edited`: valid,
 * but changed by something else; to be looked at, not written. `fault`: not to be used.
 */
export type Reading =
  | { readonly state: 'sound'; readonly herd: HerdFile }
  | { readonly state: 'edited'; readonly herd: HerdFile }
  | { readonly state: 'fault'; readonly problems: readonly Problem[] }

/** A problem on its way out of an operation; becomes data again where the operation ends. */
export class Refusal extends Error {
  readonly problems: readonly Problem[]
  constructor(...problems: Problem[]) {
    super(problems.map((problem) => `${problem.code} ${problem.path}`).join(', '))
    this.name = 'Refusal'
    this.problems = problems
  }
}
