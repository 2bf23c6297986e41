/** Parts of the story that ask for care: a decision, or a danger. */
import { dayIso, plusDays } from '../../../source/breeding/day.ts'
import type { Animal } from '../animal.ts'
import { daysCalved, tell } from '../farm.ts'
import { people } from '../names.ts'
import { isDueBack, mayBeFirst } from './service.ts'
import { ago, cast, heat, quietSince, type Stage, sinceService, today } from './stage.ts'

export function inCalfAndOnHeat(stage: Stage): void {
  const cow = cast(stage, 'autumn', 'in calf and on heat', isInCalf)
  heat(stage, cow, 0, 'standing')
}

export function heatOfAnInCalfCowToBeChecked(stage: Stage): void {
  const cow = cast(stage, 'autumn', 'heat of an in-calf cow some days ago', isInCalf)
  heat(stage, cow, 5, 'paint')
}

export function unsureScan(stage: Stage): void {
  const cow = cast(stage, 'autumn', 'unsure scan', isInCalf)
  heat(stage, cow, 20, 'mucus', 'suspect')
  tell(
    stage.farm,
    cow,
    { kind: 'check', method: 'hand', result: 'unsure' },
    { day: ago(stage, 16), minute: 11 * 60 + 5, by: people.vet },
  )
}

const isInCalf = (animal: Animal): boolean =>
  animal.parity > 0 && animal.pregnancy !== undefined && animal.inCalfSince !== undefined

export function lostHerCalf(stage: Stage): void {
  const cow = cast(stage, 'autumn', 'lost her calf', isInCalf)
  tell(stage.farm, cow, { kind: 'loss' }, { day: ago(stage, 4), minute: 7 * 60 + 30, by: people.milker })
}

export function calvedLately(stage: Stage, from: number, to: number): void {
  const cow = cast(stage, 'spring', `calved ${from}-${to} days ago`, (animal) => {
    const calved = daysCalved(animal, today(stage)) ?? 999
    return calved >= from && calved <= to && animal.pregnancy === undefined && animal.heatsSeen.length === 0
  })
  heat(stage, cow, 1, 'paint')
}

export function backTooSoon(stage: Stage): void {
  const cow = cast(stage, 'spring', 'back too soon', (animal) => {
    const k = sinceService(stage, animal)
    return k >= 6 && k <= 14 && animal.chances === 1 && quietSince(animal, ago(stage, k))
  })
  heat(stage, cow, 0, 'paint')
}

export function onHold(stage: Stage): void {
  const cow = cast(
    stage,
    'spring',
    'on hold and on heat',
    (animal) => animal.parity > 0 && isDueBack(stage, animal),
  )
  tell(
    stage.farm,
    cow,
    { kind: 'hold', until: dayIso(plusDays(today(stage), 4)), reason: 'mastitis, under treatment' },
    { day: ago(stage, 3), minute: 8 * 60, by: people.farmer },
  )
  heat(stage, cow, 0, 'standing')
}

export function heatNotServed(stage: Stage): void {
  const cow = cast(stage, 'spring', 'heat not served', (animal) => mayBeFirst(stage, animal))
  heat(stage, cow, 2, 'standing')
}

/** A cow who calved so late that she is ready only for the bull; nothing has happened to her yet. */
export function calvedTooLate(stage: Stage): void {
  cast(stage, 'spring', 'calved too late for a straw', (animal) => {
    const calved = daysCalved(animal, today(stage)) ?? 999
    return calved <= 27 && calved >= 7 && animal.heatsSeen.length === 0
  })
}
