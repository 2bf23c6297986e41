/** Keys of setting up besides moving about, help and leaving. */
import type { SetUpAct } from '../../morning/places/set-up.ts'
import { type Binding, plain } from '../binding.ts'

const here = (act: SetUpAct) => ({ do: 'here', on: 'set-up', act }) as const

export const setUpKeys: readonly Binding[] = [
  plain('change-entry', ['enter', 'f'], here({ is: 'change' }), { group: 'record', foot: 1 }),
  plain('add-entry', ['a'], here({ is: 'add' }), { group: 'record', foot: 2 }),
  plain('next-year', ['y'], here({ is: 'next-year' }), { group: 'record', foot: 3 }),
  plain('strike-entry', ['x'], here({ is: 'strike' }), { group: 'record', foot: 5 }),
  plain('next-part', ['tab'], here({ is: 'part', by: 1 }), { group: 'move', foot: 4 }),
  plain('previous-part', ['shift+tab'], here({ is: 'part', by: -1 }), { group: 'move' }),
  plain('her-page', ['space'], here({ is: 'open-animal' }), { group: 'move' }),
  {
    name: 'number',
    keys: ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9'],
    does: (_desk, digit) => here({ is: 'digit', digit }),
    group: 'move',
  },
]
