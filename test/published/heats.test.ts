import { describe, expect, test } from 'vitest'
import { intervalClass } from '../../source/breeding/cycle.ts'
import { standardPolicy } from '../../source/breeding/policy.ts'
import { checkCountsFrom } from '../../source/breeding/pregnancy.ts'
import { reasonWords } from '../../source/words/list.ts'
import {
  calving,
  cow,
  type Herd,
  heat,
  onset,
  placed,
  pregnant,
  rowAt,
  service,
} from '../breeding/support.ts'

const fresh = calving(-60)

// Remnant 2019, Measuring dairy herd heat detection (PhD thesis, University of Nottingham): intervals between services in
// classes of 2-17, 18-24, 25-35, 36-48 and more than 48 days; in the best quarter of UK herds 6, 40, 16, 19 and 19 %.
describe('classes of the intervals between services', () => {
  test('as published, without a gap', () => {
    const days = Array.from({ length: 99 }, (_, i) => i + 2)
    const classes = Map.groupBy(days, intervalClass)
    expect([...classes.values()].map((one) => [one[0], one.at(-1)])).toEqual([
      [2, 17],
      [18, 24],
      [25, 35],
      [36, 48],
      [49, 100],
    ])
    expect(6 + 40 + 16 + 19 + 19).toBe(100)
  })

  test('the watch is the class in which most return, the warnings lie in the next two', () => {
    const watched = (k: number) => placed(cow(fresh, service(0)), k).startsWith('repeat-heat-watch')
    for (let k = 2; k <= 60; k += 1) expect(watched(k)).toBe(intervalClass(k) === 'short-regular')
  })
})

// NZ artificial-breeding series, part VIII: 207,884 re-services, 52,075 of them within 17 days (25.05 %), 135,759 on days
// 18-24 (65.31 %).
test('a quarter of re-services come within 17 days: each is asked about, none is proposed', () => {
  expect([52_075 / 207_884, 135_759 / 207_884].map((share) => (100 * share).toFixed(2))).toEqual([
    '25.05',
    '65.31',
  ])
  for (let k = 2; k <= 41; k += 1) {
    const place = placed(cow(fresh, service(0), heat(k)), k)
    expect(place.split(':')[0]).toBe(k <= 17 ? 'take-care' : 'second-service')
  }
})

// Early pregnancy diagnosis by transrectal ultrasonography in dairy cattle: every pregnancy found from day 29 in cows and
// day 26 in heifers. Extension column, 2021: by hand from days 35-45. Sterry, Timing of milk-based PAG tests; DairyNZ, Using
// milk to pregnancy test; Milk and blood pregnancy diagnosis (vet practice): from days 28-30, 60 days or more calved.
describe('the earliest check', () => {
  const counts = (method: 'ultrasound' | 'hand' | 'milk' | 'blood', maiden = false): number =>
    checkCountsFrom(method, maiden, standardPolicy)

  test('is never before the day from which the method is published to find all', () => {
    expect(counts('ultrasound')).toBeGreaterThanOrEqual(29)
    expect(counts('ultrasound')).toBeLessThanOrEqual(31)
    expect(counts('ultrasound', true)).toBeGreaterThanOrEqual(26)
    expect(counts('ultrasound', true)).toBeLessThan(counts('ultrasound'))
    expect(counts('hand')).toBeGreaterThanOrEqual(35)
    expect(counts('hand')).toBeLessThanOrEqual(45)
    for (const method of ['milk', 'blood'] as const) {
      expect(counts(method)).toBeGreaterThanOrEqual(28)
      expect(counts(method)).toBeLessThanOrEqual(30)
    }
  })

  test('by milk or blood not before 60 days calved', () => {
    const served = cow(calving(-10), service(0))
    for (const checkMethod of ['milk', 'blood']) {
      expect(placed(served, 49, { policy: { checkMethod } })).not.toContain('pregnancy-check')
      expect(placed(served, 50, { policy: { checkMethod } })).toContain('pregnancy-check: due')
    }
  })
})

describe('the hour of the service', () => {
  const byTheHour: Herd = { policy: { servingTime: 'by-the-hour' } }
  const sessionOf = (seen: ReturnType<typeof heat>, milkings: readonly string[]) =>
    rowAt(10, cow(fresh, seen), { ...byTheHour, milkings })

  // Vishwanath et al. 2004, Proc NZ Soc Anim Prod 64:140-142 (and Trimberger 1948): seen in the morning, that evening;
  // seen in the evening, the next morning.
  test('morning and evening', () => {
    expect(sessionOf(heat(10, { time: 'morning' }), ['05:30', '15:30'])?.session).toBe('evening')
    expect(sessionOf(heat(10, { time: 'evening' }), ['05:30', '15:30'])?.session).toBe('next-morning')
  })

  // Freie Universitaet Berlin, Timing of AI after activity monitoring: best 13-18 hours after the onset, 7-24 acceptable.
  test('a session 13-18 hours after an onset is taken before any other, and one outside 7-24 is warned of', () => {
    for (let hour = 0; hour < 24; hour += 1) {
      const time = `${String(hour).padStart(2, '0')}:00`
      const row = sessionOf(onset(10, { time }), ['05:30', '15:30'])
      const hours = { morning: 5.5, evening: 15.5, 'next-morning': 29.5, 'next-evening': 39.5 }
      const best = Object.entries(hours).filter(([, at]) => at - hour >= 13 && at - hour <= 18)
      if (best.length > 0) expect([hour, row?.session]).toEqual([hour, best[0]?.[0]])
      const chosen = row?.session === undefined ? Number.NaN : hours[row.session] - hour
      expect([hour, row?.warnings.includes('outside-hours')]).toEqual([hour, chosen < 7 || chosen > 24])
    }
  })

  // agriland.co.uk, Sexed semen: what time is optimal: 14-20 hours after the onset.
  test('a sexed straw is proposed by the hour from 14 to 20 hours after the heat only', () => {
    const stock = {
      kind: 'stock-take' as const,
      date: '2026-04-01',
      sire: 'S9',
      straw: 'sexed',
      count: 20,
      easyCalving: true,
    }
    const plain = { ...stock, sire: 'S8', straw: 'conventional' }
    for (let minute = 0; minute < 24 * 60; minute += 30) {
      const time = `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`
      const seen = cow({ plan: 'dairy' }, calving(-90), heat(-12), onset(10, { time }))
      const row = rowAt(10, seen, { ...byTheHour, extra: [stock, plain] })
      const at = { morning: 330, evening: 930, 'next-morning': 330 + 1440, 'next-evening': 930 + 1440 }
      const hours = row?.session === undefined ? Number.NaN : (at[row.session] - minute) / 60
      expect([time, row?.straw?.straw]).toEqual([time, hours >= 14 && hours <= 20 ? 'sexed' : 'conventional'])
    }
  })
})

// Oestrus during pregnancy in the cow: 5.7 % (3-14 %) of pregnant cows show heat. NZ artificial-breeding series, part VIII: a
// false second service cut the pregnancies from 53.1 to 24.2 %.
describe('a cow in calf that shows heat is never proposed for service', () => {
  test('the sentence says how many do', () => {
    expect(reasonWords['in-calf-heat'].sentence(standardPolicy)).toContain(`About ${Math.round(5.7)} in 100`)
  })

  test('on every day of her pregnancy, in every phase', () => {
    for (let s = 31; s <= 282; s += 1) {
      const place = placed(cow(fresh, service(0), pregnant(30), heat(s)), s)
      expect([s, place.split(' ')[1]]).toEqual([s, 'in-calf-heat'])
    }
  })
})
