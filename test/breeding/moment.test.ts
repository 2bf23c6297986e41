import { describe, expect, test } from 'vitest'
import type { FactKind } from '../../source/breeding/facts.ts'
import { Clock, kindRank, minuteOf, momentOf } from '../../source/breeding/moment.ts'

test.each([
  ['00:00', 0],
  ['00:10', 10],
  ['05:30', 330],
  ['23:59', 1439],
])('%s is minute %i of the day', (time, minute) => {
  expect(minuteOf(time)).toBe(minute)
})

describe('a time of day counts from itself, from the first milking or from the last', () => {
  const twice = ['05:00', '16:00']
  const once = ['07:00']
  const cases = [
    ['14:05', twice, 845],
    ['morning', twice, 300],
    ['evening', twice, 960],
    [undefined, twice, 300],
    ['evening', once, 420],
    [undefined, once, 420],
    ['morning', [], 330],
    ['evening', [], 330],
  ] as const
  test.each(cases)('%s, milked at %j: minute %i', (time, milkings, minute) => {
    expect(momentOf(time, milkings)).toBe(minute)
    const clock = new Clock(milkings)
    expect([clock.minute(time), clock.minute(time)]).toEqual([minute, minute])
  })
})

describe('facts of one moment', () => {
  const inOrder = (...kinds: FactKind[]): FactKind[] => kinds.sort((a, b) => kindRank(a) - kindRank(b))

  test('what opens a cycle first, what is found next, what ends it last', () => {
    expect(inOrder('left', 'loss', 'check', 'service', 'heat', 'calving', 'block')).toEqual([
      'block',
      'calving',
      'heat',
      'service',
      'check',
      'loss',
      'left',
    ])
  })

  test('a bar before it is lifted, a bull before he is taken away', () => {
    expect(inOrder('unbar', 'bar')).toEqual(['bar', 'unbar'])
    expect(inOrder('from-bull', 'with-bull')).toEqual(['with-bull', 'from-bull'])
  })

  test('what is not about one animal comes last', () => {
    expect(inOrder('farm', 'left')).toEqual(['left', 'farm'])
  })
})
