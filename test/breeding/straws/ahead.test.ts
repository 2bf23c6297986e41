import { expect, test } from 'vitest'
import { plannedKinds } from '../../../source/breeding/straws/ahead.ts'
import { cow, type Draft, dayOn, farm, herd, maiden, policy, season, standing } from './herd.ts'

/** The kinds of each chance as runs: `sexed 0-20`. */
const planned = (her: Draft[], ...drafts: Draft[]): string[] => {
  const book = herd(farm(), season(), her, drafts)
  return plannedKinds(
    book,
    dayOn(-10),
  )(standing(book, '1', -10)).map((kinds) => {
    const runs: string[] = []
    for (let from = 0, s = 1; s <= kinds.length; s += 1) {
      if (kinds[s] === kinds[from]) continue
      runs.push(`${kinds[from]} ${from}-${s - 1}`)
      from = s
    }
    return runs.join(', ')
  })
}

test('a maiden: sexed for three weeks, then conventional, beef in the last week', () => {
  expect(planned(maiden('1'))).toEqual([
    'sexed 0-20, conventional 21-34, beef 35-41',
    'conventional 0-34, beef 35-41',
  ])
})

test('a cow that calved late: sexed only from 50 days on', () => {
  expect(planned(cow('1', {}, -40))[0]).toBe('conventional 0-9, sexed 10-20, conventional 21-34, beef 35-41')
})

test('the beef group: beef throughout, for each chance that the policy gives', () => {
  expect(planned(cow('1', { plan: 'beef' }), policy({ chances: 3 }))).toEqual([
    'beef 0-41',
    'beef 0-41',
    'beef 0-41',
  ])
})

test('without a season one conventional straw', () => {
  const book = herd(farm(), cow('1', { block: 'other' }))
  expect(plannedKinds(book, dayOn(0))(standing(book, '1', 0))).toEqual([['conventional']])
})
