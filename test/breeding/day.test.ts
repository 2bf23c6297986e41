import { addDays, addYears, differenceInCalendarDays, format, getDay, isMatch } from 'date-fns'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  calendarOf,
  calvingStartFor,
  type Day,
  dayIso,
  dayOf,
  isoDay,
  matingStartFor,
  plusDays,
  plusYears,
  readDay,
  weekday,
} from '../../source/breeding/day.ts'

/** The oracle works on local dates at noon, where no clock change reaches. */
const noon = (iso: string): Date => new Date(`${iso}T12:00`)
const isoOf = (date: Date): string => format(date, 'yyyy-MM-dd')

const first = isoDay('1600-01-01')
const last = isoDay('2999-12-31')
const anyDay = fc.integer({ min: first, max: last }).map((day) => day as Day)

describe('against date-fns, 1600 to 2999', () => {
  test('every day of 1996 to 2032 in turn', () => {
    let date = noon('1996-01-01')
    for (let day = isoDay('1996-01-01'); day <= isoDay('2032-12-31'); day = plusDays(day, 1)) {
      const iso = dayIso(day)
      const right = iso === isoOf(date) && isoDay(iso) === day && weekday(day) === getDay(date)
      if (!right) expect([iso, isoDay(iso), weekday(day)]).toEqual([isoOf(date), day, getDay(date)])
      date = addDays(date, 1)
    }
    expect(isoOf(date)).toBe('2033-01-01')
  })

  test('days added', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -2000, max: 2000 }), (day, days) => {
        expect(dayIso(plusDays(day, days))).toBe(isoOf(addDays(noon(dayIso(day)), days)))
      }),
      { numRuns: 1000 },
    )
  })

  test('days between', () => {
    fc.assert(
      fc.property(anyDay, anyDay, (a, b) => {
        expect(b - a).toBe(differenceInCalendarDays(noon(dayIso(b)), noon(dayIso(a))))
      }),
      { numRuns: 1000 },
    )
  })

  test('years added, 29 February too', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -30, max: 30 }), (day, years) => {
        expect(dayIso(plusYears(day, years))).toBe(isoOf(addYears(noon(dayIso(day)), years)))
      }),
      { numRuns: 1000 },
    )
    expect(dayIso(plusYears(isoDay('2024-02-29'), 1))).toBe('2025-02-28')
    expect(dayIso(plusYears(isoDay('2024-02-29'), 4))).toBe('2028-02-29')
    expect(dayIso(plusYears(isoDay('2096-02-29'), 4))).toBe('2100-02-28')
  })

  test('texts that are dates, and texts that are none', () => {
    const text = fc
      .tuple(
        fc.integer({ min: 1, max: 3000 }),
        fc.integer({ min: 0, max: 14 }),
        fc.integer({ min: 0, max: 33 }),
      )
      .map(
        ([y, m, d]) =>
          `${String(y).padStart(4, '0')}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}`,
      )
    fc.assert(
      fc.property(text, (iso) => {
        expect(readDay(iso) !== undefined).toBe(isMatch(iso, 'yyyy-MM-dd'))
      }),
      { numRuns: 1000 },
    )
  })
})

test.each([
  '2026-02-29',
  '2100-02-29',
  '2026-04-31',
  '2026-13-01',
  '2026-00-10',
  '2026-01-00',
  '0000-01-01',
  '26-01-01',
  '2026-1-1',
  '2026-01-01T00:00',
  ' 2026-01-01',
  '2026/01/01',
  '',
  '２０２６-01-01',
])('"%s" is no date', (text) => {
  expect(readDay(text)).toBeUndefined()
})

test('a date that was never checked is a programming error', () => {
  expect(() => isoDay('2026-02-30')).toThrow(RangeError)
})

test('the first and the last date there is', () => {
  for (const iso of ['0001-01-01', '0004-02-29', '0099-12-31', '9999-12-31'])
    expect(dayIso(isoDay(iso))).toBe(iso)
  expect(isoDay('1970-01-01')).toBe(0)
  expect(isoDay('1969-12-31')).toBe(-1)
  expect(dayOf(2000, 3, 1) - dayOf(2000, 2, 28)).toBe(2)
  expect(dayOf(1900, 3, 1) - dayOf(1900, 2, 28)).toBe(1)
  expect(calendarOf(isoDay('2024-12-31'))).toEqual({ year: 2024, month: 12, dayOfMonth: 31 })
})

test('the mating start and the calving start that follows from it are a gestation apart', () => {
  fc.assert(
    fc.property(anyDay, fc.integer({ min: 260, max: 300 }), (day, gestation) => {
      expect(matingStartFor(calvingStartFor(day, gestation), gestation)).toBe(day)
      expect(calvingStartFor(day, gestation) - day).toBe(gestation)
    }),
  )
})
