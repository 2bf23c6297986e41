import { expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import { ratesOfHerd } from '../../source/breeding/rates-of-herd.ts'
import { ratesOfPolicy } from '../../source/breeding/rates-of-policy.ts'
import { standingOn } from '../../source/breeding/standing.ts'
import { bookOf, calving, cow, dayAt, factsOf, type Herd, on, pregnant, service } from './support.ts'

const herd: Herd = { policy: { cowConception: 0.5, heatDetection: 0.8 } }
/** Twenty cows served on day 2; each is found in calf on season day 60. */
const cows = Array.from({ length: 20 }, (_, i) =>
  cow({ number: String(i + 1) }, calving(-60), service(2), pregnant(60, { serviceDate: on(2) })),
)

test('without results of its own the herd has the rates of its policy', () => {
  const book = bookOf([], herd)
  const { rates } = ratesOfHerd(book, dayAt(10))
  expect(rates.conception.cowConventional).toBeCloseTo(0.5, 12)
  expect(rates.heatSeen).toBeCloseTo(0.8, 12)
  expect({ ...rates, conception: undefined, heatSeen: undefined }).toEqual({
    ...ratesOfPolicy(book.policy),
    conception: undefined,
    heatSeen: undefined,
  })
})

test('what the herd has shown by the day before moves them, nothing of the day itself', () => {
  const book = bookOf(cows, herd)
  expect(ratesOfHerd(book, dayAt(60)).rates.conception.cowConventional).toBeCloseTo(0.5, 12)
  // Fifty services by the guess, half of which hold, and twenty that held.
  const { rates, own } = ratesOfHerd(book, dayAt(61))
  expect(own.conception.cowConventional).toMatchObject({ held: 20, failed: 0 })
  expect(rates.conception.cowConventional).toBeCloseTo(45 / 70, 12)
})

test('standings that are at hand give the same, those that left among them', () => {
  const facts = factsOf(cows, herd)
  const [one, other] = [openBook(facts), openBook(facts)]
  const standings = Array.from(other.animals.values(), (animal) => standingOn(other, animal, dayAt(61)))
  expect(ratesOfHerd(other, dayAt(61), standings)).toEqual(ratesOfHerd(one, dayAt(61)))
  // They are what is counted: of ten cows ten services.
  const half = ratesOfHerd(openBook(facts), dayAt(61), standings.slice(10))
  expect(half.own.conception.cowConventional.held).toBe(10)
})

test('they are counted once for a book and a day', () => {
  const book = bookOf(cows, herd)
  const [day, next] = [ratesOfHerd(book, dayAt(60)), ratesOfHerd(book, dayAt(61))]
  expect(ratesOfHerd(book, dayAt(60))).toBe(day)
  expect(ratesOfHerd(book, dayAt(61))).toBe(next)
  expect(ratesOfHerd(bookOf(cows, herd), dayAt(60))).not.toBe(day)
  // A long look ahead takes no more room than a month of days.
  for (let s = 62; s < 100; s += 1) ratesOfHerd(book, dayAt(s))
  expect(ratesOfHerd(book, dayAt(60))).not.toBe(day)
  expect(ratesOfHerd(book, dayAt(60))).toEqual(day)
})
