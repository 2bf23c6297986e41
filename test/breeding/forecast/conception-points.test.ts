import { expect, test } from 'vitest'
import { ownConception } from '../../../source/breeding/chances/own-results.ts'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import { conceptionPoints } from '../../../source/breeding/forecast/conception-points.ts'

test('nine rates from low to high, the middle one the median', () => {
  // qbeta((1:9 - .5) / 9, 27.5, 22.5) of R
  const points = conceptionPoints(ownConception(defaultRates, {})).map((rates) =>
    rates.cowConventional.toFixed(4),
  )
  expect(points).toEqual([
    '0.4377',
    '0.4820',
    '0.5088',
    '0.5307',
    '0.5507',
    '0.5706',
    '0.5920',
    '0.6181',
    '0.6602',
  ])
})
