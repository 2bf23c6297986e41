/** Days and times on the clock of the farm. */
import { expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { dateInZone, isZone, timeInZone, zoneOf } from '../../source/herd/zone.ts'

// Offsets by the IANA time zone database, 2026.
test.each([
  ['2026-05-28T13:00:00Z', 'Pacific/Auckland', '2026-05-29', '01:00'],
  ['2026-05-28T11:59:59Z', 'Pacific/Auckland', '2026-05-28', '23:59'],
  ['2026-05-28T23:00:00Z', 'Europe/Dublin', '2026-05-29', '00:00'],
  ['2026-12-28T23:00:00Z', 'Europe/Dublin', '2026-12-28', '23:00'],
  ['2026-01-01T04:15:00Z', 'America/Santiago', '2026-01-01', '01:15'],
  ['2026-01-01T02:15:00Z', 'America/Santiago', '2025-12-31', '23:15'],
  ['2026-05-28T23:30:00Z', 'UTC', '2026-05-28', '23:30'],
  ['2026-05-28T23:30:00Z', 'Europe/Atlantis', '2026-05-28', '23:30'],
  ['0987-05-28T12:00:00Z', 'UTC', '0987-05-28', '12:00'],
])('%s in %s', (instant, zone, date, time) => {
  // Asked twice, as a herd is: the second answer is remembered.
  for (const _ of [1, 2]) {
    expect(dateInZone(new Date(instant), zone)).toBe(date)
    expect(timeInZone(new Date(instant), zone)).toBe(time)
  }
})

test('a zone is one that this computer knows, however often and however many are asked', () => {
  for (let place = 0; place < 1010; place += 1) expect(isZone(`Nowhere/${place}`)).toBe(false)
  for (const _ of [1, 2]) {
    expect(isZone('Europe/Dublin')).toBe(true)
    expect(isZone('Nowhere/1009')).toBe(false)
    expect(isZone('')).toBe(false)
  }
})

test('the zone of the farm is that of its latest record, and UTC where there is none', () => {
  const farm = (zone: string): Fact => ({
    id: zone,
    about: 'herd',
    date: '2026-05-28',
    at: '2026-05-28T04:15:09.120Z',
    kind: 'farm',
    name: 'Long Acre',
    zone,
    milkings: ['05:30'],
  })
  expect(zoneOf([])).toBe('UTC')
  expect(zoneOf([farm('Europe/Dublin'), farm('Pacific/Auckland')])).toBe('Pacific/Auckland')
})
