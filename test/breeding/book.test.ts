import { describe, expect, test } from 'vitest'
import { animalNamed, type HerdBook, openBook } from '../../source/breeding/book.ts'
import { HERD } from '../../source/breeding/facts.ts'
import {
  type Animal,
  bookOf,
  calving,
  correction,
  cow,
  factsOf,
  type Happening,
  heat,
  loss,
  on,
  type Season,
  service,
} from './support.ts'

const farm = (s: number, name: string): Happening => ({
  kind: 'farm',
  date: on(s),
  name,
  zone: 'Europe/Vienna',
  milkings: ['07:00'],
})

describe('the farm', () => {
  test('is what was told of it last, whatever the date', () => {
    const book = bookOf([], { extra: [farm(20, 'Hill'), farm(10, 'Dale')] })
    expect(book.farm).toEqual({ name: 'Dale', zone: 'Europe/Vienna', milkings: ['07:00'] })
  })

  test('nothing told of it: milked twice a day', () => {
    expect(openBook([]).farm).toEqual({ name: '', zone: 'UTC', milkings: ['05:30', '15:30'] })
  })
})

describe('what is told of the herd stands by date, and of one date as it was recorded', () => {
  const dates = [5, 3, 5, -2, 3]
  const inOrder = ['-2 d', '3 b', '3 e', '5 a', '5 c']
  const told = (kind: Happening['kind'], more: object): Happening[] =>
    dates.map((s, place) => ({ kind, date: on(s), id: `${s} ${'abcde'[place]}`, ...more }))
  const ids = (facts: readonly { id: string }[]): string[] => facts.map(({ id }) => id)

  test.each(['stock-take', 'delivery', 'spoiled'] as const)('straws: %s', (kind) => {
    const book = bookOf([], { extra: told(kind, { sire: 'S1', straw: 'conventional', count: 9 }) })
    expect(ids(book.stock)).toEqual(inOrder)
    expect([book.nitrogen, book.keptResults, book.archives]).toEqual([[], [], []])
  })

  test('nitrogen, results that were kept, and archives, which are as recorded', () => {
    const nitrogen = bookOf([], { extra: told('nitrogen', { depthCm: 30 }) })
    expect([ids(nitrogen.nitrogen), nitrogen.stock]).toEqual([inOrder, []])
    const kept = bookOf([], { extra: told('kept-result', { number: '9', result: 'empty' }) })
    expect([ids(kept.keptResults), kept.nitrogen]).toEqual([inOrder, []])
    const archives = bookOf([], { extra: told('archive', { took: [] }) })
    expect(ids(archives.archives)).toEqual(['5 a', '3 b', '5 c', '-2 d', '3 e'])
  })
})

describe('seasons', () => {
  const seasons: readonly Season[] = [
    { block: 'spring', matingStart: on(365) },
    { block: 'west', matingStart: on(0) },
    { block: 'east', matingStart: on(0) },
    { block: 'spring', matingStart: on(0) },
    { block: 'autumn', matingStart: on(200) },
  ]
  const book = bookOf([], { seasons })
  const told = (all: HerdBook['allSeasons']): string[] =>
    all.map(({ block, matingStart }) => `${block} ${matingStart - (book.allSeasons[0]?.matingStart ?? 0)}`)

  test('by mating start, then by block', () => {
    expect(told(book.allSeasons)).toEqual(['east 0', 'spring 0', 'west 0', 'autumn 200', 'spring 365'])
  })

  test('of each block', () => {
    expect(told(book.seasons.get('spring') ?? [])).toEqual(['spring 0', 'spring 365'])
    expect(told(book.seasons.get('west') ?? [])).toEqual(['west 0'])
  })

  test('of two with the same block and mating start the latest counts', () => {
    const twice = bookOf([], { seasons: [{ aiWeeks: 6 }, { matingStart: on(365) }, { aiWeeks: 5 }] })
    expect(twice.allSeasons.map(({ aiEnd }) => aiEnd)).toEqual([34, 41])
  })
})

describe('animals', () => {
  const happenings = (one: Animal): string[] =>
    bookOf(one)
      .byNumber.get('1')
      ?.happenings.map(({ fact }) => ('note' in fact ? fact.note : fact.kind)) ?? []

  test('what happened to her by day, then by time, then what opens a cycle first', () => {
    const told = cow(heat(5, { time: '05:31' }), heat(5), loss(5), calving(5), service(4))
    expect(happenings(told)).toEqual(['service', 'calving', 'heat', 'loss', 'heat'])
    const aroundMidnight = cow(calving(5, { time: '00:00' }), heat(4, { time: '23:59' }))
    expect(happenings(aroundMidnight)).toEqual(['heat', 'calving'])
  })

  test('of one moment and one kind as it was recorded', () => {
    const note = (text: string): Happening => ({ kind: 'note', date: on(1), note: text })
    expect(happenings(cow(note('b'), note('a'), heat(0), note('c')))).toEqual(['heat', 'b', 'a', 'c'])
  })

  test('the record told last counts; she keeps her place', () => {
    const extra: Happening[] = [
      { kind: 'animal', date: on(0), about: 'animal-2', number: '20', sex: 'F', internationalId: 'X2' },
    ]
    const book = openBook([
      ...factsOf([cow({ number: '2', born: on(-900) }), cow({ number: '1' })], {}),
      ...factsOf([], { extra }).slice(-1),
    ])
    expect([...book.animals.values()].map(({ number, born }) => [number, born])).toEqual([
      ['20', undefined],
      ['1', undefined],
    ])
    expect([book.byNumber.has('2'), book.byInternationalId.get('X2')?.id]).toEqual([false, 'animal-2'])
  })

  test('a fact about an animal that is not in the file is left out', () => {
    const stray = { ...factsOf([cow(heat(0))]).at(-1), id: 'stray', about: 'nobody' }
    const book = openBook([...factsOf([cow()]), stray as never])
    expect([book.animals.size, book.animals.get('animal-1')?.happenings]).toEqual([1, []])
  })

  test('a parent or a sire is named by number, else by international ID', () => {
    const book = bookOf([
      cow({ number: '7', internationalId: '8' }),
      cow({ number: '8', internationalId: 'X8' }),
    ])
    const named = (name: string | undefined): string | undefined => animalNamed(book, name)?.number
    expect(['7', '8', 'X8', 'gone', undefined].map(named)).toEqual(['7', '8', '8', undefined, undefined])
  })
})

test('what counts, and what was voided', () => {
  const undo: Happening = { ...correction('second'), id: 'undo', about: 'animal-1' }
  const facts = factsOf([cow(service(0, { id: 'first' }), service(21, { id: 'second' }), undo)])
  const book = openBook(facts)
  const ids = (all: readonly { id: string }[]): string[] => all.map(({ id }) => id)
  expect([...book.voided]).toEqual(['second'])
  expect(ids(book.services)).toEqual(['first'])
  expect(ids(book.facts).slice(-3)).toEqual(['first', 'second', 'undo'])
  expect(ids(book.live)).toEqual(ids(facts).filter((id) => id !== 'second' && id !== 'undo'))
  expect(book.live.filter(({ about }) => about === HERD)).toHaveLength(3)
})
