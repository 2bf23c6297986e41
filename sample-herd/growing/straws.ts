/** The flasks: what is bought before each season, and which straw the farmer takes. */
import { dayIso, plusDays } from '../../source/breeding/day.ts'
import { HERD, type StrawKind } from '../../source/breeding/facts.ts'
import { type Animal, isMaiden } from './animal.ts'
import { daysCalved, type Farm, type Shelf } from './farm.ts'
import { people } from './names.ts'
import type { Plan } from './seasons.ts'
import { aiSires, type Bull, bullNamed, inYear } from './sires.ts'

/** How many of the straws that a sire is wanted for stand in the flask when a season begins. */
const SHARE_AT_START = { spring: 0.75, autumn: 0.5 } as const

/** Counts the flasks and fills them up for a season. */
export function buyStraws(farm: Farm, plan: Plan): void {
  for (const shelf of farm.shelves) if ((shelf.bull.to ?? 0) < plan.year) clear(farm, shelf)
  for (const bull of inYear(aiSires, plan.year)) {
    for (const lot of bull.lots ?? []) {
      const wanted = Math.round(lot.wanted * SHARE_AT_START[plan.block])
      const known = farm.shelves.find((shelf) => shelf.bull === bull && shelf.lot === lot)
      const shelf: Shelf = known ?? { bull, lot, batch: batchOf(farm), left: 0, used: 0 }
      if (known === undefined) farm.shelves.push(shelf)
      const place = {
        sire: bull.code,
        straw: lot.straw,
        batch: shelf.batch,
        flask: lot.flask,
        canister: lot.canister,
      }
      const written = { day: farm.day, minute: 14 * 60, by: people.farmer }
      if (known === undefined) shelf.left = wanted
      takeStock(farm, shelf)
      const missing = wanted - shelf.left
      if (missing >= 5) {
        farm.recorder.record(
          { about: HERD, date: dayIso(plusDays(farm.day, 1)), kind: 'delivery', ...place, count: missing },
          { ...written, day: plusDays(farm.day, 1) },
        )
        shelf.left += missing
      }
      shelf.used = 0
    }
  }
}

/** What is left of a bull whose years are over is given away. */
function clear(farm: Farm, shelf: Shelf): void {
  if (shelf.left === 0) return
  shelf.left = 0
  takeStock(farm, shelf)
}

function takeStock(farm: Farm, { bull, lot, batch, left }: Shelf): void {
  farm.recorder.record(
    {
      about: HERD,
      date: dayIso(farm.day),
      kind: 'stock-take',
      sire: bull.code,
      straw: lot.straw,
      batch,
      flask: lot.flask,
      canister: lot.canister,
      count: left,
      sireName: bull.name,
      breed: bull.breed,
      volumeMl: lot.volumeMl,
      ...(bull.easyCalving === undefined ? {} : { easyCalving: bull.easyCalving }),
      ...(bull.gestationDays === undefined ? {} : { gestationDays: bull.gestationDays }),
    },
    { day: farm.day, minute: 14 * 60, by: people.farmer },
  )
}

const batchOf = (farm: Farm): string => `${farm.random.whole(11, 98)}-${farm.random.whole(100, 998)}`

/** A straw is dropped or thawed for nothing now and then. */
export function spoilStraw(farm: Farm): void {
  const shelf = farm.random.pick(farm.shelves.filter((one) => one.left > 8))
  shelf.left -= 1
  farm.recorder.record(
    {
      about: HERD,
      date: dayIso(farm.day),
      kind: 'spoiled',
      sire: shelf.bull.code,
      straw: shelf.lot.straw,
      batch: shelf.batch,
      flask: shelf.lot.flask,
      canister: shelf.lot.canister,
      count: 1,
    },
    { day: farm.day, minute: 8 * 60 + 20, by: people.milker },
  )
}

/** The kind of straw that the farmer takes for her on a season day. */
export function kindFor(farm: Farm, animal: Animal, plan: Plan): StrawKind {
  const s = farm.day - plan.start
  if (s > plan.aiEnd - 7) return 'beef'
  if (animal.plan === 'beef') return 'beef'
  const wellOn = isMaiden(animal) || (daysCalved(animal, farm.day) ?? 0) >= 50
  const fit = animal.condition >= (isMaiden(animal) ? 3.25 : 3) && !animal.hardCalving && animal.parity <= 4
  if (s <= 20 && animal.chances === 0 && wellOn && fit) return 'sexed'
  return 'conventional'
}

/** Takes a straw from the flask: of the kind where one is left, not of her own family, the least used first. */
export function takeStraw(farm: Farm, animal: Animal, kind: StrawKind, easyOnly: boolean): Shelf {
  const fitting = (wanted: StrawKind): Shelf[] =>
    farm.shelves.filter(
      (shelf) =>
        shelf.lot.straw === wanted &&
        shelf.left > 0 &&
        (!easyOnly || shelf.bull.easyCalving === true) &&
        !isKin(shelf.bull, animal),
    )
  const choice = [kind, 'conventional', 'beef', 'sexed'] as const
  const shelves = choice.map((one) => fitting(one)).find((list) => list.length > 0)
  if (shelves === undefined) throw new Error(`the flasks are empty on ${dayIso(farm.day)}`)
  const shelf = shelves.reduce((least, one) => (one.used < least.used ? one : least))
  shelf.left -= 1
  shelf.used += 1
  return shelf
}

/** Her sire, her sire's sire, or a son of her sire. */
function isKin(bull: Bull, animal: Animal): boolean {
  const sire = bullNamed(animal.sire)
  return sire !== undefined && (bull === sire || bull.code === sire.sire || bull.sire === sire.code)
}
