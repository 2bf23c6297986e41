import { expect, test } from 'vitest'
import { forecastAnimal } from '../../../source/breeding/forecast/animal.ts'
import { bullFindsWith } from '../../../source/breeding/forecast/bulls.ts'
import { forecastEach, openAtTurnOut } from '../../../source/breeding/forecast/each-animal.ts'
import type { AnimalOutlook } from '../../../source/breeding/forecast/outlook.ts'
import { finished } from '../../../source/breeding/steps.ts'
import { cow, plainRates, seasonOn } from './cow.ts'

const rates = { ...plainRates(0.8, 0.55), openPerBull: 5 }
/** Ready only when the bull has gone. */
const late: AnimalOutlook = { ...cow, anchor: { kind: 'calved', day: 40 }, earliestDay: 63 }

test('open on the morning that his weeks begin, or this morning once they have', () => {
  const open = (today: number) => {
    const her = forecastAnimal(cow, seasonOn(today), rates)
    return [openAtTurnOut([cow, late], [her, her], seasonOn(today)), her.inCalf]
  }
  for (const [today, morning] of [
    [0, 42],
    [41, 1],
    [42, 0],
    [50, 0],
  ] as const) {
    const [chances, inCalf] = open(today)
    expect(chances).toEqual([1 - (inCalf?.[morning] ?? Number.NaN)])
  }
})

test.each([0, 41, 42, 45])(
  'short of bulls on day %i, those open when his weeks begin decide what they find',
  (today) => {
    const season = seasonOn(today)
    const animals = [...new Array<AnimalOutlook>(20).fill(cow), late]
    const open = 20 * (1 - (forecastAnimal(cow, season, rates).inCalf[Math.max(0, 42 - today)] ?? Number.NaN))
    expect(open).toBeGreaterThan(5)
    const each = finished(forecastEach({ animals, season, bulls: 1 }, rates))
    const expected = forecastAnimal(cow, season, rates, bullFindsWith(1, open, rates))
    expect(each).toHaveLength(21)
    for (const [i, chance] of expected.inCalf.entries()) expect(each[0]?.inCalf[i]).toBeCloseTo(chance, 12)
    expect(each[0]?.services).toBeCloseTo(expected.services, 12)
  },
)
