/** A stray bull in the field some days before the mating start of 2026; the scanner will tell. */
import { isoDay } from '../../../source/breeding/day.ts'
import { daysCalved, type Farm, ofBlock, tell } from '../farm.ts'
import { people } from '../names.ts'
import { conceive } from '../pregnancies.ts'

const ON = isoDay('2026-04-19')
const SEEN_WITH = 2

/** He serves the first two animals that stand for him; both hold. */
export function strayBull(farm: Farm): void {
  if (farm.day !== ON) return
  const open = ofBlock(farm, 'spring').filter(
    (one) =>
      !one.barred &&
      one.pregnancy === undefined &&
      one.services.length === 0 &&
      (one.parity === 0 ? one.ready : (daysCalved(one, farm.day) ?? 0) > 55),
  )
  for (const animal of open.slice(0, SEEN_WITH)) {
    const fact = { kind: 'service', natural: true, sire: 'stray bull' } as const
    tell(farm, animal, fact, { minute: 19 * 60, by: people.farmer })
    animal.services.push(farm.day)
    conceive(farm, animal, { day: farm.day, sire: 'stray bull', straw: undefined })
  }
}
