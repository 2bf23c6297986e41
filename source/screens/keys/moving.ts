/** Keys that move about: within a page, to an animal, to another screen, out of the program. */
import type { Action } from '../../morning/action.ts'
import type { Desk } from '../../morning/desk.ts'
import { moveToOpen, opensKeptResults } from '../../morning/may.ts'
import { type Binding, DIGITS, plain } from '../binding.ts'
import { keyWords } from '../words/keys.ts'

export const moving: readonly Binding[] = [
  plain('up', ['up'], { do: 'move', by: -1 }, { group: 'move' }),
  plain('down', ['down'], { do: 'move', by: 1 }, { group: 'move' }),
  {
    name: 'page-up',
    keys: ['pageup'],
    does: (_desk, _key, view) => ({ do: 'move', by: 1 - view.rows }),
    group: 'move',
  },
  {
    name: 'page-down',
    keys: ['pagedown'],
    does: (_desk, _key, view) => ({ do: 'move', by: view.rows - 1 }),
    group: 'move',
  },
  plain('first', ['home'], { do: 'move', by: Number.NEGATIVE_INFINITY }, { group: 'move' }),
  plain('last', ['end'], { do: 'move', by: Number.POSITIVE_INFINITY }, { group: 'move' }),
]

/** Moving about on a page whose pointer the screen knows the end of. */
export const movingWithin: readonly Binding[] = moving.map(
  (binding): Binding => ({
    ...binding,
    does: (desk, key, view) => ({ ...binding.does(desk, key, view), most: view.furthest }) as Action,
  }),
)

/** Enter on the move to the bull weeks, or on results to be settled, opens those. */
const openLabel = (desk: Desk): string | undefined => {
  if (opensKeptResults(desk)) return keyWords['go-scanning'].label
  return moveToOpen(desk) === undefined ? undefined : keyWords['go-turn-out'].label
}

export const finding: readonly Binding[] = [
  { name: 'number', keys: DIGITS, does: (_desk, digit) => ({ do: 'digit', digit }), group: 'move' },
  plain('rub', ['backspace', 'delete'], { do: 'rub' }),
  plain('open-animal', ['enter'], { do: 'open-animal' }, { group: 'move', foot: 4, label: openLabel }),
  plain('search', ['/'], { do: 'slip', slip: 'search' }, { group: 'move' }),
]

/** To another screen. */
export const go = plain('go', ['g'], { do: 'slip', slip: 'go' }, { group: 'move', foot: 8 })

export const anywhere: readonly Binding[] = [
  plain('back', ['esc'], { do: 'back' }, { group: 'move' }),
  plain('help', ['?'], { do: 'open', place: { at: 'help', top: 0 } }, { group: 'program', foot: 6 }),
  plain(
    'whole-notice',
    ['!'],
    { do: 'slip', slip: 'notice' },
    { group: 'program', foot: 0, label: (_desk, view) => (view.cut === true ? undefined : '') },
  ),
  plain('copy', ['S'], { do: 'slip', slip: 'copy' }, { group: 'program' }),
  plain('over-older', ['A'], { do: 'slip', slip: 'older' }, { group: 'program', foot: 0 }),
  plain('quit', ['q'], { do: 'leave', how: 'quit' }, { group: 'program', foot: 10 }),
]

/** Work whatever lies on top. */
export const always: readonly Binding[] = [
  plain('interrupt', ['ctrl+c'], { do: 'leave', how: 'interrupt' }, { group: 'program' }),
  plain('suspend', ['ctrl+z'], { do: 'leave', how: 'suspend' }, { group: 'program' }),
]
