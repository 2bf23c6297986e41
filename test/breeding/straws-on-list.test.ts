import { expect, test } from 'vitest'
import { morningList } from '../../source/breeding/morning-list.ts'
import { strawsOnList } from '../../source/breeding/straws-on-list.ts'
import {
  cow,
  type Draft,
  dayOn,
  delivery,
  farm,
  herd,
  on,
  onHeat,
  policy,
  season,
  service,
  standing,
} from './straws/herd.ts'

const straws = [delivery(0, 'S1', 'sexed', 2), delivery(0, 'S2', 'conventional', 1)]

/** Her straws on season day 4, as `sire left`, and why that kind. */
function strawsFor(number: string, ...drafts: (Draft | Draft[])[]) {
  const book = herd(farm(), season(), drafts.flat())
  const { ranked, proposal } = strawsOnList(book, morningList(book, dayOn(4)).rows, standing(book, number, 4))
  return {
    straws: ranked.map(({ sire, left }) => `${sire} ${left}`),
    why: proposal.reasons.map(({ code }) => code),
  }
}

test('what is promised to the rows above hers is not there for her, her own straw and those below are', () => {
  const three = [onHeat('1', '04:00'), onHeat('2', '04:30'), onHeat('3'), straws]
  expect(strawsFor('1', three.flat()).straws).toEqual(['S1 2', 'S2 1'])
  expect(strawsFor('2', three.flat()).straws).toEqual(['S1 1', 'S2 1'])
  expect(strawsFor('3', three.flat()).straws).toEqual(['S2 1'])
})

test('the straw of a row that is done is gone from the stock, and not set aside a second time', () => {
  const served = service('1', 4, 'S1', 'sexed')
  expect(strawsFor('2', onHeat('1', '04:00'), onHeat('2'), straws, served).straws).toEqual(['S1 1', 'S2 1'])
})

test('an animal that is not on the list finds nothing set aside', () => {
  const other = cow('9', {}, -10)
  expect(strawsFor('9', onHeat('1', '04:00'), onHeat('2'), other, straws).straws.toSorted()).toEqual([
    'S1 2',
    'S2 1',
  ])
})

test('the kind is that of the milking at which she is served', () => {
  expect(strawsFor('1', onHeat('1'), straws).why).toEqual(['sexed-fits'])
  const byTheHour = policy({ sexedHoursStrict: true })
  expect(strawsFor('1', onHeat('1'), straws, byTheHour).why).toEqual(['outside-sexed-hours'])
  // Take care comes before serve, and asks for no milking.
  const lost: Draft = { kind: 'loss', date: on(0), about: '1' }
  expect(strawsFor('1', onHeat('1'), lost, straws, byTheHour).why).not.toContain('outside-sexed-hours')
})
