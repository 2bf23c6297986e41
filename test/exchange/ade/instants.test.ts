import fc from 'fast-check'
import { expect, test } from 'vitest'
import { instantOf, momentIn } from '../../../source/exchange/ade/instants.ts'

const milkings = ['05:30', '15:30']

test.each([
  ['2026-05-28', '06:10', 'Europe/Dublin', '2026-05-28T05:10:00Z'],
  ['2026-01-28', '06:10', 'Europe/Dublin', '2026-01-28T06:10:00Z'],
  ['2026-05-28', '06:10', 'Pacific/Auckland', '2026-05-27T18:10:00Z'],
  ['2026-01-28', '06:10', 'Australia/Lord_Howe', '2026-01-27T19:10:00Z'],
  ['2026-07-28', '06:10', 'Australia/Lord_Howe', '2026-07-27T19:40:00Z'],
  ['2026-05-28', 'morning', 'Europe/Dublin', '2026-05-28T04:30:00Z'],
  ['2026-05-28', 'evening', 'Europe/Dublin', '2026-05-28T14:30:00Z'],
  ['2026-05-28', undefined, 'Pacific/Auckland', '2026-05-28T00:00:00Z'],
])('%s %s in %s is %s', (date, time, zone, instant) => {
  expect(instantOf(date, time, { zone, milkings })).toBe(instant)
})

test('a time that falls on exactly 00:00:00Z is told from a date without a time, and keeps its date', () => {
  for (const [zone, time] of [
    ['Europe/Dublin', '01:00'],
    ['Pacific/Auckland', '12:00'],
    ['America/New_York', '20:00'],
    ['UTC', '00:00'],
  ] as const) {
    const instant = instantOf('2026-05-28', time, { zone, milkings })
    expect(instant).toMatch(/T00:00:01Z$/)
    expect(momentIn(instant, zone)).toEqual({ date: '2026-05-28', time })
  }
})

test('every wall time comes back, in every zone, but for the hours that the clock leaves out', () => {
  const zones = fc.constantFrom(
    'Europe/Dublin',
    'Pacific/Auckland',
    'Australia/Lord_Howe',
    'America/Santiago',
    'America/New_York',
    'Asia/Kathmandu',
    'UTC',
  )
  const date = fc
    .integer({ min: 0, max: 4000 })
    .map((days) => new Date(Date.UTC(2020, 0, 1 + days)).toISOString().slice(0, 10))
  const time = fc
    .tuple(fc.nat(23), fc.nat(59))
    .map(([hour, minute]) => `${String(hour).padStart(2, '0')}:${String(minute).padStart(2, '0')}`)
  /** Whether the clock of the zone ever shows that time on that date, by a walk over the day. */
  const exists = (day: string, wall: string, zone: string): boolean => {
    const shown = new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short', timeStyle: 'short' })
    const around = Date.parse(`${day}T${wall}:00Z`)
    for (let minutes = -14 * 60; minutes <= 14 * 60; minutes += 15)
      if (shown.format(new Date(around + minutes * 60_000)) === `${day} ${wall}`) return true
    return false
  }
  fc.assert(
    fc.property(date, time, zones, (day, wall, zone) => {
      const back = momentIn(instantOf(day, wall, { zone, milkings }), zone)
      if (exists(day, wall, zone)) expect(back).toEqual({ date: day, time: wall })
      else expect(back?.date).toBe(day)
    }),
    { numRuns: 300 },
  )
})

test('a midnight that the clock leaves out stays on its date', () => {
  const farm = { zone: 'America/Santiago', milkings: ['05:30'] }
  expect(momentIn(instantOf('2029-09-02', '00:00', farm), farm.zone)).toEqual({
    date: '2029-09-02',
    time: '01:00',
  })
  expect(momentIn(instantOf('2029-09-02', '00:59', farm), farm.zone)?.date).toBe('2029-09-02')
  expect(momentIn(instantOf('2029-09-01', '23:59', farm), farm.zone)).toEqual({
    date: '2029-09-01',
    time: '23:59',
  })
})

test.each([
  ['2026-05-28', { date: '2026-05-28' }],
  ['2026-05-28T00:00:00Z', { date: '2026-05-28' }],
  ['2026-05-28T00:00:00.000Z', { date: '2026-05-28' }],
  ['2026-05-28T00:00:00', { date: '2026-05-28' }],
  ['2026-05-28T05:10:00Z', { date: '2026-05-28', time: '06:10' }],
  ['2026-05-28T05:10:00', { date: '2026-05-28', time: '06:10' }],
  ['2026-05-28 05:10', { date: '2026-05-28', time: '06:10' }],
  ['2026-05-28T07:10:00+02:00', { date: '2026-05-28', time: '06:10' }],
  ['2026-05-28T23:30:00Z', { date: '2026-05-29', time: '00:30' }],
  ['2026-05-28T00:00:00+01:00', { date: '2026-05-28', time: '00:00' }],
  ['2026-02-30T05:10:00Z', undefined],
  ['2026-05-28T25:00:00Z', undefined],
  ['28/05/2026', undefined],
  ['soon', undefined],
])('%s is read as %j in Dublin', (typed, moment) => {
  expect(momentIn(typed, 'Europe/Dublin')).toEqual(moment)
})
