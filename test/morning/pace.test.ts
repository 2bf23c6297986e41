import { expect, test } from 'vitest'
import { plusDays } from '../../source/breeding/day.ts'
import { cohortOf } from '../../source/breeding/figures/cohort.ts'
import { submission } from '../../source/breeding/figures/submission.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import { standingOn } from '../../source/breeding/standing.ts'
import { paceOf } from '../../source/morning/pace.ts'
import { bar, bookOf, bullService, calving, cow, dayAt, left, maiden, service } from '../breeding/support.ts'

const herd = [
  cow({ number: '1' }, calving(-60), service(0)),
  cow({ number: '2' }, calving(-60), service(7)),
  cow({ number: '3' }, calving(-60), service(21)),
  cow({ number: '4' }, calving(-60), bullService(3)),
  cow({ number: '5' }, calving(-60), bar(-5)),
  cow({ number: '6' }, calving(-60), service(1), left(5)),
  // A calf at the mating start, whatever her record says today.
  maiden({ number: '7', born: '2025-10-01' }),
  maiden({ number: '8', born: '2024-10-01' }, service(2)),
]
const book = bookOf(herd)
const paceAt = (s: number) => {
  const block = morningList(book, dayAt(s)).blocks.find(({ block: name }) => name === 'spring')
  return block === undefined ? undefined : paceOf(book, block)
}

test('served so far of those meant for breeding at the mating start; tonight counts', () => {
  expect(paceAt(-1)).toBeUndefined()
  expect(paceAt(0)).toMatchObject({ served: 1, of: 6, over: false })
  expect(paceAt(7)).toMatchObject({ served: 4, of: 6 })
  expect(paceAt(7)?.target).toBeCloseTo((90 * 8) / 21)
  // The first three weeks alone count.
  expect(paceAt(30)).toEqual({ served: 4, of: 6, target: 90, over: true })
  expect(paceAt(42)).toBeUndefined()
})

test.each([0, 3, 7, 20])('it is the pace of the season’s figures on day %i', (s) => {
  const [season] = book.allSeasons
  if (season === undefined) throw new Error('the herd has a season')
  const tonight = plusDays(dayAt(s), 1)
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, tonight))
  const members = cohortOf(book, season, standings, tonight)
  const { pace } = submission(members, book, season, s + 1)
  const day = pace.at(-1)
  const shown = paceAt(s)
  expect([shown?.served, shown?.of, shown?.target]).toEqual([day?.served, members.length, day?.target])
})
