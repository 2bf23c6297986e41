import { expect, test } from 'vitest'
import { cohortOf } from '../../../source/breeding/figures/cohort.ts'
import { probablyEmpty } from '../../../source/breeding/figures/probably-empty.ts'
import { ratesOfPolicy } from '../../../source/breeding/rates-of-policy.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import {
  type Animal,
  bar,
  bookOf,
  calving,
  cow,
  dayAt,
  empty,
  heat,
  left,
  pregnant,
  service,
  unsure,
  withBull,
} from '../support.ts'

/** `number: reason days`, in order. */
function emptiesAt(s: number, animals: readonly Animal[]): string[] {
  const book = bookOf(animals.map((one, i) => ({ ...one, record: { ...one.record, number: String(i + 1) } })))
  const [season] = book.allSeasons
  if (season === undefined) throw new Error('no season')
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, dayAt(s)))
  const members = cohortOf(book, season, standings, dayAt(s))
  return probablyEmpty(members, book, ratesOfPolicy(book.policy), season).map(
    ({ standing, reason, days }) => `${standing.animal.number}: ${reason} ${days}`,
  )
}
const calved = calving(-60)
const sexed = { straw: 'sexed' }

test('in calf, barred and left are none of them', () => {
  const gone = [cow(calved, service(2), pregnant(40)), cow(calved, bar(10)), cow(calved, left(20))]
  expect(emptiesAt(45, gone)).toEqual([])
})

test('each reason in its order, within it who waits longest', () => {
  expect(
    emptiesAt(40, [
      cow(calved),
      cow(calving(-90)),
      cow(calved, service(5), heat(26)),
      cow(calved, service(2), empty(35)),
      cow(calved, service(3), unsure(36)),
      cow(calved, service(12)),
    ]),
  ).toEqual([
    '4: checked-empty 38',
    '3: came-back 35',
    '5: doubtful 37',
    '2: not-served 130',
    '1: not-served 100',
  ])
})

test('a fresh service is no doubt, however low its straw’s chance: before day 18 nobody can know', () => {
  expect(emptiesAt(17, [cow(calved, service(5, sexed))])).toEqual([])
  // Of day 18 on her days count: a sexed straw that had a chance of 47 in 100 and no return yet.
  expect(emptiesAt(23, [cow(calved, service(5, sexed))])).toEqual(['1: doubtful 18'])
  // And when no return came she is likelier in calf again.
  expect(emptiesAt(35, [cow(calved, service(5, sexed))])).toEqual([])
})

test('a service of an earlier season does not count as one of this', () => {
  expect(emptiesAt(10, [cow(calving(-250), service(-150))])).toEqual(['1: not-served 260'])
})

test('who was with the bull and has no result is named apart', () => {
  expect(emptiesAt(60, [cow(calved, service(5), heat(26), withBull(42))])).toEqual(['1: with-bull 120'])
})
