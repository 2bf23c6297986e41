import { describe, expect, test } from 'vitest'
import { chanceInCalf, conceptionOfService, returnsExpected } from '../../source/breeding/animal-chances.ts'
import type { AnimalRecord } from '../../source/breeding/book.ts'
import { defaultRates } from '../../source/breeding/chances/rates.ts'
import { inCalfWithoutReturn, morningChances, returnsAfter } from '../../source/breeding/chances.ts'
import type { Service } from '../../source/breeding/cycle.ts'
import { standardPolicy } from '../../source/breeding/policy.ts'
import { standingOn } from '../../source/breeding/standing.ts'
import {
  type Animal,
  bookOf,
  bullService,
  calving,
  cow,
  dayAt,
  empty,
  fromBull,
  heat,
  left,
  maiden,
  pregnant,
  service,
  standingAt,
  suspect,
  unsure,
  withBull,
} from './support.ts'

const { conception } = defaultRates
const inCalfAt = (s: number, one: Animal): number | undefined => {
  const book = bookOf(one)
  const animal = book.byNumber.get(one.record.number ?? '') as AnimalRecord
  return chanceInCalf(standingOn(book, animal, dayAt(s)), book, defaultRates)
}
const calved = [calving(-500), calving(-60)]
const first = cow({ lactation: 0 }, calving(-60), service(2))

describe('in calf this morning', () => {
  test('for certain where she is known to be', () => {
    expect(inCalfAt(40, cow(...calved, service(2), pregnant(38)))).toBe(1)
  })

  test('nothing is said of one that was not served', () => {
    expect(inCalfAt(40, cow(...calved, heat(2)))).toBeUndefined()
  })

  test.each([3, 4, 23, 40])('on day %d of one served on day 2: from the days without a return', (s) => {
    const returns = returnsAfter('service', 22, defaultRates)
    expect(inCalfAt(s, cow(...calved, service(2)))).toBe(inCalfWithoutReturn(0.55, s - 3, returns))
  })

  test('a cow of one calving and a maiden have the shorter cycle', () => {
    const returns = returnsAfter('service', 21, defaultRates)
    expect(inCalfAt(26, first)).toBe(inCalfWithoutReturn(0.55, 23, returns))
    expect(inCalfAt(26, maiden(service(2)))).toBe(inCalfWithoutReturn(0.65, 23, returns))
  })

  test('not where she was checked empty or came back', () => {
    expect(inCalfAt(40, cow(...calved, service(2), empty(38)))).toBe(0)
    expect(inCalfAt(40, cow(...calved, service(2), heat(20)))).toBe(0)
    for (const unclear of [heat(19), suspect(24), unsure(38)])
      expect(inCalfAt(40, cow(...calved, service(2), unclear))).toBeGreaterThan(0.5)
  })

  test.each([
    ['to a bull that was with her after she came back', undefined, [heat(20), withBull(21)]],
    [
      'on the day of her return itself it is her own straw that failed',
      0,
      [heat(20), withBull(19), fromBull(20)],
    ],
    ['to a bull that went before she came back', 0, [withBull(10), fromBull(15), heat(24)]],
    [
      'to one with her less than 42 days before the empty check',
      undefined,
      [withBull(10), fromBull(20), empty(61)],
    ],
    ['to one with her 42 days before it', 0, [withBull(10), fromBull(20), empty(62)]],
    ['to one with her after it', undefined, [empty(40), withBull(41)]],
  ] as const)('perhaps %s: %s', (_, expected, since) => {
    expect(inCalfAt(70, cow(...calved, service(2), ...since))).toBe(expected)
  })
})

test('the chance that a service holds goes by who was served and with what', () => {
  const of = (one: Animal): number =>
    conceptionOfService(standingAt(10, one).lastService as Service, defaultRates)
  expect(of(cow(...calved, service(2, { straw: 'sexed' })))).toBe(conception.cowSexed)
  expect(of(cow(...calved, service(2, { straw: 'beef' })))).toBe(conception.cowConventional)
  expect(of(cow(...calved, service(2, { straw: undefined })))).toBe(conception.cowConventional)
  expect(of(maiden(service(2, { straw: 'sexed' })))).toBe(conception.maidenSexed)
  expect(of(cow(...calved, bullService(2)))).toBe(conception.natural)
})

describe('returns to come', () => {
  const expected = (s: number, one: Animal, day: number): number =>
    returnsExpected(standingAt(s, one), standardPolicy, defaultRates, dayAt(day))
  const served = cow(...calved, service(2))

  test('of today as the list says', () => {
    const returns = returnsAfter('service', 22, defaultRates)
    for (const s of [3, 20, 24, 45])
      expect(expected(s, served, s)).toBe(morningChances(0.55, s - 2, returns).returnToday)
  })

  test('of all days to come they add up to those that are open and not back', () => {
    const days = Array.from({ length: 200 }, (_, i) => expected(22, served, 22 + i))
    const back = days.reduce((sum, chance) => sum + chance)
    expect(back).toBeCloseTo(1 - (inCalfAt(22, served) ?? Number.NaN), 6)
  })

  test('none of one that is not waited for', () => {
    const others = {
      'not served': cow(...calved),
      'in calf': cow(...calved, service(2), pregnant(38)),
      'checked empty': cow(...calved, service(2), empty(38)),
      back: cow(...calved, service(2), heat(21)),
      left: cow(...calved, service(2), left(38)),
    }
    for (const [what, one] of Object.entries(others)) expect(expected(40, one, 41), what).toBe(0)
    // Back too soon to count, she is waited for like the others.
    expect(expected(40, cow(...calved, service(2), heat(19)), 41)).toBe(expected(40, served, 41))
  })
})
