/** Keys of this screen besides moving about, help and leaving. */
import { placeOf } from '../../morning/desk.ts'
import type { TurnOutAct } from '../../morning/places/turn-out.ts'
import { type Binding, plain } from '../binding.ts'
import type { KeyName } from '../input/split.ts'
import { numberKeys, orHerPage } from '../number-keys.ts'
import { type KeyMeaning, keyWords } from '../words/keys.ts'

const here = (
  name: KeyMeaning,
  key: KeyName,
  act: TurnOutAct,
  more: Pick<Binding, 'group' | 'foot' | 'label'> = { group: 'record' },
): Binding => plain(name, [key], { do: 'here', on: 'turn-out', act }, { group: 'record', ...more })

/** Only the move in can be put off by a week of AI. */
const longerLabel: NonNullable<Binding['label']> = (desk) => {
  const place = placeOf(desk)
  return place.at === 'turn-out' && place.what === 'in' ? keyWords['ai-longer'].label : ''
}

export const turnOutKeys: readonly Binding[] = [
  orHerPage(here('record-move', 'enter', { is: 'record' }, { foot: 1 })),
  here('toggle-move', 'space', { is: 'toggle' }, { foot: 2 }),
  here('all-or-none', 'a', { is: 'all-or-none' }, { foot: 4 }),
  here('move-later', 'right', { is: 'day', by: 1 }, { foot: 3 }),
  here('move-earlier', 'left', { is: 'day', by: -1 }),
  plain('move-day', ['d'], { do: 'slip', slip: 'day' }, { group: 'record', foot: 3 }),
  here('ai-longer', 'w', { is: 'longer' }, { foot: 5, label: longerLabel }),
  here('other-way', 'tab', { is: 'other-way' }, { foot: 4, group: 'move' }),
  here('other-block', 'b', { is: 'block' }, { foot: 6, group: 'move' }),
  here('back', 'esc', { is: 'back' }, { foot: 7, group: 'move' }),
  ...numberKeys,
]
