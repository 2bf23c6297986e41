/** What the user can do, and what comes in from outside, as data. */
import type { Day } from '../breeding/day.ts'
import type { Fact } from '../breeding/facts.ts'
import type { FormName, Values } from './forms/form.ts'
import type { Message } from './message.ts'
import type { Now } from './now.ts'
import type { Place } from './place.ts'
import type { PlaceAct } from './places/acts.ts'
import type { Saving } from './saving.ts'
import type { Leave } from './step.ts'

export type Action =
  // Moving about.
  | { readonly do: 'move'; readonly by: number; readonly most?: number }
  | { readonly do: 'section'; readonly by: 1 | -1 }
  | { readonly do: 'open'; readonly place: Place }
  | { readonly do: 'open-animal' }
  | { readonly do: 'back' }
  /** What only the screen shown can do. */
  | ({ readonly do: 'here' } & PlaceAct)
  | { readonly do: 'unfold' }
  /** On her page: from her facts to what they come to, and back. */
  | { readonly do: 'more-about' }
  | { readonly do: 'day'; readonly day: Day }
  /** A past list as it was known then, or as it is known now. */
  | { readonly do: 'known-then' }
  // A number being typed.
  | { readonly do: 'digit'; readonly digit: string }
  | { readonly do: 'rub' }
  // Recording.
  | { readonly do: 'usual' }
  | { readonly do: 'fill-in' }
  | { readonly do: 'heat-now' }
  | { readonly do: 'look-all' }
  | { readonly do: 'form'; readonly form: FormName; readonly values?: Values; readonly at?: string }
  | { readonly do: 'void' }
  | { readonly do: 'change-fact' }
  | { readonly do: 'undo' }
  | { readonly do: 'redo' }
  // Slips: what lies on top.
  | { readonly do: 'slip'; readonly slip: SlipAsked }
  | { readonly do: 'put'; readonly text: string }
  | { readonly do: 'field'; readonly by: 1 | -1 }
  | { readonly do: 'turn'; readonly by: 1 | -1 }
  /** Moves a slip that is longer than its room. */
  | { readonly do: 'scroll'; readonly by: number; readonly most: number }
  | { readonly do: 'accept' }
  | { readonly do: 'cancel' }
  // The program itself.
  | { readonly do: 'leave'; readonly how: Leave }
  // From outside.
  | { readonly do: 'recorded'; readonly facts: readonly Fact[] }
  | { readonly do: 'changed-elsewhere'; readonly log: readonly Fact[] }
  /** The keys rest: what was ticked goes into the book, and the list is made anew. */
  | { readonly do: 'settle' }
  /** The same facts as they stand in the file: who and when, the ids of actions. */
  | { readonly do: 'same-facts'; readonly log: readonly Fact[] }
  | { readonly do: 'saving'; readonly saving: Saving }
  | { readonly do: 'say'; readonly message: Message }
  | { readonly do: 'clock'; readonly now: Now }
  /** Something that the screen shown needs is known now. */
  | { readonly do: 'reckoned' }

/** Slips that a key opens. */
export type SlipAsked = 'menu' | 'go' | 'day' | 'initials' | 'search' | 'copy' | 'older' | 'notice'
