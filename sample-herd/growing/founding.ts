/** The first day of the herd book: the farm, its bulls, and the cows that were there already. */
import { type Day, dayIso, isoDay, plusDays } from '../../source/breeding/day.ts'
import { HERD } from '../../source/breeding/facts.ts'
import { type Animal, newAnimal } from './animal.ts'
import { calfSexes, firstHeat, gestation } from './biology.ts'
import type { Farm } from './farm.ts'
import { FARM_NAME, internationalId, MILKINGS, people, ZONE } from './names.ts'
import { anyFamily, daughterName, enterAnimal, nextName, takeNumber } from './rearing.ts'
import { planSeason } from './routine.ts'
import { type Block, PLANNED_AHEAD, plans } from './seasons.ts'
import { aiSires, type Bull, forefathers, gestationOf, sweepBulls } from './sires.ts'

export function foundFarm(farm: Farm): void {
  const written = { day: farm.day, minute: 8 * 60, by: people.farmer }
  const date = dayIso(farm.day)
  farm.recorder.record(
    { about: HERD, date, kind: 'farm', name: FARM_NAME, zone: ZONE, milkings: MILKINGS },
    written,
  )
  farm.recorder.record({ about: HERD, date, kind: 'policy', set: { replacementsWanted: 48 } }, written)
  for (const plan of plans) if (plusDays(plan.start, PLANNED_AHEAD) < farm.day) planSeason(farm, plan)
  for (const bull of [...forefathers, ...aiSires, ...sweepBulls]) {
    if ((bull.from ?? 0) <= 2023) enterBull(farm, bull)
  }
  springCows(farm)
  autumnCows(farm)
  maidens(farm)
}

/** Writes a bull into the herd book, under the code that stands on his straws. */
export function enterBull(farm: Farm, bull: Bull): void {
  const breeds = {
    'Holstein-Friesian': 'HOL',
    Jersey: 'JER',
    Angus: 'AAN',
    Hereford: 'HER',
    'Belgian Blue': 'BBL',
  }
  const id = farm.random.id()
  const works = sweepBulls.includes(bull)
  if (works) farm.bulls.set(bull.code, id)
  farm.recorder.record(
    {
      about: id,
      date: dayIso(farm.day),
      kind: 'animal',
      number: bull.code,
      name: bull.name,
      internationalId: internationalId(breeds[bull.breed], 'M', bull.code),
      sex: 'M',
      born: bull.born,
      breed: bull.breed,
      ...(works ? { ready: true } : {}),
      ...(bull.sire === undefined ? {} : { sire: bull.sire }),
      ...(bull.dam === undefined ? {} : { dam: bull.dam }),
      ...(bull.easyCalving === undefined ? {} : { easyCalving: bull.easyCalving }),
      ...(bull.gestationDays === undefined ? {} : { gestationDays: bull.gestationDays }),
    },
    { day: farm.day, minute: 8 * 60 + 5, by: people.farmer },
  )
}

/** A day of conception, the way a season of 6 + 6 weeks spreads them. */
function conceptionDay(farm: Farm, start: Day): Day {
  const drawn = farm.random.share()
  const [from, to] = drawn < 0.54 ? [0, 20] : drawn < 0.81 ? [21, 41] : drawn < 0.95 ? [42, 62] : [63, 83]
  return plusDays(start, farm.random.whole(from, to))
}

/** Parity after the next calving, 1-8, the way a herd that replaces a fifth a year has it. */
function drawParity(farm: Farm): number {
  const drawn = farm.random.share()
  const cumulated = [0.2, 0.38, 0.54, 0.68, 0.8, 0.9, 0.96]
  const found = cumulated.findIndex((share) => drawn < share)
  return found === -1 ? 8 : found + 1
}

/** Daughters of one cow among the first animals. */
const MOST_DAUGHTERS = 2

interface Foundling {
  readonly block: Block
  readonly parityNext: number
  /** About when she calves next, for her age. */
  readonly calvesAbout: Day
}

function enterFoundling(
  farm: Farm,
  { block, parityNext, calvesAbout }: Foundling,
  more: Partial<Animal>,
): Animal {
  const { random } = farm
  const born = plusDays(calvesAbout, -(730 + 365 * (parityNext - 1)) + random.whole(-25, 25))
  const dams = farm.animals.filter(
    (one) =>
      one.block === block &&
      born - one.born >= 730 &&
      born - one.born < 730 + 365 * 6 &&
      farm.animals.filter((daughter) => daughter.dam === one.number).length < MOST_DAUGHTERS,
  )
  const dam = dams.length > 0 && random.chance(0.7) ? random.pick(dams) : undefined
  const sires = forefathers.filter((bull) => {
    const age = born - isoDay(bull.born)
    return age > 700 && age < 365 * 6
  })
  const jersey = random.chance(0.12)
  const animal = newAnimal({
    id: random.id(),
    number: takeNumber(farm),
    name: dam === undefined ? nextName(farm, anyFamily(farm)) : daughterName(farm, dam),
    born,
    breed: jersey ? 'Jersey cross' : 'Holstein-Friesian',
    sire: sires.length > 0 && random.chance(0.92) ? random.pick(sires).code : undefined,
    dam: dam?.number,
    plan: random.chance(parityNext > 5 ? 0.4 : 0.88) ? 'dairy' : 'beef',
    statedBlock: block,
    ...more,
  })
  farm.animals.push(animal)
  return animal
}

/** The autumn cows of the first day are scanned on this one. */
export const AUTUMN_SCAN = isoDay('2023-03-14')

/** Spring cows: in calf since last summer, scanned in the autumn. */
function springCows(farm: Farm): void {
  const parities = Array.from({ length: 146 }, () => drawParity(farm)).toSorted((a, b) => b - a)
  for (const parityNext of parities) {
    const conceived = conceptionDay(farm, isoDay('2022-05-01'))
    const lactation = parityNext - 1
    const calvedOn = plusDays(conceived, -farm.random.whole(55, 90))
    const animal = enterFoundling(
      farm,
      { block: 'spring', parityNext, calvesAbout: plusDays(conceived, 282) },
      { lactationAtEntry: Math.max(lactation - 1, 0), ready: lactation <= 1 },
    )
    enterAnimal(farm, animal)
    if (lactation > 0) calvedBefore(farm, animal, calvedOn, lactation)
    inCalfBefore(farm, animal, conceived, isoDay('2022-10-12'))
  }
}

/** Autumn cows: calved last autumn and served since; they are scanned in March. */
function autumnCows(farm: Farm): void {
  const parities = Array.from({ length: 92 }, () => drawParity(farm)).toSorted((a, b) => b - a)
  for (const parityNext of parities) {
    const conceived = conceptionDay(farm, isoDay('2022-11-20'))
    const lactation = parityNext - 1
    const animal = enterFoundling(
      farm,
      { block: 'autumn', parityNext, calvesAbout: plusDays(conceived, 282) },
      { lactationAtEntry: Math.max(lactation - 1, 0), ready: lactation <= 1 },
    )
    enterAnimal(farm, animal)
    if (lactation > 0) calvedBefore(farm, animal, plusDays(conceived, -farm.random.whole(55, 88)), lactation)
    inCalfBefore(farm, animal, conceived, AUTUMN_SCAN)
  }
}

function maidens(farm: Farm): void {
  for (const [block, count, born] of [
    ['spring', 30, '2022-02-05'],
    ['autumn', 22, '2022-08-25'],
  ] as const) {
    for (let i = 0; i < count; i += 1) {
      const birthday = plusDays(isoDay(born), farm.random.whole(0, 45))
      const animal = enterFoundling(
        farm,
        { block, parityNext: 1, calvesAbout: plusDays(birthday, 730) },
        { nextHeat: plusDays(farm.day, farm.random.whole(30, 120)) },
      )
      enterAnimal(farm, animal)
    }
  }
}

function calvedBefore(farm: Farm, animal: Animal, day: Day, parity: number): void {
  animal.parity = parity
  animal.calvedOn = day
  farm.recorder.record(
    {
      about: animal.id,
      date: dayIso(day),
      kind: 'calving',
      ease: 1,
      calfSex: calfSexes(farm.random, false, undefined).slice(0, 1),
    },
    { day: farm.day, minute: 9 * 60 + 30, by: people.farmer },
  )
  animal.nextHeat = plusDays(day, firstHeat(farm.random))
}

/** Her pregnancy of the season before the book begins, as the scanner found it. */
function inCalfBefore(farm: Farm, animal: Animal, conceived: Day, scanned: Day): void {
  const { random } = farm
  const bull = random.pick(forefathers)
  animal.nextHeat = undefined
  animal.pregnancy = {
    conceived,
    sire: bull.code,
    natural: false,
    calves: calfSexes(random, animal.parity === 0, undefined),
    calvesOn: plusDays(conceived, gestation(random, gestationOf(bull, animal.parity === 0))),
    lostOn: undefined,
    heatOn: undefined,
  }
  animal.inCalfSince = plusDays(conceived, random.whole(-2, 2))
  animal.checkedOn = scanned
  if (scanned < farm.day) writeEarlyScan(farm, animal, scanned)
}

/** Scans of animals that were in calf on the first day, by the season before: a page for each day. */
export function scanFoundlings(farm: Farm): void {
  for (const animal of farm.animals) {
    if (!animal.gone && animal.checkedOn === farm.day) writeEarlyScan(farm, animal, farm.day)
  }
}

function writeEarlyScan(farm: Farm, animal: Animal, scanned: Day): void {
  farm.recorder.record(
    {
      about: animal.id,
      date: dayIso(scanned),
      kind: 'check',
      method: 'ultrasound',
      result: 'pregnant',
      foetalAge: scanned - (animal.inCalfSince ?? scanned),
    },
    { day: farm.day, minute: 11 * 60, by: people.vet },
  )
}
