/**
 * Builders for herds of an animal or two, told in season days: day 0 is the mating start, 1 May 2026.
 *
 *     placed(cow(calving(-60), service(0)), 21) // 'repeat-heat-watch: since-service'
 */
import { expect, test } from 'vitest'
import { type AnimalRecord, type HerdBook, openBook } from '../../source/breeding/book.ts'
import { type Day, dayIso, type IsoDate, isoDay, plusDays } from '../../source/breeding/day.ts'
import type { AnimalRecordFact, Fact, FactKind } from '../../source/breeding/facts.ts'
import type { MorningList, Row } from '../../source/breeding/list.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import { strawWarnings } from '../../source/breeding/sections.ts'
import { type Standing, standingOn } from '../../source/breeding/standing.ts'

export const matingStart: Day = isoDay('2026-05-01')

/** The calendar day of a season day. */
export const dayAt = (s: number): Day => plusDays(matingStart, s)
/** The date of a season day. */
export const on = (s: number): IsoDate => dayIso(dayAt(s))

/** A fact without id, animal, who and when. */
export type Happening = Readonly<Record<string, unknown>> & {
  readonly kind: FactKind
  readonly date: IsoDate
  /** Given only where a correction or a test has to name it. */
  readonly id?: string
}
type More = Readonly<Record<string, unknown>>

const happening =
  (kind: FactKind, standard: More = {}) =>
  (s: number, more: More = {}): Happening => ({ kind, date: on(s), ...standard, ...more })

export const heat = happening('heat', { how: 'standing', certainty: 'sure' })
export const suspect = happening('heat', { how: 'paint', certainty: 'suspect' })
/** An activity record: the onset of the heat. */
export const onset = happening('heat', { how: 'activity', certainty: 'sure' })
export const looked = happening('looked')
export const service = happening('service', { sire: 'S1', straw: 'conventional' })
export const bullService = happening('service', { natural: true })
export const pregnant = happening('check', { method: 'ultrasound', result: 'pregnant' })
export const empty = happening('check', { method: 'ultrasound', result: 'empty' })
export const unsure = happening('check', { method: 'ultrasound', result: 'unsure' })
export const examined = happening('examined')
export const calving = happening('calving', { ease: 1 })
export const loss = happening('loss')
export const bar = happening('bar')
export const unbar = happening('unbar')
export const toBull = happening('to-bull')
export const withBull = happening('with-bull')
export const fromBull = happening('from-bull')
export const dry = happening('dry')
export const left = happening('left')
export const hold = (from: number, until?: number): Happening =>
  happening('hold')(from, until === undefined ? {} : { until: on(until) })
export const score = (s: number, condition: number): Happening => happening('score')(s, { condition })
export const block = (s: number, name: string): Happening => happening('block')(s, { block: name })
export const note = (s: number): Happening => happening('note')(s, { note: 'quiet' })
/** The vet's plan of a fixed-time service on a day. */
export const planned = (s: number, serveOn: number, more: More = {}): Happening =>
  examined(s, { serveOn: on(serveOn), ...more })
export const correction = (voids: string, more: More = {}): Happening => ({
  kind: 'correction',
  date: on(0),
  voids,
  ...more,
})

/** What differs in a record; undefined takes a standard field away. */
type Recorded = { readonly [K in keyof AnimalRecordFact]?: AnimalRecordFact[K] | undefined }
/** An animal: her record and what happened to her. */
export interface Animal {
  readonly record: Recorded
  readonly happenings: readonly Happening[]
}
type Given = Happening | Recorded

const animal =
  (standard: Recorded) =>
  (...given: readonly Given[]): Animal => {
    const isHappening = (one: Given): one is Happening => 'kind' in one
    const records = given.filter((one) => !isHappening(one))
    return {
      record: Object.assign({ number: '1', sex: 'F', block: 'spring', ...standard }, ...records),
      happenings: given.filter(isHappening),
    }
  }

/** A cow in her second lactation or later; her calving is a fact of its own. */
export const cow = animal({ lactation: 1 })
/** A maiden ready to be served. */
export const maiden = animal({ lactation: 0, ready: true })

export interface Season {
  readonly block?: string
  readonly matingStart?: IsoDate
  readonly aiWeeks?: number
  readonly bullWeeks?: number
  /** Season days of planned scanning visits. */
  readonly scans?: readonly number[]
}
/** What differs from six weeks of AI, three of the bull, milkings at 05:30 and 15:30 and the standard policy. */
export interface Herd extends Season {
  readonly milkings?: readonly string[]
  readonly policy?: More
  /** In place of the one season of the spring block. */
  readonly seasons?: readonly Season[]
  readonly extra?: readonly Happening[]
}

const seasonOf = ({ aiWeeks = 6, bullWeeks = 3, scans = [], ...season }: Season): Happening => ({
  kind: 'season',
  date: on(-200),
  block: season.block ?? 'spring',
  matingStart: season.matingStart ?? on(0),
  aiWeeks,
  bullWeeks,
  scanDates: scans.map(on),
})

/** The facts of a herd as they stand in a file. */
export function factsOf(animals: readonly Animal[], herd: Herd = {}): Fact[] {
  const told: More[] = [
    {
      kind: 'farm',
      date: on(-200),
      name: 'Long Acre',
      zone: 'Europe/Dublin',
      milkings: herd.milkings ?? ['05:30', '15:30'],
    },
    { kind: 'policy', date: on(-200), set: herd.policy ?? {} },
    ...(herd.seasons ?? [herd]).map(seasonOf),
    ...(herd.extra ?? []),
    ...animals.flatMap(({ record, happenings }) => {
      const about = `animal-${record.number}`
      return [
        { kind: 'animal', date: on(-200), ...record, about },
        ...happenings.map((one) => ({ ...one, about })),
      ]
    }),
  ]
  return told.map((one, index) => ({
    id: `f${index}`,
    about: 'herd',
    at: '2026-05-28T04:15:09.120Z',
    ...one,
  })) as unknown as Fact[]
}

export const bookOf = (animals: Animal | readonly Animal[], herd?: Herd): HerdBook =>
  openBook(factsOf('record' in animals ? [animals] : animals, herd))

/** The list of season day s. */
export const listAt = (s: number, animals: Animal | readonly Animal[], herd?: Herd): MorningList =>
  morningList(bookOf(animals, herd), dayAt(s))

/** The one row of an animal on season day s. */
export const rowAt = (s: number, one: Animal, herd?: Herd): Row | undefined => listAt(s, one, herd).rows[0]

/** Her standing on season day s. */
export function standingAt(s: number, one: Animal, herd?: Herd): Standing {
  const book = bookOf(one, herd)
  return standingOn(book, book.byNumber.get(one.record.number ?? '') as AnimalRecord, dayAt(s))
}

/** Warnings about straws have tests of their own. */
const ofStraws: ReadonlySet<string> = new Set(strawWarnings)

/**
 * Where an animal stands on season day s, as `section: reasons (warnings) > also, done`; `-` where she has no row.
 */
export function placed(one: Animal, s: number, herd?: Herd): string {
  const row = rowAt(s, one, herd)
  return row === undefined ? '-' : described(row)
}

/** A row as `placed` says it. */
export function described(row: Row): string {
  const warnings = row.warnings.filter((warning) => !ofStraws.has(warning))
  return [
    `${row.section}: ${row.reasons.join(' ')}`,
    warnings.length === 0 ? '' : ` (${warnings.join(' ')})`,
    row.also === undefined ? '' : ` > ${row.also}`,
    row.done ? ', done' : '',
  ].join('')
}

/** A line of a table: what is told, the animal, the season day, where she stands, and what is special to the herd. */
type Line = readonly [what: string, one: Animal, s: number, expected: string, herd?: Herd]

/** One test a line. */
export function table(lines: readonly Line[]): void {
  test.each(lines.map((line) => [line[0], line] as const))('%s', (_, [, one, s, expected, herd]) => {
    expect(placed(one, s, herd)).toBe(expected)
  })
}
