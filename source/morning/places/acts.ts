/** What each screen of its own can do, joined: the reducer hands an act to the screen that is shown. */

import { type Desk, placeOf } from '../desk.ts'
import type { Step } from '../step.ts'
import { type AheadAct, actAhead } from './ahead.ts'
import { actBulls, type BullsAct } from './bulls.ts'
import { actScanning, type ScanningAct } from './scanning.ts'
import { actSeason, type SeasonAct } from './season.ts'
import { actSetUp, type SetUpAct } from './set-up.ts'
import { actStraws, type StrawsAct } from './straws.ts'
import { actTurnOut, type TurnOutAct } from './turn-out.ts'

/** An act and the screen that it is meant for. */
export type PlaceAct =
  | { readonly on: 'ahead'; readonly act: AheadAct }
  | { readonly on: 'season'; readonly act: SeasonAct }
  | { readonly on: 'straws'; readonly act: StrawsAct }
  | { readonly on: 'bulls'; readonly act: BullsAct }
  | { readonly on: 'scanning'; readonly act: ScanningAct }
  | { readonly on: 'turn-out'; readonly act: TurnOutAct }
  | { readonly on: 'set-up'; readonly act: SetUpAct }

/** Does an act on the screen that is shown; nothing where another is shown. */
export function actInPlace(desk: Desk, asked: PlaceAct): Step {
  const place = placeOf(desk)
  switch (asked.on) {
    case 'ahead':
      return place.at === 'ahead' ? actAhead(desk, place, asked.act) : { desk }
    case 'season':
      return place.at === 'season' ? actSeason(desk, place, asked.act) : { desk }
    case 'straws':
      return place.at === 'straws' ? actStraws(desk, place, asked.act) : { desk }
    case 'bulls':
      return place.at === 'bulls' ? actBulls(desk, place, asked.act) : { desk }
    case 'scanning':
      return place.at === 'scanning' ? actScanning(desk, place, asked.act) : { desk }
    case 'turn-out':
      return place.at === 'turn-out' ? actTurnOut(desk, place, asked.act) : { desk }
    case 'set-up':
      return place.at === 'set-up' ? actSetUp(desk, place, asked.act) : { desk }
  }
}
