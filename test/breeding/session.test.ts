import { describe, expect, test } from 'vitest'
import {
  calving,
  cow,
  type Happening,
  type Herd,
  heat,
  listAt,
  onset,
  planned,
  rowAt,
  service,
  suspect,
} from './support.ts'

const fresh = calving(-60)
const onceADay: Herd = { milkings: ['07:00'] }
const byTheHour: Herd = { policy: { servingTime: 'by-the-hour' } }

/** Her session on season day s, with a `!` where it lies outside the hours. */
function session(seen: Happening, s: number, herd: Herd): string {
  const row = rowAt(s, cow(fresh, seen), herd)
  return `${row?.session}${row?.warnings.includes('outside-hours') ? '!' : ''}`
}

type Case = readonly [seen: string, s: number, seenOn: number, time: string | undefined, expected: string]
const table = (cases: readonly Case[], herd: Herd, seen = heat): void => {
  test.each(cases)('seen %s: on s %i (seen s %i)', (_, s, seenOn, time, expected) => {
    expect(session(seen(seenOn, time === undefined ? {} : { time }), s, herd)).toBe(expected)
  })
}

// Milked at 05:30 and 15:30.
describe('at the next milking: the first at or after the heat, else the next to come', () => {
  table(
    [
      ['today without a time', 10, 10, undefined, 'morning'],
      ['this morning', 10, 10, 'morning', 'morning'],
      ['this evening', 10, 10, 'evening', 'evening'],
      ['just after midnight', 10, 10, '00:10', 'morning'],
      ['at the milking', 10, 10, '05:30', 'morning'],
      ['a minute later', 10, 10, '05:31', 'evening'],
      ['at the evening milking', 10, 10, '15:30', 'evening'],
      ['after it', 10, 10, '15:31', 'next-morning'],
      ['yesterday evening', 10, 9, 'evening', 'morning'],
      ['yesterday after the evening milking', 10, 9, '22:00', 'morning'],
      ['yesterday at 05:31: that evening has gone by', 10, 9, '05:31', 'morning'],
      ['yesterday at 05:30: 24 hours ago', 10, 9, '05:30', 'morning'],
      ['yesterday at 05:29', 10, 9, '05:29', 'morning!'],
      ['yesterday morning', 10, 9, 'morning', 'morning'],
      ['on the last day of AI', 41, 41, '15:31', 'evening'],
      ['on the day before it', 40, 40, '15:31', 'next-morning'],
      ['the evening before it', 41, 40, 'evening', 'morning'],
    ],
    {},
  )
})

describe('at the next milking, once a day: the first morning at or after the heat', () => {
  table(
    [
      ['this morning', 10, 10, 'morning', 'morning'],
      ['without a time', 10, 10, undefined, 'morning'],
      ['at 06:59', 10, 10, '06:59', 'morning'],
      ['at 07:01', 10, 10, '07:01', 'next-morning'],
      ['last evening', 10, 9, 'evening', 'morning'],
      ['last evening by the clock', 10, 9, '19:00', 'morning'],
      ['this evening', 10, 10, 'evening', 'next-morning'],
      ['this evening, on the last day of AI', 41, 41, 'evening', 'evening'],
      ['this morning, on the last day of AI', 41, 41, 'morning', 'morning'],
    ],
    onceADay,
  )
})

// Vishwanath et al. 2004 (and Trimberger 1948): seen in the morning, served that evening; seen in the evening, served
// the next morning.
describe('by the hour: seen before noon that evening, later the next morning', () => {
  table(
    [
      ['this morning', 10, 10, 'morning', 'evening'],
      ['without a time', 10, 10, undefined, 'evening'],
      ['before the morning milking', 10, 10, '04:00', 'evening'],
      ['at 11:59', 10, 10, '11:59', 'evening'],
      ['at 12:00', 10, 10, '12:00', 'next-morning'],
      ['this evening', 10, 10, 'evening', 'next-morning'],
      ['yesterday evening', 10, 9, 'evening', 'morning'],
      ['yesterday morning: that evening has gone by', 10, 9, 'morning', 'morning'],
      ['yesterday at 05:00: more than 24 hours', 10, 9, '05:00', 'morning!'],
      ['on the last day of AI', 41, 41, 'evening', 'evening'],
    ],
    byTheHour,
  )
})

// Freie Universitaet Berlin, Timing of AI after activity monitoring: best 13-18 hours after the onset, 7-24 acceptable.
describe('by the hour, from an activity record: nearest to 15.5 hours after the onset', () => {
  table(
    [
      ['at midnight: 15.5 hours to the evening', 10, 10, '00:00', 'evening'],
      ['at 05:00: 10.5 or 24.5 hours', 10, 10, '05:00', 'evening'],
      ['at 06:59: 8.5 or 22.5 hours', 10, 10, '06:59', 'evening'],
      ['at 07:01', 10, 10, '07:01', 'next-morning'],
      ['at 14:00: 15.5 hours to the morning', 10, 10, '14:00', 'next-morning'],
      ['at 18:59', 10, 10, '18:59', 'next-morning'],
      ['at 19:00: 10.5 or 20.5 hours, the earlier', 10, 10, '19:00', 'next-morning'],
      ['at 19:01', 10, 10, '19:01', 'next-evening'],
      ['yesterday at 23:00: 16.5 hours', 10, 9, '23:00', 'evening'],
      ['yesterday at 14:00', 10, 9, '14:00', 'morning'],
      ['yesterday at 03:00: the evening has gone by', 10, 9, '03:00', 'morning!'],
      ['yesterday at 05:30: 24 hours', 10, 9, '05:30', 'morning'],
      ['on the last day of AI at 14:00: 1.5 hours', 41, 41, '14:00', 'evening!'],
      ['on the last day of AI at 08:30: 7 hours', 41, 41, '08:30', 'evening'],
      ['on the last day of AI at 08:31', 41, 41, '08:31', 'evening!'],
    ],
    byTheHour,
    onset,
  )
})

describe('by the hour, once a day: the only milking of a day is its morning', () => {
  table(
    [
      ['at the milking: the next one', 10, 10, 'morning', 'next-morning'],
      ['before it', 10, 10, '04:00', 'morning'],
      ['last evening', 10, 9, '19:00', 'morning'],
    ],
    { ...byTheHour, ...onceADay },
  )
})

describe('by the hour, milked once a day after noon', () => {
  table(
    [
      ['before noon: the milking of the day is no evening, and the next to come', 10, 10, '11:00', 'morning'],
      ['after noon: the next day, 25 hours later', 10, 10, '13:00', 'next-morning!'],
    ],
    { ...byTheHour, milkings: ['14:00'] },
  )
})

test('an onset at the next milking is served like any heat', () => {
  expect(session(onset(10, { time: '14:00' }), 10, {})).toBe('evening')
})

test('the moment is that of the first sure record of the heat', () => {
  const twice = cow(fresh, suspect(9, { time: '16:00' }), heat(10, { time: '06:00' }))
  expect(rowAt(10, twice)?.session).toBe('evening')
  const sureTwice = cow(fresh, heat(9, { time: '16:00' }), heat(10, { time: '06:00' }))
  expect(rowAt(10, sureTwice)?.session).toBe('morning')
  const sameDay = cow(fresh, heat(10, { time: '16:00' }), suspect(10, { time: '06:00' }))
  expect(rowAt(10, sameDay)?.session).toBe('next-morning')
})

describe('a fixed-time service', () => {
  test.each([
    [undefined, 'morning'],
    ['morning', 'morning'],
    ['evening', 'evening'],
  ])('planned for %s', (asked, expected) => {
    const row = rowAt(10, cow(fresh, planned(0, 10, asked === undefined ? {} : { session: asked })))
    expect([row?.session, row?.since, row?.days, row?.moment]).toEqual([expected, undefined, undefined, 0])
  })

  test('on heat as well, the heat tells the session', () => {
    const row = rowAt(10, cow(fresh, planned(0, 10), heat(10, { time: '16:00' })))
    expect([row?.reasons, row?.session]).toEqual([['on-heat', 'fixed-time'], 'next-morning'])
  })

  test('an old heat is not its moment', () => {
    expect(rowAt(10, cow(fresh, heat(-11), planned(0, 10)))?.moment).toBe(0)
  })
})

describe('served today without a heat on record', () => {
  test.each([
    ['evening', 'evening'],
    ['morning', 'morning'],
    [undefined, 'morning'],
  ])('at the session of the service: %s', (given, expected) => {
    const more = given === undefined ? {} : { session: given }
    expect(rowAt(10, cow(fresh, service(10, more)))?.session).toBe(expected)
  })

  test('with a heat on record the heat tells', () => {
    const one = cow(fresh, heat(10, { time: '04:00' }), service(10, { session: 'evening' }))
    expect(rowAt(10, one)?.session).toBe('morning')
  })
})

test('rows of a section by session, then moment, then number', () => {
  const served = (number: string, day: number, time: string) => cow({ number }, fresh, heat(day, { time }))
  const rows = listAt(10, [
    served('1', 10, '16:00'),
    served('2', 10, '12:00'),
    served('3', 9, '18:00'),
    served('4', 10, '05:00'),
    served('5', 9, '08:00'),
    served('10', 10, '12:00'),
    cow({ number: '6' }, fresh, planned(0, 10)),
  ]).rows
  expect(rows.map((row) => row.number)).toEqual(['5', '3', '6', '4', '2', '10', '1'])
})
