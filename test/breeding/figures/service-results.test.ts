import { expect, test } from 'vitest'
import type { AnimalRecord } from '../../../source/breeding/book.ts'
import { serviceResults } from '../../../source/breeding/figures/service-results.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import {
  type Animal,
  bookOf,
  bullService,
  calving,
  cow,
  dayAt,
  empty,
  heat,
  loss,
  pregnant,
  service,
  suspect,
  unsure,
  withBull,
} from '../support.ts'

function ends(s: number, one: Animal): string {
  const book = bookOf(one)
  const [animal] = book.animals.values()
  const standing = standingOn(book, animal as AnimalRecord, dayAt(s))
  return serviceResults(standing, book)
    .map(({ end }) => end)
    .join(' ')
}
const calved = calving(-70)

test.each([
  ['no end yet', cow(calved, service(2)), 30, 'unknown'],
  ['a pregnant result', cow(calved, service(2), pregnant(35)), 40, 'held'],
  ['an empty result', cow(calved, service(2), empty(35)), 40, 'failed'],
  ['an unsure result', cow(calved, service(2), unsure(35)), 40, 'unknown'],
  ['a check too early says nothing', cow(calved, service(2), empty(20)), 40, 'unknown'],
  ['a sure heat 18 days later', cow(calved, service(2), heat(20)), 25, 'failed'],
  ['a sure heat 17 days later', cow(calved, service(2), heat(19)), 25, 'unknown'],
  ['a suspect heat', cow(calved, service(2), suspect(23)), 25, 'unknown'],
  ['a second service', cow(calved, service(2), service(23)), 25, 'failed unknown'],
  [
    'two services close together, then in calf to the last',
    cow(calved, service(2), service(8), pregnant(45)),
    50,
    'unknown held',
  ],
  [
    'two services close together, then empty',
    cow(calved, service(2), service(8), empty(45)),
    50,
    'failed failed',
  ],
  ['in calf and then a heat', cow(calved, service(2), pregnant(35), heat(60)), 62, 'held'],
  [
    'in calf and then empty: it held, and was lost',
    cow(calved, service(2), pregnant(35), empty(70)),
    75,
    'held',
  ],
  [
    'in calf to the first, by the service named: the second was no trial',
    cow(calved, service(2), service(23), pregnant(60, { serviceDate: '2026-05-03' })),
    65,
    'held unknown',
  ],
  [
    'in calf to the first, by the service named, and in calf once more: the second was no trial',
    cow(calved, service(2), service(23), pregnant(60, { serviceDate: '2026-05-03' }), pregnant(90)),
    95,
    'held unknown',
  ],
  [
    'AI by its age, later an age nearer to the bull: it held',
    cow(calved, service(2), pregnant(40, { foetalAge: 38 }), withBull(40), pregnant(90, { foetalAge: 73 })),
    95,
    'held',
  ],
  [
    'AI by its age, later an age that only the bull fits: that one counts too',
    cow(calved, service(2), withBull(15), pregnant(40, { foetalAge: 38 }), pregnant(90, { foetalAge: 70 })),
    95,
    'held',
  ],
  ['AI or the bull after it', cow(calved, service(2), withBull(10), pregnant(60)), 65, 'unknown'],
  ['a bull service', cow(calved, bullService(45), pregnant(80)), 90, 'held'],
  ['a calving without a check, on time', cow(calving(-400), service(-285), calving(-3)), 5, 'held'],
  [
    'a calving without a check, to the second service',
    cow(calving(-400), service(-306), service(-285), calving(-3)),
    5,
    'failed held',
  ],
  ['a calving that fits no service', cow(calving(-400), service(-320), calving(-3)), 5, 'unknown'],
  ['lost without a check', cow(calved, service(2), loss(60)), 65, 'unknown'],
] as const)('%s', (_, one, s, expected) => {
  expect(ends(s, one)).toBe(expected)
})

// Carried 282 days: due on season day 284 of a service on day 2.
test.each([
  ['12 days early', 272, 'held'],
  ['13 days early', 271, 'unknown'],
  ['12 days late', 296, 'held'],
  ['13 days late', 297, 'unknown'],
] as const)('a calving without a check, %s', (_, calved, expected) => {
  expect(ends(310, cow(calving(-70), service(2), calving(calved)))).toBe(expected)
})

test('a calving of today says nothing yet', () => {
  const one = cow(calving(-70), service(2), calving(284))
  expect([284, 285].map((s) => ends(s, one))).toEqual(['unknown', 'held'])
})

test('a calving is that of the nearest service', () => {
  expect(ends(310, cow(calving(-70), service(2), service(12), calving(288)))).toBe('held unknown')
  expect(ends(310, cow(calving(-70), service(2), service(12), calving(290)))).toBe('unknown held')
})

test('with a pregnant result the calving is not asked', () => {
  const named = pregnant(60, { serviceDate: '2026-05-03' })
  expect(ends(330, cow(calving(-70), service(2), service(23), named, calving(305)))).toBe('held unknown')
})

test('a heat that was suspect and is sure from today on says nothing before tomorrow', () => {
  const one = cow(calving(-70), service(2), suspect(23), heat(23))
  expect([23, 24].map((s) => ends(s, one))).toEqual(['unknown', 'failed'])
})

test('conceived 18 days later by the check: the service failed; 17 days later it is not known', () => {
  const foetus = (age: number) => pregnant(80, { foetalAge: age })
  const bull = [withBull(10)]
  expect(ends(90, cow(calving(-70), service(2), ...bull, foetus(60)))).toBe('failed')
  expect(ends(90, cow(calving(-70), service(2), ...bull, foetus(61)))).toBe('unknown')
})

test('a foetal age within a week of the service tells it from a bull that came after', () => {
  const told = (age: number) =>
    ends(90, cow(calving(-70), service(30), withBull(31), pregnant(80, { foetalAge: age })))
  expect([58, 57, 50, 43, 42].map(told)).toEqual(['unknown', 'held', 'held', 'held', 'unknown'])
})

test('of two conceptions the later one tells that a service failed', () => {
  const first = pregnant(50, { foetalAge: 27 })
  const later = pregnant(90, { foetalAge: 50 })
  expect(ends(95, cow(calving(-70), service(12), withBull(13), first, later))).toBe('failed')
  expect(ends(95, cow(calving(-70), service(12), withBull(13), first))).toBe('unknown')
})

test('without a foetal age a bull with her leaves it unknown', () => {
  expect(ends(90, cow(calving(-70), service(30), withBull(31), pregnant(80)))).toBe('unknown')
})

test('each cycle has its own services', () => {
  expect(ends(320, cow(calving(-400), service(-285), calving(-3), service(40), service(61)))).toBe(
    'held failed unknown',
  )
})

test('whether a check or a calving has spoken of a service', () => {
  const checked = (s: number, one: Animal) => {
    const book = bookOf(one)
    const [animal] = book.animals.values()
    return serviceResults(standingOn(book, animal as AnimalRecord, dayAt(s)), book).map(
      (result) => result.checked,
    )
  }
  expect(checked(40, cow(calved, service(2), unsure(35)))).toEqual([true])
  expect(checked(40, cow(calved, service(2), unsure(20)))).toEqual([false])
  expect(checked(320, cow(calved, service(2), calving(284)))).toEqual([true])
  expect(checked(40, cow(calved, service(2)))).toEqual([false])
})
