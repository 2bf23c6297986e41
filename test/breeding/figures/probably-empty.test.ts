import { expect, test } from 'vitest'
import { cohortOf } from '../../../source/breeding/figures/cohort.ts'
import { probablyEmpty } from '../../../source/breeding/figures/probably-empty.ts'
import { ratesOfPolicy } from '../../../source/breeding/rates-of-policy.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import {
  type Animal,
  bar,
  block,
  bookOf,
  calving,
  cow,
  dayAt,
  empty,
  fromBull,
  heat,
  left,
  maiden,
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

test('she stays a week after it was decided that she goes', () => {
  const barred = cow(calved, service(-5), empty(26), bar(30))
  expect(emptiesAt(36, [barred])).toEqual(['1: checked-empty 41'])
  expect(emptiesAt(37, [barred])).toEqual([])
})

test('a bull with her in the AI weeks does not name her apart; after them he does', () => {
  expect(emptiesAt(60, [cow(calved, withBull(20), fromBull(41))])).toEqual(['1: not-served 120'])
  expect(emptiesAt(60, [cow(calved, withBull(42))])).toEqual(['1: with-bull 120'])
})

test('a service of season day -35 is one of the season, the day before it is not', () => {
  expect(emptiesAt(-2, [cow(calving(-100), service(-35), empty(-5))])).toEqual(['1: checked-empty 33'])
  expect(emptiesAt(0, [cow(calving(-100), service(-36), empty(-5))])).toEqual(['1: not-served 100'])
})

test('of the same reason those without days last, maidens', () => {
  expect(emptiesAt(10, [maiden(), cow(calving(-60)), cow(calving(-90))])).toEqual([
    '3: not-served 100',
    '2: not-served 70',
    '1: not-served undefined',
  ])
})

test('gone to another block she is not asked about a week later', () => {
  const gone = cow(calved, service(2), empty(35), block(38, 'autumn'))
  expect(emptiesAt(44, [gone])).toEqual(['1: checked-empty 42'])
  expect(emptiesAt(45, [gone])).toEqual([])
})
