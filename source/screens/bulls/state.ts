/** How a bull is: of what age, and whether he works. */
import { dayOfSeason } from '../../breeding/season.ts'
import type { BullHere } from '../../morning/bulls-here.ts'
import type { Desk } from '../../morning/desk.ts'
import { blocksWithBull } from '../../morning/reckoning.ts'
import { bullsWords } from '../words/bulls.ts'

/** Why he does not work here now, in words; undefined where he does. */
export const absence = ({ onHand, onHold }: BullHere): string | undefined =>
  onHand ? undefined : onHold ? bullsWords.onHold : bullsWords.notHere

/** His age at the next turn-out (today where there is none), in words; undefined where his birth is not known. */
export function ageOf(desk: Desk, { animal }: BullHere): string | undefined {
  const season = blocksWithBull(desk)[0]?.season
  const day = season === undefined ? desk.page.list.day : dayOfSeason(season, season.aiEnd + 1)
  return animal?.born === undefined ? undefined : bullsWords.age(day - animal.born)
}
