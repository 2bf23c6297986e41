import { describe, expect, test } from 'vitest'
import { aboveShare, servicesOfSeason, sireUse } from '../../../source/breeding/straws/use.ts'
import { cow, dayOn, farm, herd, season, service } from './herd.ts'

test('the services of a season are those by AI from day -35 to today, of the whole herd', () => {
  const served = [-36, -35, 0, 4, 5].map((s) => service('1', s, `S${s}`, 'sexed'))
  const bull = service('1', 1, 'S1', 'sexed', { natural: true })
  const elsewhere = [...cow('2', { block: 'other' }), service('2', 2, 'S2', 'beef')]
  const book = herd(farm(), season(), cow('1'), served, bull, elsewhere)
  const [spring] = book.allSeasons
  expect(servicesOfSeason(book, spring, dayOn(4)).map(({ sire }) => sire)).toEqual(['S-35', 'S0', 'S4', 'S2'])
  expect(servicesOfSeason(book, undefined, dayOn(4))).toEqual([])
})

test('how often each sire was used: a service that names none is none of anybody’s', () => {
  const drafts = [
    service('1', 0, 'S1', 'sexed'),
    service('1', 1, 'S1', 'beef'),
    service('1', 2, 'S2', 'sexed'),
    service('1', 3, 'S3', 'sexed', { sire: undefined }),
  ]
  const { total, by } = sireUse(herd(farm(), cow('1'), drafts).services)
  expect([total, by('S1'), by('S2'), by('S3')]).toEqual([3, 2, 1, 0])
})

describe('one more service puts a sire above 15 %', () => {
  test.each([
    [0, 0, false],
    [1, 1, true],
    [0, 5, false],
    [1, 5, true],
    [1, 6, false],
    [7, 50, false],
    [8, 50, true],
    [2, 19, false],
    [3, 19, true],
  ])('%d of %d: %s', (used, total, above) => expect(aboveShare(used, total, 0.15)).toBe(above))

  test('never where the farm sets no limit', () => {
    expect([0, 1, 30].map((used) => aboveShare(used, used, 1))).toEqual([false, false, false])
  })
})
