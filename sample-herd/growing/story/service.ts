/** Parts of the story that end in a service, or in none. */
import { dayIso } from '../../../source/breeding/day.ts'
import type { Animal } from '../animal.ts'
import { daysCalved, tell } from '../farm.ts'
import { people } from '../names.ts'
import { FIXED_TIME_AFTER } from '../seasons.ts'
import { takeStraw } from '../straws.ts'
import { ago, cast, heat, quietSince, type Stage, sinceService, today } from './stage.ts'

/** Served three weeks ago and not seen since. */
export const isDueBack = (stage: Stage, animal: Animal): boolean => {
  const k = sinceService(stage, animal)
  return k >= 19 && k <= 23 && animal.chances === 1 && quietSince(animal, ago(stage, k))
}

export const mayBeFirst = (stage: Stage, animal: Animal): boolean =>
  animal.services.length === 0 &&
  animal.parity > 0 &&
  (daysCalved(animal, today(stage)) ?? 0) >= 50 &&
  animal.pregnancy === undefined &&
  quietSince(animal, ago(stage, 12))

/** Served twice in nine days, one of the heats was none, and back today. */
export function bothChancesUsed(stage: Stage): void {
  const { farm } = stage
  const cow = cast(stage, 'spring', 'both chances used', (animal) => {
    const k = sinceService(stage, animal)
    return k >= 24 && animal.chances === 1 && animal.parity > 1 && quietSince(animal, ago(stage, k))
  })
  const second = ago(stage, 19)
  tell(
    farm,
    cow,
    { kind: 'heat', time: 'morning', how: 'standing', certainty: 'sure' },
    { day: second, minute: 6 * 60 + 30, by: people.milker },
  )
  const shelf = takeStraw(farm, cow, 'conventional', false)
  tell(
    farm,
    cow,
    {
      kind: 'service',
      time: '08:15',
      sire: shelf.bull.code,
      straw: shelf.lot.straw,
      batch: shelf.batch,
      inseminator: people.farmer,
      session: 'morning',
    },
    { day: second, minute: 8 * 60 + 25, by: people.farmer },
  )
  heat(stage, cow, 1, 'standing')
}

export function backLate(stage: Stage): void {
  const cow = cast(stage, 'spring', 'back late', (animal) => {
    const k = sinceService(stage, animal)
    return k >= 25 && k <= 27 && animal.chances === 1 && quietSince(animal, ago(stage, k))
  })
  heat(stage, cow, 1, 'paint')
}

export function suspectHeat(stage: Stage): void {
  const cow = cast(stage, 'spring', 'suspect heat', (animal) => isDueBack(stage, animal))
  heat(stage, cow, 0, 'mucus', 'suspect')
}

export function backThreeWeeksOn(stage: Stage, count: number): void {
  for (let i = 0; i < count; i += 1) {
    const animal = cast(
      stage,
      'spring',
      'back three weeks on',
      (one) => one.pregnancy === undefined && isDueBack(stage, one),
    )
    heat(stage, animal, i % 2, 'standing')
  }
}

export function firstHeats(stage: Stage, count: number): void {
  for (let i = 0; i < count; i += 1) {
    const cow = cast(stage, 'spring', 'first service', (animal) => mayBeFirst(stage, animal))
    heat(stage, cow, i % 2, 'paint')
  }
}

/** Not seen in heat when the vet came: a device, and a service by the clock today. */
export function broughtOn(stage: Stage, count: number): void {
  for (let i = 0; i < count; i += 1) {
    const cow = cast(
      stage,
      'spring',
      'fixed-time service',
      (one) =>
        mayBeFirst(stage, one) && quietSince(one, ago(stage, 24)) && !one.heatsSeen.includes(today(stage)),
    )
    tell(
      stage.farm,
      cow,
      {
        kind: 'examined',
        finding: 'not cycling',
        treatment: 'device for seven days',
        serveOn: dayIso(today(stage)),
        session: 'morning',
      },
      { day: ago(stage, FIXED_TIME_AFTER), minute: 11 * 60, by: people.vet },
    )
  }
}
