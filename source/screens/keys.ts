/**
 * The one table of keys. The handler finds in it what a key does, the foot of the screen which keys work now, the
 * help what all of them do; tests press keys by their meaning. Whether a key works now is asked of morning/may.ts.
 */
import type { Action } from '../morning/action.ts'
import { type Desk, placeOf } from '../morning/desk.ts'
import { whyNot } from '../morning/may.ts'
import { because, type Message } from '../morning/message.ts'
import type { Place } from '../morning/place.ts'
import { type Binding, DIGITS, type KeyGroup, LETTERS, noView, type View } from './binding.ts'
import type { KeyName } from './input/split.ts'
import { always } from './keys/moving.ts'
import { screens } from './keys/screens.ts'
import { slips } from './keys/slips.ts'
import { keyNames, keyWords } from './words/keys.ts'

export type { Binding, KeyGroup, View } from './binding.ts'

/** The bindings that keys go to now. What lies on top takes them all but leaving. */
export const bindingsNow = (desk: Desk): readonly Binding[] => [
  ...(desk.slip === undefined ? screens[placeOf(desk).at] : slips[desk.slip.is]),
  ...always,
]

const isPrinted = (key: KeyName): boolean => key === 'space' || [...key].length === 1

/** The binding of a key, or undefined where the key means nothing here. */
export const bindingOf = (desk: Desk, key: KeyName): Binding | undefined => {
  const now = bindingsNow(desk)
  return (
    now.find((binding) => binding.keys.includes(key)) ??
    (isPrinted(key) ? now.find((binding) => binding.keys.includes(LETTERS)) : undefined)
  )
}

/** Why a binding cannot be used now; undefined where it can. */
export const whyDisabled = (desk: Desk, binding: Binding, view: View): Message | undefined =>
  whyNot(desk, binding.does(desk, binding.keys[0] ?? '', view))

/** What a key means now: an action, or why it does nothing. */
export function meaningOf(desk: Desk, key: KeyName, view: View): Action | Message {
  const binding = bindingOf(desk, key)
  return binding === undefined
    ? because('not-a-key', { key: keyNames[key] ?? key })
    : binding.does(desk, key, view)
}

/** A binding as it is shown: `Space looked, none`. */
export const shown = (desk: Desk, binding: Binding, view: View = noView): { keys: string; label: string } => {
  const [first = ''] = binding.keys
  return {
    keys: binding.keys.length === DIGITS.length ? (keyNames.digits ?? '') : (keyNames[first] ?? first),
    label: binding.label?.(desk, view) ?? keyWords[binding.name].label,
  }
}

/** Bindings for the foot of the screen, the most useful first: those that work now. */
export const footBindings = (desk: Desk, view: View): readonly Binding[] =>
  bindingsNow(desk)
    .filter(
      (binding) =>
        binding.foot !== undefined &&
        binding.label?.(desk, view) !== '' &&
        whyDisabled(desk, binding, view) === undefined,
    )
    .sort((a, b) => (a.foot ?? 0) - (b.foot ?? 0))

/** Every binding of a screen by the part of the help it stands in. */
export const helpBindings = (at: Place['at']): ReadonlyMap<KeyGroup, readonly Binding[]> =>
  Map.groupBy(
    [...screens[at], ...always].filter((binding) => binding.group !== undefined),
    (binding) => binding.group as KeyGroup,
  )
