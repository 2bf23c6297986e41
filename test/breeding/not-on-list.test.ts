import { expect, test } from 'vitest'
import { notOnList } from '../../source/breeding/not-on-list.ts'
import { standardPolicy } from '../../source/breeding/policy.ts'
import { notOnListPhrase, notOnListSentence } from '../../source/words/not-on-list.ts'
import {
  type Animal,
  bar,
  bookOf,
  calving,
  cow,
  empty,
  examined,
  type Herd,
  heat,
  left,
  maiden,
  on,
  pregnant,
  rowAt,
  service,
  standingAt,
  unbar,
} from './support.ts'

const calved = calving(-60)
const seen = heat(-21)

/** Season day, animal, herd, what is said. */
const cases: readonly [name: string, s: number, animal: Animal, sentence: string, herd?: Herd][] = [
  ['left', 20, cow(calved, left(5)), 'She left the herd on Wed 6 May.'],
  ['not born', 20, maiden({ born: on(40) }), 'She is not born yet on this day.'],
  ['a bull', 20, cow({ sex: 'M' }), 'A bull has no row: the bulls have a screen of their own.'],
  ['barred', 20, cow(calved, bar(3)), 'She is not to be bred.'],
  ['a calf', 20, maiden({ born: on(-100), ready: undefined }), 'She is a maiden, and too young for service.'],
  [
    'a maiden',
    20,
    maiden({ born: on(-500), ready: undefined }),
    'She is a maiden, and not marked as ready for service.',
  ],
  ['no block', 20, cow({ block: undefined }), 'She has no block: record one, or her last calving.'],
  [
    'in calf',
    50,
    cow(calved, seen, service(2), pregnant(45)),
    'She is in calf, due Tue 9 Feb, and nothing is due of her now.',
  ],
  ['no season', 20, cow(calved, { block: 'autumn' }), 'Her block has no season yet: set one up.'],
  ['ahead', -40, cow(calved), 'The season of her block is ahead: watching begins on Fri 27 Mar.'],
  ['over', 150, cow(calved, empty(110)), 'The season of her block is over.'],
  [
    'served yesterday',
    4,
    cow(calved, seen, service(3)),
    'She was served yesterday: watch for a repeat heat from Fri 22 May on.',
  ],
  [
    'heat after both chances',
    26,
    cow(calved, seen, service(2), service(23), heat(26)),
    'She was served 3 days ago and may be in calf; her chances are used, and no further straw is for her.',
  ],
  [
    'served again, both chances used',
    26,
    cow(calved, seen, service(2), service(23)),
    'She was served 3 days ago: watch for a repeat heat from',
  ],
  [
    'checked empty by a method quicker than the herd’s',
    66,
    cow(calved, seen, service(30), empty(62)),
    'Her next heat is likely',
    { policy: { checkMethod: 'hand' } },
  ],
  [
    'ready on a day before the visit',
    32,
    cow(calved, seen, service(2)),
    'She waits for the scanning visit of Wed 10 Jun.',
    { scans: [60, 40] },
  ],
  ['calved lately, a visit ahead', 0, cow(calving(-20)), 'She calved 20 days ago', { scans: [40] }],
  ['calved 41 days ago', 0, cow(calving(-41)), 'She calved 41 days ago'],
  ['calved 42 days ago', 0, cow(calving(-42)), 'Nothing is due of her today.'],
  ['examined 21 days ago', 70, cow(calving(-100), examined(49)), 'She was examined on'],
  ['examined 22 days ago', 70, cow(calving(-100), examined(48)), 'Nothing is due of her today.'],
  [
    'between watch and check',
    27,
    cow(calved, seen, service(2)),
    'She was served 25 days ago and not seen back; a check can tell from Tue 2 Jun on.',
  ],
  [
    'waits for the visit',
    33,
    cow(calved, seen, service(2)),
    'She waits for the scanning visit of Wed 10 Jun.',
    { scans: [40] },
  ],
  ['calved lately', 0, cow(calving(-20)), 'She calved 20 days ago, and may be served from Sat 23 May on.'],
  ['next heat', 10, cow(calved, heat(2)), 'Her next heat is likely from Thu 21 May to Wed 27 May.'],
  ['examined', 5, cow(calving(-70), examined(2)), 'She was examined on Sun 3 May: give it three weeks.'],
  ['never seen, closing weeks', 70, cow(calving(-100)), 'Nothing is due of her today.'],
  ['empty in the closing weeks', 66, cow(calved, seen, service(30), empty(62)), 'Her next heat is likely'],
]

test.each(cases)('%s', (...[, s, animal, sentence, herd]) => {
  expect(rowAt(s, animal, herd)).toBeUndefined()
  const reason = notOnList(standingAt(s, animal, herd), bookOf(animal, herd).policy)
  expect(notOnListSentence(reason)).toContain(sentence)
  expect(notOnListPhrase(reason)).toMatch(/^[a-z]/)
})

test('a bar that is lifted is none', () => {
  const standing = standingAt(10, cow(calved, heat(2), bar(3), unbar(4)))
  expect(notOnList(standing, standardPolicy).code).toBe('next-heat')
})
