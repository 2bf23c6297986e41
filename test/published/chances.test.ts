import { expect, test } from 'vitest'
import { daysToHeat } from '../../source/breeding/chances/cycle.ts'
import { survivalToAge } from '../../source/breeding/chances/losses.ts'
import { defaultRates } from '../../source/breeding/chances/rates.ts'
import { inCalfWithoutReturn, returnsAfter } from '../../source/breeding/chances.ts'

const within = (values: readonly number[], from: number, to: number): number =>
  values.slice(from, to + 1).reduce((a, b) => a + b, 0)

// Survey of reproductive performance in dairy herds: patterns of progesterone in milk, Animal Science: 70 % of true
// cycles last 18-24 days. Remnant et al. 2015, J Dairy Sci 98:889-897: the most frequent interval is 22 days.
test('70 % of cycles last 18-24 days, most often 22', () => {
  const cycle = daysToHeat('heat', 22, defaultRates)
  expect(within(cycle, 18, 24)).toBeCloseTo(0.7, 2)
  expect(cycle.indexOf(Math.max(...cycle))).toBe(22)
})

// Nation et al. 2003, Aust Vet J 81:63-65: of first services 44 % pregnant, 34 % returned on days 18-24, 20 % neither.
test('63 % of the open cows are seen to return on days 18-24, which is 0.90 a heat', () => {
  const seen = 34 / (34 + 20)
  expect(seen).toBeCloseTo(0.63, 2)
  expect(defaultRates.heatSeen * within(daysToHeat('heat', 22, defaultRates), 18, 24)).toBeCloseTo(seen, 2)
  expect(seen / within(daysToHeat('heat', 22, defaultRates), 18, 24)).toBeCloseTo(defaultRates.heatSeen, 1)
})

// Nation et al. 2001, Proc NZ Soc Anim Prod 61:180-183: 19 of 64 % (30 %) not returned by day 24 were empty.
test('30 % of the cows without a return at day 24 are empty', () => {
  const empty = 1 - inCalfWithoutReturn(0.44, 24, returnsAfter('service', 22, defaultRates))
  expect(empty.toFixed(3)).toBe('0.296')
  expect(empty).toBeCloseTo(19 / 64, 2)
})

// Risk factors for phantom cows, NZ Vet J, PMID 25833764: 610 of 6,734 (9.1 %) not returned at days 35-42 were empty.
test('9.1 % of the cows without a return at days 35-42 are empty', () => {
  const returns = returnsAfter('service', 22, defaultRates)
  const [early, late] = [35, 42].map((k) => 1 - inCalfWithoutReturn(0.44, k, returns))
  expect(early?.toFixed(3)).toBe('0.127')
  expect(late?.toFixed(3)).toBe('0.082')
  expect(610 / 6734).toBeLessThan(early ?? 0)
  expect(610 / 6734).toBeGreaterThan(late ?? 1)
})

// JDS Communications 4:144-148, 2023: 87 %, 93 % and 98 % of pregnancies survive three periods in a row, 79.3 % all of
// them. The days that part the periods are ours.
test('losses in a row leave 79.3 %', () => {
  const losses = [
    { from: 30, to: 45, lost: 0.13 },
    { from: 45, to: 60, lost: 0.07 },
    { from: 60, to: 90, lost: 0.02 },
  ]
  expect(survivalToAge(90, losses)).toBeCloseTo(0.793, 3)
})

// Vignette of the R package freedom: freedom after a negative test of sensitivity .6324887. A day on which an open cow
// would have been seen with that chance is such a test.
test('a morning without a return is a negative test', () => {
  const returns = { onDay: [0.6324887], byDay: [0.6324887] }
  for (const [prior, after] of [
    [0.5, 0.7312554],
    [0.7239429, 0.8770845],
    [0.8683136, 0.9472066],
  ] as const)
    expect(inCalfWithoutReturn(prior, 0, returns)).toBeCloseTo(after, 6)
})
