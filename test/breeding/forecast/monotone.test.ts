import fc from 'fast-check'
import { expect, test } from 'vitest'
import { defaultRates, type Rates } from '../../../source/breeding/chances/rates.ts'
import { forecastAnimal } from '../../../source/breeding/forecast/animal.ts'
import { conceivedChances } from '../../../source/breeding/forecast/conceived.ts'
import type { Anchor, AnimalOutlook, SeasonDays } from '../../../source/breeding/forecast/outlook.ts'
import { cow, seasonOn } from './cow.ts'

/** Anchors that leave the past open, and those that the silence since says something about. */
const ahead = fc.oneof(
  fc.record({
    kind: fc.constant('evenly' as const),
    day: fc.integer({ min: 0, max: 30 }),
    days: fc.integer({ min: 1, max: 30 }),
  }),
  fc.record({ kind: fc.constant('calved' as const), day: fc.integer({ min: 0, max: 20 }) }),
  fc.constant({ kind: 'serve-today' as const }),
)
const past = fc.oneof(
  fc.record({
    kind: fc.constant('served' as const),
    day: fc.integer({ min: -35, max: -1 }),
    by: fc.constantFrom('conventional' as const, 'natural' as const),
    gestation: fc.constant(280),
  }),
  fc.record({ kind: fc.constant('heat' as const), day: fc.integer({ min: -35, max: -1 }) }),
  fc.record({ kind: fc.constant('calved' as const), day: fc.integer({ min: -150, max: -1 }) }),
  fc.record({ kind: fc.constant('anywhere' as const), day: fc.integer({ min: -35, max: -1 }) }),
)

const shares = fc.record({
  heatSeen: fc.double({ min: 0.3, max: 0.99, noNaN: true }),
  conception: fc.double({ min: 0.3, max: 0.8, noNaN: true }),
  late: fc.double({ min: 0, max: 0.1, noNaN: true }),
  losses: fc.boolean(),
})
const ratesOf = ({
  heatSeen,
  conception,
  late,
  losses,
}: typeof shares extends fc.Arbitrary<infer T> ? T : never): Rates => ({
  ...defaultRates,
  heatSeen,
  lateReturn: { ...defaultRates.lateReturn, share: late },
  losses: losses ? defaultRates.losses : [],
  conception: { ...defaultRates.conception, cowConventional: conception, natural: conception },
})

const animalOf = (anchor: Anchor, used: number, earliestDay: number): AnimalOutlook => ({
  ...cow,
  anchor,
  chancesUsed: used,
  earliestDay,
})
const inCalfAt = (
  animal: AnimalOutlook,
  season: SeasonDays,
  rates: Rates,
  morning: number,
  finds = 0.9,
): number => forecastAnimal(animal, season, rates, finds).inCalf[morning] ?? Number.NaN

const morning = fc.integer({ min: 0, max: 63 })
const used = fc.integer({ min: 0, max: 2 })
const day = fc.integer({ min: 0, max: 60 })
const slack = 1e-9

test('everything is a chance and sums to 1', () => {
  fc.assert(
    fc.property(
      fc.oneof(ahead, past),
      used,
      day,
      shares,
      fc.integer({ min: -35, max: 90 }),
      (anchor, n, e, s, shift) => {
        const moved = 'day' in anchor ? { ...anchor, day: Math.min(anchor.day, shift) } : anchor
        const forecast = forecastAnimal(animalOf(moved, n, e), seasonOn(shift), ratesOf(s))
        for (const chance of forecast.inCalf) {
          expect(chance).toBeGreaterThanOrEqual(-slack)
          expect(chance).toBeLessThanOrEqual(1 + slack)
        }
        const on = Math.max(62, shift - 1)
        const [six = 1, all = 1] = conceivedChances(forecast.conceptions, [41, 62], on, ratesOf(s).losses)
        expect(six).toBeLessThanOrEqual(all + slack)
        expect(all).toBeCloseTo(forecast.inCalf.at(-1) ?? Number.NaN, 9)
        for (const chances of Object.values(forecast.straws))
          expect(chances.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9)
        expect(forecast.services).toBeLessThanOrEqual(2 - Math.min(n, 2) + slack)
      },
    ),
  )
})

test('better conception: more in calf on every morning', () => {
  fc.assert(
    fc.property(fc.oneof(ahead, past), used, day, shares, morning, (anchor, n, e, s, at) => {
      const better = { ...s, conception: s.conception + 0.1 }
      const animal = animalOf(anchor, n, e)
      expect(inCalfAt(animal, seasonOn(0), ratesOf(better), at)).toBeGreaterThanOrEqual(
        inCalfAt(animal, seasonOn(0), ratesOf(s), at) - slack,
      )
    }),
  )
})

test('heats seen better, nothing known of the past: more in calf by the last day of AI', () => {
  fc.assert(
    fc.property(ahead, used, day, shares, (anchor, n, e, s) => {
      const better = { ...s, heatSeen: Math.min(0.99, s.heatSeen + 0.1) }
      const animal = animalOf(anchor, n, e)
      expect(inCalfAt(animal, seasonOn(0), ratesOf(better), 42)).toBeGreaterThanOrEqual(
        inCalfAt(animal, seasonOn(0), ratesOf(s), 42) - slack,
      )
    }),
  )
})

test('heats seen better: silence since a service means more', () => {
  fc.assert(
    fc.property(past, shares, (anchor, s) => {
      const better = { ...s, heatSeen: Math.min(0.99, s.heatSeen + 0.1), losses: false }
      const animal = animalOf(anchor, 1, 0)
      expect(inCalfAt(animal, seasonOn(0), ratesOf(better), 0)).toBeGreaterThanOrEqual(
        inCalfAt(animal, seasonOn(0), ratesOf({ ...s, losses: false }), 0) - slack,
      )
    }),
  )
})

test('a bull that finds more: more in calf on every morning', () => {
  fc.assert(
    fc.property(fc.oneof(ahead, past), used, day, shares, morning, (anchor, n, e, s, at) => {
      const animal = animalOf(anchor, n, e)
      expect(inCalfAt(animal, seasonOn(0), ratesOf(s), at, 0.9)).toBeGreaterThanOrEqual(
        inCalfAt(animal, seasonOn(0), ratesOf(s), at, 0.6) - slack,
      )
    }),
  )
})

test('ready later, fewer chances left, or left to the bull: without losses never more in calf by AI', () => {
  fc.assert(
    fc.property(fc.oneof(ahead, past), used, day, shares, (anchor, n, e, s) => {
      fc.pre(anchor.kind !== 'serve-today')
      const rates = ratesOf({ ...s, losses: false })
      const here = inCalfAt(animalOf(anchor, n, e), seasonOn(0), rates, 42)
      expect(inCalfAt(animalOf(anchor, n, e + 7), seasonOn(0), rates, 42)).toBeLessThanOrEqual(here + slack)
      expect(inCalfAt(animalOf(anchor, n + 1, e), seasonOn(0), rates, 42)).toBeLessThanOrEqual(here + slack)
      const left = { ...animalOf(anchor, n, e), leftToBull: true }
      expect(inCalfAt(left, seasonOn(0), rates, 42)).toBeLessThanOrEqual(here + slack)
    }),
  )
})

test('a longer season without losses: never fewer in calf at its end', () => {
  fc.assert(
    fc.property(fc.oneof(ahead, past), used, day, shares, (anchor, n, e, s) => {
      const rates = ratesOf({ ...s, losses: false })
      const longer = { ...seasonOn(0), lastBullDay: 76 }
      const animal = animalOf(anchor, n, e)
      expect(forecastAnimal(animal, longer, rates).inCalf.at(-1)).toBeGreaterThanOrEqual(
        (forecastAnimal(animal, seasonOn(0), rates).inCalf.at(-1) ?? 1) - slack,
      )
    }),
  )
})

test('two weeks of AI more, a third chance given: never fewer in calf by its last day', () => {
  fc.assert(
    fc.property(ahead, day, shares, (anchor, e, s) => {
      const rates = ratesOf({ ...s, losses: false })
      const animal = animalOf(anchor, 0, e)
      const here = inCalfAt(animal, seasonOn(0), rates, 42)
      expect(inCalfAt(animal, { ...seasonOn(0), lastAiDay: 55 }, rates, 56)).toBeGreaterThanOrEqual(
        here - slack,
      )
      expect(inCalfAt(animal, { ...seasonOn(0), chances: 3 }, rates, 42)).toBeGreaterThanOrEqual(here - slack)
    }),
  )
})
