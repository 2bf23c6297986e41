/** Scanning visits: who is put through the race, and what the scanner says. */
import { type Day, dayIso, plusDays } from '../../source/breeding/day.ts'
import { type Animal, isMaiden } from './animal.ts'
import { type Farm, ofBlock, tell } from './farm.ts'
import { people } from './names.ts'
import type { Plan } from './seasons.ts'

/** Days from an unsure scan to the next. */
export const RESCAN_AFTER = 15

/** Scans a block. */
export function scanBlock(farm: Farm, plan: Plan): void {
  const final = farm.day === plan.visits.at(-1)
  const action = farm.recorder.action()
  let minute = 10 * 60
  for (const animal of ofBlock(farm, plan.block)) {
    if (!isDue(farm, animal, plan, final)) continue
    scan(farm, animal, minute, action)
    minute += 1
  }
}

function isDue(farm: Farm, animal: Animal, plan: Plan, final: boolean): boolean {
  const { day } = farm
  if (animal.barred || (isMaiden(animal) && !animal.ready)) return false
  if (animal.inCalfSince !== undefined)
    return day - animal.inCalfSince >= 60 && (animal.checkedOn ?? 0) < animal.inCalfSince + 60
  if (final) return animal.calvedOn === undefined || animal.calvedOn <= plan.start + plan.bullEnd
  const last = animal.services.at(-1)
  const withBullLong = day - plan.start >= plan.aiEnd + 38
  if (last === undefined) return withBullLong && animal.bull !== undefined
  return day - last >= (isMaiden(animal) ? 28 : 30) && (animal.checkedOn ?? 0) < last + 28
}

/** Two weeks after a visit the animals that it was not sure of are scanned again. */
export function scanUnsure(farm: Farm, plan: Plan): void {
  const action = farm.recorder.action()
  for (const animal of ofBlock(farm, plan.block)) {
    if (animal.unsure && animal.checkedOn === plusDays(farm.day, -RESCAN_AFTER))
      scan(farm, animal, 11 * 60, action)
  }
}

/** Scans one animal today. */
function scan(farm: Farm, animal: Animal, minute: number, action: string): void {
  const { random, day } = farm
  const written = { minute, by: people.vet, action }
  const age = animal.pregnancy === undefined ? 0 : day - animal.pregnancy.conceived
  const drawn = random.share()
  animal.checkedOn = day
  animal.unsure = false
  if (age >= 27 ? drawn < 0.012 : drawn < 0.015) {
    tell(farm, animal, { kind: 'check', method: 'ultrasound', result: 'unsure' }, written)
    animal.unsure = true
    return
  }
  const young = Math.max(...animal.services.map((one) => day - one), 0)
  const pregnant = age >= 27 ? drawn < 0.99 : young > 28 && young < 60 && drawn > 0.985
  if (!pregnant) {
    tell(farm, animal, { kind: 'check', method: 'ultrasound', result: 'empty' }, written)
    animal.inCalfSince = undefined
    return
  }
  const trueAge = age >= 27 ? age : young
  const foetalAge = Math.min(
    Math.max(Math.round(trueAge + random.normal(0, trueAge > 98 ? 5 : 1.6)), 24),
    280,
  )
  const twins = (animal.pregnancy?.calves.length ?? 1) > 1 && random.chance(0.85)
  const service = serviceFor(animal, plusDays(day, -foetalAge))
  tell(
    farm,
    animal,
    {
      kind: 'check',
      method: 'ultrasound',
      result: 'pregnant',
      foetalAge,
      ...(twins ? { foetuses: 2 } : {}),
      ...(service === undefined || foetalAge > 70 ? {} : { serviceDate: dayIso(service) }),
    },
    written,
  )
  animal.inCalfSince = service ?? plusDays(day, -foetalAge)
}

/** The service nearest to the day that the age points to, within a week. */
function serviceFor(animal: Animal, day: Day): Day | undefined {
  const near = animal.services.filter((one) => Math.abs(one - day) <= 7)
  return near.length === 0
    ? undefined
    : near.reduce((best, one) => (Math.abs(one - day) <= Math.abs(best - day) ? one : best))
}
