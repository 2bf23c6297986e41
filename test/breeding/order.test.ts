import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Row } from '../../source/breeding/list.ts'
import { compareNumbers, compareRows } from '../../source/breeding/order.ts'
import {
  bullService,
  calving,
  cow,
  heat,
  hold,
  listAt,
  loss,
  on,
  pregnant,
  service,
  toBull,
} from './support.ts'

describe('numbers compare in runs, digits by value', () => {
  const inOrder = [
    '',
    '0',
    '1',
    '2',
    '09',
    '9',
    '10',
    '41',
    '41B',
    '412',
    '412-2',
    '412-10',
    'A3',
    'A12',
    'B',
    'B1',
    'IE1',
    'a1',
  ]
  test('in order', () => {
    expect(inOrder.toReversed().sort(compareNumbers)).toEqual(inOrder)
  })

  test('long ear numbers keep every digit', () => {
    const [a, b] = ['372123456789012345678', '372123456789012345679'] as const
    expect(compareNumbers(a, b)).toBeLessThan(0)
    expect(compareNumbers(b, a)).toBeGreaterThan(0)
  })

  test('an order: one of three, and transitive', () => {
    const number = fc.string({
      unit: fc.constantFrom('0', '1', '9', 'A', 'b', '-', ' '),
      minLength: 1,
      maxLength: 6,
    })
    const sign = (a: string, b: string): number => Math.sign(compareNumbers(a, b))
    fc.assert(
      fc.property(number, number, number, (a, b, c) => {
        expect(sign(a, b) + sign(b, a)).toBe(0)
        expect(sign(a, b) === 0).toBe(a === b)
        if (sign(a, b) <= 0 && sign(b, c) <= 0) expect(sign(a, c)).toBeLessThanOrEqual(0)
      }),
      { numRuns: 2000 },
    )
  })
})

const fresh = calving(-60)
const numbers = (
  s: number,
  animals: Parameters<typeof listAt>[1],
  herd?: Parameters<typeof listAt>[2],
): string =>
  listAt(s, animals, herd)
    .rows.map((row) => row.number)
    .join(' ')

test('Take care by code, then number', () => {
  const animals = [
    cow({ number: '1' }, fresh, service(-20), loss(15)),
    cow({ number: '2' }, fresh, heat(18)),
    cow({ number: '3' }, calving(-11), heat(20)),
    cow({ number: '12' }, fresh, service(-60), pregnant(-10), heat(20)),
    cow({ number: '4' }, fresh, service(-60), pregnant(-10), heat(20)),
  ]
  expect(numbers(20, animals)).toBe('4 12 3 2 1')
})

test('the watch: best chance of a return today first, then number', () => {
  const animals = [18, 19, 20, 21, 22, 23, 24].map((k) => cow({ number: String(k) }, fresh, service(30 - k)))
  const rows = listAt(30, [...animals, cow({ number: '3' }, fresh, service(8))]).rows
  const chances = rows.map((row) => row.chance ?? 0)
  expect(chances).toEqual(chances.toSorted((a, b) => b - a))
  const numbers = rows.map((row) => row.number)
  expect(numbers.indexOf('22') - numbers.indexOf('3')).toBe(1)
  expect(rows.at(-1)?.number).toBe('18')
})

test('the sweep bull by code, then number', () => {
  const animals = [
    cow({ number: '1' }, calving(10)),
    cow({ number: '2' }, fresh, toBull(1)),
    cow({ number: '30' }, fresh, service(-20), service(0), heat(20)),
    cow({ number: '4' }, fresh, service(-20), service(0), heat(20)),
  ]
  expect(numbers(24, animals)).toBe('4 30 2 1')
  const bull = [
    cow({ number: '1' }, fresh, hold(50)),
    cow({ number: '9' }, fresh, bullService(45)),
    cow({ number: '2' }, fresh),
  ]
  expect(numbers(55, bull)).toBe('2 9 1')
})

test('sections, then blocks by mating start, then the order of the section', () => {
  const seasons = [{ block: 'late' }, { block: 'early', matingStart: on(-7) }]
  const animals = [
    cow({ number: '1', block: 'late' }, fresh, heat(10)),
    cow({ number: '2', block: 'early' }, fresh, heat(10)),
    cow({ number: '3', block: 'late' }, fresh, heat(8)),
    cow({ number: '4', block: undefined }, service(-20), loss(10)),
    cow({ number: '5', block: 'early' }, fresh, service(-11)),
  ]
  expect(numbers(10, animals, { seasons })).toBe('3 4 2 1 5')
})

describe('rows of a section', () => {
  const row = (number: string, more: Partial<Row>): Row => ({
    section: 'serve',
    animal: `animal-${number}`,
    number,
    block: 'spring',
    days: undefined,
    since: undefined,
    chance: undefined,
    session: undefined,
    straw: undefined,
    moment: 0,
    reasons: ['on-heat'],
    warnings: [],
    also: undefined,
    done: false,
    ...more,
  })
  const inOrder = (...rows: readonly Row[]): string =>
    rows
      .toReversed()
      .sort(compareRows(new Map([['spring', 0]])))
      .map((one) => one.number)
      .join(' ')

  test('to serve: by milking, then the earlier heat', () => {
    const rows = [
      row('5', { session: 'morning', moment: -900 }),
      row('7', { session: 'morning', moment: 100 }),
      row('4', { session: 'morning', moment: 300 }),
      row('3', { session: 'evening', moment: -900 }),
      row('2', { session: 'next-morning' }),
      row('1', { session: 'next-evening' }),
    ]
    expect(inOrder(...rows)).toBe('5 7 4 3 2 1')
  })

  test('the watch: a chance that is not known comes last', () => {
    const watch = (number: string, chance?: number): Row =>
      row(number, { section: 'repeat-heat-watch', reasons: ['since-service'], chance })
    expect(inOrder(watch('2', 0.2), watch('3', 0.01), watch('1'))).toBe('2 3 1')
    expect(inOrder(watch('1'), watch('2'))).toBe('1 2')
  })

  test('checks: days that are not known come last', () => {
    const check = (number: string, days?: number): Row =>
      row(number, { section: 'pregnancy-check', reasons: ['due'], days })
    expect(inOrder(check('4', 40), check('3', 30), check('1'), check('2'))).toBe('4 3 1 2')
  })

  test('the heat record: by number', () => {
    const record = (number: string, days?: number): Row =>
      row(number, { section: 'heat-record', reasons: ['none-seen'], days })
    expect(inOrder(record('1', 20), record('2', 40), record('12', 60))).toBe('1 2 12')
  })

  test('animals without a block, or of a block that is not shown, come last', () => {
    const rows = [row('3', {}), row('1', { block: undefined }), row('2', { block: 'autumn' })]
    expect(inOrder(...rows)).toBe('3 1 2')
  })
})
