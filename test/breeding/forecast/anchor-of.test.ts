import { expect, test } from 'vitest'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import type { AnimalOutlook } from '../../../source/breeding/forecast/outlook.ts'
import { outlooksOf } from '../../../source/breeding/forecast/outlook-of.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import {
  type Animal,
  bar,
  bookOf,
  bullService,
  calving,
  cow,
  dayAt,
  empty,
  type Herd,
  heat,
  hold,
  left,
  loss,
  maiden,
  pregnant,
  service,
  suspect,
  toBull,
  unsure,
} from '../support.ts'

/** What the forecast made of one animal on the morning of a season day; undefined where it leaves her out. */
function outlookAt(s: number, one: Animal, herd?: Herd): AnimalOutlook | undefined {
  const book = bookOf(one, herd)
  const season = book.allSeasons[0]
  if (season === undefined) throw new Error('no season')
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, dayAt(s)))
  return outlooksOf(book, standings, season, dayAt(s), defaultRates)[0]?.outlook
}
const calved = calving(-70)

test.each([
  ['no heat since calving', cow(calved), -10, { kind: 'calved', day: -70 }],
  ['a suspect heat is none', cow(calved, suspect(-20)), -10, { kind: 'calved', day: -70 }],
  ['the latest sure heat', cow(calved, heat(-40), heat(-19)), -10, { kind: 'heat', day: -19 }],
  ['a maiden without a heat, in a block not watched', maiden(), -10, { kind: 'anywhere', day: -14 }],
  ['on heat this morning', cow(calved, heat(5)), 5, { kind: 'serve-today' }],
  ['served', cow(calved, service(5)), 20, { kind: 'served', day: 5, by: 'conventional', gestation: 282 }],
  [
    'served by a bull',
    cow(calved, bullService(45)),
    50,
    { kind: 'served', day: 45, by: 'natural', gestation: 282 },
  ],
  [
    'a heat a few days after a service changes nothing',
    cow(calved, service(5), heat(12)),
    20,
    { kind: 'served', day: 5, by: 'conventional', gestation: 282 },
  ],
  ['returned, not served', cow(calved, service(5), heat(26)), 30, { kind: 'heat', day: 26 }],
  [
    'served twice',
    cow(calved, service(5), service(26, { straw: 'sexed' })),
    30,
    { kind: 'served', day: 26, by: 'sexed', gestation: 282 },
  ],
  [
    'checked empty',
    cow(calved, service(2), empty(33)),
    35,
    { kind: 'served', day: 2, by: 'conventional', gestation: 282 },
  ],
  ['checked empty, then a heat', cow(calved, service(2), empty(33), heat(34)), 38, { kind: 'heat', day: 34 }],
  [
    'unsure changes nothing',
    cow(calved, service(2), unsure(33)),
    35,
    { kind: 'served', day: 2, by: 'conventional', gestation: 282 },
  ],
  [
    'in calf',
    cow(calved, service(2), pregnant(33)),
    40,
    { kind: 'in-calf', conceived: 2, confirmed: 33, by: 'conventional', gestation: 282 },
  ],
  [
    'in calf to the bull',
    cow(calved, bullService(44), pregnant(80)),
    90,
    { kind: 'in-calf', conceived: 44, confirmed: 80, by: 'natural', gestation: 282 },
  ],
  ['an early loss', cow(calved, service(2), pregnant(33), loss(36)), 38, { kind: 'heat', day: 36 }],
  [
    'a late loss is a calving',
    cow(calving(-400), service(-180), loss(-20)),
    -5,
    { kind: 'calved', day: -20 },
  ],
  ['still to calve', cow(calving(-400), service(-270), pregnant(-230)), -20, { kind: 'calved', day: 12 }],
  [
    'overdue: she calves today',
    cow(calving(-400), service(-310), pregnant(-270)),
    -20,
    { kind: 'calved', day: -20 },
  ],
  [
    'served for the last season, not checked, due soon',
    cow(calving(-400), service(-285)),
    -20,
    { kind: 'calved', day: -3 },
  ],
  [
    'served for the last season, due long ago',
    cow(calving(-400), service(-330)),
    -20,
    { kind: 'calved', day: -400 },
  ],
] as const)('%s', (_, one, s, anchor) => {
  expect(outlookAt(s, one)?.anchor).toEqual(anchor)
})

test('whom the forecast leaves out', () => {
  for (const one of [
    cow(calved, bar(-5)),
    cow(calved, left(-5)),
    maiden({ ready: false }),
    cow({ sex: 'M' }),
    cow(calved, { block: 'autumn' }),
  ])
    expect(outlookAt(3, one)).toBeUndefined()
})

test('chances, left to the bull, class and cycle', () => {
  expect(outlookAt(30, cow(calved, service(2), service(23)))).toMatchObject({
    chancesUsed: 2,
    leftToBull: false,
  })
  expect(outlookAt(10, cow(calved, toBull(3)))).toMatchObject({ chancesUsed: 0, leftToBull: true })
  expect(outlookAt(10, maiden())).toMatchObject({ maiden: true, cycleMean: 21, earliestDay: 0 })
  expect(outlookAt(10, cow(calved))).toMatchObject({ maiden: false, cycleMean: 22 })
  expect(outlookAt(10, cow({ lactation: 0 }, calved))).toMatchObject({ maiden: false, cycleMean: 21 })
})

test('a maiden in calf calves as a cow', () => {
  const heifer = maiden(service(-270), pregnant(-230))
  expect(outlookAt(-20, heifer)).toMatchObject({ maiden: false, cycleMean: 21, earliestDay: 54 })
})

test('the first day she can be served', () => {
  expect(outlookAt(0, cow(calving(-30)))?.earliestDay).toBe(12)
  expect(outlookAt(0, cow(calving(-60)))?.earliestDay).toBe(0)
  expect(outlookAt(5, cow(calved, hold(3, 14)))?.earliestDay).toBe(15)
  expect(outlookAt(5, cow(calved, hold(3)))?.earliestDay).toBe(63)
  expect(outlookAt(5, cow(calved, hold(-9, -2)))?.earliestDay).toBe(0)
  expect(outlookAt(5, cow({ lactation: 3 }))?.earliestDay).toBe(42)
})

test('weeks before the mating start without a record were not watched', () => {
  const unwatched = outlookAt(3, cow(calved, heat(-24), heat(-3)))?.unwatched
  expect([-28, -22, -21, -8, -7, -1].map((s) => unwatched?.has(s))).toEqual([
    false,
    false,
    true,
    true,
    false,
    false,
  ])
})

test('in the bull weeks only a repeat heat is watched for, where anyone looks', () => {
  const watched = (one: Animal) => {
    const unwatched = outlookAt(60, one)?.unwatched
    return Array.from({ length: 18 }, (_, i) => 42 + i).filter((s) => unwatched?.has(s) === false)
  }
  expect(watched(cow(calved, service(30)))).toEqual([])
  expect(watched(cow(calved, service(30), suspect(44), suspect(50)))).toEqual([48, 49, 50, 51, 52, 53, 54])
  expect(watched(cow(calved, heat(20), suspect(44)))).toEqual([])
})

test('an empty result rules out conceptions that its method would have found', () => {
  expect(outlookAt(110, cow(calved, service(2), empty(105)))).toMatchObject({
    emptyCheck: { on: 105, rulesOutTo: 75 },
  })
  const byHand = empty(105, { method: 'hand' })
  expect(outlookAt(110, cow(calved, service(2), byHand))).toMatchObject({
    emptyCheck: { on: 105, rulesOutTo: 63 },
  })
  expect(outlookAt(110, cow(calved, service(2), empty(80), pregnant(105)))?.emptyCheck).toBeUndefined()
})

test('straws by day as the chooser proposes them', () => {
  const straws = outlookAt(0, cow(calved))?.straws
  expect(straws).toHaveLength(2)
  expect([0, 20, 21, 34, 35, 41].map((s) => straws?.[0]?.[s])).toEqual([
    'sexed',
    'sexed',
    'conventional',
    'conventional',
    'beef',
    'beef',
  ])
  expect([0, 20].map((s) => straws?.[1]?.[s])).toEqual(['conventional', 'conventional'])
})
