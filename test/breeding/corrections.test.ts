import { describe, expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import {
  type Animal,
  block,
  calving,
  correction,
  cow,
  dayAt,
  described,
  empty,
  factsOf,
  type Happening,
  heat,
  left,
  loss,
  pregnant,
  service,
  toBull,
} from './support.ts'

const fresh = calving(-60)
/** Her place with corrections at the end of the file. */
function placed(one: Animal, s: number, ...corrections: Happening[]): string {
  const last = corrections.map(
    (fact, index) =>
      ({ id: `c${index}`, about: 'animal-1', at: '2026-07-01T05:00:00Z', ...fact }) as unknown as Fact,
  )
  const row = morningList(openBook([...factsOf([one]), ...last]), dayAt(s)).rows[0]
  return row === undefined ? '-' : described(row)
}
const wrong = { id: 'wrong' }

describe('a voided fact counts as never recorded, on every date', () => {
  test.each([
    ['a heat', cow(fresh, heat(0), heat(10, wrong)), 10, 'serve: on-heat', '-'],
    [
      'a service gives the chance back',
      cow(fresh, heat(0), service(5, wrong), heat(30)),
      30,
      'second-service: on-heat (late-return)',
      'serve: on-heat',
    ],
    [
      'a second chance given back',
      cow(fresh, service(0), service(5, wrong), heat(30)),
      30,
      'sweep-bull: chances',
      'second-service: on-heat (late-return)',
    ],
    ['left to the bull', cow(fresh, heat(10), toBull(5, wrong)), 10, 'sweep-bull: by-hand', 'serve: on-heat'],
    [
      'an empty result',
      cow(fresh, service(0), empty(35, wrong)),
      37,
      'no-heat-seen: empty',
      'pregnancy-check: due (second-round)',
    ],
    [
      'a pregnant result',
      cow(fresh, service(0), pregnant(31, wrong), heat(35)),
      35,
      'take-care: in-calf-heat > pregnancy-check',
      'second-service: on-heat (late-return)',
    ],
    [
      'a loss',
      cow(fresh, service(0), loss(20, wrong)),
      22,
      'take-care: loss',
      'repeat-heat-watch: since-service',
    ],
    [
      'a calving',
      cow(fresh, calving(-58, wrong), heat(10)),
      10,
      'take-care: contradiction > serve',
      'serve: on-heat',
    ],
    ['that she left', cow(fresh, left(5, wrong)), 10, '-', 'no-heat-seen: cycling-not-seen'],
    [
      'that she left: she is back',
      cow(fresh, heat(9), left(5, wrong)),
      10,
      'take-care: contradiction',
      'serve: on-heat',
    ],
    ['a changed block', cow(fresh, heat(10), { ...block(5, 'autumn'), ...wrong }), 10, '-', 'serve: on-heat'],
  ])('%s', (_, one, s, before, after) => {
    expect(placed(one, s)).toBe(before)
    expect(placed(one, s, correction('wrong'))).toBe(after)
  })

  test('also on days before the correction was made', () => {
    const one = cow(fresh, heat(10, wrong))
    expect(placed(one, 10, correction('wrong', { date: '2026-08-01' }))).toBe(
      'no-heat-seen: cycling-not-seen',
    )
  })

  test('with another in its place', () => {
    const one = cow(fresh, service(4, { ...wrong }), service(6, { id: 'right' }))
    const moved = correction('wrong', { with: 'right' })
    expect(placed(one, 23, moved)).toBe('-')
    expect(placed(one, 24, moved)).toBe('repeat-heat-watch: since-service')
  })

  test('a fact not in the file: nothing happens', () => {
    expect(placed(cow(fresh, heat(10)), 10, correction('nobody'))).toBe('serve: on-heat')
  })
})

describe('a correction that is voided voids nothing', () => {
  const one = cow(fresh, heat(10, wrong))
  const undo = correction('wrong', { id: 'undo' })
  const redo = correction('undo', { id: 'redo' })
  test.each([
    ['undone', [undo], 'no-heat-seen: cycling-not-seen'],
    ['done again', [undo, redo], 'serve: on-heat'],
    ['undone again', [undo, redo, correction('redo')], 'no-heat-seen: cycling-not-seen'],
    [
      'undone twice: one of the two still counts',
      [undo, correction('wrong', { id: 'again' }), redo],
      'no-heat-seen: cycling-not-seen',
    ],
  ])('%s', (_, corrections, expected) => {
    expect(placed(one, 10, ...corrections)).toBe(expected)
  })
})
