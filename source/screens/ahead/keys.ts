/** Keys of this screen besides moving about, help and leaving. */
import type { AheadAct } from '../../morning/places/ahead.ts'
import { type Binding, plain } from '../binding.ts'
import type { KeyName } from '../input/split.ts'
import { numberKeys, orHerPage } from '../number-keys.ts'
import type { KeyMeaning } from '../words/keys.ts'

const here = (name: KeyMeaning, key: KeyName, act: AheadAct, foot: number): Binding =>
  plain(name, [key], { do: 'here', on: 'ahead', act }, { group: 'record', foot })

export const aheadKeys: readonly Binding[] = [
  orHerPage({ ...here('open-day', 'enter', { is: 'open-day' }, 1), group: 'move' }),
  here('plan-visit', 'v', { is: 'plan' }, 2),
  here('move-visit', 'm', { is: 'move-visit' }, 3),
  here('cancel-visit', 'x', { is: 'cancel-visit' }, 4),
  here('other-block', 'b', { is: 'block' }, 5),
  ...numberKeys,
]
