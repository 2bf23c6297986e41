import { expect, test } from 'vitest'
import { survivalToAge } from '../../../source/breeding/chances/losses.ts'
import { ownConception } from '../../../source/breeding/chances/own-results.ts'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import { forecastAnimal } from '../../../source/breeding/forecast/animal.ts'
import { conceptionPoints } from '../../../source/breeding/forecast/conception-points.ts'
import { forecastHerd } from '../../../source/breeding/forecast/herd.ts'
import type { AnimalOutlook } from '../../../source/breeding/forecast/outlook.ts'
import { cow, herdOf, plainRates, seasonOn } from './cow.ts'

const season = seasonOn(0)
const own = ownConception(defaultRates, { cowConventional: { held: 60, failed: 50 } })
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
  const animals = herdOf(30)
  const known = forecastHerd({ animals, season, rates: defaultRates, conception: conceptionPoints(own, 1) })
  const guessed = forecastHerd({ animals, season, rates: defaultRates, conception: conceptionPoints(own) })
  const width = ({ low, high }: { low: number; high: number }): number => high - low
  expect(width(guessed.inCalfSixWeeks)).toBeGreaterThan(width(known.inCalfSixWeeks))
  expect(Math.abs(guessed.inCalfSixWeeks.middle - known.inCalfSixWeeks.middle)).toBeLessThanOrEqual(1)
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
  const animals = herdOf(75)
  const question = { animals, season, rates: defaultRates, conception: [defaultRates.conception] }
  const enough = forecastHerd(question)
  const five = forecastHerd({ ...question, bulls: 5 })
  const none = forecastHerd({ ...question, bulls: 0 })
  expect(five).toEqual(enough)
  expect(none.openAtTurnOut).toEqual(enough.openAtTurnOut)
  expect(none.emptyAtEnd.expected).toBeGreaterThan(enough.emptyAtEnd.expected + 5)
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

test('by the end of each week, the six weeks and the season among them', () => {
  const animals = herdOf(30)
  const { conceivedBy, inCalfSixWeeks, emptyAtEnd } = forecastHerd({
    animals,
    season,
    rates: defaultRates,
    conception: conceptionPoints(own, 1),
  })
  expect(conceivedBy.map(({ day }) => day)).toEqual([6, 13, 20, 27, 34, 41, 48, 55, 62])
  expect(conceivedBy[5]).toEqual({ day: 41, ...inCalfSixWeeks })
  expect(conceivedBy[8]?.expected).toBeCloseTo(30 - emptyAtEnd.expected, 9)
  for (const [i, { expected }] of conceivedBy.entries())
    expect(expected).toBeGreaterThan(conceivedBy[i - 1]?.expected ?? 0)
})

test('several rates: mornings and calvings are their mean', () => {
  const animals = herdOf(6)
  const rates = plainRates(0.8, 0.55)
  const [low, high] = [plainRates(0.8, 0.4).conception, plainRates(0.8, 0.6).conception]
  const of = (...conception: (typeof low)[]) => forecastHerd({ animals, season, rates, conception })
  const both = of(low, high)
  const mean = (a: readonly number[], b: readonly number[]) => a.map((one, i) => (one + (b[i] ?? 0)) / 2)
  for (const [i, one] of mean(of(low).inCalf, of(high).inCalf).entries())
    expect(both.inCalf[i]).toBeCloseTo(one, 12)
  expect(both.due.first).toBe(of(low).due.first)
  for (const [i, one] of mean(of(low).due.expected, of(high).due.expected).entries())
    expect(both.due.expected[i]).toBeCloseTo(one, 12)
})

test('calvings stand on their days: the conception and its days of gestation', () => {
  const since = (conceived: number, gestation: number): AnimalOutlook => ({
    ...cow,
    anchor: { kind: 'in-calf', conceived, confirmed: 45, by: 'conventional', gestation },
    chancesUsed: 2,
  })
  const rates = plainRates(0.8, 0.55)
  const animals = [since(3, 280), since(8, 280), since(6, 282)]
  const herd = forecastHerd({ animals, season: seasonOn(50), rates, conception: [rates.conception] })
  expect(herd.due).toEqual({ first: 283, expected: [1, 0, 0, 0, 0, 2] })
  expect(herd.animals).toBe(3)
})

test('late in the season what is lost by today is lost, though the final check is over', () => {
  const losses = [{ from: 30, to: 200, lost: 0.5 }]
  const rates = { ...plainRates(0.8, 0.55), losses }
  const anchor = { kind: 'in-calf', conceived: 3, confirmed: 63, by: 'sexed', gestation: 280 } as const
  const animals = [{ ...cow, anchor, chancesUsed: 2 }]
  const on = (today: number) =>
    forecastHerd({ animals, season: seasonOn(today), rates, conception: [rates.conception] })
  const alive = (day: number): number => survivalToAge(day - 3, losses) / survivalToAge(63 - 3, losses)
  expect(on(64).inCalfSixWeeks.expected).toBeCloseTo(alive(104), 12)
  expect(on(104).inCalfSixWeeks.expected).toBeCloseTo(alive(104), 12)
  expect(on(130).inCalfSixWeeks.expected).toBeCloseTo(alive(129), 12)
})

test('when his weeks have begun the bulls are shared among those open now', () => {
  const animals = new Array<AnimalOutlook>(40).fill({ ...cow, leftToBull: true })
  const rates = plainRates(0.8, 0.55)
  const question = { animals, season: seasonOn(42), rates, conception: [rates.conception] }
  const enough = forecastHerd(question)
  expect(forecastHerd({ ...question, bulls: 2 })).toEqual(enough)
  const one = forecastHerd({ ...question, bulls: 1 })
  const finds = 0.9 * (30 / enough.openAtTurnOut.expected)
  const her = forecastAnimal(animals[0] as AnimalOutlook, seasonOn(42), rates, finds)
  expect(one.emptyAtEnd.expected).toBeCloseTo(40 * (1 - (her.inCalf.at(-1) ?? 1)), 9)
})

test('who cannot be served by the bull in this season takes none of his time', () => {
  const late: AnimalOutlook = { ...cow, anchor: { kind: 'calved', day: 40 }, earliestDay: 82 }
  const last: AnimalOutlook = { ...cow, leftToBull: true, earliestDay: 62 }
  const rates = plainRates(0.8, 0.55)
  for (const today of [0, 45]) {
    const question = { season: seasonOn(today), rates, conception: [rates.conception], bulls: 1 }
    const few = forecastHerd({ ...question, animals: new Array<AnimalOutlook>(29).fill(last) })
    const more = forecastHerd({
      ...question,
      animals: [...new Array<AnimalOutlook>(29).fill(last), late, late],
    })
    expect(few.openAtTurnOut.expected).toBeGreaterThan(20)
    expect(more.emptyAtEnd.expected).toBeCloseTo(few.emptyAtEnd.expected + 2, 9)
  }
})

test('an empty block', () => {
  const herd = forecastHerd({ animals: [], season, rates: defaultRates, conception: conceptionPoints(own) })
  expect(herd.animals).toBe(0)
  expect(herd.inCalfSixWeeks).toMatchObject({ expected: 0, low: 0, middle: 0, high: 0 })
  expect(herd.due).toEqual({ first: 0, expected: [] })
})
