import type { Fact } from '../breeding/facts.ts'
import type { Problem } from '../breeding/problem.ts'

/** What a screen shows of an open herd. Immutable: a change makes a new one. */
export interface HerdState {
  /** Facts on the disk, in order of recording. */
  readonly facts: readonly Fact[]
  readonly revision: number
  /** `read-only`: may be looked at only; `problems` says why. */
  readonly mode: 'writable' | 'read-only'
  /** `not-saved`: `unsaved` holds what was recorded and is not on the disk, `trouble` says why. */
  readonly saving: 'saved' | 'saving' | 'not-saved'
  /** Facts recorded and not on the disk yet, in order. */
  readonly unsaved: readonly Fact[]
  /** What stands in the way of saving, or is wrong with the file since it was opened. */
  readonly trouble: readonly Problem[]
  /** What was noticed on opening and saving: why it is read-only, a failed day copy, copies beside it. */
  readonly problems: readonly Problem[]
}
