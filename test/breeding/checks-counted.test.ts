import { expect, test } from 'vitest'
import { checksCounted } from '../../source/breeding/checks-counted.ts'
import { standingOn } from '../../source/breeding/standing.ts'
import {
  bookOf,
  calving,
  cow,
  dayAt,
  empty,
  type Happening,
  pregnant,
  service,
  unsure,
  withBull,
} from './support.ts'

const told = (...given: readonly Happening[]): readonly string[] => {
  const book = bookOf(cow(calving(-60), ...given))
  const [animal] = book.animals.values()
  if (animal === undefined) throw new Error('the herd has a cow')
  return checksCounted(standingOn(book, animal, dayAt(120)), book).map(
    ({ check, conception, service: counted, served }) => {
      const day = (one: { day: number } | undefined): string =>
        one === undefined ? 'none' : String(one.day - dayAt(0))
      return `${check.fact.result} ${check.day - dayAt(0)}: ${day(conception ?? counted)}${served ? '' : ', never served'}`
    },
  )
}

test('a result counts for the service that was old enough, the newest check first', () => {
  expect(told(service(0), empty(29), service(30), pregnant(65))).toEqual([
    'pregnant 65: 30',
    'empty 29: none',
  ])
  expect(told(service(0), empty(30))).toEqual(['empty 30: 0'])
  expect(told(service(30), empty(30))).toEqual(['empty 30: none'])
  expect(told(service(0), service(21), unsure(40))).toEqual(['unsure 40: 0'])
})

test('a pregnant result by its foetal age, and one of the bull', () => {
  expect(told(service(0), service(21), pregnant(60, { foetalAge: 60 }))).toEqual(['pregnant 60: 0'])
  expect(told(withBull(42), pregnant(80))).toEqual(['pregnant 80: 42, never served'])
})

test('a later result that roughly agrees keeps the conception of the earlier one, in calf again after empty does not', () => {
  const first = [service(0), pregnant(40), service(60)]
  expect(told(...first, pregnant(80, { foetalAge: 71 }))).toEqual(['pregnant 80: 0', 'pregnant 40: 0'])
  expect(told(...first, empty(70), pregnant(80, { foetalAge: 71 }))).toEqual([
    'pregnant 80: none',
    'empty 70: 0',
    'pregnant 40: 0',
  ])
})

test('without a service before it, and of cycles that are closed', () => {
  expect(told(empty(30))).toEqual(['empty 30: none, never served'])
  expect(told(service(-400, {}), pregnant(-350), calving(-100))).toContain('pregnant -350: -400')
})
