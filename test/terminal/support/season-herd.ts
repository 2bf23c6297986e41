/**
 * The herd of herd.ts with what the season's screens tell besides: flasks with nitrogen, straws of every kind that run
 * low, bulls, a bull's services that came back, an earlier season. Invented.
 */
import type { Fact } from '../../../source/breeding/facts.ts'
import { ago, checked, cow, herd, served } from './herd.ts'

let made = 0
const herdFact = (kind: string, date: string, rest: Record<string, unknown>): Fact => {
  made += 1
  return {
    id: `h${made}`,
    about: 'herd',
    at: '2026-01-01T00:00:00.000Z',
    kind,
    date,
    ...rest,
  } as unknown as Fact
}
const nitrogen = (days: number, depthCm: number, flask: string): Fact =>
  herdFact('nitrogen', ago(days), { depthCm, flask })

const bull = (number: string, name: string, born: string): Fact[] => [
  {
    id: `bull-${number}`,
    about: `bull-${number}`,
    at: '2026-01-01T00:00:00.000Z',
    kind: 'animal',
    date: '2026-01-01',
    number,
    name,
    sex: 'M',
    born,
    breed: 'Angus',
    ready: true,
  } as unknown as Fact,
]

/** Straws in two flasks, one kind short, one used up; nitrogen that must be ordered. */
const flasks = (): readonly Fact[] => [
  herdFact('stock-take', '2026-04-20', {
    sire: 'S30',
    straw: 'sexed',
    batch: '12',
    flask: 'house',
    canister: '2',
    count: 9,
    sireName: 'Lantern',
    breed: 'Jersey',
    volumeMl: 0.25,
    easyCalving: true,
    gestationDays: 279,
  }),
  herdFact('stock-take', '2026-04-20', {
    sire: 'S9',
    straw: 'conventional',
    batch: '2',
    flask: 'house',
    canister: '1',
    count: 0,
  }),
  herdFact('delivery', ago(10), {
    sire: 'S30',
    straw: 'sexed',
    batch: '12',
    flask: 'house',
    canister: '2',
    count: 3,
  }),
  nitrogen(30, 44, 'house'),
  nitrogen(16, 34, 'house'),
  nitrogen(2, 22, 'house'),
  nitrogen(2, 31, 'travel'),
]

/** Two grown bulls and a young one; the second was seen to serve, and five of his six came back. */
export const bulls = (): readonly Fact[] => [
  ...bull('B7', 'Otto', '2022-03-01'),
  ...bull('B8', 'Basil', '2022-04-01'),
  ...bull('B9', 'Sprig', '2025-02-01'),
]

/** Six services of bull B8 on the first day of the bull weeks, five of which came back. */
export const doubtfulBull = (): readonly Fact[] => {
  const bullDay = -15
  const natural = { natural: true, sire: 'B8', straw: undefined }
  return ['501', '502', '503', '504', '505', '506'].flatMap((number, index) => [
    ...cow(number, 'Thrift', 100, [
      served(bullDay, natural),
      ...(index < 5 ? [{ kind: 'heat', date: ago(bullDay - 21), how: 'standing', certainty: 'sure' }] : []),
    ]),
  ])
}

/** The whole. */
export const seasonHerd = (): readonly Fact[] => [
  ...herd(),
  ...flasks(),
  ...bulls(),
  // The spring before: two served, one in calf, one empty.
  herdFact('season', '2025-01-01', { block: 'spring', matingStart: '2025-05-01', aiWeeks: 6, bullWeeks: 3 }),
  ...cow('601', 'Umber', 80, [served(392), checked(350, 'pregnant')]),
  ...cow('602', 'Vetch', 75, [served(390), checked(350, 'empty')]),
]
