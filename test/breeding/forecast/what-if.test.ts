import { expect, test } from 'vitest'
import { ownConception } from '../../../source/breeding/chances/own-results.ts'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import { changedConception, changedRates, changedSeason } from '../../../source/breeding/forecast/what-if.ts'
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
