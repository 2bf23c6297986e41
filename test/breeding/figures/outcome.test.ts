import { expect, test } from 'vitest'
import type { Outcome } from '../../../source/breeding/figures/outcome.ts'
import {
  type Animal,
  bullService,
  calving,
  cow,
  empty,
  fromBull,
  type Herd,
  heat,
  left,
  loss,
  maiden,
  on,
  pregnant,
  service,
  withBull,
} from '../support.ts'
import { seasonAt } from './herd.ts'

const calved = calving(-70)

/** What became of the one animal, as `kind day`. */
function became(s: number, one: Animal, herd?: Herd): string {
  const [outcome] = seasonAt(s, [one], herd).counted.outcomes
  const day = (of: Outcome): string => ('day' in of ? ` ${of.day}` : '')
  return outcome === undefined ? '-' : `${outcome.kind}${day(outcome)}`
}

test.each([
  ['in calf to her service', 60, cow(calved, service(12), pregnant(50)), 'in-calf 12'],
  ['in calf since season day -35', 30, cow(calved, service(-35), pregnant(5)), 'in-calf -35'],
  ['in calf since before the season', 30, cow(calving(-120), service(-36), pregnant(5)), 'unknown 30'],
  ['to a bull that stayed 15 days too long', 140, cow(calved, bullService(77), pregnant(120)), 'in-calf 62'],
  ['to a bull that stayed longer', 140, cow(calved, bullService(78), pregnant(120)), 'unknown 42'],
  ['lost again', 90, cow(calved, service(12), pregnant(50), loss(70)), 'unknown 42'],
  ['lost after the closing weeks', 200, cow(calved, service(12), pregnant(50), loss(170)), 'in-calf 12'],
  [
    'calved 12 days after her service was due',
    320,
    cow(calved, service(12), calving(12 + 282 + 12)),
    'in-calf 12',
  ],
  [
    'calved 13 days after it: conceived 282 days before',
    320,
    cow(calved, service(12), calving(12 + 282 + 13)),
    'in-calf 25',
  ],
  ['calved 12 days before it was due', 320, cow(calved, service(30), calving(30 + 282 - 12)), 'in-calf 30'],
  [
    'calved to the nearer of two services',
    320,
    cow(calved, service(2), service(23), calving(20 + 282)),
    'in-calf 23',
  ],
  [
    'calved to the first of two services',
    320,
    cow(calved, service(2), service(23), calving(3 + 282)),
    'in-calf 2',
  ],
  ['calved, never served', 320, cow(calved, calving(10 + 282)), 'in-calf 10'],
  ['calved to the season before', 60, cow(calving(-400), service(-290), calving(-8)), 'unknown 42'],
] as const)('in calf: %s', (_, s, one, expected) => {
  expect(became(s, one)).toBe(expected)
})

test.each([
  [
    'checked the day after the bull went',
    130,
    cow(calved, service(2), withBull(5), fromBull(6), empty(63)),
    'empty',
  ],
  [
    'checked on his last day',
    130,
    cow(calved, service(2), withBull(5), fromBull(6), empty(62)),
    'unknown 42',
  ],
  [
    '42 days after she was with a bull',
    130,
    cow(calved, service(2), withBull(42), fromBull(60), empty(102)),
    'empty',
  ],
  ['41 days after it', 130, cow(calved, service(2), withBull(42), fromBull(60), empty(101)), 'unknown 42'],
  ['42 days after he served her', 130, cow(calved, bullService(45), bullService(62), empty(104)), 'empty'],
  [
    '41 days after it, by his service',
    130,
    cow(calved, bullService(45), bullService(62), empty(103)),
    'unknown 42',
  ],
  ['not found by hand, but pregnant', 130, cow(calved, service(2), pregnant(105)), 'in-calf 2'],
] as const)('empty: %s', (_, s, one, expected) => {
  expect(became(s, one)).toBe(expected)
})

test('in calf of a later season without a calving between: she was empty', () => {
  const seasons = [{}, { matingStart: on(200) }]
  const later = cow(calved, service(2), heat(23), service(205), pregnant(250))
  expect(became(300, later, { seasons })).toBe('empty')
  const calvedBetween = cow(calved, calving(200), service(260), pregnant(300))
  expect(became(320, calvedBetween, { seasons })).toBe('unknown 42')
})

test.each([
  ['before the mating start', -10, cow(calved), 'unknown 0'],
  ['not served, not seen', 30, cow(calved), 'unknown 30'],
  ['a service without an end', 30, cow(calved, service(5)), 'unknown 5'],
  ['a service that failed, and one without an end', 40, cow(calved, service(5), service(26)), 'unknown 26'],
  ['served before the mating start', 30, cow(calved, service(-10)), 'unknown 0'],
  ['his first day', 42, cow(calved), 'unknown 42'],
  ['his second day: since the first a bull may have been there', 43, cow(calved), 'unknown 42'],
  ['later', 55, maiden(), 'unknown 42'],
] as const)('known to be open until: %s', (_, s, one, expected) => {
  expect(became(s, one)).toBe(expected)
})

test('without a bull what is not served stays open', () => {
  expect(became(55, cow(calved), { bullWeeks: 0 })).toBe('unknown 55')
})

test.each([
  ['not served', 60, cow(calved, left(25)), 'left 25'],
  ['with a service without an end', 60, cow(calved, service(19), left(25)), 'left 19'],
  ['with a service that failed', 60, cow(calved, service(3), heat(24), left(30)), 'left 30'],
  ['in calf', 60, cow(calved, service(3), pregnant(40), left(50)), 'in-calf 3'],
] as const)('left: %s', (_, s, one, expected) => {
  expect(became(s, one)).toBe(expected)
})
