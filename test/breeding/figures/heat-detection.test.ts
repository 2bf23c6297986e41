import { expect, test } from 'vitest'
import { calving, cow, heat, pregnant, service, suspect } from '../support.ts'
import { figuresAt, told } from './herd.ts'

const calved = calving(-70)

test.each([
  ['a sure heat on day 0', cow(calved, heat(0)), '1/1'],
  ['on day 23', cow(calved, heat(23)), '1/1'],
  ['on day 24 is too late', cow(calved, heat(24)), '0/1'],
  ['the day before the mating start', cow(calved, heat(-1)), '0/1'],
  ['a suspect heat is none', cow(calved, suspect(5)), '0/1'],
  ['a service is a heat seen', cow(calved, service(5)), '1/1'],
  ['seen twice counts once', cow(calved, heat(1), heat(22)), '1/1'],
  ['seen before and within', cow(calved, heat(-15), heat(7)), '1/1'],
  ['calved 42 days at the mating start', cow(calving(-42), heat(5)), '1/1'],
  ['calved 41 days', cow(calving(-41), heat(5)), '0/0'],
  ['in calf at the mating start', cow(calving(-100), service(-40), pregnant(-5)), '0/0'],
] as const)('%s', (_, one, expected) => {
  expect(told(figuresAt(40, [one]).heatDetection)).toBe(expected)
})
