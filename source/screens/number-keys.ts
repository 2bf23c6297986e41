/** Typing a number goes to that animal from a screen that has no use of its own for digits. */
import type { Action } from '../morning/action.ts'
import { type Binding, DIGITS, plain } from './binding.ts'

export const numberKeys: readonly Binding[] = [
  { name: 'number-here', keys: DIGITS, does: (_desk, digit) => ({ do: 'digit', digit }), group: 'move' },
  plain('rub', ['backspace', 'delete'], { do: 'rub' }),
]

const herPage: Action = { do: 'open-animal' }

/** A binding of Enter that opens her page while a number is being typed. */
export const orHerPage = (binding: Binding): Binding => ({
  ...binding,
  does: (desk, key, view) => (desk.typed === '' ? binding.does(desk, key, view) : herPage),
})
