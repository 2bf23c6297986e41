/** The vet's visits before and early in the mating weeks. */
import { dayIso, plusDays } from '../../source/breeding/day.ts'
import { type Animal, isMaiden } from './animal.ts'
import { daysCalved, type Farm, ofBlock, tell } from './farm.ts'
import { people } from './names.ts'
import { FIXED_TIME_AFTER, type Plan } from './seasons.ts'

const written = { minute: 11 * 60, by: people.vet }

/** Cows with a hard calving, twins, a dead calf or a late loss, three weeks on. */
export function lookAtHardCalvings(farm: Farm, plan: Plan): void {
  for (const animal of ofBlock(farm, plan.block)) {
    const calved = daysCalved(animal, farm.day)
    if (!animal.hardCalving || animal.examined || calved === undefined || calved < 21) continue
    const clean = farm.random.chance(0.7)
    tell(
      farm,
      animal,
      {
        kind: 'examined',
        finding: clean ? 'womb clean' : 'discharge',
        ...(clean ? {} : { treatment: 'washed out' }),
      },
      written,
    )
    animal.examined = true
    if (clean) animal.hardCalving = false
  }
}

/** Cows that nobody has seen in heat: those that cycle are brought on, the others get a device and a date. */
export function lookAtNotSeen(farm: Farm, plan: Plan): void {
  const { day, random } = farm
  const s = day - plan.start
  for (const animal of ofBlock(farm, plan.block)) {
    if (animal.inCalfSince !== undefined || animal.barred || animal.chances > 0 || animal.leftToBull) continue
    if (isMaiden(animal) || cyclingSeen(animal, plan)) continue
    if ((daysCalved(animal, day) ?? 0) < (s < 0 ? 30 : 50) || !random.chance(0.85)) continue
    examine(farm, animal, s)
  }
}

const cyclingSeen = (animal: Animal, plan: Plan): boolean =>
  animal.heatsSeen.some((seen) => seen >= plan.start - 42)

function examine(farm: Farm, animal: Animal, s: number): void {
  const { day, random } = farm
  const dueToCycle = animal.nextHeat !== undefined && animal.nextHeat - day <= 20
  if (animal.pregnancy === undefined && dueToCycle) {
    tell(farm, animal, { kind: 'examined', finding: 'cycling', treatment: 'prostaglandin' }, written)
    animal.nextHeat = plusDays(day, random.whole(3, 5))
    return
  }
  const serveOn = plusDays(day, FIXED_TIME_AFTER)
  const served = s + FIXED_TIME_AFTER >= 0 && animal.pregnancy === undefined
  tell(
    farm,
    animal,
    {
      kind: 'examined',
      finding: 'not cycling',
      ...(served
        ? { treatment: 'device for seven days', serveOn: dayIso(serveOn), session: 'morning' as const }
        : {}),
    },
    written,
  )
  if (served) {
    animal.fixedTime = serveOn
    animal.nextHeat = undefined
  }
}
