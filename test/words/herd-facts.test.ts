import { expect, test } from 'vitest'
import type { HerdFact, NewFact } from '../../source/breeding/facts.ts'
import { herdFactWords } from '../../source/words/herd-facts.ts'

const herd = { about: 'herd', date: '2026-05-28' } as const
const straws = { sire: 'S17', straw: 'sexed', batch: '4', flask: 'house', canister: '2' } as const

const told: readonly (readonly [NewFact<HerdFact>, string])[] = [
  [
    { ...herd, kind: 'farm', name: 'Hazel\u001bBank', zone: 'Europe/Dublin', milkings: ['05:30', '15:30'] },
    'farm Hazel<001B>Bank, milkings 05:30 and 15:30',
  ],
  [{ ...herd, kind: 'policy', set: { chances: 2, useSexed: true } }, 'policy: chances 2, useSexed true'],
  [
    { ...herd, kind: 'season', block: 'spring', matingStart: '2026-05-01', aiWeeks: 6, bullWeeks: 3 },
    'spring season from Fri 1 May 2026, 6 weeks of AI, 3 of the bull',
  ],
  [{ ...herd, about: 'a1', kind: 'animal', number: '412', sex: 'F' }, 'record of 412'],
  [
    { ...herd, kind: 'stock-take', ...straws, count: 1 },
    '1 straw of S17 sexed counted, batch 4, flask house, canister 2',
  ],
  [{ ...herd, kind: 'delivery', sire: 'S17', straw: 'beef', count: 20 }, '20 straws of S17 beef delivered'],
  [
    {
      ...herd,
      kind: 'kept-result',
      number: '99\u001b9',
      method: 'ultrasound',
      result: 'pregnant',
      foetalAge: 33,
      why: 'no-such-number',
    },
    'result of 99<001B>9 kept to be settled: in calf by ultrasound, 33 days along',
  ],
  [
    { ...herd, kind: 'spoiled', sire: 'S17', straw: 'conventional', count: 2 },
    '2 straws of S17 conventional spoiled',
  ],
  [{ ...herd, kind: 'nitrogen', depthCm: 27.5 }, 'nitrogen 27.5 cm'],
  [{ ...herd, kind: 'nitrogen', depthCm: 27, flask: 'van' }, 'nitrogen 27 cm in flask van'],
]

test.each(told)('%j', (fact, words) => {
  expect(herdFactWords(fact)).toBe(words)
})
