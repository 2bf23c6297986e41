import { expect, test } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import { isoDay } from '../../../source/breeding/day.ts'
import type { NewFact } from '../../../source/breeding/facts.ts'
import { morningList } from '../../../source/breeding/morning-list.ts'
import { type DraftOptions, draftRows } from '../../../source/exchange/draft/draft.ts'
import { cow, herd, season } from '../csv/support/herd.ts'

const policy = (set: Record<string, string>): NewFact => ({
  about: 'herd',
  date: '2026-01-01',
  kind: 'policy',
  set,
})

/** Cows of the spring block that calved in February. */
const cows = (...numbers: string[]): NewFact[] =>
  numbers.flatMap((number): NewFact[] => [
    cow(number, { block: 'spring', lactation: 2 }),
    { about: number, date: '2026-02-10', kind: 'calving' },
  ])
const heat = (about: string, date: string, time?: string): NewFact => ({
  about,
  date,
  ...(time === undefined ? {} : { time }),
  kind: 'heat',
  how: 'standing',
  certainty: 'sure',
})
const service = (about: string, date: string): NewFact => ({
  about,
  date,
  kind: 'service',
  sire: 'S17',
  straw: 'conventional',
})

const drafted = (facts: readonly NewFact[], date: string, options: DraftOptions = {}): string[] => {
  const book = openBook(herd(season, ...facts))
  return draftRows(book, morningList(book, isoDay(date)), options).map(({ number }) => number)
}

test('who is to be served today, by number read as a number', () => {
  const facts = [
    ...cows('100', '9', '41'),
    heat('100', '2026-05-05', '06:00'),
    heat('9', '2026-05-05', '05:00'),
    heat('41', '2026-05-03'),
  ]
  expect(drafted(facts, '2026-05-05')).toEqual(['9', '100'])
})

test('a milking has its own animals, and tomorrow waits', () => {
  const facts = [...cows('1', '2'), heat('1', '2026-05-05', '05:00'), heat('2', '2026-05-05', '14:00')]
  expect(drafted(facts, '2026-05-05', { session: 'morning' })).toEqual(['1'])
  expect(drafted(facts, '2026-05-05', { session: 'evening' })).toEqual(['2'])
  expect(
    drafted(
      [...facts, heat('2', '2026-05-05', '20:00')].filter(
        (fact) => fact.about !== '2' || fact.kind !== 'heat' || fact.time === '20:00',
      ),
      '2026-05-05',
    ),
  ).toEqual(['1'])
})

test('who is ticked stays with the herd', () => {
  const facts = [...cows('1'), heat('1', '2026-05-05', '05:00'), service('1', '2026-05-05')]
  expect(drafted(facts, '2026-05-05')).toEqual([])
})

test('who must be looked at before a service, and nobody who needs only a decision', () => {
  const facts = [
    ...cows('1', '2', '3'),
    service('1', '2026-05-01'),
    heat('1', '2026-05-08'),
    { about: '2', date: '2026-05-06', kind: 'loss' } as NewFact,
    { about: '3', date: '2026-05-08', kind: 'hold', until: '2026-05-20' } as NewFact,
    heat('3', '2026-05-08'),
  ]
  expect(drafted(facts, '2026-05-08')).toEqual(['1'])
})

test('who is to be checked, unless the milk tells', () => {
  const facts = [...cows('1'), service('1', '2026-05-01')]
  expect(drafted(facts, '2026-06-10')).toEqual(['1'])
  expect(drafted([...facts, policy({ checkMethod: 'milk' })], '2026-06-10')).toEqual([])
})

test('who waits for the vet, where he is asked for', () => {
  expect(drafted(cows('1'), '2026-05-10')).toEqual([])
  expect(drafted(cows('1'), '2026-05-10', { vet: true })).toEqual(['1'])
})
