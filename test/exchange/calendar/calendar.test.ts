import fc from 'fast-check'
import ICAL from 'ical.js'
import { expect, test } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import { isoDay, plusDays } from '../../../source/breeding/day.ts'
import type { NewFact } from '../../../source/breeding/facts.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import { calendarEvents } from '../../../source/exchange/calendar/events.ts'
import { calendarText } from '../../../source/exchange/calendar/ics.ts'
import { escaped, folded } from '../../../source/exchange/calendar/lines.ts'
import { cow, herd } from '../csv/support/herd.ts'

const season = (matingStart: string, more: object = {}): NewFact =>
  ({
    about: 'herd',
    date: '2026-01-01',
    kind: 'season',
    block: 'spring',
    matingStart,
    aiWeeks: 6,
    bullWeeks: 3,
    ...more,
  }) as NewFact

function calendar(newFacts: readonly NewFact[], today = '2026-05-28', revision = 7): string {
  const book = openBook(herd(...newFacts))
  const day = isoDay(today)
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, day))
  const events = calendarEvents(book, standings, plusDays(day, -35), plusDays(day, 550), 'k2m9')
  return calendarText(events, { farm: book.farm.name, revision, changed: '2026-05-28T04:15:09.120Z' })
}

/** Properties of each event, unfolded and unescaped as RFC 5545, 3.1 and 3.3.11, tell a reader to. */
function eventsOf(text: string): Record<string, string>[] {
  const lines = text.replace(/\r\n[ \t]/g, '').split('\r\n')
  const events: Record<string, string>[] = []
  for (const line of lines) {
    const cut = line.indexOf(':')
    const name = line.slice(0, cut)
    const value = line.slice(cut + 1).replace(/\\([\\;,n])/g, (_, letter) => (letter === 'n' ? '\n' : letter))
    if (line === 'BEGIN:VEVENT') events.push({})
    else if (events.length > 0) Object.assign(events.at(-1) ?? {}, { [name]: value })
  }
  return events
}

test('all-day events of a season of six and three weeks', () => {
  const dates = eventsOf(calendar([season('2026-05-01', { scanDates: ['2026-07-20'] })])).map((event) => [
    event['DTSTART;VALUE=DATE'],
    event['DTEND;VALUE=DATE'],
    event.SUMMARY,
  ])
  expect(dates).toContainEqual(['20260501', '20260502', 'spring block: mating starts'])
  expect(dates).toContainEqual(['20260611', '20260612', 'spring block: last day of AI'])
  expect(dates).toContainEqual(['20260612', '20260613', 'spring block: sweep bull goes in'])
  expect(dates).toContainEqual(['20260703', '20260704', 'spring block: sweep bull comes out'])
  expect(dates).toContainEqual(['20260720', '20260721', 'spring block: scanning visit'])
})

test('the first due date and the groups to dry off', () => {
  const facts: NewFact[] = [
    season('2026-05-01'),
    cow('1', { block: 'spring', lactation: 2 }),
    { about: '1', date: '2026-02-01', kind: 'calving' },
    { about: '1', date: '2026-05-04', kind: 'service', sire: 'S17', straw: 'sexed' },
    { about: '1', date: '2026-06-08', kind: 'check', method: 'ultrasound', result: 'pregnant' },
  ]
  const summaries = eventsOf(calendar(facts, '2026-06-10')).map(({ SUMMARY }) => SUMMARY)
  expect(summaries).toContain('spring block: first calf due (1)')
  expect(summaries).toContain('spring block: to dry off this week (1)')
})

// RFC 5545: 3.4 one calendar with its version and product; 3.6.1 UID and DTSTAMP in every event; 3.1 lines of at
// most 75 octets that end with CRLF.
test('a calendar as RFC 5545 asks for it', () => {
  const text = calendar([season('2026-05-01', { block: 'früh, „spät“; \\ x'.repeat(9) })])
  expect(text.startsWith('BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:')).toBe(true)
  expect(text.endsWith('END:VEVENT\r\nEND:VCALENDAR\r\n')).toBe(true)
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
  for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
  const events = eventsOf(text)
  expect(events[0]?.SUMMARY).toContain('früh, „spät“; \\ x'.repeat(9))
  for (const event of events) {
    expect(event.DTSTAMP).toBe('20260528T041509Z')
    expect(event.UID).toMatch(/^[0-9a-f]{32}@dawnlist$/)
  }
  expect(new Set(events.map(({ UID }) => UID)).size).toBe(events.length)
})

/** Events as the library ical.js reads them, an implementation of RFC 5545 that is not ours. */
const readByLibrary = (text: string): readonly ICAL.Event[] =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event))

test('a library of others reads the same events: dates of whole days, names, long and odd texts', () => {
  const block = 'früh, „spät“; \\ x 中'.repeat(9)
  const text = calendar([season('2026-05-01', { block, scanDates: ['2026-07-20'] }), season('2027-05-01')])
  const events = readByLibrary(text)
  const ours = eventsOf(text)
  expect(events).toHaveLength(ours.length)
  for (const [place, event] of events.entries()) {
    expect(event.startDate.isDate).toBe(true)
    expect(event.startDate.toString().replaceAll('-', '')).toBe(ours[place]?.['DTSTART;VALUE=DATE'])
    expect(event.duration.toSeconds()).toBe(24 * 60 * 60)
    expect(event.uid).toBe(ours[place]?.UID)
    expect(event.summary).toBe(ours[place]?.SUMMARY)
  }
  const start = events.find(({ summary }) => summary === `${block} block: mating starts`)
  expect(start?.startDate.toString()).toBe('2026-05-01')
})

test('whatever a block is called, a library of others reads its name back', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 120 }), (name) => {
      const block = name.replace(/\p{Cc}/gu, '')
      const [event] = readByLibrary(calendar([season('2026-05-01', { block })]))
      expect(event?.summary).toBe(eventsOf(calendar([season('2026-05-01', { block })]))[0]?.SUMMARY)
      expect(event?.summary).toContain(block)
    }),
    { numRuns: 60 },
  )
})

test('the same herd makes the same bytes, and a season that is moved keeps the names of its events', () => {
  expect(calendar([season('2026-05-01')])).toBe(calendar([season('2026-05-01')]))
  const uids = (text: string): unknown[] =>
    eventsOf(text)
      .map(({ UID, SUMMARY }) => [SUMMARY, UID])
      .sort()
  const moved = herd(
    season('2026-05-01'),
    { about: 'herd', date: '2026-01-01', kind: 'correction', voids: 'k1' },
    season('2026-05-04'),
  )
  const text = calendar(
    moved.slice(1).map(({ at: _at, action: _action, by: _by, ...fact }) => fact as NewFact),
  )
  expect(uids(text)).toEqual(uids(calendar([season('2026-05-01')])))
  expect(text).toContain('DTSTART;VALUE=DATE:20260504')
})

test('two seasons of a block in one year, two blocks and two scanning days are kept apart', () => {
  const text = calendar([
    season('2026-05-01', { scanDates: ['2026-07-20', '2026-08-20'] }),
    season('2026-11-20'),
    season('2026-11-20', { block: 'autumn' }),
    season('2027-05-01'),
  ])
  const uids = eventsOf(text).map(({ UID }) => UID)
  expect(uids.length).toBeGreaterThan(40)
  expect(new Set(uids).size).toBe(uids.length)
})

test('folding never cuts a letter, and unfolding gives the line back (RFC 5545, 3.1)', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', maxLength: 300 }).filter((text) => !/[\r\n]/.test(text)),
      (text) => {
        const lines = folded(text).split('\r\n')
        for (const line of lines) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
        expect(Buffer.from(folded(text)).toString('utf8')).toBe(folded(text))
        expect(
          lines
            .slice(0, -1)
            .map((line, place) => (place === 0 ? line : line.slice(1)))
            .join(''),
        ).toBe(text)
      },
    ),
  )
})

test('what means something in a calendar is escaped, and controls are left out (RFC 5545, 3.3.11)', () => {
  expect(escaped('a;b,c\\d\ne\r\nf\u001b\u0007')).toBe('a\\;b\\,c\\\\d\\ne\\nf')
})
