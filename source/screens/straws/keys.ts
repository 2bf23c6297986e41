/** Keys of the straws besides moving about, help and leaving. */

import { type Desk, placeOf } from '../../morning/desk.ts'
import type { StrawsAct } from '../../morning/places/straws.ts'
import { type Binding, plain } from '../binding.ts'
import { numberKeys, orHerPage } from '../number-keys.ts'
import { strawsWords } from '../words/straws.ts'

const here = (act: StrawsAct) => ({ do: 'here', on: 'straws', act }) as const

/** Whether what is told of a line is the page. */
const isTold = (desk: Desk): boolean => {
  const place = placeOf(desk)
  return place.at === 'straws' && place.top !== undefined
}

export const strawsKeys: readonly Binding[] = [
  plain('delivered', ['d'], here({ is: 'record', form: 'delivery' }), { group: 'record', foot: 2 }),
  plain('counted', ['c'], here({ is: 'record', form: 'stock-take' }), { group: 'record', foot: 3 }),
  plain('spoiled', ['x'], here({ is: 'record', form: 'spoiled' }), { group: 'record', foot: 4 }),
  plain('nitrogen', ['n'], here({ is: 'record', form: 'nitrogen' }), { group: 'record', foot: 5 }),
  orHerPage(
    plain('whole', ['enter'], here({ is: 'whole' }), {
      group: 'move',
      foot: 1,
      label: (desk) => (isTold(desk) ? strawsWords.toList : undefined),
    }),
  ),
  plain('used-up', ['O'], here({ is: 'used-up' }), { group: 'move', foot: 8 }),
  ...numberKeys,
  {
    name: 'back',
    keys: ['esc'],
    does: (desk) => (isTold(desk) && desk.typed === '' ? here({ is: 'whole' }) : { do: 'back' }),
    group: 'move',
    foot: 5,
  },
]
