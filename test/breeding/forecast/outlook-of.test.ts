import { expect, test } from 'vitest'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import type { AnimalOutlook } from '../../../source/breeding/forecast/outlook.ts'
import { outlooksOf } from '../../../source/breeding/forecast/outlook-of.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import {
  type Animal,
  bookOf,
  calving,
  cow,
  dayAt,
  type Happening,
  type Herd,
  heat,
  looked,
  maiden,
  on,
  pregnant,
  service,
  suspect,
  toBull,
} from '../support.ts'

const calved = calving(-70)

/** What the forecast of a season (the first unless told) makes of the first animal on a season day. */
function outlookAt(s: number, given: Animal | readonly Animal[], herd?: Herd, place = 0): AnimalOutlook {
  const book = bookOf(given, herd)
  const season = book.allSeasons[place]
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, dayAt(s)))
  const [found] = season === undefined ? [] : outlooksOf(book, standings, season, dayAt(s), defaultRates)
  if (found === undefined) throw new Error('not of the forecast')
  return found.outlook
}

const stock = (sire: string, straw: string, more: Readonly<Record<string, unknown>> = {}): Happening => ({
  kind: 'stock-take',
  date: on(-100),
  sire,
  straw,
  count: 10,
  ...more,
})

test('days of gestation by the sires in stock of a kind, else by her breed, else the policy’s', () => {
  const extra = [
    stock('S1', 'conventional', { gestationDays: 278 }),
    stock('S2', 'conventional', { gestationDays: 281 }),
    stock('S2', 'conventional'),
    stock('S3', 'beef', { breed: 'Limousin' }),
  ]
  const of = (one: Animal, herd: Herd) => outlookAt(0, one, herd).gestation
  expect(of(cow({ breed: 'Jersey' }, calved), { extra })).toEqual({
    conventional: 280,
    sexed: 280,
    beef: 287,
    natural: 282,
  })
  expect(of(maiden({ breed: 'Holstein' }), {})).toEqual({
    conventional: 278,
    sexed: 278,
    beef: 282,
    natural: 282,
  })
  const holstein = { extra: [stock('S1', 'sexed', { breed: 'Holstein' })] }
  expect(of(cow(calved), holstein).sexed).toBe(280)
  expect(of(maiden(), holstein).sexed).toBe(278)
  expect(of(cow(calved), { policy: { defaultGestation: 284 } })).toEqual({
    conventional: 284,
    sexed: 284,
    beef: 284,
    natural: 284,
  })
})

test('days of gestation of her service are those of its sire', () => {
  const herd = { extra: [stock('S1', 'conventional', { gestationDays: 276 })] }
  expect(outlookAt(20, cow(calved, service(5)), herd).anchor).toMatchObject({
    kind: 'served',
    gestation: 276,
  })
  const inCalf = cow(calved, service(5), pregnant(40))
  expect(outlookAt(45, inCalf, herd).anchor).toMatchObject({ kind: 'in-calf', gestation: 276 })
})

test('in calf and nobody knows by whom: conceived so long before the check that it could tell', () => {
  expect(outlookAt(40, cow(calved, pregnant(35))).anchor).toEqual({
    kind: 'in-calf',
    conceived: 5,
    confirmed: 35,
    by: 'natural',
    gestation: 282,
  })
})

test('in calf since season day -35 she is of this season, since the day before she calves first', () => {
  expect(outlookAt(0, cow(calving(-120), service(-35), pregnant(-3))).anchor).toMatchObject({
    kind: 'in-calf',
  })
  expect(outlookAt(0, cow(calving(-120), service(-36), pregnant(-3))).anchor).toEqual({
    kind: 'calved',
    day: 246,
  })
})

test('a season to come begins without services, and nobody is left to its bull', () => {
  const herd: Herd = { seasons: [{}, { matingStart: on(365) }] }
  const one = cow(calved, service(5), toBull(30))
  expect(outlookAt(40, one, herd)).toMatchObject({ chancesUsed: 1, leftToBull: true })
  expect(outlookAt(40, one, herd, 1)).toMatchObject({ chancesUsed: 0, leftToBull: false })
})

test('on heat this morning, but her facts contradict each other: she is not served', () => {
  expect(outlookAt(5, cow(calving(-200), calving(-60), heat(5))).anchor).toEqual({ kind: 'heat', day: 5 })
})

test('maidens of a block are anywhere in their cycles since the first week that was watched', () => {
  const watched = (...days: readonly number[]): Animal =>
    cow({ number: '2' }, calved, ...days.map((s) => looked(s)))
  const from = (s: number, ...others: readonly Animal[]) => outlookAt(s, [maiden(), ...others]).anchor
  expect(from(3, watched(-36))).toEqual({ kind: 'anywhere', day: 0 })
  expect(from(3, watched(-30))).toEqual({ kind: 'anywhere', day: -35 })
  expect(from(3, watched(-20))).toEqual({ kind: 'anywhere', day: -21 })
  expect(from(-25)).toEqual({ kind: 'anywhere', day: -28 })
  expect(from(-60)).toEqual({ kind: 'anywhere', day: -35 })
})

test('in the bull weeks, weeks with a heat or a look are watched for returns of 18 to 24 days', () => {
  const days = (s: number, ...given: readonly Animal[]) => {
    const { unwatched } = outlookAt(s, given)
    return Array.from({ length: 21 }, (_, i) => 42 + i).filter((one) => !unwatched.has(one))
  }
  const returning = cow(calved, service(30))
  expect(days(60, returning, cow({ number: '2' }, calved, looked(49)))).toEqual([49, 50, 51, 52, 53, 54])
  expect(days(60, returning, cow({ number: '2' }, calved, suspect(55)))).toEqual([49, 50, 51, 52, 53, 54])
  expect(days(60, returning, cow({ number: '2' }, calved, looked(48)))).toEqual([48])
  // Before his second day none of his days is over, and none matters.
  expect(days(42, returning)).toHaveLength(21)
})

test('a day of long ago without a look was not watched either', () => {
  const { unwatched } = outlookAt(3, cow(calved))
  expect([-500, -36, -35, -1, 0, 3].map((s) => unwatched.has(s))).toEqual([
    true,
    true,
    true,
    true,
    false,
    false,
  ])
})

test('an empty check counts by its method, for a maiden by hers', () => {
  const check = (one: Animal) => outlookAt(60, one).emptyCheck
  const found = (method: string): Happening => ({ kind: 'check', date: on(50), method, result: 'empty' })
  expect(check(cow(calved, service(2), found('ultrasound')))).toEqual({ on: 50, rulesOutTo: 20 })
  expect(check(cow(calved, service(2), found('hand')))).toEqual({ on: 50, rulesOutTo: 8 })
  expect(check(cow(calved, service(2)))).toBeUndefined()
})
