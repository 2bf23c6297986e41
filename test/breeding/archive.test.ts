/** Closing old seasons: which facts go to the archive, and which stay with the herd. */
import { describe, expect, test } from 'vitest'
import { archivableOn, archiveOf, isArchived } from '../../source/breeding/archive.ts'
import { openBook } from '../../source/breeding/book.ts'
import { dayIso, isoDay } from '../../source/breeding/day.ts'
import { archived } from './archived.ts'
import {
  bar,
  block,
  calving,
  correction,
  cow,
  dry,
  examined,
  factsOf,
  fromBull,
  type Happening,
  heat,
  hold,
  left,
  looked,
  note,
  on,
  score,
  service,
  unbar,
  withBull,
} from './support.ts'

const today = isoDay('2029-06-01')
/** The limit is season day 330, 27 March 2027, when the watching of the second season began. */
const seasons = ['2026', '2027', '2028', '2029'].map((year) => ({ matingStart: `${year}-05-01` }))
const goes = (...happenings: Happening[]): string[] =>
  archived(factsOf([cow(...happenings)], { seasons }), today).went.map(({ kind, date }) => `${kind} ${date}`)

describe('what goes and what stays', () => {
  const old = [calving(-400), service(-340, { natural: true }), calving(-60)]

  test('the limit is the day that a season begins on, 24 months and five weeks back or more', () => {
    expect(dayIso(archived(factsOf([cow(...old)], { seasons }), today).before)).toBe('2027-03-27')
    expect(archivableOn(openBook(factsOf([cow(...old)])), isoDay('2026-06-01'))).toBeUndefined()
  })

  test('to the day: 730 days and 35 more', () => {
    const limit = (day: string): string =>
      dayIso(archived(factsOf([cow(...old)], { seasons }), isoDay(day)).before)
    expect([limit('2029-04-29'), limit('2029-04-30')]).toEqual(['2026-03-27', '2027-03-27'])
  })

  test('the season that an animal of the herd stands in is kept, and of one that left it is not', () => {
    const limit = (...happenings: Happening[]): string => {
      const inAutumn = cow({ number: '2', block: 'autumn' }, calving(-60), ...happenings)
      const all = [...seasons, { block: 'autumn', matingStart: '2026-10-01' }]
      return dayIso(archived(factsOf([cow(...old), inAutumn], { seasons: all }), today).before)
    }
    expect([limit(), limit(left(200))]).toEqual(['2026-08-27', '2027-03-27'])
  })

  test('services before her last calving before the limit go; calvings stay, and all that came after', () => {
    expect(goes(...old, service(0, { natural: true }))).toEqual(['service 2025-05-26'])
  })

  test('a cow that did not calve since keeps everything of her present cycle', () => {
    expect(goes(calving(-60), service(0, { natural: true }))).toEqual([])
  })

  test('an animal that left keeps her record, her calvings and that she left', () => {
    expect(goes(calving(-60), service(0, { natural: true }), left(100))).toEqual(['service 2026-05-01'])
  })

  test('a calving or a leaving on the day of the limit closes nothing yet, the day before it does', () => {
    const went = (...more: Happening[]): number =>
      goes(calving(-60), service(0, { natural: true }), ...more).length
    expect([went(calving(329)), went(calving(330)), went(calving(329), calving(330))]).toEqual([1, 0, 0])
    expect([went(left(329)), went(left(330))]).toEqual([1, 0])
  })

  test('what happened on the day that she calved stays', () => {
    expect(goes(calving(-400), heat(-61), heat(-60, { time: '00:10' }), calving(-60))).toEqual([
      'heat 2026-03-01',
    ])
  })

  test('a contradiction stays whole until it is corrected', () => {
    expect(goes(calving(-60), left(100), service(120, { natural: true }))).toEqual([])
  })

  test('a correction goes with what it voids; what voids a calving stays', () => {
    const heat = { ...service(-340, { natural: true }), id: 'heat' }
    const wrong = { ...calving(-200), id: 'wrong' }
    expect(goes(calving(-400), heat, correction('heat'), calving(-60))).toEqual([
      'service 2025-05-26',
      'correction 2026-05-01',
    ])
    expect(goes(calving(-400), wrong, correction('wrong'), calving(-60))).toEqual([])
  })

  test('a correction that was taken back goes with all that hangs on it, and one of a fact unknown stays', () => {
    const seen = { ...heat(-340), id: 'seen' }
    const [undo, redo] = [
      { ...correction('seen'), id: 'undo' },
      { ...correction('undo'), id: 'redo' },
    ]
    expect(goes(calving(-400), seen, undo, redo, calving(-60))).toEqual([
      'heat 2025-05-26',
      'correction 2026-05-01',
      'correction 2026-05-01',
    ])
    expect(goes(calving(-400), correction('unknown'), calving(-60))).toEqual([])
    const round = [
      { ...correction('there'), id: 'here' },
      { ...correction('here'), id: 'there' },
    ]
    expect(goes(calving(-400), ...round, calving(-60))).toEqual([])
  })

  test('a bull that was never taken from her stays with her', () => {
    expect(goes(calving(-400), withBull(-330), calving(-60))).toEqual([])
    expect(goes(calving(-400), withBull(-330), fromBull(-300), calving(-60))).toHaveLength(2)
    expect(goes(calving(-400), withBull(-330), fromBull(-300), calving(-60), withBull(0))).toHaveLength(2)
    expect(goes(calving(-400), withBull(-330), fromBull(-60), calving(-60))).toEqual([])
    expect(goes(calving(-400), withBull(-330), fromBull(-300), withBull(-250), calving(-60))).toEqual([])
    expect(goes(withBull(-330), fromBull(-300))).toEqual([])
  })

  test('a time with a bull that was voided goes, though nobody took her from him', () => {
    const wrong = { ...withBull(-330), id: 'wrong' }
    expect(goes(calving(-400), wrong, correction('wrong'), withBull(-320), calving(-60))).toEqual([
      'with-bull 2025-06-05',
      'correction 2026-05-01',
    ])
  })

  test('a fixed-time service planned for a day to come stays', () => {
    expect(goes(examined(-340, { serveOn: '2030-05-01' }), calving(-60))).toEqual([])
    expect(goes(examined(-340, { serveOn: '2025-06-01' }), calving(-60))).toHaveLength(1)
    expect(goes(examined(-340, { serveOn: on(330) }), calving(-60))).toEqual([])
    expect(goes(examined(-340, { serveOn: on(329) }), calving(-60))).toHaveLength(1)
    expect(goes(examined(-340), calving(-60))).toHaveLength(1)
  })

  test('her block, her bars and her holds stay, her scores and notes go', () => {
    const kept = [block(-340, 'spring'), bar(-339), unbar(-338), hold(-337, -330)]
    expect(goes(...kept, looked(-336), score(-335, 3), note(-334), dry(-333), calving(-60))).toEqual([
      'looked 2025-05-30',
      'score 2025-05-31',
      'note 2025-06-01',
      'dry 2025-06-02',
    ])
  })

  test('a service by AI stays until its straws were counted again', () => {
    const count = (date: string, count: number): Happening => ({
      kind: 'stock-take',
      date,
      sire: 'S1',
      straw: 'conventional',
      count,
    })
    const her = cow(calving(-400), service(-340), calving(-60))
    const went = (...extra: Happening[]) => archived(factsOf([her], { seasons, extra }), today).went.length
    expect(went(count('2025-01-10', 20))).toBe(0)
    expect(went(count('2025-01-10', 20), count('2026-01-10', 12))).toBe(1)
    expect(went(count('2026-01-10', 12))).toBe(1)
    // Counted on the last day before the limit, and on the limit.
    expect(went(count('2025-01-10', 20), count(on(329), 12))).toBe(1)
    expect(went(count('2025-01-10', 20), count(on(330), 12))).toBe(0)
  })
})

describe('the archive of a herd', () => {
  const told = (...befores: string[]) =>
    archiveOf(
      openBook(factsOf([], { extra: befores.map((before) => ({ kind: 'archive', date: on(0), before })) })),
    )
  test('is the one that reaches furthest, in whatever order they were told', () => {
    expect(told()).toBeUndefined()
    expect(told('2025-03-27', '2027-03-27', '2026-03-27')?.before).toBe('2027-03-27')
    expect(told('2026-03-27', '2025-03-27')?.before).toBe('2026-03-27')
  })

  test('holds facts of the seasons that began before it', () => {
    const [season] = openBook(factsOf([])).allSeasons
    const isIn = (before?: string) => season !== undefined && isArchived(season, before)
    expect([isIn(), isIn(on(-35)), isIn(on(-34))]).toEqual([false, false, true])
  })
})
