/** Where an action leads. */
import type { NewFact } from '../breeding/facts.ts'
import type { Desk } from './desk.ts'
import { because, type Message } from './message.ts'

/** `quit-unsaved`: the user has been told what is not saved. */
export type Leave = 'quit' | 'quit-unsaved' | 'interrupt' | 'suspend'

/** What the herd is asked to do besides recording. */
export type Ask = { readonly do: 'over-older' } | { readonly do: 'copy'; readonly path: string }

/** Where an action leads: the desk after it, facts to record as one action, or out of the screen. */
export interface Step {
  readonly desk: Desk
  readonly record?: readonly NewFact[]
  readonly leave?: Leave
  readonly ask?: Ask
}

/** Records facts as one action and says so. */
export function recording(
  desk: Desk,
  facts: readonly NewFact[],
  said: Message = { tone: 'done', code: 'recorded', facts },
): Step {
  return { desk: { ...desk, said, typed: '', slip: undefined }, record: facts }
}

/** Asks before facts are recorded; `said` is said once they are. */
export const asking = (desk: Desk, code: string, facts: readonly NewFact[], said: Message): Step => ({
  desk: { ...desk, said: undefined, slip: { is: 'question', code, facts, said } },
})

/** Nothing is done, and why. */
export const refused = (desk: Desk, code: string, values?: Message['values']): Step => ({
  desk: { ...desk, said: because(code, values) },
})
