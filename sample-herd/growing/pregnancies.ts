/** Pregnancies: how they begin, end too early, and end in a calf. */
import { type Day, plusDays } from '../../source/breeding/day.ts'
import type { StrawKind } from '../../source/breeding/facts.ts'
import { type Animal, isMaiden, isYoung, startCycle } from './animal.ts'
import { birth, calfSexes, cycleLength, firstHeat, gestation, heatWhenPregnant, lossDay } from './biology.ts'
import { type Farm, tell } from './farm.ts'
import { people } from './names.ts'
import { bullNamed, gestationOf } from './sires.ts'

interface Mating {
  readonly day: Day
  readonly sire: string
  /** undefined where a bull served her. */
  readonly straw: StrawKind | undefined
}

/** She conceives: what will become of it is settled at once. */
export function conceive(farm: Farm, animal: Animal, { day, sire, straw }: Mating): void {
  const { random } = farm
  animal.nextHeat = undefined
  animal.pregnancy = {
    conceived: day,
    sire,
    natural: straw === undefined,
    calves: calfSexes(random, isMaiden(animal), straw),
    calvesOn: plusDays(day, gestation(random, gestationOf(bullNamed(sire), isMaiden(animal)))),
    lostOn: lossDay(random, day),
    heatOn: heatWhenPregnant(random, day),
  }
}

/** Ends pregnancies that are to be lost today, and calves those whose day it is. */
export function pregnancyOfToday(farm: Farm, animal: Animal): void {
  const { pregnancy } = animal
  if (pregnancy === undefined) return
  if (pregnancy.lostOn === farm.day) loses(farm, animal)
  else if (pregnancy.calvesOn === farm.day) calves(farm, animal)
}

/** Ends a pregnancy. Late losses are found, early ones hardly ever. */
export function loses(farm: Farm, animal: Animal): void {
  const { random, day } = farm
  const age = day - (animal.pregnancy?.conceived ?? day)
  animal.pregnancy = undefined
  animal.nextHeat = plusDays(day, cycleLength(random, isYoung(animal)))
  const found = age >= 120 ? 0.85 : age >= 60 ? 0.25 : 0
  if (!random.chance(found)) return
  tell(farm, animal, { kind: 'loss' }, { minute: 7 * 60 + 40, by: people.milker })
  startCycle(animal)
  animal.hardCalving = age >= 120
  animal.examined = false
}

function calves(farm: Farm, animal: Animal): void {
  const { random, day } = farm
  const pregnancy = animal.pregnancy
  if (pregnancy === undefined) return
  const number = pregnancy.calves.length
  const { ease, dead } = birth(random, isMaiden(animal), number)
  const minute = random.whole(0, 23 * 60)
  const writtenAt = day === farm.lastMorning ? 5 * 60 : Math.max(minute + 30, 6 * 60)
  tell(
    farm,
    animal,
    {
      kind: 'calving',
      ease,
      ...(number > 1 ? { calves: number } : {}),
      ...(dead > 0 ? { dead } : {}),
      calfSex: pregnancy.calves,
    },
    { minute: writtenAt, by: people.milker },
  )
  if (animal.plan === 'dairy' && dead === 0 && pregnancy.calves === 'F' && isDairy(pregnancy.sire))
    farm.calves.push({ born: day, dam: animal, sire: pregnancy.sire, block: animal.block })
  animal.pregnancy = undefined
  animal.parity += 1
  animal.calvedOn = day
  animal.isDry = false
  animal.nextHeat = plusDays(day, firstHeat(random))
  animal.hardCalving = ease >= 4 || number > 1 || dead > 0
  animal.examined = false
  animal.chances = 0
  startCycle(animal)
}

const isDairy = (sire: string): boolean => {
  const breed = bullNamed(sire)?.breed
  return breed === 'Holstein-Friesian' || breed === 'Jersey'
}
