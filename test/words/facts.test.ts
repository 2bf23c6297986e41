import { expect, test } from 'vitest'
import type { AnimalFact, NewFact } from '../../source/breeding/facts.ts'
import { factWords } from '../../source/words/facts.ts'

const words = (fact: object): string =>
  factWords({ about: 'a', date: '2026-05-10', ...fact } as NewFact<AnimalFact>)

test('dates within a fact have the month in words', () => {
  expect(words({ kind: 'hold', until: '2026-06-08', reason: 'lame' })).toBe(
    'health hold, until 8 Jun 2026, lame',
  )
  expect(words({ kind: 'check', method: 'hand', result: 'pregnant', serviceDate: '2026-03-01' })).toBe(
    'in calf by hand, to the service of 1 Mar 2026',
  )
  expect(words({ kind: 'examined', serveOn: '2026-05-20', session: 'morning' })).toBe(
    'examined by the vet, serve on 20 May 2026 morning',
  )
})
