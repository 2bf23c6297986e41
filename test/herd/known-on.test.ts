import { expect, test } from 'vitest'
import { isoDay } from '../../source/breeding/day.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { knownOn } from '../../source/herd/known-on.ts'

const recordedAt = (at: string): Fact => ({ id: at, about: 'cow', date: '2026-01-01', kind: 'looked', at })
const known = (date: string, zone: string, ...ats: string[]): string[] =>
  knownOn(ats.map(recordedAt), isoDay(date), zone).map(({ at }) => at)

test('what was recorded by the end of a day on the farm was known on it, clocks changed that day or not', () => {
  // Dublin is an hour ahead of UTC in summer; on 29 March 2026 the clocks go forward at 01:00 UTC.
  expect(
    known('2026-05-28', 'Europe/Dublin', '2026-05-28T22:59:59.999Z', '2026-05-28T23:00:00.000Z'),
  ).toEqual(['2026-05-28T22:59:59.999Z'])
  expect(known('2026-03-28', 'Europe/Dublin', '2026-03-28T23:59:59Z', '2026-03-29T00:00:00Z')).toHaveLength(1)
  expect(known('2026-03-29', 'Europe/Dublin', '2026-03-29T22:59:59Z', '2026-03-29T23:00:00Z')).toHaveLength(1)
  // Kiritimati is 14 hours ahead, Pago Pago 11 behind, Chatham 12:45 or 13:45 ahead.
  expect(
    known('2026-05-28', 'Pacific/Kiritimati', '2026-05-28T09:59:00Z', '2026-05-28T10:00:00Z'),
  ).toHaveLength(1)
  expect(
    known('2026-05-28', 'Pacific/Pago_Pago', '2026-05-29T10:59:00Z', '2026-05-29T11:00:00Z'),
  ).toHaveLength(1)
  expect(known('2026-05-28', 'Pacific/Chatham', '2026-05-28T11:14:00Z', '2026-05-28T11:15:00Z')).toHaveLength(
    1,
  )
})
