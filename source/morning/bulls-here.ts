/** The bulls that a herd has to do with: those on the farm, and others that services of this season name. */
import { bullsOfFarm } from '../breeding/ahead/turn-out.ts'
import type { AnimalRecord, HerdBook } from '../breeding/book.ts'
import { bullPeriods } from '../breeding/bull-period.ts'
import type { Day } from '../breeding/day.ts'
import { type BullRecord, bullRecords } from '../breeding/figures/bull-records.ts'
import { dayOfSeason } from '../breeding/season.ts'
import type { Desk } from './desk.ts'
import { blocksWithBull, knownView } from './reckoning.ts'

export interface BullHere {
  /** His number, or the name that services give him; undefined where they give none. */
  readonly name: string | undefined
  /** His record in the file, if there is one. */
  readonly animal: AnimalRecord | undefined
  readonly onHand: boolean
  /** Of the farm, but on hold. */
  readonly onHold: boolean
  /** Under 2 years at turn-out. */
  readonly young: boolean
  /** Animals that he is with on the day. */
  readonly with: number
  /** His last examination by the vet that is on record. */
  readonly examined: Day | undefined
  /** What his services of the seasons shown tell. */
  readonly records: readonly BullRecord[]
}

const known = new WeakMap<HerdBook, { readonly key: string; readonly bulls: readonly BullHere[] }>()

/**
 * Bulls on hand at turn-out, then others that services name. Kept as long as nothing else is known.
 *
 * @example bullsHere(desk)[0]?.records[0]?.returned // 2
 */
export function bullsHere(desk: Desk): readonly BullHere[] {
  const { book, page } = desk
  const views = blocksWithBull(desk).flatMap(({ season }) => knownView(desk, season, 'figures') ?? [])
  const key = [page.list.day, ...views.map(({ view, stale }) => `${view.season.factId} ${stale}`)].join(' ')
  const kept = known.get(book)
  if (kept?.key === key) return kept.bulls
  const records = views.flatMap(({ view }) =>
    bullRecords(view.counted.services, view.rates.rates, book.policy),
  )
  const bulls = gathered(book, page.list.day, turnOutDay(desk), records)
  known.set(book, { key, bulls })
  return bulls
}

/** The first day of the bull weeks that are next; the day shown where they are on, or there are none. */
function turnOutDay(desk: Desk): Day {
  const season = blocksWithBull(desk)[0]?.season
  const { day } = desk.page.list
  return season === undefined ? day : (Math.max(day, dayOfSeason(season, season.aiEnd + 1)) as Day)
}

function gathered(book: HerdBook, day: Day, turnOut: Day, records: readonly BullRecord[]): BullHere[] {
  const withThem = animalsWith(book, day)
  const hereBy = new Map(bullsOfFarm(book, turnOut).map((one) => [one.bull.number, one]))
  const names = new Set<string | undefined>([...hereBy.keys(), ...records.map(({ bull }) => bull)])
  return [...names].map((name): BullHere => {
    const here = name === undefined ? undefined : hereBy.get(name)
    const animal = here?.bull ?? (name === undefined ? undefined : book.byNumber.get(name))
    return {
      name,
      animal,
      onHand: here?.onHold === false,
      onHold: here?.onHold === true,
      young: here?.young ?? false,
      with: (name === undefined ? undefined : withThem.get(name)) ?? 0,
      examined: animal?.happenings.findLast(({ fact, day: on }) => fact.kind === 'examined' && on <= day)
        ?.day,
      records: records.filter(({ bull }) => bull === name),
    }
  })
}

/** How many animals each bull is with at the end of a day. */
function animalsWith(book: HerdBook, day: Day): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const animal of book.animals.values()) {
    const now = bullPeriods(animal, (on) => on <= day).filter(({ to }) => to === undefined)
    for (const bull of new Set(now.map((period) => period.bull)))
      if (bull !== undefined) counts.set(bull, (counts.get(bull) ?? 0) + 1)
  }
  return counts
}
