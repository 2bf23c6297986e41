import { describe, expect, test } from 'vitest'
import type { AnimalRecord } from '../../source/breeding/book.ts'
import type { Day } from '../../source/breeding/day.ts'
import { marksOn } from '../../source/breeding/marks.ts'
import {
  bar,
  block,
  bookOf,
  calving,
  cow,
  dayAt,
  dry,
  examined,
  type Happening,
  heat,
  hold,
  left,
  loss,
  matingStart,
  on,
  planned,
  score,
  service,
  toBull,
  unbar,
} from './support.ts'

/** Her marks on the morning of season day 10. */
const marks = (...happenings: Happening[]) =>
  marksOn(bookOf(cow(...happenings)).byNumber.get('1') as AnimalRecord, dayAt(10))
const s = (day: Day | undefined): number | undefined => (day === undefined ? undefined : day - matingStart)

test('nothing told of her: no mark', () => {
  expect(marks()).toEqual({
    block: undefined,
    barred: false,
    onHold: false,
    leftOn: undefined,
    toBull: [],
    examinedOn: undefined,
    fixedTime: undefined,
    plannedBefore: undefined,
    driedOff: undefined,
    condition: undefined,
    todays: [],
  })
})

describe('a mark counts from the morning after, and goes on over a calving and a loss', () => {
  const events = [calving(3), loss(4), calving(5)]
  test('told before', () => {
    const told = marks(bar(1), hold(1), toBull(1), examined(1), dry(1), score(1, 3), left(1), ...events)
    expect([told.barred, told.onHold, told.toBull.map(s), s(told.examinedOn)]).toEqual([true, true, [1], 1])
    expect([s(told.driedOff), s(told.condition?.day), told.condition?.value, s(told.leftOn)]).toEqual([
      1, 1, 3, 1,
    ])
  })

  test('told today or later: nothing yet', () => {
    for (const day of [10, 11]) {
      const told = marks(bar(day), hold(day), toBull(day), examined(day), dry(day), score(day, 3), left(day))
      expect({ ...told, todays: [] }).toEqual(marks())
    }
  })
})

describe('each mark', () => {
  test.each<[string, Happening[], boolean]>([
    ['not to be bred', [bar(1)], true],
    ['and meant for breeding again', [bar(1), unbar(2)], false],
    ['and again not', [bar(1), unbar(2), bar(3)], true],
    ['meant for breeding again today', [bar(1), unbar(10)], true],
  ])('%s', (_, told, barred) => {
    expect(marks(...told).barred).toBe(barred)
  })

  test.each<[string, Happening[], boolean]>([
    ['until today', [hold(1, 10)], true],
    ['until yesterday', [hold(1, 9)], false],
    ['without an end', [hold(1)], true],
    ['without an end, and then one that is over', [hold(1), hold(5, 9)], false],
    ['over, and a longer one before it', [hold(1, 20), hold(5, 9)], true],
    ['over, then one without an end', [hold(1, 5), hold(7)], true],
    ['of today', [hold(10, 20)], false],
  ])('on hold %s', (_, told, onHold) => {
    expect(marks(...told).onHold).toBe(onHold)
  })

  test.each<[string, Happening[], string | undefined]>([
    ['changed', [block(1, 'autumn')], 'autumn'],
    ['changed twice', [block(1, 'autumn'), block(4, 'spring')], 'spring'],
    ['changed today', [block(10, 'autumn')], 'autumn'],
    ['to be changed', [block(11, 'autumn')], undefined],
  ])('her block %s', (_, told, expected) => {
    expect(marks(...told).block).toBe(expected)
  })

  test('told twice: she left on the first day, was examined, dried off and scored on the last', () => {
    const told = marks(left(1), left(3), examined(1), examined(4), dry(1), dry(5), score(1, 2), score(6, 3))
    expect([told.leftOn, told.examinedOn, told.driedOff, told.condition?.day].map(s)).toEqual([1, 4, 5, 6])
    expect(told.condition?.value).toBe(3)
    expect(marks(toBull(1), toBull(3)).toBull.map(s)).toEqual([1, 3])
  })
})

describe('a fixed-time service', () => {
  test.each<[string, Happening[], boolean, number | undefined]>([
    ['planned for today', [planned(1, 10)], true, undefined],
    ['planned for a day before', [planned(1, 9)], false, 9],
    ['planned for a day to come', [planned(1, 11)], false, undefined],
    ['planned today for today', [planned(10, 10)], false, undefined],
    ['moved to an earlier day', [planned(1, 8), planned(2, 5)], false, 5],
    ['moved to a later day', [planned(1, 5), planned(2, 8)], false, 8],
    ['moved on the day itself', [planned(1, 9), planned(9, 12)], false, undefined],
    ['moved to today', [planned(1, 8), planned(2, 10)], true, undefined],
    ['moved away from today', [planned(1, 10), planned(2, 8)], false, 8],
    ['planned anew once the day was over', [planned(1, 5), planned(6, 8)], false, 8],
    ['for a day before and for today', [planned(1, 8), planned(9, 10)], true, 8],
    ['examined again without a plan', [planned(1, 10), examined(5)], true, undefined],
  ])('%s', (_, told, forToday, before) => {
    const found = marks(...told)
    expect([found.fixedTime !== undefined, s(found.plannedBefore)]).toEqual([forToday, before])
  })
})

test('what is dated today, all of it, and nothing else', () => {
  const told = marks(heat(9), heat(10), service(10), score(10, 3), block(10, 'spring'), heat(11))
  expect(told.todays.map(({ kind, date }) => [kind, date])).toEqual([
    ['block', on(10)],
    ['heat', on(10)],
    ['service', on(10)],
    ['score', on(10)],
  ])
})
