/** Late calvers, and who is probably empty: the rows of the part of the season where it is decided what becomes of them. */
import { type Decided, decidedOf, isOut } from '../../breeding/ahead/decided.ts'
import type { LastChance } from '../../breeding/ahead/last-chances.ts'
import { isoDay } from '../../breeding/day.ts'
import { type ProbablyEmpty, probablyEmpty } from '../../breeding/figures/probably-empty.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import type { Season } from '../../breeding/season.ts'
import type { Desk } from '../desk.ts'

interface EmptyRows {
  /** Little time is left for them in this block: they stand first. */
  readonly last: readonly LastChance[]
  /** The others who are probably empty. */
  readonly empties: readonly ProbablyEmpty[]
}
export type EmptyRow = LastChance | ProbablyEmpty

const found = new WeakMap<SeasonView, EmptyRows & { readonly all: readonly ProbablyEmpty[] }>()

function findIn(view: SeasonView): EmptyRows & { readonly all: readonly ProbablyEmpty[] } {
  const known = found.get(view)
  if (known !== undefined) return known
  const last = view.lastChances
  // Before the mating start nobody can be empty.
  const all = view.s < 0 ? [] : probablyEmpty(view.counted.members, view.book, view.rates.rates, view.season)
  const above = new Set(last.map(({ standing }) => standing.animal.id))
  const rows = { last, all, empties: all.filter(({ standing }) => !above.has(standing.animal.id)) }
  found.set(view, rows)
  return rows
}

/** The rows in the order of the screen; found once for a view. Nobody stands on two. */
export const emptyRows = (view: SeasonView): EmptyRows => findIn(view)

/** The same in one list, as the pointer goes through them. */
export const rowsInOrder = ({ last, empties }: EmptyRows): readonly EmptyRow[] => [...last, ...empties]

/** Who is probably empty and still to be bred in this season. */
export const emptiesOf = (view: SeasonView): readonly ProbablyEmpty[] =>
  findIn(view).all.filter(({ decided }) => !isOut(decided))

/** What has been decided of an animal by now, also where the view does not know of it yet. */
export function decidedNow(desk: Desk, id: string, season: Season): Decided | undefined {
  const animal = desk.book.animals.get(id)
  if (animal === undefined) return undefined
  const fresh = desk.unsettled.flatMap((fact) =>
    fact.about === id && (fact.kind === 'bar' || fact.kind === 'to-bull' || fact.kind === 'left')
      ? [{ fact, day: isoDay(fact.date), minute: 0 as const, order: 0 }]
      : [],
  )
  const happenings = [...animal.happenings, ...fresh] as typeof animal.happenings
  return decidedOf({ ...animal, happenings }, season, desk.now.day)
}
