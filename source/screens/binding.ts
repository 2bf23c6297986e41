/** A binding: keys, what they do, where they stand in help and foot. Bindings are joined in keys.ts. */
import type { Action } from '../morning/action.ts'
import type { Desk } from '../morning/desk.ts'
import type { KeyName } from './input/split.ts'
import type { helpWords, KeyMeaning } from './words/keys.ts'

/** What a key needs to know of the screen: how many rows are in sight. */
export interface View {
  readonly rows: number
  /** Furthest that a page or slip can be moved: lines, or places of its pointer. */
  readonly furthest: number
  /** What was said is longer than its lines. */
  readonly cut?: boolean
}

/** A screen that nothing is known of. */
export const noView: View = { rows: 1, furthest: 0 }

/** Stands for every printed character. */
export const LETTERS: KeyName = 'letters'
/** The digits, in one binding. */
export const DIGITS: readonly KeyName[] = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9']

export type KeyGroup = keyof typeof helpWords.groups

export interface Binding {
  readonly name: KeyMeaning
  readonly keys: readonly KeyName[]
  readonly does: (desk: Desk, key: KeyName, view: View) => Action
  /** Part of the help it stands in; absent: no need to explain. */
  readonly group?: KeyGroup
  /** Place in the foot of the screen, the lowest first; absent: not there. */
  readonly foot?: number
  /** Other words than the usual label, where it depends on what is shown. */
  readonly label?: (desk: Desk, view: View) => string | undefined
}

/** A binding that always asks for the same action. */
export const plain = (
  name: KeyMeaning,
  keys: readonly KeyName[],
  action: Action,
  more: Pick<Binding, 'group' | 'foot' | 'label'> = {},
): Binding => ({ name, keys, does: () => action, ...more })
