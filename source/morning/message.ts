/** What is said in one line after something was done, or could not be: data, the words come on the screen. */
import type { NewFact } from '../breeding/facts.ts'
import type { NotOnList } from '../breeding/not-on-list.ts'
import type { Section } from '../breeding/sections.ts'

export interface Message {
  /** `done`: it was recorded. `why`: it was not, and why. `care`: a danger goes with it. */
  readonly tone: 'done' | 'why' | 'care'
  readonly code: string
  readonly values?: Readonly<Record<string, string | number>>
  /** The facts it speaks of. */
  readonly facts?: readonly NewFact[]
  /** Section where the animal of the facts stands now, where that is another than before. */
  readonly stands?: Section
  /** Why the animal whose heat was recorded has no row, where she has none. */
  readonly notOnList?: NotOnList
}

export const because = (code: string, values?: Message['values']): Message => ({
  tone: 'why',
  code,
  ...(values === undefined ? {} : { values }),
})
