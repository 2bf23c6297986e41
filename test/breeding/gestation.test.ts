import { describe, expect, test } from 'vitest'
import { DUE_BAND } from '../../source/breeding/gestation.ts'
import {
  type Animal,
  calving,
  cow,
  type Herd,
  maiden,
  matingStart,
  pregnant,
  score,
  service,
  standingAt,
} from './support.ts'

const sire = (traits: object): Herd => ({
  extra: [{ kind: 'stock-take', date: '2026-01-01', sire: 'S1', straw: 'conventional', count: 9, ...traits }],
})
const due = (one: Animal, herd?: Herd): number => (standingAt(60, one, herd).due ?? Number.NaN) - matingStart

describe('due: conception and gestation', () => {
  const served = cow(calving(-60), service(0), pregnant(35))
  test.each([
    ['Holstein', 280, 278],
    ['Friesian', 280, 278],
    ['holstein-friesian', 280, 278],
    ['HO', 280, 278],
    ['Jersey', 280, 280],
    ['Ayrshire', 282, 282],
    ['Brown Swiss', 287, 287],
    ['Angus', 282, 282],
    ['Hereford', 285, 285],
    ['Simmental', 286, 286],
    ['Belgian Blue', 285, 285],
    ['Charolais', 288, 288],
    ['Limousin', 287, 287],
    ['Zebu', 282, 282],
  ])('a calf by a %s: %i days, of a maiden %i', (breed, days, ofMaiden) => {
    expect(due(served, sire({ breed }))).toBe(days)
    expect(due(maiden(service(0), pregnant(35)), sire({ breed }))).toBe(ofMaiden)
  })

  test('nothing known of the sire: 282; the sire’s own figure goes before his breed', () => {
    expect(due(served)).toBe(282)
    expect(due(served, sire({ breed: 'Jersey', gestationDays: 276 }))).toBe(276)
    expect(due(served, { policy: { defaultGestation: 283 } })).toBe(283)
  })

  test('a sire with a record of his own in the herd', () => {
    const bull = {
      kind: 'animal',
      about: 'bull',
      date: '2026-01-01',
      number: 'S1',
      sex: 'M',
      breed: 'Limousin',
    } as const
    expect(due(served, { extra: [bull] })).toBe(287)
  })

  test('unknown where no service fits', () => {
    expect(due(cow(calving(-60), pregnant(35)), { bullWeeks: 0 })).toBeNaN()
  })
})

test('19 of 20 calve within ten days of the day: two standard deviations of five days', () => {
  expect(DUE_BAND).toBe(2 * 5)
})

describe('dry off: 60 days before due, 84 in the first lactation or when thin', () => {
  const dryOff = (one: Animal, s = 60): number => {
    const standing = standingAt(s, one)
    return (standing.due ?? 0) - (standing.dryOff ?? Number.NaN)
  }
  const inCalf = [calving(-60), service(0), pregnant(35)]
  test.each([
    ['second lactation', cow(...inCalf), 60],
    ['first lactation', cow({ lactation: 0 }, ...inCalf), 84],
    ['scored 3', cow(...inCalf, score(50, 3)), 60],
    ['scored 2.75', cow(...inCalf, score(50, 2.75)), 84],
    ['thin 60 days ago', cow(...inCalf, score(0, 2.5)), 84],
    ['thin 61 days ago', cow(...inCalf, score(-1, 2.5)), 60],
    ['thin, and better since', cow(...inCalf, score(40, 2.5), score(50, 3)), 60],
  ])('%s', (_, one, days) => {
    expect(dryOff(one)).toBe(days)
  })

  test('a maiden is not in milk', () => {
    expect(dryOff(maiden(service(0), pregnant(35)))).toBeNaN()
  })
})
