import { describe, expect, test } from 'vitest'
import type { AnimalRecord } from '../../source/breeding/book.ts'
import { resultOf } from '../../source/breeding/check-result.ts'
import type { CheckFact, NewFact } from '../../source/breeding/facts.ts'
import {
  type Animal,
  bookOf,
  calving,
  cow,
  empty,
  fromBull,
  type Herd,
  heat,
  loss,
  maiden,
  matingStart,
  on,
  pregnant,
  service,
  withBull,
} from './support.ts'

type Result = Partial<Pick<CheckFact, 'method' | 'foetalAge' | 'serviceDate'>>
const noBull: Herd = { bullWeeks: 0 }

function came(
  one: Animal,
  s: number,
  result: CheckFact['result'],
  more: Result = {},
  herd = noBull,
  replaces?: string,
) {
  const book = bookOf(one, herd)
  const check: NewFact<CheckFact> = {
    kind: 'check',
    about: 'animal-1',
    date: on(s),
    method: 'ultrasound',
    result,
    ...more,
  }
  return resultOf(book, book.byNumber.get('1') as AnimalRecord, check, replaces)
}
const conceived = (...given: Parameters<typeof came>): number | undefined => {
  const day = came(...given).pregnancy?.conception?.day
  return day === undefined ? undefined : day - matingStart
}
const fresh = calving(-60)

describe('a doubt', () => {
  test.each<[string, string | undefined, ...Parameters<typeof came>]>([
    ['in calf, day 30', undefined, cow(fresh, service(0)), 30, 'pregnant'],
    ['in calf, day 29', 'too-young', cow(fresh, service(0)), 29, 'pregnant'],
    ['a maiden in calf, day 28', undefined, maiden(service(0)), 28, 'pregnant'],
    ['by hand, day 41', 'too-young', cow(fresh, service(0)), 41, 'pregnant', { method: 'hand' }],
    ['in calf, day 23: no service fits', 'no-service-fits', cow(fresh, service(0)), 23, 'pregnant'],
    ['in calf, never served', 'no-service-fits', cow(fresh), 30, 'pregnant'],
    [
      'in calf of an age that fits no service',
      'no-service-fits',
      cow(fresh, service(0)),
      60,
      'pregnant',
      { foetalAge: 45 },
    ],
    ['empty, day 29', 'too-young', cow(fresh, service(0)), 29, 'empty'],
    ['empty, day 30', undefined, cow(fresh, service(0)), 30, 'empty'],
    ['unsure, day 20', 'too-young', cow(fresh, service(0)), 20, 'unsure'],
    ['empty, found in calf before', 'empty-in-calf', cow(fresh, service(0), pregnant(30)), 60, 'empty'],
    ['in calf again', undefined, cow(fresh, service(0), pregnant(30)), 60, 'pregnant'],
    [
      'in calf as before, served again lately',
      undefined,
      cow(fresh, service(0), pregnant(30), service(50)),
      60,
      'pregnant',
      { serviceDate: on(0) },
    ],
    [
      'served again lately, the age says it is the first',
      undefined,
      cow(fresh, service(0), service(21)),
      40,
      'pregnant',
      { foetalAge: 40 },
    ],
    ['served again lately, no age', 'too-young', cow(fresh, service(0), service(21)), 40, 'pregnant'],
    ['empty, never served', undefined, cow(fresh), 30, 'empty'],
    ['empty after a loss', undefined, cow(fresh, service(0), pregnant(30), loss(40)), 60, 'empty'],
    ['unsure, and the result before fits no service', undefined, cow(fresh, pregnant(40)), 60, 'unsure'],
    ['a bull period of the block fits', undefined, cow(fresh), 80, 'pregnant', {}, {}],
  ])('%s: %s', (_, doubt, ...given) => {
    expect(came(...given).doubt).toBe(doubt)
  })
})

describe('a remark', () => {
  test.each<[string, string | undefined, ...Parameters<typeof came>]>([
    ['nothing', undefined, cow(fresh, service(0)), 35, 'pregnant'],
    ['a heat came 20 days after the service', 'heat-since', cow(fresh, service(0), heat(20)), 40, 'pregnant'],
    ['no service on record, an age', 'no-service-known', cow(fresh), 60, 'pregnant', { foetalAge: 40 }],
    [
      'found in calf before, the age 8 days off',
      'earlier-stands',
      cow(fresh, service(0), pregnant(40)),
      80,
      'pregnant',
      { foetalAge: 72 },
    ],
    [
      'found in calf before, the age 7 days off',
      undefined,
      cow(fresh, service(0), pregnant(40, { foetalAge: 40 })),
      80,
      'pregnant',
      { foetalAge: 73 },
    ],
    [
      'found in calf before, the age of another service',
      undefined,
      cow(fresh, service(0), service(21), pregnant(40)),
      80,
      'pregnant',
      { foetalAge: 59 },
    ],
    ['the bull fits too', 'ai-or-bull', cow(fresh, service(40)), 90, 'pregnant', {}, {}],
    [
      'empty 41 days after the bull',
      'bull-too-lately',
      cow(fresh, withBull(42), fromBull(50)),
      91,
      'empty',
      {},
      {},
    ],
    [
      'unsure 41 days after the bull',
      undefined,
      cow(fresh, withBull(42), fromBull(50)),
      91,
      'unsure',
      {},
      {},
    ],
    ['empty 42 days after the bull', undefined, cow(fresh, withBull(42), fromBull(50)), 92, 'empty', {}, {}],
  ])('%s: %s', (_, remark, ...given) => {
    expect(came(...given).remark).toBe(remark)
  })
})

test('what it comes to: conception and due date, before anything is recorded', () => {
  expect(conceived(cow(fresh, service(0), service(21)), 60, 'pregnant')).toBe(21)
  expect(conceived(cow(fresh, service(0), service(21)), 60, 'pregnant', { foetalAge: 58 })).toBe(0)
  expect(conceived(cow(fresh, service(0)), 60, 'empty')).toBeUndefined()
  expect(came(cow(fresh, service(0)), 60, 'pregnant').due).toBe(matingStart + 282)
})

test('a result in the place of one of the same day', () => {
  const twice = cow(fresh, service(0), empty(40, { id: 'wrong' }))
  expect(came(twice, 40, 'pregnant', {}, noBull, 'wrong').pregnancy?.conception?.day).toBe(matingStart)
  const other = cow(fresh, service(0), pregnant(40, { id: 'wrong' }))
  expect(came(other, 40, 'empty', {}, noBull, 'wrong')).toMatchObject({
    doubt: undefined,
    pregnancy: undefined,
  })
})

test('a result in the place of one of the day before', () => {
  const wrong = cow(fresh, service(0), pregnant(40, { id: 'wrong' }))
  expect(came(wrong, 41, 'empty', {}, noBull, 'wrong').doubt).toBeUndefined()
  expect(came(wrong, 41, 'empty').doubt).toBe('empty-in-calf')
})

test('what came after the day of a result says nothing of it', () => {
  expect(conceived(cow(fresh, service(0), empty(41)), 40, 'pregnant')).toBe(0)
})
