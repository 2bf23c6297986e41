import { expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { voidedBy } from '../../source/breeding/voided.ts'
import { correction, heat } from './support.ts'

const envelope = { about: 'animal-1', at: '2026-07-01T05:00:00Z' }
const seen = { ...envelope, ...heat(0), id: 'heat' } as unknown as Fact
const voiding = (id: string, voids: string): Fact =>
  ({ ...envelope, ...correction(voids), id }) as unknown as Fact

test.each<[string, Fact[], string[]]>([
  ['nothing', [seen], []],
  ['a heat', [seen, voiding('undo', 'heat')], ['heat']],
  ['the first word of a file', [voiding('undo', 'heat'), seen], ['heat']],
  ['an undo taken back', [seen, voiding('undo', 'heat'), voiding('redo', 'undo')], ['undo']],
  [
    'and done again',
    [seen, voiding('undo', 'heat'), voiding('redo', 'undo'), voiding('again', 'redo')],
    ['heat', 'redo'],
  ],
  [
    'voided twice, and one taken back',
    [seen, voiding('a', 'heat'), voiding('b', 'heat'), voiding('c', 'b')],
    ['b', 'heat'],
  ],
])('void is %s', (_, facts, expected) => {
  expect([...voidedBy(facts)].sort()).toEqual(expected)
})
