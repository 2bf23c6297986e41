import { expect, test } from 'vitest'
import { morningList } from '../../source/breeding/morning-list.ts'
import { ratesOfHerd } from '../../source/breeding/rates-of-herd.ts'
import {
  cow,
  type Draft,
  dayOn,
  delivery,
  farm,
  heat,
  herd,
  maiden,
  onHeat,
  parents,
  policy,
  season,
  service,
  stockTake,
} from './straws/herd.ts'

const straws = [delivery(0, 'S1', 'sexed', 1), delivery(0, 'S2', 'conventional', 1)]

/** The list of season day 4, a row as `number: sire straw (warnings)`. */
const rowsOf = (...drafts: (Draft | Draft[])[]): string[] =>
  morningList(herd(farm(), season(), drafts.flat()), dayOn(4)).rows.map(({ number, straw, warnings, done }) =>
    [
      `${number}:`,
      straw === undefined ? 'none' : `${straw.sire} ${straw.straw}`,
      ...(warnings.length === 0 ? [] : [`(${warnings.join(' ')})`]),
      ...(done ? ['done'] : []),
    ].join(' '),
  )

test('one animal to be served gets the straw that suits her', () => {
  expect(rowsOf(onHeat('1'), straws)).toEqual(['1: S1 sexed'])
})

test('what is proposed for one row is not there for the next', () => {
  expect(rowsOf(onHeat('1', '04:00'), onHeat('2', '04:30'), onHeat('3'), straws)).toEqual([
    '1: S1 sexed',
    '2: S2 conventional (straw-out)',
    '3: none (no-straw)',
  ])
})

test('a row that asks for no service has no straw, and takes none from the others', () => {
  const watched = [...cow('9'), heat('9', -17)]
  expect(rowsOf(onHeat('1'), watched, straws)).toEqual(['1: S1 sexed', '9: none'])
  expect(rowsOf(watched, straws)).toEqual(['9: none'])
})

test('who is served shows the straw that was used, and the others get what is left', () => {
  const served = service('1', 4, 'S1', 'sexed')
  expect(rowsOf(onHeat('1', '04:00'), onHeat('2'), straws, served).toSorted()).toEqual([
    '1: S1 sexed done',
    '2: S2 conventional (straw-out)',
  ])
})

test('of two services of the day the last straw is shown', () => {
  const twice = [
    service('1', 4, 'S1', 'sexed', { session: 'morning' }),
    service('1', 4, 'S2', 'conventional', { session: 'evening' }),
  ]
  expect(rowsOf(onHeat('1'), straws, twice)).toEqual(['1: S2 conventional done'])
})

test('a straw that the book does not have is shown with a warning', () => {
  expect(rowsOf(onHeat('1'), straws, service('1', 4, 'S7', 'beef'))).toEqual(['1: S7 beef (straw-out) done'])
})

test.each<[string, Record<string, unknown>]>([
  ['names no sire', { sire: undefined }],
  ['names no kind', { straw: undefined }],
  ['was a bull’s', { natural: true }],
])('a service that %s shows no straw', (_, fields) => {
  expect(rowsOf(onHeat('1'), straws, service('1', 4, 'S1', 'sexed', fields))).toEqual(['1: none done'])
})

test('beside the straw stands the chance that it holds, by who is served and with which', () => {
  const set = policy({ cowConception: 0.5, maidenConception: 0.6 })
  const young = [...maiden('2', parents), heat('2', -17), heat('2', 4, { time: '05:00' })]
  const easy = stockTake(0, 'S3', 'sexed', 1, { easyCalving: true })
  const beef = [...cow('3', { ...parents, plan: 'beef' }), heat('3', 4, { time: '05:00' })]
  const book = herd(
    farm(),
    season(),
    set,
    onHeat('1'),
    young,
    beef,
    straws,
    easy,
    delivery(0, 'S4', 'beef', 1),
  )
  const { conception } = ratesOfHerd(book, dayOn(4)).rates
  const chances = morningList(book, dayOn(4)).rows.map(({ number, straw, chance }) => [
    number,
    straw?.straw,
    chance,
  ])
  expect(chances.toSorted()).toEqual([
    ['1', 'sexed', conception.cowSexed],
    ['2', 'sexed', conception.maidenSexed],
    ['3', 'beef', conception.cowConventional],
  ])
  const [bare] = morningList(herd(farm(), season(), onHeat('1')), dayOn(4)).rows
  expect(bare?.chance).toBeUndefined()
})

test('warnings about her come before those about her straw', () => {
  const suspect = [...cow('1', parents), heat('1', 4, { time: '05:00', certainty: 'suspect' })]
  expect(rowsOf(suspect)).toEqual(['1: none (suspect no-straw)'])
})
