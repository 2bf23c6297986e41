import { expect, test } from 'vitest'
import { defaultRates } from '../../source/breeding/chances/rates.ts'
import { standardPolicy } from '../../source/breeding/policy.ts'
import { nitrogenState } from '../../source/breeding/straws/nitrogen.ts'
import {
  calvesOf,
  handbookChain,
  replacementsPerStraw,
  strawsFor,
} from '../../source/breeding/straws/plan.ts'
import { sexedHoursBest, sexedHoursFit } from '../../source/breeding/straws/sexed-hours.ts'
import { thawingCard } from '../../source/breeding/straws/thawing.ts'

// Australian Dairy Herd Improvement Scheme, How many straws do I need?: half the services hold, 90 % of the dams are
// kept, half the calves are heifers, 95 % weaned, 95 % joined, 90 % in calf, 97 % calve, 97 % last the first month:
// 0.171955 a straw, 5.8 straws a replacement, rounded to 6, and 600 straws for 100.
test('six straws for a replacement, 600 for a hundred', () => {
  const perStraw = replacementsPerStraw(handbookChain)
  expect(perStraw.toFixed(6)).toBe('0.171955')
  expect((1 / perStraw).toFixed(1)).toBe('5.8')
  expect(strawsFor(1, perStraw)).toBe(6)
  expect(100 * strawsFor(1, perStraw)).toBe(600)
  // The handbook rounds before it multiplies; rounded at the end it is 582.
  expect(strawsFor(100, perStraw)).toBe(582)
})

// agriland.ie, Moorepark sexed semen, 2019: 56 sexed straws at 50 % conception and 90 % heifers make 25 heifers and
// 3 bulls; 83 conventional straws at 60 % make 25 of each.
test('56 sexed straws make as many heifers as 83 conventional ones', () => {
  const sexed = calvesOf(56, 0.5, 0.9)
  expect([Math.round(sexed.heifers), Math.round(sexed.bulls)]).toEqual([25, 3])
  const conventional = calvesOf(83, 0.6, 0.5)
  expect([Math.round(conventional.heifers), Math.round(conventional.bulls)]).toEqual([25, 25])
})

// Maicas et al. 2019, J Dairy Sci 102:10530-10542: conception to sexed and conventional straws 52.8 and 60.9 % in
// maidens, 40.6 and 48.0 % in cows. S. Butler, Irish Independent, December 2018: 45.5 and 59.9 % with another product.
// Norman & Hutchison 2009 (USDA ARS): 90 % heifers.
test('what a sexed straw costs in conception, and brings in heifers', () => {
  expect(standardPolicy.sexedMaidenFactor).toBeCloseTo(52.8 / 60.9, 2)
  expect(standardPolicy.sexedCowFactor).toBeCloseTo(40.6 / 48, 2)
  expect(45.5 / 59.9).toBeLessThan(standardPolicy.sexedCowFactor)
  expect(defaultRates.conception.maidenSexed / defaultRates.conception.maidenConventional).toBeCloseTo(
    52.8 / 60.9,
    2,
  )
  expect(defaultRates.femaleSexed).toBe(0.9)
})

// agriland.co.uk, Sexed semen: what time is optimal: 14-20 hours after the onset.
test('the hours of a sexed straw', () => {
  const byTheHour = { ...standardPolicy, servingTime: 'by-the-hour' } as const
  const fits = [13, 14, 17, 20, 21].map((hours) => {
    const serving = { session: 'evening', hours, fromOnset: true } as const
    return [sexedHoursFit(serving, byTheHour), sexedHoursBest(serving)]
  })
  expect(fits).toEqual([
    [false, false],
    [true, true],
    [true, true],
    [true, true],
    [false, false],
  ])
})

// Diskin 2018, Semen handling, time of insemination and insemination technique in cattle, Animal 12:s75-s84;
// S. Johnson, Kansas State University, Proper semen handling maximizes fertility, 2022.
test('thawing: 35-37 °C, 30 s for 0.25 ml, 45 s for 0.5 ml, in the cow within 8 minutes, 10 at most', () => {
  for (const [volume, seconds] of [
    [0.25, 30],
    [0.5, 45],
  ] as const) {
    expect(thawingCard('conventional', volume)).toMatchObject({
      water: [35, 37],
      seconds,
      minutes: 8,
      minutesAtMost: 10,
      strawsAtOnce: 1,
      canisterSeconds: 8,
    })
  }
})

// S. Johnson, Kansas State University, 2022: never less than 15 cm of nitrogen; J. Dalton, University of Idaho: 25 cm.
test('nitrogen: ordered at 25 cm, in danger at 15', () => {
  expect([26, 25, 16, 15].map((depth) => nitrogenState(depth, standardPolicy))).toEqual([
    'enough',
    'order',
    'order',
    'alarm',
  ])
})
