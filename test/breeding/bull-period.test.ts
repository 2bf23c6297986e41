import { describe, expect, test } from 'vitest'
import { bullPeriods, bullWeeks, lastDayWithBull } from '../../source/breeding/bull-period.ts'
import type { Day } from '../../source/breeding/day.ts'
import { bookOf, cow, dayAt, fromBull, type Happening, heat, matingStart, on, withBull } from './support.ts'

const days = (all: readonly { from: Day; to: Day | undefined; bull: string | undefined }[]): string[] =>
  all.map(({ from, to, bull }) =>
    [from - matingStart, to === undefined ? 'still' : to - matingStart, bull ?? '?'].join(' '),
  )
/** Her times with a bull, told by what is dated before s 60. */
const told = (...happenings: Happening[]): string[] => {
  const her = bookOf(cow(...happenings)).byNumber.get('1')
  return her === undefined ? [] : days(bullPeriods(her, (day) => day < dayAt(60)))
}
const [b1, b2] = [{ bull: 'B1' }, { bull: 'B2' }]

describe('her times with a bull', () => {
  test.each<[string, Happening[], string[]]>([
    ['none', [heat(5)], []],
    ['still with him', [withBull(10, b1)], ['10 still B1']],
    ['taken from him', [withBull(10, b1), fromBull(20, b1)], ['10 20 B1']],
    ['put with him and taken from him on one day', [fromBull(10), withBull(10)], ['10 10 ?']],
    [
      'taken from one of two',
      [withBull(10, b1), withBull(12, b2), fromBull(20, b1)],
      ['10 20 B1', '12 still B2'],
    ],
    ['taken from all', [withBull(10, b1), withBull(12, b2), fromBull(20)], ['10 20 B1', '12 20 B2']],
    ['which bull it was nobody wrote down', [withBull(10), fromBull(20, b1)], ['10 20 ?']],
    [
      'with him twice: what ended stays as it ended',
      [withBull(10, b1), fromBull(20, b1), withBull(30, b1), fromBull(40, b1)],
      ['10 20 B1', '30 40 B1'],
    ],
    ['what does not count yet', [withBull(10, b1), fromBull(60), withBull(61, b2)], ['10 still B1']],
  ])('%s', (_, happenings, expected) => {
    expect(told(...happenings)).toEqual(expected)
  })
})

test('the bull weeks of a block: from A+1 to B of each of its seasons that has any', () => {
  const seasons = [{}, { matingStart: on(365), bullWeeks: 0 }, { matingStart: on(730), bullWeeks: 1 }]
  expect(days(bullWeeks(bookOf([], { seasons }).allSeasons))).toEqual(['42 62 ?', '772 778 ?'])
})

describe('the last day up to today on which a bull was with her', () => {
  const period = (from: number, to?: number) => ({
    from: dayAt(from),
    to: to === undefined ? undefined : dayAt(to),
    bull: undefined,
  })
  const last = (...given: Parameters<typeof lastDayWithBull>): number | undefined => {
    const day = lastDayWithBull(...given)
    return day === undefined ? undefined : day - matingStart
  }
  test.each<[string, ReturnType<typeof period>[], number[], number | undefined]>([
    ['never', [], [], undefined],
    ['a time that begins tomorrow', [period(31)], [], undefined],
    ['since today', [period(30)], [], 30],
    ['with him still', [period(10)], [], 30],
    ['until a day before today', [period(10, 20)], [], 20],
    ['until a day to come', [period(10, 40)], [], 30],
    ['the later of two', [period(10, 25), period(12, 20)], [], 25],
    ['a service of his, told without a time', [], [22, 15], 22],
    ['a service after the time told', [period(10, 20)], [23], 23],
  ])('%s', (_, periods, services, expected) => {
    expect(last(periods, services.map(dayAt), dayAt(30))).toBe(expected)
  })
})
