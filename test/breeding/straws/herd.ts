/** Short ways to write an invented herd for the tests of the straws. */
import { openBook } from '../../../source/breeding/book.ts'
import { type Day, dayIso, isoDay } from '../../../source/breeding/day.ts'
import type { Fact, FactKind } from '../../../source/breeding/facts.ts'
import type { Serving } from '../../../source/breeding/session.ts'
import { standingOn } from '../../../source/breeding/standing.ts'

type Fields = Record<string, unknown>

/** A fact without its envelope: the herd gives it an id and an instant. */
export type Draft = Fields & { kind: FactKind; date: string; about: string }

const matingStart = isoDay('2026-05-01')

/** The date of a season day. */
export const on = (s: number): string => dayIso((matingStart + s) as Day)
export const dayOn = (s: number): Day => (matingStart + s) as Day

const ofHerd = (kind: FactKind, date: string, fields: Fields): Draft => ({
  kind,
  date,
  about: 'herd',
  ...fields,
})

export const farm = (): Draft =>
  ofHerd('farm', '2024-01-01', { name: 'Test farm', zone: 'Europe/Dublin', milkings: ['05:30', '15:30'] })
export const season = (aiWeeks = 6, bullWeeks = 3): Draft =>
  ofHerd('season', '2024-01-01', { block: 'spring', matingStart: dayIso(matingStart), aiWeeks, bullWeeks })
export const policy = (set: Fields): Draft => ofHerd('policy', '2024-01-01', { set })

/** A cow of one calving, 80 days before the mating start, unless told otherwise. */
export const cow = (number: string, fields: Fields = {}, calved: number | null = -80): Draft[] => [
  {
    kind: 'animal',
    date: '2024-01-01',
    about: number,
    number,
    sex: 'F',
    born: '2022-02-01',
    block: 'spring',
    lactation: 0,
    ...fields,
  },
  ...(calved === null ? [] : [{ kind: 'calving' as const, date: on(calved), about: number }]),
]
export const maiden = (number: string, fields: Fields = {}): Draft[] =>
  cow(number, { ready: true, born: '2025-01-10', ...fields }, null)
/** A sire with a record of his own. */
export const bull = (number: string, fields: Fields = {}): Draft => ({
  kind: 'animal',
  date: '2024-01-01',
  about: `bull-${number}`,
  number,
  sex: 'M',
  ...fields,
})

export const heat = (about: string, s: number, fields: Fields = {}): Draft => ({
  kind: 'heat',
  date: on(s),
  about,
  how: 'standing',
  certainty: 'sure',
  ...fields,
})
/** Parents that no straw is related to. */
export const parents = { sire: 'S90', dam: 'D90' }
/** A cow with known parents, on heat on the morning of season day 4, and seen cycling before. */
export const onHeat = (number: string, time = '05:00'): Draft[] => [
  ...cow(number, parents),
  heat(number, -17),
  heat(number, 4, { time }),
]
export const service = (
  about: string,
  s: number,
  sire: string,
  straw: string,
  fields: Fields = {},
): Draft => ({
  kind: 'service',
  date: on(s),
  about,
  sire,
  straw,
  ...fields,
})
const lot =
  (kind: FactKind) =>
  (s: number, sire: string, straw: string, count: number, fields: Fields = {}) =>
    ofHerd(kind, on(s), { sire, straw, count, ...fields })
export const stockTake = lot('stock-take')
export const delivery = lot('delivery')
export const spoiled = lot('spoiled')
export const nitrogen = (s: number, depthCm: number, fields: Fields = {}): Draft =>
  ofHerd('nitrogen', on(s), { depthCm, ...fields })

/** Facts in the order given, each with an id of its own and a later instant. */
export const facts = (...drafts: readonly (Draft | readonly Draft[])[]): Fact[] =>
  drafts.flat().map(
    (draft, i) =>
      ({
        id: `f${i}`,
        at: new Date(Date.UTC(2026, 0, 1) + i * 1000).toISOString(),
        ...draft,
      }) as unknown as Fact,
  )

export const herd = (...drafts: readonly (Draft | readonly Draft[])[]) => openBook(facts(...drafts))

export function standing(book: ReturnType<typeof herd>, number: string, s: number) {
  const animal = book.byNumber.get(number)
  if (animal === undefined) throw new RangeError(`no animal ${number}`)
  return standingOn(book, animal, dayOn(s))
}

/** At the next milking, nine hours after the heat was seen: hours that suit a sexed straw too. */
export const tonight: Serving = { session: 'evening', hours: 9, fromOnset: false }
/** Hours that suit a conventional straw only. */
export const late: Serving = { session: 'next-morning', hours: 21, fromOnset: false }

/** Nobody is related. */
export const unrelated = () => ({ inbreeding: 0, generations: 2 })
