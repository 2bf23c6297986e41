/** Keys of the first screen: what each means where the user is. */
import type { Welcome, WelcomeAction } from '../../morning/welcome.ts'
import type { KeyName } from '../input/split.ts'

const moves: Readonly<Record<string, number>> = { up: -1, down: 1, pageup: -10, pagedown: 10 }

/**
 * What a key means; `quit` leaves, undefined is no key here.
 *
 * @param most furthest that the report can be moved, in lines
 */
export function welcomeMeaning(
  welcome: Welcome,
  key: KeyName,
  most: number,
): WelcomeAction | 'quit' | 'interrupt' | undefined {
  if (key === 'ctrl+c') return 'interrupt'
  if (key === 'enter') return { do: 'choose' }
  if (key === 'esc') return welcome.form === undefined ? 'quit' : { do: 'cancel' }
  const move = moves[key]
  if (welcome.form === undefined || welcome.report !== undefined) {
    if (move !== undefined) return { do: 'move', by: move, most }
    return key === 'q' && welcome.report === undefined ? 'quit' : undefined
  }
  if (key === 'tab' || key === 'down') return { do: 'field', by: 1 }
  if (key === 'shift+tab' || key === 'up') return { do: 'field', by: -1 }
  if (key === 'left' || key === 'right') return { do: 'turn', by: key === 'right' ? 1 : -1 }
  if (key === 'backspace' || key === 'delete') return { do: 'rub' }
  if (key === 'space') return { do: 'put', text: ' ' }
  return [...key].length === 1 ? { do: 'put', text: key } : undefined
}
