import { expect, test } from 'vitest'
import { ownConception } from '../../../source/breeding/chances/own-results.ts'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import {
  changedConception,
  changedRates,
  changedSeason,
  changesWorthALook,
} from '../../../source/breeding/forecast/what-if.ts'
import { seasonOn } from './cow.ts'

test('weeks of AI move the last day of AI and leave the last day with the bull', () => {
  const ends = (aiWeeks: number) => {
    const { lastAiDay, lastBullDay } = changedSeason(seasonOn(0), { aiWeeks })
    return [lastAiDay, lastBullDay]
  }
  expect([-2, -1, 0, 1, 2, 9].map(ends)).toEqual([
    [27, 62],
    [34, 62],
    [41, 62],
    [48, 62],
    [55, 62],
    [62, 62],
  ])
})

test('another watch', () => {
  expect(changedRates(defaultRates, { heatSeen: 0.7 }).heatSeen).toBe(0.7)
  expect(changedRates(defaultRates, {})).toEqual(defaultRates)
})

test('another conception: all classes in proportion, as sure as before', () => {
  const own = ownConception(defaultRates, { cowSexed: { held: 40, failed: 60 } })
  const moved = changedConception(own, { cowConception: 0.5 })
  expect(moved.cowConventional.mean).toBeCloseTo(0.5, 12)
  expect(moved.cowSexed.mean).toBeCloseTo((own.cowSexed.mean * 0.5) / 0.55, 12)
  expect(moved.cowSexed.known.alpha + moved.cowSexed.known.beta).toBeCloseTo(100, 9)
  expect(changedConception(own, {})).toBe(own)
  expect(changedConception(own, { cowConception: 0.9 }).maidenConventional.mean).toBe(0.95)
})

const plan = { s: 20, aiEnd: 41, bullEnd: 62, heatSeen: 0.8, cowConception: 0.5, bulls: 2 }
/** The changes to look at, each as `what value`. */
const look = (more: Partial<typeof plan> = {}): readonly string[] =>
  changesWorthALook({ ...plan, ...more }).flatMap((change) =>
    Object.entries(change).map(([what, value]) => `${what} ${value}`),
  )
const weeks = (more: Partial<typeof plan>): readonly string[] =>
  look(more).filter((one) => one.startsWith('aiWeeks'))

test('worth a look: AI, watch, conception and bulls, a little more and a little less', () => {
  expect(look()).toEqual([
    'aiWeeks -2',
    'aiWeeks -1',
    'aiWeeks 1',
    'aiWeeks 2',
    'heatSeen 0.7',
    'heatSeen 0.9',
    'cowConception 0.45',
    'cowConception 0.55',
    'bulls 1',
    'bulls 3',
  ])
})

test('AI cannot end before yesterday, nor after the bull', () => {
  expect(weeks({ s: 28 })).toEqual(['aiWeeks -2', 'aiWeeks -1', 'aiWeeks 1', 'aiWeeks 2'])
  expect(weeks({ s: 29 })).toEqual(['aiWeeks -1', 'aiWeeks 1', 'aiWeeks 2'])
  expect(weeks({ s: 41 })).toEqual(['aiWeeks 1', 'aiWeeks 2'])
  expect(weeks({ s: 42 })).toEqual([])
  expect(weeks({ bullEnd: 55 })).toEqual(['aiWeeks -2', 'aiWeeks -1', 'aiWeeks 1', 'aiWeeks 2'])
  expect(weeks({ bullEnd: 48 })).toEqual(['aiWeeks -2', 'aiWeeks -1', 'aiWeeks 1'])
  expect(weeks({ s: -30, aiEnd: 13, bullEnd: 20 })).toEqual(['aiWeeks -1', 'aiWeeks 1'])
})

test('what is over is left out', () => {
  expect(look({ s: 42 })).toEqual(['cowConception 0.45', 'cowConception 0.55', 'bulls 1', 'bulls 3'])
  expect(look({ s: 62 })).toEqual(['cowConception 0.45', 'cowConception 0.55', 'bulls 1', 'bulls 3'])
  expect(look({ s: 63 })).toEqual([])
  expect(look({ bullEnd: 41 }).filter((one) => one.startsWith('bulls'))).toEqual([])
})

test('never fewer bulls than none, nor a share beyond 5 and 95 in a hundred', () => {
  expect(look({ bulls: 0 }).filter((one) => one.startsWith('bulls'))).toEqual(['bulls 1'])
  expect(look({ bulls: 1 }).filter((one) => one.startsWith('bulls'))).toEqual(['bulls 0', 'bulls 2'])
  expect(look({ heatSeen: 0.9, cowConception: 0.07 }).slice(4, 8)).toEqual([
    'heatSeen 0.8',
    'heatSeen 0.95',
    'cowConception 0.05',
    'cowConception 0.12',
  ])
})

test('AI cannot end before the season begins', () => {
  expect(changedSeason({ ...seasonOn(0), lastAiDay: 6 }, { aiWeeks: -2 }).lastAiDay).toBe(-1)
  expect(changedSeason(seasonOn(0), {}).lastAiDay).toBe(41)
})
