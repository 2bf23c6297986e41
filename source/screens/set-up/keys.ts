/** Keys of setting up besides moving about, help and leaving. */
import { type Desk, placeOf } from '../../morning/desk.ts'
import type { SetUpPart } from '../../morning/place.ts'
import type { SetUpAct } from '../../morning/places/set-up.ts'
import { type Binding, plain } from '../binding.ts'
import { setUpWords } from '../words/set-up.ts'

const here = (act: SetUpAct) => ({ do: 'here', on: 'set-up', act }) as const

const partOf = (desk: Desk): SetUpPart | undefined => {
  const place = placeOf(desk)
  return place.at === 'set-up' ? place.part : undefined
}
/** A label that depends on the part shown; empty where the key does nothing there. */
const byPart =
  (labels: Readonly<Record<SetUpPart, string>>): NonNullable<Binding['label']> =>
  (desk) => {
    const part = partOf(desk)
    return part === undefined ? undefined : labels[part]
  }
const onSeasons: NonNullable<Binding['label']> = (desk) => (partOf(desk) === 'seasons' ? undefined : '')
const onAnimals: NonNullable<Binding['label']> = (desk) => (partOf(desk) === 'animals' ? undefined : '')

export const setUpKeys: readonly Binding[] = [
  plain('change-entry', ['enter', 'f'], here({ is: 'change' }), { group: 'record', foot: 1 }),
  plain('add-entry', ['a'], here({ is: 'add' }), { group: 'record', foot: 2, label: byPart(setUpWords.add) }),
  plain('next-year', ['y'], here({ is: 'next-year' }), { group: 'record', foot: 3, label: onSeasons }),
  plain('strike-entry', ['x'], here({ is: 'strike' }), {
    group: 'record',
    foot: 5,
    label: byPart(setUpWords.strike),
  }),
  plain('next-part', ['tab'], here({ is: 'part', by: 1 }), { group: 'move', foot: 4 }),
  plain('previous-part', ['shift+tab'], here({ is: 'part', by: -1 }), { group: 'move' }),
  plain('her-page', ['space'], here({ is: 'open-animal' }), { group: 'move', foot: 3, label: onAnimals }),
  {
    name: 'number',
    keys: ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9'],
    does: (_desk, digit) => here({ is: 'digit', digit }),
    group: 'move',
  },
]
