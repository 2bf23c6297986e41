import { expect, test } from 'vitest'
import { survivalToAge } from '../../../source/breeding/chances/losses.ts'
import { defaultRates, type LossPeriod } from '../../../source/breeding/chances/rates.ts'
import { inCalfWithoutReturn, returnsAfter } from '../../../source/breeding/chances.ts'
import { startOf } from '../../../source/breeding/forecast/anchor.ts'
import { type AnimalForecast, forecastAnimal } from '../../../source/breeding/forecast/animal.ts'
import { conceivedChances } from '../../../source/breeding/forecast/conceived.ts'
import type { Anchor, AnimalOutlook } from '../../../source/breeding/forecast/outlook.ts'
import { cow, plainRates, planFrom, seasonOn } from './cow.ts'

const rates = plainRates(0.8, 0.55)
const served = (day: number): Anchor => ({ kind: 'served', day, by: 'conventional', gestation: 280 })
const bySixWeeks = (forecast: AnimalForecast, today: number): number =>
  forecast.inCalf[42 - today] ?? Number.NaN
const empty = (forecast: AnimalForecast): number => 1 - (forecast.inCalf.at(-1) ?? Number.NaN)
const printed = (forecast: AnimalForecast, today: number): string[] =>
  [bySixWeeks(forecast, today), empty(forecast), forecast.services].map((value) => value.toFixed(4))
/** Conceived in the first six weeks, and in calf at the end of a day. */
const conceivedBySixWeeks = (forecast: AnimalForecast, on: number, losses: readonly LossPeriod[]): number =>
  conceivedChances(forecast.conceptions, [41], on, losses)[0] ?? Number.NaN
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0)

test('no heat known at the mating start', () => {
  expect(printed(forecastAnimal(cow, seasonOn(0), rates), 0)).toEqual(['0.6687', '0.1765', '1.2157'])
  expect(printed(forecastAnimal(cow, seasonOn(0), plainRates(0.9, 0.6)), 0)).toEqual([
    '0.7688',
    '0.1227',
    '1.2813',
  ])
})

test('served on day 3, no return seen, day 27', () => {
  const forecast = forecastAnimal({ ...cow, anchor: served(3), chancesUsed: 1 }, seasonOn(27), rates)
  expect(forecast.inCalf[0]?.toFixed(4)).toBe('0.7284')
  expect(printed(forecast, 27)).toEqual(['0.8181', '0.0916', '0.1631'])
})

test('checked empty on day 33 after a service on day 0, no heat seen, day 34', () => {
  const forecast = forecastAnimal(
    { ...cow, anchor: served(0), chancesUsed: 1, emptyCheck: { on: 33, rulesOutTo: 3 } },
    seasonOn(34),
    rates,
  )
  expect(forecast.inCalf[0]).toBe(0)
  expect(printed(forecast, 34)).toEqual(['0.1247', '0.4513', '0.2267'])
})

test('no heat known, ready on day 30', () => {
  const late: AnimalOutlook = { ...cow, anchor: { kind: 'evenly', day: 30, days: 21 }, earliestDay: 30 }
  expect(printed(forecastAnimal(late, seasonOn(0), rates), 0)).toEqual(['0.2514', '0.3922', '0.4572'])
})

test('what a morning shows as in calf is what the chances of the morning list say', () => {
  const late = { ...rates, lateReturn: defaultRates.lateReturn }
  for (const [day, today] of [
    [0, 1],
    [3, 22],
    [3, 38],
    [-30, 20],
  ] as const) {
    const forecast = forecastAnimal({ ...cow, anchor: served(day), chancesUsed: 1 }, seasonOn(today), late)
    const shown = inCalfWithoutReturn(0.55, today - 1 - day, returnsAfter('service', 22, late))
    expect(forecast.inCalf[0], `day ${day}`).toBeCloseTo(shown, 12)
  }
})

test('days without watching before today: silence says nothing', () => {
  const unwatched = new Set(Array.from({ length: 40 }, (_, i) => i - 35))
  const animal: AnimalOutlook = { ...cow, anchor: served(-30), chancesUsed: 1 }
  const asleep = forecastAnimal({ ...animal, unwatched }, seasonOn(0), rates)
  const awake = forecastAnimal(animal, seasonOn(0), rates)
  expect(asleep.inCalf[0]).toBeCloseTo(0.55, 12)
  expect(awake.inCalf[0] ?? 0).toBeGreaterThan(0.7)
})

test('served today for certain', () => {
  const forecast = forecastAnimal({ ...cow, anchor: { kind: 'serve-today' } }, seasonOn(10), rates)
  expect(forecast.inCalf.slice(0, 2)).toEqual([0, 0.55])
  expect(forecast.straws.conventional[0]).toBe(0)
  expect(forecast.services).toBeGreaterThan(1)
})

test('both chances used, or left to the bull: no straws, the bull alone', () => {
  for (const animal of [
    { ...cow, chancesUsed: 2 },
    { ...cow, leftToBull: true },
  ]) {
    const forecast = forecastAnimal(animal, seasonOn(0), rates)
    expect(forecast.services).toBe(0)
    expect(sum(forecast.straws.conventional)).toBeCloseTo(1, 12)
    expect(bySixWeeks(forecast, 0)).toBe(0)
    expect(forecast.inCalf.at(-1)).toBeGreaterThan(0.4)
    expect(forecast.conceptions.every(({ by }) => by === 'natural')).toBe(true)
  }
})

test('in calf since day 3, confirmed on day 45: only losses after that day count', () => {
  const anchor: Anchor = { kind: 'in-calf', conceived: 3, confirmed: 45, by: 'sexed', gestation: 280 }
  const forecast = forecastAnimal({ ...cow, anchor, chancesUsed: 1 }, seasonOn(46), defaultRates)
  const alive = survivalToAge(62 - 3, defaultRates.losses) / survivalToAge(45 - 3, defaultRates.losses)
  expect(forecast.inCalf[0]).toBe(1)
  expect(conceivedBySixWeeks(forecast, 62, defaultRates.losses)).toBeCloseTo(alive, 12)
  expect(forecast.inCalf.at(-1)).toBeGreaterThanOrEqual(alive)
  const [known] = forecast.conceptions
  expect(known).toMatchObject({ day: 3, by: 'sexed', gestation: 280 })
  expect((known?.share ?? 0) * survivalToAge(42, defaultRates.losses)).toBeCloseTo(1, 12)
})

test('lost pregnancies come again and can be served when a chance is left', () => {
  const anchor: Anchor = {
    kind: 'in-calf',
    conceived: -35,
    confirmed: -4,
    by: 'conventional',
    gestation: 280,
  }
  const losses = [{ from: 30, to: 40, lost: 0.5 }]
  const forecast = forecastAnimal({ ...cow, anchor, chancesUsed: 1 }, seasonOn(-3), { ...rates, losses })
  expect(forecast.services).toBeGreaterThan(0.2)
  expect(conceivedBySixWeeks(forecast, 62, losses)).toBeGreaterThan(0.5)
  const none = forecastAnimal({ ...cow, anchor, chancesUsed: 2 }, seasonOn(-3), { ...rates, losses })
  expect(none.services).toBe(0)
})

test('sexed straws first, then conventional, beef in the last week: counts by kind', () => {
  const animal: AnimalOutlook = { ...cow, straws: [planFrom('sexed'), planFrom('conventional')] }
  const { straws, services } = forecastAnimal(animal, seasonOn(0), rates)
  for (const kind of ['conventional', 'sexed', 'beef'] as const) expect(sum(straws[kind])).toBeCloseTo(1, 12)
  const expected = (chances: readonly number[]): number => sum(chances.map((chance, n) => n * chance))
  expect(expected(straws.conventional) + expected(straws.sexed) + expected(straws.beef)).toBeCloseTo(
    services,
    12,
  )
  expect(straws.sexed).toHaveLength(2)
  expect(straws.sexed[1]).toBeCloseTo(0.8, 1)
})

test('which kind of straw she takes changes nothing where the kinds hold equally often', () => {
  const kinds = forecastAnimal({ ...cow, straws: [planFrom('beef'), planFrom('beef')] }, seasonOn(0), rates)
  const plain = forecastAnimal(cow, seasonOn(0), rates)
  for (const [i, chance] of plain.inCalf.entries()) expect(kinds.inCalf[i]).toBeCloseTo(chance, 12)
  expect(kinds.services).toBeCloseTo(plain.services, 12)
})

test('four chances instead of two', () => {
  const more = forecastAnimal(cow, { ...seasonOn(0), chances: 4, lastAiDay: 62 }, rates)
  const fewer = forecastAnimal(cow, { ...seasonOn(0), lastAiDay: 62 }, rates)
  expect(more.straws.conventional.length).toBeGreaterThan(3)
  expect(more.inCalf.at(-1)).toBeGreaterThan(fewer.inCalf.at(-1) ?? 1)
})

/** With the bull from day 42 on, her heat on one of the first fifteen days. */
const withBull: AnimalOutlook = {
  ...cow,
  anchor: { kind: 'evenly', day: 42, days: 15 },
  leftToBull: true,
  unwatched: new Set(Array.from({ length: 21 }, (_, i) => 42 + i)),
}

test('in the bull weeks his work before today counts too', () => {
  const forecast = forecastAnimal(withBull, seasonOn(57), rates)
  expect(forecast.inCalf[0]).toBeCloseTo(0.9 * 0.55, 2)
  expect(conceivedBySixWeeks(forecast, 62, [])).toBe(0)
})

test('an empty result rules out what it would have found of the bull, and says nothing of his later services', () => {
  const chance = (rulesOutTo: number) =>
    forecastAnimal({ ...withBull, emptyCheck: { on: rulesOutTo + 30, rulesOutTo } }, seasonOn(110), rates)
      .inCalf[0] ?? 1
  expect(chance(62)).toBeCloseTo(0, 12)
  expect(chance(41)).toBeCloseTo(forecastAnimal(withBull, seasonOn(110), rates).inCalf[0] ?? 0, 12)
  expect(chance(50)).toBeGreaterThan(0)
  expect(chance(50)).toBeLessThan(chance(41))
})

test('one heat with the bull on a day that is ruled out, or on a later one: Bayes', () => {
  // Heat on day 42 or 49, each as likely; served .9, held .55. Ruled out to day 45: .5 x .505 is left of the first.
  const two: AnimalOutlook = {
    ...cow,
    anchor: { kind: 'evenly', day: 42, days: 8 },
    leftToBull: true,
    emptyCheck: { on: 49, rulesOutTo: 45 },
    unwatched: new Set([42, 43, 44, 45, 46, 47, 48, 49]),
  }
  const found = 0.9 * 0.55
  const early = 0.5 * (1 - found)
  const late = 0.5
  expect(forecastAnimal(two, seasonOn(50), rates).inCalf[0]).toBeCloseTo((late * found) / (early + late), 6)
})

test('a heat seen in the bull weeks is his', () => {
  const forecast = forecastAnimal({ ...cow, anchor: { kind: 'heat', day: 45 } }, seasonOn(46), rates)
  expect(forecast.inCalf[0]).toBeCloseTo(0.9 * 0.55, 12)
})

test('after the season: one morning, what is known', () => {
  const forecast = forecastAnimal({ ...cow, anchor: served(30), chancesUsed: 2 }, seasonOn(90), rates)
  expect(forecast.inCalf).toHaveLength(1)
  expect(forecast.inCalf[0]).toBeGreaterThan(0.9)
  expect(sum(forecast.straws.conventional)).toBeCloseTo(1, 12)
})

test('still to calve after the bull is out: nothing can happen', () => {
  const forecast = forecastAnimal(
    { ...cow, anchor: { kind: 'calved', day: 70 }, earliestDay: 112 },
    seasonOn(0),
    rates,
  )
  expect(forecast.inCalf.at(-1)).toBe(0)
  expect(forecast.services).toBe(0)
  expect(forecast.inCalf).toHaveLength(64)
})

test('heats seen for certain and none seen: no heat is known to come', () => {
  const forecast = forecastAnimal(
    { ...cow, anchor: { kind: 'heat', day: -34 } },
    seasonOn(20),
    plainRates(1, 0.55),
  )
  expect(forecast.inCalf.at(-1)).toBe(0)
  expect(forecast.services).toBe(0)
  expect(sum(forecast.straws.conventional)).toBeCloseTo(1, 12)
})

test('a pregnancy is lost day by day from the first to the last day of its period', () => {
  // Conceived on day -40, known in calf at 30 days of age; half are lost from then to an age of 40 days.
  const anchor: Anchor = { kind: 'in-calf', conceived: -40, confirmed: -10, by: 'beef', gestation: 283 }
  const losses = [{ from: 30, to: 40, lost: 0.5 }]
  const { inCalf } = forecastAnimal({ ...cow, anchor, chancesUsed: 2 }, seasonOn(-9), { ...rates, losses })
  expect(inCalf[0]).toBeCloseTo(1, 12)
  expect(inCalf[1]).toBeCloseTo(0.5 ** 0.1 / 0.5 ** 0, 12)
  expect(inCalf[9]).toBeCloseTo(0.5 ** 0.9, 12)
  expect(inCalf[10]).toBeCloseTo(0.5, 12)
  expect(inCalf[30]).toBeCloseTo(0.5, 12)
})

test('a heat on the first day that it would have been served again tells as much as a later one', () => {
  const outlook: AnimalOutlook = { ...cow, anchor: served(0), chancesUsed: 1 }
  const season = { ...seasonOn(19), returnsFrom: 18 }
  const onDay = startOf(outlook, season, rates).heats[18] ?? Number.NaN
  const open = 0.45 * (1 - 0.8 * onDay)
  expect(forecastAnimal(outlook, season, rates).inCalf[0]).toBeCloseTo(0.55 / (0.55 + open), 6)
  expect(forecastAnimal(outlook, { ...season, today: 18 }, rates).inCalf[0]).toBeCloseTo(0.55, 12)
})

test('what an empty result rules out is no conception any more; each that is told of has a chance', () => {
  const animal = { ...withBull, emptyCheck: { on: 80, rulesOutTo: 50 } }
  const { conceptions, inCalf } = forecastAnimal(animal, seasonOn(110), rates)
  expect(conceptions.map(({ day }) => day).sort((a, b) => a - b)[0]).toBe(51)
  expect(conceptions.every(({ share, by }) => share > 0 && by === 'natural')).toBe(true)
  expect(sum(conceptions.map(({ share }) => share))).toBeCloseTo(inCalf[0] ?? Number.NaN, 12)
})

test('conceptions of the past sum to what is in calf this morning, those of his first day among them', () => {
  const animal: AnimalOutlook = { ...withBull, anchor: { kind: 'heat', day: 45 } }
  const { conceptions, inCalf } = forecastAnimal(animal, seasonOn(110), rates)
  expect(conceptions[0]?.day).toBe(45)
  expect(sum(conceptions.map(({ share }) => share))).toBeCloseTo(inCalf[0] ?? Number.NaN, 12)
})

test('without a bull the season ends with AI', () => {
  const forecast = forecastAnimal(cow, { ...seasonOn(0), lastBullDay: 41 }, rates)
  expect(forecast.inCalf).toHaveLength(43)
  expect(forecast.inCalf.at(-1)?.toFixed(4)).toBe('0.6687')
})
