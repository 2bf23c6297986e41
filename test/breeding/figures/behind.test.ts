import { expect, test } from 'vitest'
import { behind, type FigureName } from '../../../source/breeding/figures/behind.ts'
import { type Animal, calving, cow, heat, matingStart, pregnant, service } from '../support.ts'
import { asManyBehind } from './as-many-behind.ts'
import { seasonAt, thirteen } from './herd.ts'

/** `number counts: day, the service's day, days` of each animal; days are season days. */
function behindAt(s: number, name: FigureName, animals: readonly Animal[] = thirteen): readonly string[] {
  const day = (one: number | undefined): string => (one === undefined ? '-' : String(one - matingStart))
  return behind(name, seasonAt(s, animals)).map((one) =>
    `${one.animal.number} ${one.counts}: ${day(one.day)} ${day(one.service?.day)} ${one.days ?? ''}`.trim(),
  )
}

test.each([-60, -5, 10, 30, 60, 110, 140])('as many animals as each figure counts on day %i', (s) => {
  const seen = asManyBehind(seasonAt(s, thirteen))
  if (s >= 10) expect(seen).toBeGreaterThan(20)
})

test('served in three weeks, with the day of the service', () => {
  expect(behindAt(30, { of: 'submission' })).toEqual([
    '1 yes: 2 -',
    '2 yes: 5 -',
    '3 yes: 9 -',
    '4 yes: 12 -',
    '5 yes: 19 -',
    '6 no: - -',
    '7 yes: 1 -',
    '8 no: - -',
    '9 no: - -',
  ])
  expect(behindAt(30, { of: 'submission-ready' }).filter((one) => one.includes(' no:'))).toEqual([
    '8 no: - -',
  ])
  const edge = [cow(calving(-70), service(0)), cow(calving(-70), service(20)), cow(calving(-70), service(21))]
  expect(behindAt(30, { of: 'submission' }, edge)).toEqual(['1 yes: 0 -', '2 yes: 20 -', '3 no: 21 -'])
})

test('seen in the 24 days', () => {
  const ready = [cow(calving(-70), heat(3)), cow(calving(-70)), cow(calving(-10), heat(3))]
  expect(behindAt(30, { of: 'heat-detection' }, ready)).toEqual(['1 yes: - -', '2 no: - -'])
})

test('each service with how it counts', () => {
  expect(behindAt(140, { of: 'conception', by: 'straw', key: 'sexed' })).toEqual(['2 no: 5 5', '7 yes: 1 1'])
  expect(behindAt(140, { of: 'conception', by: 'order', key: '2' })).toEqual(['2 yes: 26 26', '3 no: 30 30'])
  expect(behindAt(140, { of: 'conception' })).toContain('5 unknown: 19 19')
})

test('services that were followed by a return, and not', () => {
  expect(behindAt(140, { of: 'non-return', days: 24 })).toEqual([
    '1 yes: 2 2',
    '2 no: 5 5',
    '2 yes: 26 26',
    '3 no: 9 9',
    '3 yes: 30 30',
    '4 no: 12 12',
    '6 yes: 34 34',
    '7 yes: 1 1',
  ])
})

test('an interval stands with its later service and its days', () => {
  expect(behindAt(140, { of: 'interval', class: 'short-regular' })).toEqual([
    '2 yes: 26 26 21',
    '3 yes: 30 30 21',
  ])
  expect(behindAt(140, { of: 'interval', class: 'long-regular' })).toEqual([])
  const lost = cow(calving(-400), service(-290), calving(-8), service(40))
  expect(behindAt(140, { of: 'interval', class: 'extended' }, [lost])).toEqual([])
})

test('in calf, not, and not known, with the day of conception', () => {
  expect(behindAt(140, { of: 'six-weeks' })).toEqual([
    '1 yes: 2 -',
    '2 yes: 26 -',
    '3 no: 50 -',
    '4 no: - -',
    '5 no: - -',
    '6 yes: 34 -',
    '7 yes: 1 -',
    '8 no: - -',
    '9 no: - -',
  ])
  expect(behindAt(140, { of: 'in-calf' }).filter((one) => !one.includes(' yes:'))).toEqual([
    '4 no: - -',
    '5 no: - -',
    '8 unknown: - -',
    '9 unknown: - -',
  ])
  expect(behindAt(140, { of: 'empty' }).filter((one) => !one.includes(' no:'))).toEqual([
    '4 yes: - -',
    '8 unknown: - -',
    '9 unknown: - -',
  ])
  expect(behindAt(140, { of: 'empty' })).toContain('1 no: 2 -')
  expect(behindAt(140, { of: 'left' })).toEqual(['5 yes: 25 -'])
})

test('who conceived on the last day of six weeks counts, the day after not', () => {
  const edge = [cow(calving(-70), service(41), pregnant(80)), cow(calving(-70), service(42), pregnant(80))]
  expect(behindAt(110, { of: 'six-weeks' }, edge)).toEqual(['1 yes: 41 -', '2 no: 42 -'])
})

test('calved by day 21 of calving, which begins on season day -83', () => {
  const day = (s: number): Animal => cow(calving(s))
  expect(behindAt(30, { of: 'calved-by', day: 21 }, [day(-63), day(-62)])).toEqual([
    '1 yes: -63 -',
    '2 no: -62 -',
  ])
  const due = cow(calving(-400), service(-345), pregnant(-300))
  expect(behindAt(-63, { of: 'calved-by', day: 21 }, [due])).toEqual(['1 unknown: -63 -'])
  expect(behindAt(-62, { of: 'calved-by', day: 21 }, [due])).toEqual(['1 no: -63 -'])
})

test('days from calving to the first service', () => {
  expect(behindAt(30, { of: 'first-service' }).slice(0, 2)).toEqual(['1 yes: 2 - 72', '2 yes: 5 - 75'])
})
