import { expect, test } from 'vitest'
import { type Animal, bullService, calving, cow, maiden, service } from '../support.ts'
import { figuresAt, told } from './herd.ts'

const calved = calving(-70)
const of = (one: Animal, s = 40): string => {
  const { all, ready } = figuresAt(s, [one]).submission
  return `${told(all)} ${told(ready)}`
}

test.each([
  ['served on the mating start', cow(calved, service(0)), '1/1 1/1'],
  ['served on day 20', cow(calved, service(20)), '1/1 1/1'],
  ['served on day 21', cow(calved, service(21)), '0/1 0/1'],
  ['served the day before', cow(calved, service(-1)), '0/1 0/1'],
  ['served before and within', cow(calved, service(-10), service(11)), '1/1 1/1'],
  ['served by a bull', cow(calved, bullService(5)), '0/1 0/1'],
  ['calved 42 days by day 20', cow(calving(-22)), '0/1 0/1'],
  ['calved 41 days by day 20', cow(calving(-21)), '0/1 0/0'],
  ['a maiden', maiden(), '0/1 0/1'],
] as const)('%s', (_, one, expected) => {
  expect(of(one)).toBe(expected)
  // Before the three weeks are over who will be ready by then is ready already.
  expect(of(one, 18).split(' ')[1]?.split('/')[1]).toBe(expected.split('/').at(-1))
})

test('each day that is over has its share and what to aim for', () => {
  const herd = [cow(calved, service(0)), cow(calved, service(1)), cow(calved, service(2)), cow(calved)]
  const { pace } = figuresAt(2, herd).submission
  expect(pace.map(({ day, served, percent }) => [day, served, percent])).toEqual([
    [0, 1, 25],
    [1, 2, 50],
  ])
  expect(figuresAt(60, herd).submission.pace).toHaveLength(21)
  expect(figuresAt(60, herd).submission.pace.at(-1)?.target).toBe(90)
  expect(figuresAt(-10, herd).submission.pace).toEqual([])
  expect(pace[1]?.target).toBeCloseTo((90 * 2) / 21, 12)
  expect(figuresAt(2, []).submission.pace.map(({ percent }) => percent)).toEqual([undefined, undefined])
  expect(figuresAt(2, [cow(calved, service(0))]).submission.pace[0]?.percent).toBe(100)
})
