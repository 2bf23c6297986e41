import { expect, test } from 'vitest'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import { ownRates } from '../../../source/breeding/figures/own-rates.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import {
  type Animal,
  bookOf,
  bullService,
  calving,
  cow,
  dayAt,
  type Happening,
  heat,
  left,
  maiden,
  pregnant,
  service,
} from '../support.ts'

function counted(s: number, ...animals: Animal[]) {
  const numbered = animals.map((one, i) => ({ ...one, record: { ...one.record, number: String(i + 1) } }))
  const book = bookOf(numbered)
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, dayAt(s)))
  return ownRates(standings, book, dayAt(s), defaultRates)
}
const calved = calving(-70)

test('services by class, with those of unknown end beside', () => {
  const { services } = counted(
    100,
    cow(calved, service(2), pregnant(35)),
    cow(calved, service(2, { straw: 'beef' }), service(23, { straw: 'sexed' }), pregnant(60)),
    cow(calved, service(4)),
    maiden(service(1, { straw: 'sexed' }), heat(22)),
    cow(calved, bullService(45), pregnant(80)),
  )
  expect(services).toEqual({
    cowConventional: { held: 1, failed: 1, unknown: 1 },
    cowSexed: { held: 1, failed: 0, unknown: 0 },
    maidenConventional: { held: 0, failed: 0, unknown: 0 },
    maidenSexed: { held: 0, failed: 1, unknown: 0 },
    natural: { held: 1, failed: 0, unknown: 0 },
  })
})

test('to AI or to a bull: the foetal age tells; without one it is not known', () => {
  const told = (age?: number) => {
    const found = pregnant(80, age === undefined ? {} : { foetalAge: age })
    const { held, failed, unknown } = counted(110, cow(calved, service(35), found)).services.cowConventional
    return [held, failed, unknown]
  }
  expect([44, 38, 52].map(told)).toEqual([
    [1, 0, 0],
    [1, 0, 0],
    [1, 0, 0],
  ])
  expect(told()).toEqual([0, 0, 1])
  // In calf since day 53, to the bull: the service of day 35 failed. A day earlier it is not known.
  expect(told(27)).toEqual([0, 1, 0])
  expect(told(28)).toEqual([0, 0, 1])
})

test('services count from 42 days to 24 months', () => {
  const one = cow(calved, service(2), service(23))
  const failed = (s: number) => counted(s, one).services.cowConventional.failed
  expect([43, 44, 732, 733].map(failed)).toEqual([0, 1, 1, 0])
})

test('a cow that left keeps her results', () => {
  expect(counted(100, cow(calved, service(2), pregnant(35), left(60))).services.cowConventional.held).toBe(1)
})

test('heats seen again on days 15-29', () => {
  const watched = [-30, -22, -15, -8, -1].map((s) => cow(calved, heat(s)))
  const again = (...days: number[]) => counted(29, cow(calved, ...days.map((s) => heat(s))), ...watched).heats
  const nobody = counted(29, ...watched).heats
  expect(nobody.again).toBe(0)
  const more = (...days: number[]) => {
    const { again: seen, notAgain } = again(...days)
    return [seen - nobody.again, notAgain - nobody.notAgain]
  }
  expect(more(-21, 0)).toEqual([1, 0])
  expect(more(-21, -6)).toEqual([1, 1])
  expect(more(-21, -7)).toEqual([0, 2])
  expect(more(-21, 8)).toEqual([1, 0])
  expect(more(-21, 9)).toEqual([0, 1])
})

test('no heat counts once she was served, nor one whose days reach beyond her cycle or the weeks of AI', () => {
  const of = (s: number, ...given: readonly Happening[]) => counted(s, cow(...given)).heats
  // Days 15 to 29 of a heat on day 12 end on day 41, the last of AI; a day later they do not.
  expect(of(60, calved, heat(12))).toEqual({ again: 0, notAgain: 1 })
  expect(of(60, calved, heat(13))).toEqual({ again: 0, notAgain: 0 })
  // Served on day 4: a heat of the day before counts, the service itself does not.
  expect(of(60, calved, heat(3), service(24))).toEqual({ again: 1, notAgain: 0 })
  expect(of(60, calved, service(4))).toEqual({ again: 0, notAgain: 0 })
  // Left on day 34 she might have been seen on day 34 still; left on day 35 she was not seen.
  expect(of(60, calved, heat(5), left(34))).toEqual({ again: 0, notAgain: 0 })
  expect(of(60, calved, heat(5), left(35))).toEqual({ again: 0, notAgain: 1 })
  // A calving closes the cycle.
  expect(of(60, calving(-400), service(-270), pregnant(-230), heat(-30), calving(-5))).toEqual({
    again: 0,
    notAgain: 0,
  })
  expect(of(60, calving(-300), heat(3), calving(32))).toEqual({ again: 0, notAgain: 0 })
})

test('no heat counts before its time is over, in weeks without watching, or after a service', () => {
  expect(counted(20, cow(calved, heat(0))).heats).toEqual({ again: 0, notAgain: 0 })
  expect(counted(40, cow(calved, heat(-34))).heats).toEqual({ again: 0, notAgain: 0 })
  expect(counted(40, cow(calved, service(0), heat(5))).heats).toEqual({ again: 0, notAgain: 0 })
  expect(counted(40, cow(calved, heat(5))).heats).toEqual({ again: 0, notAgain: 1 })
  expect(counted(40, cow(calved, heat(5), service(26))).heats).toEqual({ again: 1, notAgain: 0 })
})

test('the rates rest on the counts', () => {
  const own = counted(100, cow(calved, service(2), pregnant(35)), cow(calved, heat(3), heat(24)))
  expect(own.conception.cowConventional.mean).toBeCloseTo((27.5 + 1) / 51, 12)
  expect(own.heats.again + own.heats.notAgain).toBeGreaterThan(0)
  expect(own.heatSeen).not.toBe(0.9)
})
