/** Who leaves the herd, why and when; and who goes to the other block instead. */
import { type Day, plusDays } from '../../source/breeding/day.ts'
import { type Animal, isMaiden } from './animal.ts'
import { type Farm, ofBlock, tell } from './farm.ts'
import { people } from './names.ts'
import type { Plan } from './seasons.ts'

/** Accidents and sickness, a day. */
const DIES = 0.00005

/** Writes down that an animal left today. */
function leaves(farm: Farm, animal: Animal, reason: string): void {
  animal.gone = true
  animal.bull = undefined
  tell(farm, animal, { kind: 'left', reason }, { minute: 15 * 60, by: people.farmer })
}

export function leavingOfToday(farm: Farm, animal: Animal): void {
  if (animal.goesOn === farm.day) leaves(farm, animal, animal.goesBecause)
  else if (farm.random.chance(DIES)) leaves(farm, animal, 'died')
}

const goes = (animal: Animal, day: Day, reason: string): void => {
  if (animal.goesOn !== undefined) return
  animal.goesOn = day
  animal.goesBecause = reason
}

/** After the final check: young empty cows get a second life in the other block, the others are to go. */
export function settleEmpties(farm: Farm, plan: Plan): void {
  const { random, day } = farm
  for (const animal of ofBlock(farm, plan.block)) {
    if (animal.inCalfSince !== undefined || animal.goesOn !== undefined) continue
    if (isMaiden(animal) ? !animal.ready : animal.barred) continue
    const other = plan.block === 'spring' ? 'autumn' : 'spring'
    if (!isMaiden(animal) && animal.parity <= 5 && random.chance(plan.block === 'spring' ? 0.6 : 0.4)) {
      tell(farm, animal, { kind: 'block', block: other }, { minute: 14 * 60 })
      animal.block = other
      animal.chances = 0
      animal.leftToBull = false
      continue
    }
    tell(farm, animal, { kind: 'bar', reason: 'empty' }, { minute: 14 * 60 })
    animal.barred = true
    goes(animal, plusDays(day, isMaiden(animal) ? random.whole(10, 40) : random.whole(30, 110)), 'empty')
  }
}

/** Keeps the herd at its size: old cows and those that would calve late are sold in calf. */
export function sellSurplus(farm: Farm, plan: Plan): void {
  const weight = (animal: Animal): number =>
    animal.parity + ((animal.inCalfSince ?? plan.start) - plan.start) / 14
  const staying = ofBlock(farm, plan.block)
    .filter(
      (animal) => animal.goesOn === undefined && (animal.parity > 0 || animal.inCalfSince !== undefined),
    )
    .toSorted((a, b) => weight(b) - weight(a) || a.born - b.born)
  for (const animal of staying.slice(0, Math.max(0, staying.length - plan.cows))) {
    goes(animal, plusDays(farm.day, farm.random.whole(1, 30)), animal.parity > 5 ? 'old' : 'sold in calf')
  }
}

/** Cows that will not be bred again are named before the mating start. */
export function barSome(farm: Farm, plan: Plan): void {
  const { random, day } = farm
  const cows = ofBlock(farm, plan.block).filter(
    (one) => one.parity >= 3 && !one.barred && one.calvedOn !== undefined,
  )
  const reasons = ['udder', 'feet', 'mastitis again and again', 'low yield', 'temper']
  for (let i = 0; i < Math.round(cows.length / 45); i += 1) {
    const cow = random.pick(cows)
    if (cow.barred) continue
    tell(farm, cow, { kind: 'bar', reason: random.pick(reasons) }, { minute: 13 * 60 })
    cow.barred = true
    goes(cow, plusDays(day, random.whole(130, 230)), 'culled')
  }
  const pardoned = cows.find((one) => one.barred && one.parity === 3)
  if (pardoned === undefined) return
  tell(farm, pardoned, { kind: 'unbar', reason: 'gets another year' }, { minute: 18 * 60 })
  pardoned.barred = false
  pardoned.goesOn = undefined
}

/** A cow well past her date who does not calve is looked at, found empty, and goes. */
export function overdueCow(farm: Farm, animal: Animal): void {
  if (animal.inCalfSince === undefined || animal.pregnancy !== undefined) return
  if (farm.day - animal.inCalfSince !== 289) return
  tell(farm, animal, { kind: 'check', method: 'hand', result: 'empty' }, { minute: 11 * 60, by: people.vet })
  animal.inCalfSince = undefined
  animal.barred = true
  tell(farm, animal, { kind: 'bar', reason: 'lost her calf unseen' }, { minute: 13 * 60 })
  goes(animal, plusDays(farm.day, farm.random.whole(20, 90)), 'empty')
}
