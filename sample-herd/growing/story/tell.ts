/** The mornings before the last one: what makes every part of the list be seen on it. */
import type { Farm } from '../farm.ts'
import {
  backTooSoon,
  calvedLately,
  calvedTooLate,
  heatNotServed,
  heatOfAnInCalfCowToBeChecked,
  inCalfAndOnHeat,
  lostHerCalf,
  onHold,
  unsureScan,
} from './care.ts'
import { backLate, backThreeWeeksOn, bothChancesUsed, broughtOn, firstHeats, suspectHeat } from './service.ts'
import type { Stage } from './stage.ts'

/** Tells the story; the herd must have an animal for every part. */
export function tellStory(farm: Farm): void {
  const stage: Stage = { farm, cast: new Set() }
  inCalfAndOnHeat(stage)
  heatOfAnInCalfCowToBeChecked(stage)
  unsureScan(stage)
  lostHerCalf(stage)
  calvedTooLate(stage)
  calvedLately(stage, 8, 29)
  calvedLately(stage, 30, 41)
  backTooSoon(stage)
  onHold(stage)
  heatNotServed(stage)
  bothChancesUsed(stage)
  backLate(stage)
  suspectHeat(stage)
  backThreeWeeksOn(stage, 4)
  firstHeats(stage, 3)
  broughtOn(stage, 2)
}
