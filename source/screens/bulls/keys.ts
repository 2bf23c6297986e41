/** Keys of the bulls besides moving about, help and leaving. */
import { openTurnOut } from '../../morning/places/turn-out.ts'
import { type Binding, plain } from '../binding.ts'
import { numberKeys, orHerPage } from '../number-keys.ts'

export const bullsKeys: readonly Binding[] = [
  orHerPage(
    plain(
      'his-page',
      ['enter'],
      { do: 'here', on: 'bulls', act: { is: 'open' } },
      { group: 'move', foot: 1 },
    ),
  ),
  {
    name: 'go-turn-out',
    keys: ['m'],
    does: (desk) => ({ do: 'open', place: openTurnOut(desk) }),
    group: 'move',
    foot: 2,
  },
  plain('back', ['esc'], { do: 'back' }, { group: 'move', foot: 3 }),
  ...numberKeys,
]
