/** Whether the move to the bull weeks of a block, or out of them, is still to be made on a day. */

import type { HerdBook } from '../book.ts'
import { bullPeriods } from '../bull-period.ts'
import { type Day, plusDays } from '../day.ts'
import type { BlockDay, MorningList } from '../list.ts'
import { dayOfSeason, type Season } from '../season.ts'
import { standingOn } from '../standing.ts'
import { goesWithBull, isWithBull } from './turn-out.ts'

export interface MoveDue {
  readonly block: string
  readonly what: 'in' | 'out'
  readonly season: Season
  /** The day of the plan: A+1, or B+1. */
  readonly day: Day
  /** Animals that would go with the bull, or be taken from him. */
  readonly count: number
}

/**
 * The moves that are to be made: to the bull from the last day of AI on, until half of those that go are with him; out
 * from the day after his last on, until none is.
 *
 * @param list the morning list of the day, made of the book
 * @example movesDue(book, listOfTheCloseDate)[0] // { block: 'spring', what: 'in', day: 12 June, count: 61, … }
 */
export const movesDue = (book: HerdBook, list: MorningList): readonly MoveDue[] =>
  list.blocks.flatMap((block) => moveOf(book, list, block) ?? [])

function moveOf(book: HerdBook, list: MorningList, { season, phase, day: s }: BlockDay): MoveDue | undefined {
  if (season.bullEnd === season.aiEnd) return undefined
  if (phase === 'bull' || (phase === 'ai' && s === season.aiEnd)) return kept(book, season, list.day, moveIn)
  return phase === 'closing' ? kept(book, season, list.day, moveOut) : undefined
}

type Move = (book: HerdBook, season: Season, today: Day) => MoveDue | undefined

const known = new WeakMap<HerdBook, Map<string, { readonly move: MoveDue | undefined }>>()

/** What all animals are asked for is kept, as long as the book is the same. */
function kept(book: HerdBook, season: Season, today: Day, find: Move): MoveDue | undefined {
  const ofBook = known.get(book) ?? new Map<string, { readonly move: MoveDue | undefined }>()
  known.set(book, ofBook)
  const key = `${season.factId} ${today}`
  const found = ofBook.get(key) ?? { move: find(book, season, today) }
  ofBook.set(key, found)
  return found.move
}

const due = (season: Season, what: 'in' | 'out', count: number): MoveDue => ({
  block: season.block,
  what,
  season,
  day: dayOfSeason(season, (what === 'in' ? season.aiEnd : season.bullEnd) + 1),
  count,
})

/** All animals of the block are asked, as they are tonight, whatever their section: those that the step itself moves. */
function moveIn(book: HerdBook, season: Season, today: Day): MoveDue | undefined {
  const tomorrow = plusDays(today, 1)
  const goes = [...book.animals.values()].filter((animal) => goesWithBull(book, animal, season, tomorrow))
  const without = goes.filter((animal) => !isWithBull(animal, tomorrow)).length
  return 2 * without > goes.length ? due(season, 'in', without) : undefined
}

/** A bull is still with some of them. */
function moveOut(book: HerdBook, season: Season, today: Day): MoveDue | undefined {
  const count = withBull(book, season.block, today).length
  return count > 0 ? due(season, 'out', count) : undefined
}

/** Animals of a block with a bull at the end of a day, and since when. */
export function withBull(
  book: HerdBook,
  block: string,
  day: Day,
): readonly {
  readonly id: string
  readonly number: string
  readonly since: Day
  readonly bulls: readonly string[]
}[] {
  return [...book.animals.values()].flatMap((animal) => {
    const open = bullPeriods(animal, (on) => on <= day).filter((period) => period.to === undefined)
    const [first] = open
    if (first === undefined) return []
    const standing = standingOn(book, animal, day)
    if (standing.block !== block || !standing.inHerd) return []
    const bulls = [...new Set(open.flatMap(({ bull }) => bull ?? []))]
    return [{ id: animal.id, number: animal.number, since: first.from, bulls }]
  })
}
