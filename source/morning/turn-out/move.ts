/** The move to the bull weeks of a block, or out of them, as it lies open: whom it concerns, and what a day's change does. */
import { withBull } from '../../breeding/ahead/moves-due.ts'
import { type BullOfFarm, isWithBull, type TurnOut, turnOut } from '../../breeding/ahead/turn-out.ts'
import type { AnimalRecord, HerdBook } from '../../breeding/book.ts'
import { type Day, dayIso, plusDays } from '../../breeding/day.ts'
import type { NewFact } from '../../breeding/facts.ts'
import type { BlockForecast } from '../../breeding/forecast/block.ts'
import type { BlockDay } from '../../breeding/list.ts'
import { compareNumbers } from '../../breeding/order.ts'
import { dayOfSeason, type Season } from '../../breeding/season.ts'
import type { Standing } from '../../breeding/standing.ts'
import { bookNow } from '../book-now.ts'
import type { Desk } from '../desk.ts'
import { known as given } from '../forms/reader.ts'
import type { TurnOutPlace } from '../place.ts'

/** The move as it stands. */
export interface Move {
  readonly season: Season
  /** The day of the plan, and the day chosen. */
  readonly planned: Day
  readonly day: Day
  /** Whom it concerns, by number: those that go with him, or that are taken from him. */
  readonly goes: readonly Going[]
  /** Of the move in: who is with him already, in calf, kept from him; the bulls there are. */
  readonly already: number
  readonly inCalf: readonly Standing[]
  readonly kept: TurnOut['kept']
  readonly bulls: readonly BullOfFarm[]
}
export interface Going {
  readonly animal: AnimalRecord
  readonly standing: Standing | undefined
  /** Since when and with whom she runs. */
  readonly since: Day | undefined
  readonly with: readonly string[]
}

/** Blocks that have bull weeks. */
export const blocksWithBull = (desk: Desk): readonly BlockDay[] =>
  desk.page.list.blocks.filter(({ season }) => season.bullEnd > season.aiEnd)

export const blockOf = (desk: Desk, place: TurnOutPlace): BlockDay | undefined =>
  blocksWithBull(desk).find(({ block }) => block === place.block)

const moves = new WeakMap<HerdBook, { readonly key: string; readonly move: Move }>()

/** The move that the place is about; undefined without bull weeks. */
export function moveOf(desk: Desk, place: TurnOutPlace): Move | undefined {
  const season = blockOf(desk, place)?.season
  if (season === undefined) return undefined
  const book = bookNow(desk)
  const key = [season.factId, place.what, place.day, desk.now.day, place.bull].join(' ')
  const found = moves.get(book)
  if (found?.key === key) return found.move
  const move =
    place.what === 'in'
      ? moveIn(book, season, place.day, desk.now.day)
      : moveOut(book, season, place.day, place.bull)
  moves.set(book, { key, move })
  return move
}

function moveIn(book: HerdBook, season: Season, day: Day, today: Day): Move {
  // As things stand tonight: what was recorded today counts.
  const { goes, inCalf, kept, bulls } = turnOut(book, season, day, plusDays(today, 1))
  const left = goes.filter(({ animal }) => !isWithBull(animal, plusDays(today, 1)))
  return {
    season,
    planned: dayOfSeason(season, season.aiEnd + 1),
    day,
    goes: left
      .map((standing) => ({ animal: standing.animal, standing, since: undefined, with: [] }))
      .sort(byNumber),
    already: goes.length - left.length,
    inCalf: inCalf.toSorted(byNumber),
    kept: kept.toSorted((a, b) => byNumber(a.standing, b.standing)),
    bulls,
  }
}

function moveOut(book: HerdBook, season: Season, day: Day, bull: string | undefined): Move {
  const goes = withBull(book, season.block, day).flatMap(({ id, since, bulls }): Going[] => {
    const animal = book.animals.get(id)
    const meant = bull === undefined || bulls.includes(bull)
    return animal === undefined || !meant ? [] : [{ animal, standing: undefined, since, with: bulls }]
  })
  const planned = dayOfSeason(season, season.bullEnd + 1)
  return { season, planned, day, goes: goes.sort(byNumber), already: 0, inCalf: [], kept: [], bulls: [] }
}

/** Id of the animal pointed at: a bull, one that goes, one that is kept from him; undefined among those in calf. */
export function animalOfMoveAt(desk: Desk, place: TurnOutPlace): string | undefined {
  const move = moveOf(desk, place)
  if (move === undefined) return undefined
  const { bulls, goes, kept } = move
  const ids = [
    ...bulls.map(({ bull }) => bull.id),
    ...goes.map(({ animal }) => animal.id),
    ...kept.map(({ standing }) => standing.animal.id),
  ]
  return ids[place.pointer]
}

const byNumber = (a: { readonly animal: AnimalRecord }, b: { readonly animal: AnimalRecord }): number =>
  compareNumbers(a.animal.number, b.animal.number)

/** The facts that the move records: for each animal one, of the move in one for each bull that is chosen. */
export function factsOfMove(move: Move, place: TurnOutPlace): readonly NewFact[] {
  const date = dayIso(move.day)
  const kind = place.what === 'in' ? 'with-bull' : 'from-bull'
  const chosen = place.what === 'in' ? chosenBulls(move, place).map(({ bull }) => bull.number) : []
  const bulls = chosen.length === 0 ? [place.bull] : chosen
  return move.goes
    .filter(({ animal }) => !place.without.includes(animal.id))
    .flatMap(({ animal }) =>
      bulls.map((bull): NewFact => ({ kind, about: animal.id, date, ...given({ bull }) })),
    )
}

export const chosenBulls = ({ bulls }: Move, { without }: TurnOutPlace): readonly BullOfFarm[] =>
  bulls.filter(({ bull }) => !without.includes(bull.id))

/** Open animals that bulls can serve: 30 each, young ones 20, half as many where half of them rest. */
export function served(bulls: readonly BullOfFarm[], book: HerdBook): number {
  const { openPerBull, openPerYoungBull, bullsRotate } = book.policy
  const sum = bulls.reduce((all, { young }) => all + (young ? openPerYoungBull : openPerBull), 0)
  return bullsRotate ? Math.floor(sum / 2) : sum
}

/** An animal comes on heat once in three weeks (common practice, no source). */
const HEAT_EVERY = 21

interface DayChange {
  /** Days later than planned; earlier where below 0. */
  readonly days: number
  /** Heats that nobody serves, about, where he comes later. */
  readonly unserved: number
  /** Days that are left with him. */
  readonly left: number
}

/**
 * What another day than the planned one does. The plan of the season stays: AI ends and the bull comes out as before.
 *
 * @param open animals that are open at turn-out, about
 * @example changeOf(move, 63) // { days: 3, unserved: 9, left: 18 }
 */
export const changeOf = ({ planned, day, season }: Move, open: number): DayChange => ({
  days: day - planned,
  unserved: day > planned ? Math.round(heatsADay(open) * (day - planned)) : 0,
  left: dayOfSeason(season, season.bullEnd) - day + 1,
})

/** Heats a day of so many open animals, about. */
export const heatsADay = (open: number): number => open / HEAT_EVERY

/** Open animals to reckon with: the forecast's, else those that go. */
export const openAnimals = (move: Move, forecast: BlockForecast | undefined): number =>
  forecast === undefined ? move.goes.length : Math.round(forecast.openAtTurnOut.expected)
