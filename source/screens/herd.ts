/** An open herd as the screen needs it, and what its state says. */
import type { Fact, NewFact } from '../breeding/facts.ts'
import type { Outcome, Problem } from '../breeding/problem.ts'
import type { Saving } from '../morning/saving.ts'

/** What the screen needs of an open herd: herd/store.ts has it. */
export interface Herd {
  readonly state: HerdState
  readonly subscribe: (listener: () => void) => () => void
  readonly record: (facts: readonly NewFact[], by?: string) => Promise<Outcome<readonly Fact[]>>
  /** Loads what the first tick needs, so that it is as quick as the others. */
  readonly prepare: () => Promise<void>
  readonly poll: () => Promise<void>
  /** Saves what is not saved; `overOlder` where the user has said so. */
  readonly retry: (overOlder?: boolean) => Promise<Outcome<null>>
  readonly saveCopy: (path: string) => Promise<Outcome<null>>
}
export interface HerdState {
  readonly facts: readonly Fact[]
  readonly unsaved: readonly Fact[]
  readonly mode: 'writable' | 'read-only'
  readonly saving: 'saved' | 'saving' | 'not-saved'
  readonly trouble: readonly Problem[]
  readonly problems: readonly Problem[]
}

/** Every fact recorded, saved or not. */
export const logOf = ({ facts, unsaved }: HerdState): readonly Fact[] =>
  unsaved.length === 0 ? facts : [...facts, ...unsaved]

/** Whether two logs hold the same facts in the same order, whoever made them objects. */
export const sameFacts = (a: readonly Fact[], b: readonly Fact[]): boolean =>
  a.length === b.length && a.every((fact, index) => fact === b[index] || fact.id === b[index]?.id)

/** What is shown of saving. @param sent facts recorded here that the herd does not know yet */
export function savingOf({ mode, saving, unsaved, trouble, problems }: HerdState, sent: number): Saving {
  if (mode === 'read-only') return { state: 'read-only', waiting: 0, problems }
  const waiting = unsaved.length + sent
  const state = saving === 'saved' && waiting > 0 ? 'saving' : saving
  return { state, waiting, problems: [...trouble, ...problems] }
}
