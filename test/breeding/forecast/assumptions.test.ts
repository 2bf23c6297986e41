import { expect, test } from 'vitest'
import { ownConception } from '../../../source/breeding/chances/own-results.ts'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import { assumptionsOf } from '../../../source/breeding/forecast/assumptions.ts'

const policy = { chances: 2, watchFrom: 18 }
const none = { held: 0, failed: 0, unknown: 0 }
const services = {
  cowConventional: none,
  cowSexed: none,
  maidenConventional: none,
  maidenSexed: none,
  natural: none,
}

const told = (
  held: number,
  failed: number,
  heats: { readonly again: number; readonly notAgain: number },
  bulls?: number,
  more: { readonly lastAiDay?: number; readonly rates?: typeof defaultRates } = {},
) => {
  const own = {
    conception: ownConception(defaultRates, { cowConventional: { held, failed } }),
    heatSeen: 0.85,
    services,
    heats,
  }
  const forecast = { own, bulls, animals: 146, lastAiDay: more.lastAiDay ?? 41, lastBullDay: 62 }
  return assumptionsOf(forecast, more.rates ?? defaultRates, policy)
}
const nothing = { again: 0, notAgain: 0 }

test('of a herd with results of its own', () => {
  expect(told(60, 50, { again: 41, notAgain: 6 }, 3)).toEqual([
    {
      code: 'conception-own',
      values: { rate: expect.closeTo((27.5 / 50 + (60 + 0.55 * 0) / 110) / 2, 1), services: 110 },
    },
    { code: 'heat-seen-own', values: { rate: 0.85, heats: 47 } },
    { code: 'cycle', values: { days: 22, young: 21 } },
    { code: 'late-returns', values: { share: 0.05 } },
    { code: 'losses', values: { share: 0.1, by: 60 } },
    { code: 'first-heats', values: {} },
    { code: 'heats-served', values: { chances: 2, from: 18 } },
    { code: 'straws-last', values: {} },
    { code: 'bulls-on-hand', values: { finds: 0.9, openPerBull: 30, bulls: 3 } },
    { code: 'nobody-comes-or-goes', values: { animals: 146 } },
    { code: 'band', values: { holds: 8, of: 10 } },
  ])
})

test('of a herd without any: what is guessed is said to be', () => {
  const found = told(0, 0, nothing)
  expect(found.slice(0, 2)).toEqual([
    { code: 'conception-guessed', values: { rate: expect.closeTo(0.55, 12) } },
    { code: 'heat-seen-guessed', values: { rate: 0.85 } },
  ])
})

test('one service and one heat are results of its own', () => {
  const codes = told(0, 1, { again: 0, notAgain: 1 }).map(({ code }) => code)
  expect(codes.slice(0, 2)).toEqual(['conception-own', 'heat-seen-own'])
  expect(told(1, 0, { again: 1, notAgain: 0 })[1]?.values.heats).toBe(1)
})

test('bulls on hand, as many as are needed, or no bull weeks', () => {
  const ofBulls = (...given: Parameters<typeof told>) =>
    told(...given).find(({ code }) => code.includes('bull'))?.code
  expect(ofBulls(0, 0, nothing, 2)).toBe('bulls-on-hand')
  expect(ofBulls(0, 0, nothing)).toBe('bulls-as-needed')
  expect(ofBulls(0, 0, nothing, 2, { lastAiDay: 62 })).toBe('no-bull')
})

test('without losses none is told', () => {
  const rates = { ...defaultRates, losses: [] }
  expect(told(0, 0, nothing, 2, { rates })[4]).toEqual({ code: 'losses', values: { share: 0, by: 0 } })
})
