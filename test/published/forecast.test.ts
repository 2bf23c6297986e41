import { expect, test } from 'vitest'
import { defaultRates, type Rates } from '../../source/breeding/chances/rates.ts'
import { forecastAnimal } from '../../source/breeding/forecast/animal.ts'
import { bullsNeeded } from '../../source/breeding/forecast/bulls.ts'
import { forecastHerd } from '../../source/breeding/forecast/herd.ts'
import { cow, seasonOn } from '../breeding/forecast/cow.ts'

/** First heats even over three weeks, every cycle 21 days, no losses, one conception rate. */
const evenCycles = (submission: number, conception: number): Rates => ({
  ...defaultRates,
  cycle: { ...defaultRates.cycle, from: 21, to: 21 },
  lateReturn: { ...defaultRates.lateReturn, share: 0 },
  losses: [],
  heatSeen: submission,
  conception: { ...defaultRates.conception, cowConventional: conception, natural: conception },
})
const freely = { ...seasonOn(0), chances: 99 }
const even = { ...cow, cycleMean: 21 }

// agriland.co.uk, High submission, conception rates needed for six-week in-calf rate: percent in calf after six weeks.
test.each([
  [0.9, 0.6, 79],
  [0.9, 0.5, 70],
  [0.9, 0.4, 59],
  [0.9, 0.3, 47],
  [0.8, 0.6, 73],
  [0.8, 0.5, 64],
  [0.8, 0.4, 54],
  [0.8, 0.3, 42],
  [0.6, 0.6, 59],
  [0.6, 0.5, 51],
])(
  '%f submitted in three weeks, %f conceiving: %i %% in calf after six weeks',
  (submission, conception, percent) => {
    const inCalf = forecastAnimal(even, freely, evenCycles(submission, conception)).inCalf[42] ?? Number.NaN
    expect(inCalf).toBeCloseTo(1 - (1 - submission * conception) ** 2, 12)
    expect(Math.round(100 * inCalf)).toBe(percent)
  },
)

// E. O'Connell, Irish Independent, 6 Apr 2021: 120 cows, 90 % submitted, 60 % conceiving: 25 open after six weeks.
test('120 cows: 25 open after six weeks', () => {
  const rates = evenCycles(0.9, 0.6)
  const herd = forecastHerd({
    animals: new Array(120).fill(even),
    season: freely,
    rates,
    conception: [rates.conception],
  })
  expect(Math.round(herd.openAtTurnOut.expected)).toBe(25)
})

// O. Charlton, Testing for bull fertility, Cornish Times: 60 % conceiving a round, about 6 % barren after nine weeks.
test('three rounds with a bull leave 6 % barren', () => {
  const rates = evenCycles(1, 0.6)
  const bullOnly = { ...freely, lastAiDay: -1 }
  const inCalf = forecastAnimal(even, bullOnly, rates, 1).inCalf.at(-1) ?? Number.NaN
  expect(1 - inCalf).toBeCloseTo(0.4 ** 3, 12)
  expect(Math.round(100 * (1 - inCalf))).toBe(6)
})

// NZ veterinary practice, Bull power planning: 240 open cows, 8 bulls at work, 16 in two teams.
test('240 open cows need 8 bulls, or two teams of 8', () => {
  expect(bullsNeeded({ open: 240, openPerBull: 30, halfRest: false })).toBe(8)
  expect(bullsNeeded({ open: 240, openPerBull: 30, halfRest: true })).toBe(16)
})
