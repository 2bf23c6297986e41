import { expect, test } from 'vitest'
import { survivalToAge } from '../../../source/breeding/chances/losses.ts'
import { ownConception } from '../../../source/breeding/chances/own-results.ts'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import { forecastAnimal } from '../../../source/breeding/forecast/animal.ts'
import { conceptionPoints } from '../../../source/breeding/forecast/conception-points.ts'
import { forecastHerd } from '../../../source/breeding/forecast/herd.ts'
import type { AnimalOutlook } from '../../../source/breeding/forecast/outlook.ts'
import { cow, plainRates, planFrom, seasonOn } from './cow.ts'

const season = seasonOn(0)
const own = ownConception(defaultRates, { cowConventional: { held: 60, failed: 50 } })
const herdOf = (size: number): AnimalOutlook[] =>
  Array.from({ length: size }, (_, i) => ({
    ...cow,
    straws: [planFrom('sexed'), planFrom('conventional')],
    anchor: i % 3 === 0 ? { kind: 'calved', day: -(i % 50) } : { kind: 'heat', day: -(i % 18) - 1 },
    earliestDay: i % 3 === 0 ? Math.max(0, 42 - (i % 50)) : 0,
  }))

test('one animal, one rate: the counts are her chances', () => {
  const rates = plainRates(0.8, 0.55)
  const herd = forecastHerd({ animals: [cow], season, rates, conception: [rates.conception] })
  const animal = forecastAnimal(cow, season, rates)
  expect(herd.inCalfSixWeeks.expected).toBeCloseTo(animal.inCalf[42] ?? Number.NaN, 12)
  expect(herd.emptyAtEnd.expected).toBeCloseTo(1 - (animal.inCalf.at(-1) ?? Number.NaN), 12)
  expect(herd.straws.conventional.expected).toBeCloseTo(animal.services, 12)
  expect(herd.straws.sexed).toMatchObject({ expected: 0, low: 0, middle: 0, high: 0 })
  expect(herd.inCalf).toEqual(animal.inCalf)
  expect(herd.inCalfSixWeeks).toMatchObject({ low: 0, middle: 1, high: 1 })
})

test('100 equal animals: expected and band of a binomial count', () => {
  const rates = plainRates(0.8, 0.55)
  const animals = new Array<AnimalOutlook>(100).fill(cow)
  const { inCalfSixWeeks } = forecastHerd({ animals, season, rates, conception: [rates.conception] })
  expect(inCalfSixWeeks.expected).toBeCloseTo(66.87, 2)
  // qbinom(c(.1, .5, .9), 100, .66874) of R
  expect(inCalfSixWeeks).toMatchObject({ low: 61, middle: 67, high: 73 })
})

test('what is not known of the rates widens the band', () => {
  const animals = herdOf(150)
  const known = forecastHerd({ animals, season, rates: defaultRates, conception: conceptionPoints(own, 1) })
  const guessed = forecastHerd({ animals, season, rates: defaultRates, conception: conceptionPoints(own) })
  const width = ({ low, high }: { low: number; high: number }): number => high - low
  expect(width(guessed.inCalfSixWeeks)).toBeGreaterThan(width(known.inCalfSixWeeks) + 3)
  expect(Math.abs(guessed.inCalfSixWeeks.middle - known.inCalfSixWeeks.middle)).toBeLessThanOrEqual(1)
})

test('nine points give each end within one animal of 60', () => {
  const animals = herdOf(120)
  const ends = (points: number) => {
    const { inCalfSixWeeks, emptyAtEnd } = forecastHerd({
      animals,
      season,
      rates: defaultRates,
      conception: conceptionPoints(own, points),
    })
    return [
      inCalfSixWeeks.low,
      inCalfSixWeeks.middle,
      inCalfSixWeeks.high,
      emptyAtEnd.low,
      emptyAtEnd.middle,
      emptyAtEnd.high,
    ]
  }
  const many = ends(60)
  for (const [i, end] of ends(9).entries())
    expect(Math.abs(end - (many[i] ?? Number.NaN))).toBeLessThanOrEqual(1)
})

test('calvings and heifer calves follow the conceptions, less the losses to term', () => {
  const animals = herdOf(40)
  const conception = [defaultRates.conception]
  const herd = forecastHerd({ animals, season, rates: defaultRates, conception })
  const term = survivalToAge(280, defaultRates.losses)
  let born = 0
  let heifers = 0
  for (const animal of animals) {
    for (const { by, share } of forecastAnimal(animal, season, defaultRates).conceptions) {
      born += share * term
      if (by === 'sexed') heifers += share * term * 0.9
      if (by === 'conventional') heifers += share * term * 0.485
    }
  }
  expect(herd.due.expected.reduce((a, b) => a + b)).toBeCloseTo(born, 9)
  expect(herd.heiferCalves.expected).toBeCloseTo(heifers, 9)
  expect(herd.due.first).toBeGreaterThanOrEqual(280)
})

test('too few bulls leave more empty; enough bulls change nothing', () => {
  const animals = herdOf(150)
  const question = { animals, season, rates: defaultRates, conception: [defaultRates.conception] }
  const enough = forecastHerd(question)
  const five = forecastHerd({ ...question, bulls: 5 })
  const one = forecastHerd({ ...question, bulls: 1 })
  expect(five).toEqual(enough)
  expect(one.openAtTurnOut).toEqual(enough.openAtTurnOut)
  expect(one.emptyAtEnd.expected).toBeGreaterThan(enough.emptyAtEnd.expected + 5)
})

test('bulls count those that they may serve only', () => {
  const late: AnimalOutlook = { ...cow, anchor: { kind: 'calved', day: 30 }, earliestDay: 72 }
  const rates = plainRates(0.8, 0.55)
  const herd = forecastHerd({ animals: [cow, late], season, rates, conception: [rates.conception] })
  expect(herd.openAtTurnOut.high).toBe(1)
  expect(herd.emptyAtEnd.expected).toBeCloseTo(1.1765, 4)
})

test('past the AI weeks what stood by then is what is shown', () => {
  const anchor = {
    kind: 'in-calf',
    conceived: 10,
    confirmed: 44,
    by: 'conventional',
    gestation: 280,
  } as const
  const rates = plainRates(0.8, 0.55)
  const animals = [
    { ...cow, anchor, chancesUsed: 1 },
    { ...cow, leftToBull: true },
  ]
  const herd = forecastHerd({ animals, season: seasonOn(50), rates, conception: [rates.conception] })
  expect(herd.inCalfSixWeeks).toMatchObject({ low: 1, middle: 1, high: 1 })
  expect(herd.inCalf).toHaveLength(14)
})

test('an empty block', () => {
  const herd = forecastHerd({ animals: [], season, rates: defaultRates, conception: conceptionPoints(own) })
  expect(herd.animals).toBe(0)
  expect(herd.inCalfSixWeeks).toMatchObject({ expected: 0, low: 0, middle: 0, high: 0 })
  expect(herd.due).toEqual({ first: 0, expected: [] })
})
