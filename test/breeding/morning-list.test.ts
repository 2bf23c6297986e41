import { describe, expect, test } from 'vitest'
import { rowsBySection } from '../../source/breeding/morning-list.ts'
import { calving, cow, dayAt, heat, left, listAt, matingStart, on, pregnant, service } from './support.ts'

const fresh = calving(-60)

describe('animals that wait for a scanning visit are counted by block and visit', () => {
  const visits = (s: number, animals: Parameters<typeof listAt>[1], herd: Parameters<typeof listAt>[2]) =>
    listAt(s, animals, herd).visits.map(
      ({ block, visit, ready }) => `${block} ${visit - matingStart}: ${ready}`,
    )
  const served = (number: string, block: string, s = 0) => cow({ number, block }, fresh, service(s))

  test('one, two, and none of another herd day', () => {
    expect(visits(25, [served('1', 'spring')], { scans: [40] })).toEqual(['spring 40: 1'])
    expect(visits(25, [served('1', 'spring'), served('2', 'spring')], { scans: [40] })).toEqual([
      'spring 40: 2',
    ])
    expect(visits(40, [served('1', 'spring')], { scans: [40] })).toEqual([])
    expect(visits(41, [served('1', 'spring')], { scans: [40] })).toEqual([])
  })

  test('who will not be old enough on the visit, is in calf or gone is not counted', () => {
    const herd = [
      served('1', 'spring', 10),
      served('2', 'spring', 11),
      cow({ number: '3' }, fresh, service(0), pregnant(31)),
      cow({ number: '4' }, fresh, service(0), left(20)),
      cow({ number: '5' }, fresh),
    ]
    expect(visits(35, herd, { scans: [40] })).toEqual(['spring 40: 1'])
  })

  test('the visit that comes first stands first, on one day the block that mates first', () => {
    const seasons = (spring: number, autumn: number) => [
      { block: 'autumn', matingStart: on(7), scans: [autumn] },
      { block: 'spring', scans: [spring] },
    ]
    const herd = [served('1', 'autumn'), served('2', 'spring'), served('3', 'spring')]
    const told = (spring: number, autumn: number) => visits(25, herd, { seasons: seasons(spring, autumn) })
    expect(told(50, 40)).toEqual(['autumn 40: 1', 'spring 50: 2'])
    expect(told(40, 50)).toEqual(['spring 40: 2', 'autumn 50: 1'])
    expect(told(40, 40)).toEqual(['spring 40: 2', 'autumn 40: 1'])
  })
})

test('who is to be served has a straw of those in store, the others none', () => {
  const counted = { kind: 'stock-take', date: on(0), sire: 'S1', straw: 'conventional', count: 9 } as const
  const herd = [
    cow({ number: '1' }, fresh, heat(30)),
    cow({ number: '2' }, fresh, service(2), heat(30)),
    cow({ number: '3' }, fresh, service(10)),
  ]
  const rows = listAt(30, herd, { extra: [counted] }).rows
  expect(rows.map(({ section, straw }) => [section, straw])).toEqual([
    ['serve', { sire: 'S1', straw: 'conventional' }],
    ['second-service', { sire: 'S1', straw: 'conventional' }],
    ['repeat-heat-watch', undefined],
  ])
})

test('rows by section, in screen order, without the sections that hold none', () => {
  const herd = [
    cow({ number: '1' }, fresh, heat(30)),
    cow({ number: '2' }, fresh, service(10)),
    cow({ number: '3' }, fresh, heat(28)),
    cow({ number: '4' }, fresh, service(9)),
  ]
  const list = listAt(30, herd)
  expect(
    [...rowsBySection(list)].map(([section, rows]) => [section, rows.map(({ number }) => number)]),
  ).toEqual([
    ['take-care', ['3']],
    ['serve', ['1']],
    ['repeat-heat-watch', ['4', '2']],
  ])
  expect(list.day).toBe(dayAt(30))
  expect(rowsBySection(listAt(30, [])).size).toBe(0)
})
