/**
 * A herd in its last week of AI, made by hand: 124 cows served in the first fifteen days, ten still to be served, two
 * bulls. Invented. Spring block, mating start 1 May 2026, six weeks of AI, three of the bull.
 */
import { dayIso, isoDay, plusDays } from '../../../source/breeding/day.ts'
import type { Fact } from '../../../source/breeding/facts.ts'
import type { Now } from '../../../source/morning/now.ts'

const START = isoDay('2026-05-01')
/** The date of a season day. */
export const on = (s: number): string => dayIso(plusDays(START, s))
/** A moment of a season day. */
export const momentOn = (s: number, time: string): Now => ({ day: plusDays(START, s), time })

let made = 0
const fact = (about: string, one: Record<string, unknown>): Fact => {
  made += 1
  return { id: `fn${made}`, about, at: '2026-01-01T00:00:00.000Z', ...one } as unknown as Fact
}

const animal = (number: string, more: Record<string, unknown>): Fact =>
  fact(`animal-${number}`, {
    kind: 'animal',
    date: '2026-01-01',
    number,
    sex: 'F',
    born: '2021-02-20',
    ...more,
  })

/** A cow that calved on a season day, and was served on another. */
function cow(number: string, calved: number, served?: number): readonly Fact[] {
  const about = `animal-${number}`
  return [
    animal(number, {
      name: 'Teasel',
      block: 'spring',
      lactation: 2,
      breed: 'Holstein-Friesian',
      sire: 'S1',
      dam: 'D1',
    }),
    fact(about, { kind: 'calving', date: on(calved) }),
    fact(about, { kind: 'heat', date: on(-12), how: 'standing', certainty: 'sure' }),
    ...(served === undefined
      ? []
      : [
          fact(about, {
            kind: 'service',
            date: on(served),
            time: '06:00',
            sire: 'S17',
            straw: 'conventional',
            batch: '4',
          }),
        ]),
  ]
}

export interface Served {
  readonly number: string
  /** Season day of her service. */
  readonly day: number
}

/** The cows served on days 0 to 14, in order of their numbers. */
export const served: readonly Served[] = Array.from({ length: 124 }, (_, index) => ({
  number: String(301 + index),
  day: index % 15,
}))
/** Those that come back three weeks later. */
export const comeBack: readonly string[] = served
  .filter(({ day }) => day === 14)
  .slice(0, 4)
  .map(({ number }) => number)
/** Not served yet. */
export const unserved: readonly string[] = Array.from({ length: 10 }, (_, index) => String(501 + index))

export const fortnightHerd = (): readonly Fact[] => [
  fact('herd', {
    kind: 'farm',
    date: '2026-01-01',
    name: 'Sloe Lane',
    zone: 'Europe/Dublin',
    milkings: ['05:30', '15:30'],
  }),
  fact('herd', { kind: 'policy', date: '2026-01-01', set: { useSexed: false, beefLastWeek: false } }),
  fact('herd', {
    kind: 'season',
    date: '2026-01-01',
    block: 'spring',
    matingStart: on(0),
    aiWeeks: 6,
    bullWeeks: 3,
  }),
  fact('herd', {
    kind: 'stock-take',
    date: on(-10),
    sire: 'S17',
    straw: 'conventional',
    batch: '4',
    count: 300,
    breed: 'Jersey',
    easyCalving: true,
  }),
  ...served.flatMap(({ number, day }) => cow(number, -70, day)),
  ...unserved.flatMap((number) => cow(number, -50)),
  ...cow('601', -400),
  animal('901', { name: 'Boris', sex: 'M', born: '2022-03-01', ready: true, breed: 'Angus' }),
  animal('902', { name: 'Tom', sex: 'M', born: '2022-04-01', ready: true, breed: 'Angus' }),
]
