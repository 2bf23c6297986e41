/** The morning list as a page: headings, rows and single lines in screen order, and which of them is pointed at. */
import { type MoveDue, movesDue } from '../breeding/ahead/moves-due.ts'
import type { HerdBook } from '../breeding/book.ts'
import { type Day, dayIso } from '../breeding/day.ts'
import { type Fact, HERD } from '../breeding/facts.ts'
import type { MorningList, Row, VisitAhead } from '../breeding/list.ts'
import { type Section, sections } from '../breeding/sections.ts'

/** One line of the page. `key` names it from one list to the next. */
export type Item =
  /** The move to the bull weeks, or out of them, while it is due: above the sections. */
  | { readonly is: 'move'; readonly key: string; readonly move: MoveDue }
  /** Results of scanning visits that are still to be settled: above the sections too. */
  | { readonly is: 'kept-results'; readonly key: string; readonly count: number }
  | {
      readonly is: 'heading'
      readonly key: string
      readonly section: Section
      readonly toDo: number
      readonly done: number
    }
  | { readonly is: 'row'; readonly key: string; readonly row: Row }
  /** Animals that are with the bull as they should be: one line, opening to their rows. */
  | { readonly is: 'with-bull'; readonly key: string; readonly count: number; readonly open: boolean }
  | { readonly is: 'visit'; readonly key: string; readonly visit: VisitAhead }
  | { readonly is: 'also'; readonly key: string; readonly count: number }
  /** A fact of the day about an animal that has no row. */
  | { readonly is: 'fact'; readonly key: string; readonly fact: Fact }

export interface Page {
  readonly list: MorningList
  readonly items: readonly Item[]
  /** Index of an item that can be pointed at; -1 where there is none. */
  readonly pointer: number
  readonly withBullOpen: boolean
  /** Made of what was recorded by the end of its day only; see known-then.ts. */
  readonly knownThen?: true
  /** Rows of the work that a morning can finish. */
  readonly toDo: number
  readonly done: number
}

/** Sections whose rows inform and are not work to be finished in a morning. */
export const informs = (section: Section): boolean => section === 'sweep-bull' || section === 'heat-record'

const canBePointedAt = (item: Item): boolean =>
  item.is === 'row' ||
  item.is === 'fact' ||
  item.is === 'with-bull' ||
  item.is === 'move' ||
  item.is === 'kept-results'

const inWindow = (row: Row): boolean => row.section === 'sweep-bull' && row.reasons[0] === 'window'

/**
 * Lays a list out as a page; the pointer stays on the line it was on, else as near as can be.
 *
 * @param list the morning list of a day, @param book the book it was made from
 * @param before the page that was shown
 * @example pageOf(list, book, undefined).items[0] // the heading of the first section that has rows
 */
export function pageOf(list: MorningList, book: HerdBook, before: Page | undefined): Page {
  const withBullOpen = before?.withBullOpen ?? false
  const bySection = Map.groupBy(list.rows, (row) => row.section)
  const items: Item[] = movesDue(book, list).map((move) => ({ is: 'move', key: `move ${move.block}`, move }))
  const kept = book.keptResults.length
  if (kept > 0) items.push({ is: 'kept-results', key: 'kept-results', count: kept })
  let toDo = 0
  let done = 0
  for (const section of sections) {
    const rows = bySection.get(section) ?? []
    const visits = section === 'pregnancy-check' ? list.visits : []
    if (rows.length === 0 && visits.length === 0) continue
    const single = rows.filter((row) => !inWindow(row))
    const folded = rows.length - single.length
    const ticked = single.filter((row) => row.done).length
    items.push({ is: 'heading', key: section, section, toDo: single.length - ticked, done: ticked })
    if (!informs(section)) {
      toDo += single.length - ticked
      done += ticked
    }
    for (const row of single) items.push({ is: 'row', key: rowKey(row.animal), row })
    for (const visit of visits) items.push({ is: 'visit', key: `visit ${visit.block}`, visit })
    if (folded > 0) {
      items.push({ is: 'with-bull', key: 'with-bull', count: folded, open: withBullOpen })
      if (withBullOpen) {
        for (const row of rows) if (inWindow(row)) items.push({ is: 'row', key: rowKey(row.animal), row })
      }
    }
  }
  items.push(...recordedWithoutRow(list, book))
  return { list, items, pointer: pointerOn(items, list.day, before), withBullOpen, toDo, done }
}

const rowKey = (animal: string): string => `row ${animal}`

/** Facts of the day that tick no row, below the list: whatever was recorded can be seen. */
function recordedWithoutRow(list: MorningList, book: HerdBook): Item[] {
  const date = dayIso(list.day)
  const onList = new Set(list.rows.map((row) => row.animal))
  const facts = book.live.filter(
    (fact) => fact.date === date && fact.about !== HERD && fact.kind !== 'animal' && !onList.has(fact.about),
  )
  return facts.length === 0
    ? []
    : [
        { is: 'also', key: 'also', count: facts.length },
        ...facts.map((fact): Item => ({ is: 'fact', key: `fact ${fact.id}`, fact })),
      ]
}

function pointerOn(items: readonly Item[], day: Day, before: Page | undefined): number {
  if (before === undefined || before.items.length === 0) {
    const work = items.findIndex((item) => item.is === 'row' && !item.row.done)
    const move = items.findIndex((item) => item.is === 'move' && item.move.day <= day)
    // On the day of a move, and until it is made, that step comes first.
    if (move >= 0) return move
    return work >= 0 ? work : items.findIndex(canBePointedAt)
  }
  const key = before.items[before.pointer]?.key
  const same = key === undefined ? -1 : items.findIndex((item) => item.key === key && canBePointedAt(item))
  return same >= 0 ? same : nearest(items, before.pointer)
}

/** The item nearest to a place that can be pointed at: from there on, else before it. */
function nearest(items: readonly Item[], from: number): number {
  const place = Math.max(0, Math.min(from, items.length - 1))
  const next = items.findIndex((item, index) => index >= place && canBePointedAt(item))
  return next >= 0 ? next : items.findLastIndex(canBePointedAt)
}

/** The page with the pointer so many pointable lines further (negative: back), as far as there are any. */
export function moved(page: Page, by: number): Page {
  const step = Math.sign(by)
  let pointer = page.pointer
  let left = Math.abs(by)
  for (let i = pointer + step; left > 0 && i >= 0 && i < page.items.length; i += step) {
    const item = page.items[i]
    if (item !== undefined && canBePointedAt(item)) {
      pointer = i
      left -= 1
    }
  }
  return { ...page, pointer }
}

/** The page with the pointer on the first line of the next section, or of this or the one before. */
export function movedBySection(page: Page, by: 1 | -1): Page {
  const starts = page.items.flatMap((item, index) =>
    item.is === 'heading' || item.is === 'also' ? [nearest(page.items, index)] : [],
  )
  const target =
    by > 0
      ? starts.find((start) => start > page.pointer)
      : starts.findLast((start) => start >= 0 && start < page.pointer)
  return target === undefined || target < 0 ? page : { ...page, pointer: target }
}

/** The page with the pointer on an animal's row; undefined where she has none in sight. */
export function pointedAt(page: Page, animal: string): Page | undefined {
  const index = page.items.findIndex((item) => item.is === 'row' && item.row.animal === animal)
  return index < 0 ? undefined : { ...page, pointer: index }
}

const isWork = (item: Item | undefined): boolean =>
  item?.is === 'row' && !item.row.done && !informs(item.row.section)

/**
 * The page with the pointer on the next row to do, where the eye goes once a row is ticked: the first that followed
 * it on the page before, else the first of all.
 */
export function movedOn(page: Page, before: Page): Page {
  const places = new Map(page.items.map((item, index) => [item.key, index]))
  for (let i = before.pointer + 1; i < before.items.length; i += 1) {
    const index = places.get(before.items[i]?.key ?? '')
    if (index !== undefined && isWork(page.items[index])) return { ...page, pointer: index }
  }
  const first = page.items.findIndex(isWork)
  return first < 0 ? page : { ...page, pointer: first }
}

/** The move pointed at. */
export function moveAt(page: Page): MoveDue | undefined {
  const item = page.items[page.pointer]
  return item?.is === 'move' ? item.move : undefined
}

/** The row pointed at. */
export function rowAt(page: Page): Row | undefined {
  const item = page.items[page.pointer]
  return item?.is === 'row' ? item.row : undefined
}

/** Her row on the list, in sight or folded away. */
export const rowOf = (page: Page, animal: string): Row | undefined =>
  page.list.rows.find((row) => row.animal === animal)
