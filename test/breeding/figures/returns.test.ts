import { expect, test } from 'vitest'
import { nonReturn, returnAfter, returnIntervals } from '../../../source/breeding/figures/returns.ts'
import { type Animal, block, bullService, calving, cow, heat, left, service, suspect } from '../support.ts'
import { figuresAt, seasonAt, told } from './herd.ts'

const calved = calving(-70)
const bull: Animal = { record: { sex: 'M', block: 'spring' }, happenings: [] }
const firstReturn = (one: Animal): number | undefined => {
  const { book, counted } = seasonAt(80, [one])
  const result = counted.services[0]?.[0]
  return result && returnAfter(result, book.policy)
}

test.each([
  ['no heat since', cow(calved, service(2)), undefined],
  ['a heat 17 days later is no return', cow(calved, service(2), heat(19)), undefined],
  ['18 days later', cow(calved, service(2), heat(20)), 18],
  ['a suspect heat', cow(calved, service(2), suspect(23)), undefined],
  ['a second service', cow(calved, service(2), service(24)), 22],
  ['the first of two', cow(calved, service(2), heat(23), heat(45)), 21],
  ['a heat before the service', cow(calved, heat(-30), service(2)), undefined],
] as const)('days to a return: %s', (_, one, expected) => {
  expect(firstReturn(one)).toBe(expected)
})

test.each([
  ['24 days old: not yet to be told', 26, cow(calved, service(2)), '0/0 0/0'],
  ['25 days old, not seen again', 27, cow(calved, service(2)), '1/1 0/0'],
  ['57 days old', 59, cow(calved, service(2)), '1/1 1/1'],
  ['56 days old', 58, cow(calved, service(2)), '1/1 0/0'],
  ['seen again after 24 days', 70, cow(calved, service(2), heat(26)), '0/1 0/1'],
  ['seen again after 25 days', 70, cow(calved, service(2), heat(27)), '1/1 0/1'],
  ['seen again after 56 days', 70, cow(calved, service(2), heat(58)), '1/1 0/1'],
  ['seen again after 57 days', 70, cow(calved, service(2), heat(59)), '1/1 1/1'],
  ['culled after 24 days', 70, cow(calved, service(2), left(26)), '0/0 0/0'],
  ['culled after 25 days', 70, cow(calved, service(2), left(27)), '1/1 0/0'],
  ['served by a bull', 70, cow(calved, bullService(2)), '0/0 0/0'],
] as const)('non-return at 24 and 56 days: %s', (_, s, one, expected) => {
  const { nonReturn24, nonReturn56 } = figuresAt(s, [one])
  expect(`${told(nonReturn24)} ${told(nonReturn56)}`).toBe(expected)
})

test('services by a bull are left out of a non-return rate', () => {
  const { book, counted } = seasonAt(70, [cow(calved, bullService(2)), cow(calved, service(2))])
  expect(told(nonReturn(counted.services.flat(), 24, book.policy))).toBe('1/1')
})

test('regular returns of all, and to those of two cycles', () => {
  expect(returnIntervals([21, 22, 30, 42])).toMatchObject({ all: 4, ratio: 2 })
  expect(told(returnIntervals([21, 22, 30, 42]).regular)).toBe('2/4')
  expect(returnIntervals([21]).ratio).toBeUndefined()
  expect(returnIntervals([5, 42]).counts).toEqual({
    'short-irregular': 1,
    'short-regular': 0,
    'long-irregular': 0,
    'long-regular': 1,
    extended: 0,
  })
})

test('days between services of one cycle only: a calving or a loss ends it', () => {
  const { all } = figuresAt(140, [cow(calving(-400), service(-30), calving(-1), service(41))]).returnIntervals
  expect(all).toBe(0)
})

test('services of animals that came into the block after the mating start count too, those of other blocks do not', () => {
  const autumn = { block: 'autumn' }
  const herd = [
    cow(autumn, calved, block(10, 'spring'), service(30), service(51)),
    cow(autumn, calved, service(30), service(51)),
    { ...bull, happenings: [service(30)] },
  ]
  const figures = figuresAt(80, herd)
  expect(figures.cohort).toBe(0)
  expect(told(figures.nonReturn24)).toBe('1/2')
  const three = figuresAt(80, [...herd, cow(autumn, calved, service(20), service(45))])
  expect(told(three.nonReturn24)).toBe('1/2')
})
