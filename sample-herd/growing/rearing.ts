/** Heifers: entered in the herd before their first mating, marked ready when they are big enough. */
import { dayIso, plusDays } from '../../source/breeding/day.ts'
import { type Animal, isMaiden, newAnimal } from './animal.ts'
import { type Calf, type Farm, ofBlock } from './farm.ts'
import { electronicId, families, internationalId, officialId, people } from './names.ts'
import type { Plan } from './seasons.ts'
import { bullNamed } from './sires.ts'

/** One calf in sixteen is not reared. */
const REARED = 0.94
/** Age at which a maiden of good growth is served, days. */
const READY_AGE = 396

/** The next number of the farm. */
export function takeNumber(farm: Farm): string {
  const number = String(farm.nextNumber)
  farm.nextNumber += 1
  return number
}

/** Writes an animal into the herd book as she is now. */
export function enterAnimal(farm: Farm, animal: Animal, minute = 9 * 60): void {
  farm.recorder.record(
    {
      about: animal.id,
      date: dayIso(farm.day),
      kind: 'animal',
      number: animal.number,
      name: animal.name,
      officialId: officialId(animal.number),
      electronicId: electronicId(animal.number),
      internationalId: internationalId(animal.breed === 'Jersey cross' ? 'XXX' : 'HOL', 'F', animal.number),
      sex: 'F',
      born: dayIso(animal.born),
      breed: animal.breed,
      ...(animal.sire === undefined ? {} : { sire: animal.sire }),
      ...(animal.dam === undefined ? {} : { dam: animal.dam }),
      block: animal.statedBlock,
      lactation: animal.lactationAtEntry,
      ...(animal.lactationAtEntry === 0 ? { ready: animal.ready } : {}),
      plan: animal.plan,
    },
    { day: farm.day, minute, by: people.farmer },
  )
}

/** Enters the maidens of a season: the earliest heifer calves of the block, born the year before. */
export function enterMaidens(farm: Farm, plan: Plan): void {
  const born = (calf: Calf): boolean =>
    calf.block === plan.block && plan.start - calf.born >= 330 && plan.start - calf.born <= 500
  const kept = farm.calves.filter((calf) => born(calf) && farm.random.chance(REARED)).slice(0, plan.maidens)
  for (const calf of kept) enterCalf(farm, calf)
}

function enterCalf(farm: Farm, calf: Calf): void {
  const jersey = calf.dam.breed === 'Jersey cross' || bullNamed(calf.sire)?.breed === 'Jersey'
  const animal = newAnimal({
    id: farm.random.id(),
    number: takeNumber(farm),
    name: daughterName(farm, calf.dam),
    born: calf.born,
    breed: jersey ? 'Jersey cross' : 'Holstein-Friesian',
    sire: calf.sire,
    dam: calf.dam.number,
    plan: farm.random.chance(0.9) ? 'dairy' : 'beef',
    statedBlock: calf.block,
    nextHeat: plusDays(farm.day, farm.random.whole(20, 80)),
    condition: farm.random.pick([3.25, 3.25, 3.5, 3.5, 3]),
  })
  farm.animals.push(animal)
  enterAnimal(farm, animal)
}

/** Her dam's family name with the next number in it. */
export function daughterName(farm: Farm, dam: Animal): string {
  const family = dam.name.replace(/ \d+$/, '')
  return nextName(farm, family)
}

export function nextName(farm: Farm, family: string): string {
  const count = farm.animals.filter((one) => one.name.replace(/ \d+$/, '') === family).length
  return `${family} ${count + 1}`
}

export const anyFamily = (farm: Farm): string => farm.random.pick(families)

/** Marks the maidens that have grown enough for the coming season. */
export function markReady(farm: Farm, plan: Plan): void {
  for (const animal of ofBlock(farm, plan.block)) {
    if (!isMaiden(animal) || animal.ready) continue
    if (plan.start - animal.born < READY_AGE || farm.random.chance(0.04)) continue
    animal.ready = true
    enterAnimal(farm, animal, 16 * 60)
  }
}
