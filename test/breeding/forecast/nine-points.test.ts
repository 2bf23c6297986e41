import { expect, test } from 'vitest'
import { ownConception } from '../../../source/breeding/chances/own-results.ts'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import { conceptionPoints } from '../../../source/breeding/forecast/conception-points.ts'
import { forecastHerd } from '../../../source/breeding/forecast/herd.ts'
import { herdOf, seasonOn } from './cow.ts'

const season = seasonOn(0)
const own = ownConception(defaultRates, { cowConventional: { held: 60, failed: 50 } })

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
