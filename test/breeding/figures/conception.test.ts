import { expect, test } from 'vitest'
import { type Grouping, heldOf } from '../../../source/breeding/figures/conception.ts'
import {
  type Animal,
  bullService,
  calving,
  cow,
  empty,
  type Happening,
  heat,
  maiden,
  pregnant,
  service,
} from '../support.ts'
import { figuresAt, seasonAt, told } from './herd.ts'

const calved = calving(-70)
const many = (count: number, ...given: readonly Happening[]): readonly Animal[] =>
  Array.from({ length: count }, () => cow(calved, ...given))
const conception = (s: number, ...animals: readonly Animal[]): string =>
  told(figuresAt(s, animals).conception)

test('a service counts when it is 42 days old', () => {
  const one = cow(calved, service(2), pregnant(35))
  expect([43, 44].map((s) => conception(s, one))).toEqual(['0/0 ?1', '1/1'])
})

test('services were checked to the last of a week of which at least half were', () => {
  const checked = many(2, service(6), empty(60))
  const failed = cow(calved, service(12), heat(33), empty(60))
  const waiting = many(2, service(11))
  expect(conception(70, failed, ...checked, ...waiting)).toBe('0/3 ?2')
  expect(conception(70, failed, ...checked, ...waiting.slice(0, 1))).toBe('0/3 ?1')
  expect(conception(70, failed, ...checked.slice(0, 1), ...waiting)).toBe('0/2 ?2')
  expect(conception(70, failed, ...checked.slice(0, 1), ...waiting, ...waiting)).toBe('0/1 ?5')
})

test('a week is seven days: what was checked eight days before does not speak for it', () => {
  const failed = cow(calved, service(12), heat(33), empty(60))
  const waiting = many(2, service(12))
  expect(conception(70, failed, ...waiting, ...many(2, service(6), empty(60)))).toBe('0/3 ?2')
  // Of the week of day 12 one of three was checked: services are known to day 5.
  expect(conception(70, failed, ...waiting, ...many(2, service(5), empty(60)))).toBe('0/2 ?3')
})

test('a check of a service by a bull says nothing of those by AI', () => {
  const byBull = many(3, bullService(12), empty(60))
  expect(conception(70, ...byBull, cow(calved, service(12), heat(33)))).toBe('0/0 ?1')
})

test('back in heat and never checked: she is not awaited', () => {
  const back = many(5, service(12), heat(33))
  expect(conception(70, ...back, cow(calved, service(12), empty(60)))).toBe('0/6')
})

const groups = (by: Grouping, ...given: readonly Animal[]): readonly string[] =>
  figuresAt(100, given).conceptionBy[by].map(({ key, figure }) => `${key ?? '-'} ${told(figure)}`)
const at = (more: Readonly<Record<string, unknown>>): Animal => cow(calved, service(2, more), empty(60))

test('by milking: the one recorded, else that of the time of day', () => {
  expect(
    groups(
      'session',
      at({ time: '11:59' }),
      at({ time: '12:00' }),
      at({ time: '00:10' }),
      at({ time: '10:00', session: 'evening' }),
    ),
  ).toEqual(['morning 0/2', 'evening 0/2'])
  expect(
    groups('session', at({ time: 'morning' }), at({ time: 'evening' }), at({ time: 'evening' })),
  ).toEqual(['evening 0/2', 'morning 0/1'])
  expect(groups('session', at({}))).toEqual(['- 0/1'])
})

test('those with most services first; by order and calvings in their own order', () => {
  expect(groups('sire', at({ sire: 'S1' }), at({ sire: 'S2' }), at({ sire: 'S2' }))).toEqual([
    'S2 0/2',
    'S1 0/1',
  ])
  const calvings = (count: number): Animal => cow({ lactation: count - 1 }, calved, service(2), empty(60))
  expect(
    groups('parity', calvings(5), calvings(4), calvings(3), calvings(3), maiden(service(2), empty(60))),
  ).toEqual(['0 0/1', '3 0/2', '4 0/2'])
  const twice = cow(calved, service(2), service(23), empty(60))
  expect(groups('order', twice)).toEqual(['1 0/1', '2 0/1'])
})

test('by inseminator: the one who was named last of a service', () => {
  const again = cow(calved, service(2, { inseminator: 'OB' }), service(3, { inseminator: 'MK' }), empty(60))
  const half = cow(calved, service(2, { inseminator: 'OB' }), service(3), empty(60))
  expect(groups('inseminator', again, half)).toEqual(['MK 0/1', 'OB 0/1'])
})

test('services for each pregnancy; without a pregnancy there is no ratio', () => {
  const held = cow(calved, service(2), pregnant(40))
  const ratio = (...given: readonly Animal[]) => figuresAt(100, given).servicesPerPregnancy
  expect(ratio(held)).toEqual({ services: 1, pregnancies: 1, ratio: 1 })
  expect(ratio(held, at({}), at({}))).toEqual({ services: 3, pregnancies: 1, ratio: 3 })
  expect(ratio(at({}))).toEqual({ services: 1, pregnancies: 0, ratio: undefined })
})

test('services without a result stand beside', () => {
  const { counted } = seasonAt(100, [cow(calved, service(2), pregnant(40)), cow(calved, service(2)), at({})])
  expect(told(heldOf(counted.services.flat()))).toBe('1/2 ?1')
})
