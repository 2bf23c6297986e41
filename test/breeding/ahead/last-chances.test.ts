import { expect, test } from 'vitest'
import { type LastChance, lastChances } from '../../../source/breeding/ahead/last-chances.ts'
import { cohortOf } from '../../../source/breeding/figures/cohort.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import {
  type Animal,
  bar,
  block,
  bookOf,
  calving,
  cow,
  dayAt,
  empty,
  fromBull,
  type Happening,
  type Herd,
  left,
  maiden,
  matingStart,
  on,
  pregnant,
  service,
  withBull,
} from '../support.ts'

/** Late calvers and empties of the spring block on a season day. */
function listed(s: number, animals: readonly Animal[], herd?: Herd): readonly LastChance[] {
  const book = bookOf(
    animals.map((one, i) => ({ ...one, record: { ...one.record, number: String(i + 1) } })),
    herd,
  )
  const season = book.seasons.get('spring')?.[0]
  if (season === undefined) throw new Error('no season')
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, dayAt(s)))
  const members = cohortOf(book, season, standings, dayAt(s))
  return lastChances(book, standings, members, season, dayAt(s))
}
const days = (...of: readonly (number | undefined)[]): string =>
  of.map((day) => (day === undefined ? '-' : day - matingStart)).join(' ')
/** `reason becomes: calves, ready, last of AI, last`, in season days. */
const told = ({ reason, becomes, calves, readyFrom, lastAi, last }: LastChance): string =>
  `${reason} ${becomes}: ${days(calves, readyFrom, lastAi, last)}`
const numbers = (found: readonly LastChance[]): readonly string[] =>
  found.map(({ standing }) => standing.animal.number)

/** In calf since the last season, due on a season day. */
const due = (s: number, ...more: readonly Happening[]): Animal =>
  cow(calving(-400), service(s - 282), pregnant(s - 240), ...more)

test.each([
  ['ready on day 20: in time for the first three weeks', -1, cow(calving(-22)), []],
  ['ready on day 21', -1, cow(calving(-21)), ['calved-late ai: -21 21 41 62']],
  ['ready on the last day of AI', 5, cow(calving(-1)), ['calved-late ai: -1 41 41 62']],
  ['ready on the first day with the bull', 5, cow(calving(0)), ['calved-late bull: 0 42 - 62']],
  ['still to calve, ready on his last day', 5, due(20), ['calves-late bull: 20 62 - 62']],
  ['still to calve, ready after him', 5, due(21), ['calves-late cull: 21 63 - -']],
  ['overdue: she calves today at the earliest', 4, due(0), ['calves-late bull: 4 46 - 62']],
  ['still to calve, and ready early enough', -30, due(-22), []],
  ['in calf of this season', 10, cow(calving(-100), service(-35), pregnant(0)), []],
  [
    'in calf since before this season',
    10,
    cow(calving(-200), service(-36), pregnant(0)),
    ['calves-late cull: 246 288 - -'],
  ],
  ['her calving is not known', 0, cow(), []],
  ['a maiden', 0, maiden(), []],
  ['she has left', 5, cow(calving(0), left(3)), ['calved-late bull: 0 42 - 62']],
  ['of another block', 5, cow({ block: 'autumn' }, calving(0)), []],
] as const)('%s', (_, s, one, expected) => {
  expect(listed(s, [one]).map(told)).toEqual(expected)
})

test('to day 20 all late calvers; later those that are ready only when the bull has gone', () => {
  const herd = [cow(calving(-10)), cow(calving(15)), due(30)]
  expect(numbers(listed(20, herd))).toEqual(['1', '2', '3'])
  expect(numbers(listed(21, herd))).toEqual(['3'])
})

test('by the last day she can be served, then by the day she is ready; those without one last', () => {
  const herd = [due(40), due(30), due(20), cow(calving(-5)), cow(calving(-15))]
  expect(numbers(listed(5, herd))).toEqual(['5', '4', '3', '2', '1'])
})

test('empties from the final check on, 42 days after the bull’s last day', () => {
  const herd = [
    cow(calving(-60), service(10), withBull(42), fromBull(60), empty(102)),
    cow(calving(-60), service(10), pregnant(60)),
    cow(calving(-60), service(10)),
  ]
  expect(listed(103, herd)).toEqual([])
  expect(listed(104, herd).map(told)).toEqual(['empty cull: - - - -'])
})

test('an empty that is in calf again, or was of no use before the check, is none', () => {
  const found = empty(104)
  const herd = [
    cow(calving(-60), service(10), found),
    cow(calving(-60), service(10), bar(-1), found),
    cow(calving(-60), service(10), found, service(110), pregnant(150)),
    cow({ block: 'autumn' }, calving(-60), service(10), found),
  ]
  expect(numbers(listed(160, herd))).toEqual(['1'])
})

test('late calvers come before empties; an empty comes where one that is ready today would', () => {
  const herd = [cow(calving(-60), service(10), empty(104)), cow(calving(100)), cow(calving(50))]
  expect(numbers(listed(110, herd))).toEqual(['3', '1', '2'])
})

test('who went to another block is asked about as she was, and so is who was barred', () => {
  const herd = [
    cow(calving(-60), service(10), empty(104), block(105, 'autumn')),
    cow(calving(-60), service(10), empty(104), bar(105)),
  ]
  expect(numbers(listed(110, herd))).toEqual(['1', '2'])
})

test.each([
  ['a season of another block that begins later', [{ block: 'autumn', matingStart: on(200) }], 'autumn 200'],
  ['a later season of this block', [{ block: 'spring', matingStart: on(365) }], undefined],
  ['one that began before', [{ block: 'autumn', matingStart: on(-20), bullWeeks: 9 }], undefined],
  ['one that begins on the same day', [{ block: 'autumn', matingStart: on(0), bullWeeks: 5 }], undefined],
  [
    'the first of two',
    [
      { block: 'autumn', matingStart: on(200) },
      { block: 'autumn', matingStart: on(565) },
    ],
    'autumn 200',
  ],
  ['ready on the last day with the bull there', [{ block: 'autumn', matingStart: on(63 - 62) }], 'autumn 1'],
] as const)('where she may go: %s', (_, seasons, expected) => {
  // Ready on day 63, the day after the bull.
  const [one] = listed(5, [due(21)], { seasons: [{}, ...seasons] })
  const other = one?.otherBlock
  expect(other && `${other.block} ${other.matingStart - matingStart}`).toBe(expected)
  expect(one?.becomes).toBe(expected === undefined ? 'cull' : 'other-block')
})

test('where she may still be served here, the other block is named too', () => {
  const seasons = [{}, { block: 'autumn', matingStart: on(200) }]
  const [one] = listed(5, [cow(calving(0))], { seasons })
  expect(one).toMatchObject({ becomes: 'bull', otherBlock: { block: 'autumn' } })
})
