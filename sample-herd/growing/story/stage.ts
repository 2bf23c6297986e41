/** The last morning as a stage: whom a part suits, and how long ago things were. */
import { type Day, plusDays } from '../../../source/breeding/day.ts'
import type { HeatSource } from '../../../source/breeding/facts.ts'
import type { Animal } from '../animal.ts'
import { type Farm, ofBlock, tell } from '../farm.ts'
import { people } from '../names.ts'

export interface Stage {
  readonly farm: Farm
  /** Animals that already have a part. */
  readonly cast: Set<Animal>
}

/** An animal of a block that fits and has no part yet. */
export function cast(stage: Stage, block: string, part: string, fits: (animal: Animal) => boolean): Animal {
  const found = ofBlock(stage.farm, block).find(
    (animal) =>
      !stage.cast.has(animal) &&
      !animal.barred &&
      !animal.leftToBull &&
      animal.fixedTime === undefined &&
      fits(animal),
  )
  if (found === undefined) throw new Error(`nobody can play the part: ${part}`)
  stage.cast.add(found)
  return found
}

export const today = (stage: Stage): Day => stage.farm.day
export const ago = (stage: Stage, days: number): Day => plusDays(today(stage), -days)
export const sinceService = (stage: Stage, animal: Animal): number =>
  today(stage) - (animal.services.at(-1) ?? 0)
/** Nothing was seen of her since a day. */
export const quietSince = (animal: Animal, day: Day): boolean => !animal.heatsSeen.some((seen) => seen > day)

export function heat(
  stage: Stage,
  animal: Animal,
  daysAgo: number,
  how: HeatSource,
  certainty: 'sure' | 'suspect' = 'sure',
): void {
  const evening = daysAgo > 0
  tell(
    stage.farm,
    animal,
    { kind: 'heat', time: evening ? '20:10' : 'morning', how, certainty },
    { day: ago(stage, daysAgo), minute: evening ? 20 * 60 + 20 : 6 * 60 + 40, by: people.milker },
  )
}
