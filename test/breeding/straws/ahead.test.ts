import { expect, test } from 'vitest'
import { plannedKinds } from '../../../source/breeding/straws/ahead.ts'
import { cow, type Draft, dayOn, farm, herd, maiden, policy, season, standing } from './herd.ts'

/** The kinds of each chance as runs: `sexed 0-20`. */
const planned = (her: Draft[], ...drafts: Draft[]): string[] => plannedOn(-10, her, ...drafts)

const plannedOn = (today: number, her: Draft[], ...drafts: Draft[]): string[] => {
  const book = herd(farm(), season(), her, drafts)
  return plannedKinds(
    book,
    dayOn(today),
  )(standing(book, '1', today)).map((kinds) => {
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

test('a cow that is ready for a sexed straw from the second day on gets none on the first', () => {
  expect(planned(cow('1', {}, -49))[0]).toBe('conventional 0-0, sexed 1-20, conventional 21-34, beef 35-41')
})

test.each([
  ['the first day', 0, 'conventional 0-5, sexed 6-20, conventional 21-34, beef 35-41'],
  ['the day before she is ready', 5, 'conventional 0-5, sexed 6-20, conventional 21-34, beef 35-41'],
  ['the day on which she is ready', 6, 'sexed 0-20, conventional 21-34, beef 35-41'],
  ['the last day of AI', 41, 'beef 0-41'],
  ['a week after it', 48, 'beef 0-41'],
])('on %s the days that are over hold the kind of today', (_, today, expected) => {
  expect(plannedOn(today, cow('1', {}, -44))[0]).toBe(expected)
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
