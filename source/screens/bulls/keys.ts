/** Keys of the bulls besides moving about, help and leaving. */
import { type Desk, placeOf } from '../../morning/desk.ts'
import type { TurnOutPlace } from '../../morning/place.ts'
import { bullsEntryAt } from '../../morning/places/bulls.ts'
import { openTurnOut, placeForBull } from '../../morning/turn-out/opening.ts'
import { type Binding, plain } from '../binding.ts'
import { numberKeys, orHerPage } from '../number-keys.ts'

/** Pointed at a bull that is with animals: he alone; else the move of all. */
function moveHere(desk: Desk): TurnOutPlace {
  const place = placeOf(desk)
  const entry = place.at === 'bulls' ? bullsEntryAt(desk, place) : undefined
  const name = entry?.is === 'bull' ? entry.bull.name : undefined
  return (name === undefined ? undefined : placeForBull(desk, name)) ?? openTurnOut(desk)
}

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
    name: 'bull-out',
    keys: ['m'],
    does: (desk) => ({ do: 'open', place: moveHere(desk) }),
    group: 'move',
    foot: 2,
  },
  plain('back', ['esc'], { do: 'back' }, { group: 'move', foot: 3 }),
  ...numberKeys,
]
