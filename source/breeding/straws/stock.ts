/**
 * The straws in the flasks on a day: what was counted and delivered, less what was used and spoiled. A lot is the
 * straws of one sire, kind and batch in one place.
 */
import type { HerdBook, StockFact } from '../book.ts'
import { compareTexts } from '../compare-texts.ts'
import type { Day } from '../day.ts'
import type { ServiceFact, StrawKind, StrawLot } from '../facts.ts'
import { notice, type Problem } from '../problem.ts'
import { type Movement, movementsUntil } from './movements.ts'

export interface Lot extends StrawLot {
  /** Straws left, 0 or more. */
  readonly left: number
  /** Day of the first fact that tells of the lot. */
  readonly since: Day
  /** Day of its last count, where it has been counted. */
  readonly counted: Day | undefined
}

/** Straws of one sire and kind, wherever they are. */
interface Pool {
  readonly sire: string
  readonly straw: StrawKind
  /** Straws left in all its lots, 0 or more. */
  readonly left: number
}

export interface Stock {
  /** By sire, kind, batch and place; empty lots too. */
  readonly lots: readonly Lot[]
  /** By sire and kind; used-up pools too. */
  readonly pools: readonly Pool[]
  /** Straws left of a sire and kind, 0 or more. */
  readonly left: (sire: string, straw: StrawKind) => number
  /** Ids of services whose straw was not in stock by the book, or not named. */
  readonly unaccounted: ReadonlySet<string>
  /** A service or a spoiled straw without stock, since the last count of that sire and kind: the count was wrong. */
  readonly notices: readonly Problem[]
}

type OpenLot = { -readonly [K in keyof Lot]: Lot[K] }

const fieldsOfPlace = ['batch', 'flask', 'canister'] as const

/**
 * The stock at the end of a day. Never below zero: a service without stock is a notice and takes nothing (she was
 * served, the count was wrong). A service takes a straw of the batch that it names, else the oldest.
 *
 * A count replaces the number of its own lot, and of every earlier lot of that sire and kind that may be the same
 * straws: those that differ from it in no batch, flask or canister that both name. Lots counted on the same day stay.
 *
 * @param book the herd book, @param today facts of this day count, services too
 * @example stockOn(book, today).left('S17', 'sexed') // 12
 */
export const stockOn = (book: HerdBook, today: Day): Stock => stockAfter(book, movementsUntil(book, today))

/** The stock after some movements, which are in order. */
export function stockAfter(book: HerdBook, movements: readonly Movement[]): Stock {
  const fold = new StockFold(book)
  for (const { fact, day } of movements) {
    if (fact.kind === 'service') fold.use(fact)
    else fold.change(fact, day)
  }
  return fold.stock()
}

class StockFold {
  readonly #book: HerdBook
  readonly #pools = new Map<string, { sire: string; straw: StrawKind; lots: OpenLot[]; notices: Problem[] }>()
  readonly #unaccounted = new Set<string>()
  readonly #unnamed: Problem[] = []

  constructor(book: HerdBook) {
    this.#book = book
  }

  change(fact: StockFact, day: Day): void {
    const pool = this.#pool(fact.sire, fact.straw)
    if (fact.kind === 'spoiled') {
      for (let i = 0; i < fact.count; i += 1) {
        if (takeOne(pool.lots, fact)) continue
        pool.notices.push(notice('spoiled-without-stock', '', { ...named(fact), count: fact.count - i }))
        break
      }
      return
    }
    let lot = pool.lots.find((one) => fieldsOfPlace.every((field) => one[field] === fact[field]))
    if (lot === undefined) {
      lot = { ...lotNamed(fact), left: 0, since: day, counted: undefined }
      pool.lots.push(lot)
      pool.lots.sort(byAge)
    }
    if (fact.kind === 'delivery') lot.left += fact.count
    else {
      pool.notices = []
      for (const one of pool.lots) if (one.counted !== day && mayBeSame(one, fact)) one.left = 0
      lot.left = fact.count
      lot.counted = day
    }
  }

  use(fact: ServiceFact): void {
    const straw = fact.straw ?? this.#onlyKind(fact.sire)
    if (fact.sire === undefined || straw === undefined) {
      this.#unnamed.push(this.#noticeOf(fact, 'service-without-straw', {}))
      return
    }
    const pool = this.#pool(fact.sire, straw)
    if (takeOne(pool.lots, { batch: fact.batch })) return
    pool.notices.push(this.#noticeOf(fact, 'service-without-stock', { sire: fact.sire, straw }))
  }

  #noticeOf(fact: ServiceFact, code: string, straw: Record<string, string>): Problem {
    this.#unaccounted.add(fact.id)
    const animal = this.#book.animals.get(fact.about)?.number
    return notice(code, '', { date: fact.date, service: fact.id, ...straw }, animal)
  }

  stock(): Stock {
    const inOrder = [...this.#pools.values()].sort(
      (a, b) => compareTexts(a.sire, b.sire) || compareTexts(a.straw, b.straw),
    )
    const pools = inOrder
      .filter((pool) => pool.lots.length > 0)
      .map(({ sire, straw, lots }) => ({ sire, straw, left: lots.reduce((sum, lot) => sum + lot.left, 0) }))
    const left = new Map(pools.map((pool) => [poolKey(pool.sire, pool.straw), pool.left]))
    return {
      lots: inOrder.flatMap((pool) => pool.lots.toSorted(byPlace)),
      pools,
      left: (sire, straw) => left.get(poolKey(sire, straw)) ?? 0,
      unaccounted: this.#unaccounted,
      notices: [...this.#unnamed, ...inOrder.flatMap((pool) => pool.notices)],
    }
  }

  #pool(sire: string, straw: StrawKind) {
    const key = poolKey(sire, straw)
    let pool = this.#pools.get(key)
    if (pool === undefined) {
      pool = { sire, straw, lots: [], notices: [] }
      this.#pools.set(key, pool)
    }
    return pool
  }

  /** The kind of a straw that a service does not tell: the only kind of that sire in stock. */
  #onlyKind(sire: string | undefined): StrawKind | undefined {
    const kinds = [...this.#pools.values()].filter(
      (pool) => pool.sire === sire && pool.lots.some((lot) => lot.left > 0),
    )
    return kinds.length === 1 ? kinds[0]?.straw : undefined
  }
}

const poolKey = (sire: string, straw: StrawKind): string => `${straw} ${sire}`

const named = ({ sire, straw, date }: StockFact) => ({ sire, straw, date })

const lotNamed = ({ sire, straw, batch, flask, canister }: StrawLot): StrawLot => ({
  sire,
  straw,
  ...(batch === undefined ? {} : { batch }),
  ...(flask === undefined ? {} : { flask }),
  ...(canister === undefined ? {} : { canister }),
})

type Place = { readonly [F in (typeof fieldsOfPlace)[number]]?: string | undefined }

/** Whether two descriptions may mean the same straws: no batch, flask or canister that both name differs. */
const mayBeSame = (a: Place, b: Place): boolean =>
  fieldsOfPlace.every((field) => a[field] === undefined || b[field] === undefined || a[field] === b[field])

const byAge = (a: Lot, b: Lot): number => a.since - b.since || byPlace(a, b)

/** Takes a straw: of a lot that agrees with what is said of it before another, of an older one before a younger. */
function takeOne(lots: readonly OpenLot[], said: Place): boolean {
  let best: OpenLot | undefined
  for (const lot of lots) {
    if (lot.left > 0 && (best === undefined || agreement(lot, said) > agreement(best, said))) best = lot
  }
  if (best === undefined) return false
  best.left -= 1
  return true
}

/** How well a lot agrees with what is said: 2 for each field that is the same, 1 for each that the lot leaves open. */
const agreement = (lot: Place, said: Place): number =>
  agrees(lot.batch, said.batch) + agrees(lot.flask, said.flask) + agrees(lot.canister, said.canister)

const agrees = (lot: string | undefined, said: string | undefined): number =>
  said === undefined ? 0 : lot === said ? 2 : lot === undefined ? 1 : 0

const byPlace = (a: Lot, b: Lot): number =>
  compareTexts(a.flask ?? '', b.flask ?? '') ||
  compareTexts(a.canister ?? '', b.canister ?? '') ||
  compareTexts(a.batch ?? '', b.batch ?? '')

/**
 * Millilitres of a straw, as its counts tell; undefined where none does.
 *
 * @example volumeOf(book, 'S17', 'sexed') // 0.25
 */
export function volumeOf(book: HerdBook, sire: string, straw: StrawKind): number | undefined {
  const told = book.stock.findLast(
    (fact) =>
      fact.kind === 'stock-take' && fact.sire === sire && fact.straw === straw && fact.volumeMl !== undefined,
  )
  return told?.kind === 'stock-take' ? told.volumeMl : undefined
}
