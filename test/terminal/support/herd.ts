/**
 * A small herd made by hand: on Thu 28 May 2026 every section of the morning list has a row. Invented.
 * Spring block, mating start 1 May 2026 (six weeks of AI, three of the bull): the day is season day 27.
 */
import { dayIso, isoDay, plusDays } from '../../../source/breeding/day.ts'
import type { Fact } from '../../../source/breeding/facts.ts'
import type { Now } from '../../../source/morning/now.ts'

export const DAY = '2026-05-28'
/** Quarter past five on the day. */
export const now: Now = { day: isoDay(DAY), time: '05:15' }
export const at = (time: string, day = DAY): Now => ({ day: isoDay(day), time })
/** The date so many days before the day. */
export const ago = (days: number): string => dayIso(plusDays(isoDay(DAY), -days))

let made = 0
type Loose = Record<string, unknown> & { kind: string; date: string }
const fact = (about: string, one: Loose): Fact => {
  made += 1
  return { id: `f${made}`, about, at: '2026-01-01T00:00:00.000Z', ...one } as unknown as Fact
}

export const cow = (
  number: string,
  name: string,
  calved: number | undefined,
  happened: readonly Loose[] = [],
  record: Record<string, unknown> = {},
): readonly Fact[] => [
  fact(`cow-${number}`, {
    kind: 'animal',
    date: '2026-01-01',
    number,
    name,
    sex: 'F',
    born: '2021-02-20',
    breed: 'Holstein-Friesian',
    sire: 'S1',
    dam: 'D1',
    block: 'spring',
    lactation: calved === undefined ? 0 : 2,
    officialId: `UK 123450 7${number.padStart(5, '0')}`,
    ...(calved === undefined ? { ready: true, born: '2024-02-20' } : {}),
    ...record,
  }),
  ...(calved === undefined ? [] : [fact(`cow-${number}`, { kind: 'calving', date: ago(calved) })]),
  ...happened.map((one) => fact(`cow-${number}`, one)),
]

export const heat = (days: number, more: Record<string, unknown> = {}): Loose => ({
  kind: 'heat',
  date: ago(days),
  how: 'standing',
  certainty: 'sure',
  ...more,
})
export const served = (days: number, more: Record<string, unknown> = {}): Loose => ({
  kind: 'service',
  date: ago(days),
  time: '06:00',
  sire: 'S17',
  straw: 'conventional',
  ...more,
})
export const checked = (days: number, result: string, more: Record<string, unknown> = {}): Loose => ({
  kind: 'check',
  date: ago(days),
  method: 'ultrasound',
  result,
  ...more,
})

/** The herd as a whole: farm, season, straws. */
export const frame = (): readonly Fact[] => [
  fact('herd', {
    kind: 'farm',
    date: '2026-01-01',
    name: 'Hazel Bank',
    zone: 'Europe/Dublin',
    milkings: ['05:30', '15:30'],
  }),
  fact('herd', {
    kind: 'season',
    date: '2026-01-01',
    block: 'spring',
    matingStart: '2026-05-01',
    aiWeeks: 6,
    bullWeeks: 3,
  }),
  fact('herd', { kind: 'policy', date: '2026-01-01', set: { useSexed: false } }),
  fact('herd', {
    kind: 'stock-take',
    date: '2026-04-20',
    sire: 'S17',
    straw: 'conventional',
    batch: '4',
    count: 30,
    breed: 'Jersey',
    easyCalving: true,
  }),
  fact('herd', {
    kind: 'stock-take',
    date: '2026-04-20',
    sire: 'S21',
    straw: 'conventional',
    batch: '9',
    count: 20,
    breed: 'Holstein-Friesian',
    easyCalving: true,
  }),
  fact('herd', {
    kind: 'stock-take',
    date: '2026-04-20',
    sire: 'B3',
    straw: 'beef',
    batch: '1',
    count: 12,
    breed: 'Angus',
    easyCalving: true,
  }),
]

/** Every section of the list. */
export const herd = (): readonly Fact[] => [
  ...frame(),
  // Take care: in calf and on heat; calved lately and on heat; a loss.
  ...cow('288', 'Bramble', 400, [served(60), checked(20, 'pregnant'), heat(0, { time: '05:00' })]),
  ...cow('319', 'Clover', 25, [heat(1, { time: '17:00' })]),
  // Serve.
  ...cow('412', 'Buttercup', 80, [heat(22), heat(0, { time: '05:05' })]),
  ...cow('37', 'Dora', 70, [heat(1, { time: '16:00', certainty: 'suspect' })]),
  // Second service.
  ...cow('101', 'Erica', 90, [served(21), heat(0, { time: '05:00' })]),
  // Repeat-heat watch.
  ...cow('52', 'Fern', 85, [served(20)]),
  ...cow('53', 'Gorse', 85, [served(22)]),
  ...cow('54', 'Hazel', 85, [served(24)]),
  // Pregnancy check.
  ...cow('61', 'Iris', 100, [served(32)]),
  ...cow('62', 'Juno', 100, [served(40, { straw: 'beef', sire: 'B3' })]),
  // Sweep bull.
  ...cow('71', 'Kelpie', 100, [served(25), served(4), heat(0, { time: '05:00' })]),
  ...cow('72', 'Linnet', 20),
  // No heat seen.
  ...cow('81', 'Moss', 75),
  // Not on the list: in calf; a maiden served lately.
  ...cow('90', 'Nettle', 300, [served(50), checked(15, 'pregnant')]),
  ...cow('905', 'Olive', undefined, [served(8)]),
]
