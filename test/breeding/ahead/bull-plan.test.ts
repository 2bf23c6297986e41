import { expect, test } from 'vitest'
import { bullPlan } from '../../../source/breeding/ahead/bull-plan.ts'
import type { Season } from '../../../source/breeding/season.ts'
import { type Animal, bookOf, dayAt, type Herd, on } from '../support.ts'

const bull = (number: string, born: number): Animal => ({
  record: { number, sex: 'M', block: undefined, ready: true, born: on(born) },
  happenings: [],
})
const planOf = (herd: Herd = {}) => {
  const book = bookOf([bull('B1', -1200), bull('B2', -1300), bull('B3', -500)], herd)
  return bullPlan(book, book.allSeasons[0] as Season, { bullsNeeded: 4, youngBullsNeeded: 6 })
}

test('his weeks begin the day after the last of AI; soundness 60 days before, on the farm 10 days before', () => {
  expect(planOf()).toEqual({
    turnOut: dayAt(42),
    last: dayAt(62),
    needed: 4,
    youngNeeded: 6,
    onHand: 3,
    young: 1,
    soundnessBy: dayAt(42 - 60),
    onFarmBy: dayAt(42 - 10),
  })
})

test('no plan without bull weeks', () => {
  expect(planOf({ bullWeeks: 0 })).toBeUndefined()
})
