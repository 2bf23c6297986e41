import { describe, expect, test } from 'vitest'
import {
  type Animal,
  bar,
  block,
  bullService,
  calving,
  cow,
  dry,
  empty,
  examined,
  fromBull,
  type Happening,
  heat,
  hold,
  left,
  looked,
  loss,
  maiden,
  note,
  placed,
  pregnant,
  score,
  service,
  suspect,
  table,
  toBull,
  unbar,
  unsure,
  withBull,
} from './support.ts'

const fresh = calving(-60)
const withFact = (one: Animal, ...more: Happening[]): Animal => ({
  ...one,
  happenings: [...one.happenings, ...more],
})
const rowOf = (placedAs: string): string => placedAs.replace(', done', '')

/** One animal in each section, with the day she stands there. */
const standing: readonly (readonly [string, Animal, number])[] = [
  ['take-care', cow(fresh, heat(8)), 10],
  ['serve', cow(fresh, heat(10)), 10],
  ['second-service', cow(fresh, service(0), heat(20)), 20],
  ['repeat-heat-watch', cow(fresh, service(0)), 20],
  ['pregnancy-check', cow(fresh, service(0)), 35],
  ['sweep-bull', cow(fresh), 50],
  ['no-heat-seen', cow(fresh), 10],
  ['heat-record', cow(fresh), -20],
]

/** Facts of the day that move nothing until midnight. */
const ticking: readonly (readonly [string, (s: number) => Happening])[] = [
  ['service', (s) => service(s)],
  ['bull service', (s) => bullService(s)],
  ['pregnant', (s) => pregnant(s)],
  ['empty', (s) => empty(s)],
  ['unsure', (s) => unsure(s)],
  ['looked', (s) => looked(s)],
  ['examined', (s) => examined(s)],
  ['hold', (s) => hold(s)],
  ['bar', (s) => bar(s)],
  ['unbar', (s) => unbar(s)],
  ['to-bull', (s) => toBull(s)],
  ['with-bull', (s) => withBull(s)],
  ['from-bull', (s) => fromBull(s)],
  ['left', (s) => left(s)],
  ['dry', (s) => dry(s)],
  ['score', (s) => score(s, 2.5)],
  ['note', (s) => note(s)],
]

/** What ticks a row of each section; Take care is ticked by all, any other by what ends the work with her. */
const endsWork = ['bar', 'left']
const ticks: Readonly<Record<string, readonly string[]>> = {
  'take-care': ticking.map(([what]) => what),
  serve: ['service', 'bull service', 'to-bull', 'hold'],
  'second-service': ['service', 'bull service', 'to-bull', 'hold'],
  'repeat-heat-watch': ['looked', 'pregnant', 'empty', 'unsure', 'service', 'bull service'],
  'pregnancy-check': ['pregnant', 'empty', 'unsure'],
  'sweep-bull': ['with-bull', 'service', 'bull service'],
  'no-heat-seen': ['examined', 'hold', 'pregnant', 'empty', 'unsure'],
  'heat-record': ['service', 'bull service', 'examined', 'hold', 'pregnant', 'empty', 'unsure'],
}

/** A service of the day is seen as its heat, which moves these. */
const moved = new Set([
  'take-care service',
  'take-care bull service',
  'repeat-heat-watch service',
  'repeat-heat-watch bull service',
  'no-heat-seen service',
  'no-heat-seen bull service',
  'pregnancy-check service',
  'pregnancy-check bull service',
])

describe('facts of the day tick and do not move', () => {
  for (const [section, one, s] of standing) {
    const before = placed(one, s)
    test(`${section} to begin with`, () => {
      expect(before.startsWith(`${section}: `)).toBe(true)
      expect(before).not.toContain('done')
    })
    test.each(ticking.filter(([what]) => !moved.has(`${section} ${what}`)))(
      `${section}: %s`,
      (what, fact) => {
        const after = placed(withFact(one, fact(s)), s)
        expect(rowOf(after)).toBe(before)
        expect(after.endsWith(', done')).toBe(
          endsWork.includes(what) || (ticks[section]?.includes(what) ?? false),
        )
      },
    )
  }
})

describe('heats, calvings, losses and changed blocks of the day move her at once', () => {
  table([
    ['heat', cow(fresh, service(0), heat(20)), 20, 'second-service: on-heat'],
    [
      'service: seen as a heat, ticked',
      cow(fresh, service(0), service(20)),
      20,
      'second-service: on-heat, done',
    ],
    ['service without a heat on record', cow(fresh, service(10)), 10, 'serve: on-heat, done'],
    ['served the day after her heat', cow(fresh, heat(9), service(10)), 10, 'serve: on-heat, done'],
    [
      'a late return is no check any more',
      cow(fresh, service(0), service(35)),
      35,
      'second-service: on-heat (late-return), done',
    ],
    [
      'served in calf',
      cow(calving(-150), service(-60), pregnant(-20), service(5)),
      5,
      'take-care: in-calf-heat > pregnancy-check, done',
    ],
    [
      'calving',
      cow(calving(-400), service(-282), pregnant(-200), calving(-20)),
      -20,
      'heat-record: none-seen',
    ],
    ['loss', cow(fresh, service(0), loss(20)), 20, 'take-care: loss'],
    ['block', cow(fresh, heat(10), block(10, 'autumn')), 10, '-'],
  ])
})

describe('the day after, each has moved her', () => {
  const one = cow(fresh, heat(10))
  table([
    ['service', withFact(one, service(10)), 11, '-'],
    ['bar', withFact(one, bar(10)), 11, '-'],
    ['to-bull', withFact(one, toBull(10)), 11, 'sweep-bull: by-hand'],
    ['hold', withFact(one, hold(10)), 11, 'take-care: hold > serve'],
    ['left', withFact(one, left(10)), 11, '-'],
    ['examined', cow(fresh, examined(10)), 11, '-'],
    ['empty', cow(fresh, service(0), empty(35)), 36, 'no-heat-seen: empty'],
    ['pregnant', cow(fresh, service(0), pregnant(35)), 36, '-'],
    ['nothing done: she is asked about again', one, 11, 'serve: on-heat'],
  ])
})

describe('a heat of the day in sections 7 and 8 ticks and does not move', () => {
  const row7 = 'no-heat-seen: cycling-not-seen, done'
  table([
    ['section 7', cow(fresh, heat(-10)), -10, row7],
    ['section 7, a suspect heat', cow(fresh, suspect(-10)), -10, row7],
    ['section 7, a maiden', maiden(heat(-10)), -10, row7],
    ['section 7, a bull’s service', cow(fresh, bullService(-10)), -10, row7],
    ['section 8', cow(fresh, heat(-20)), -20, 'heat-record: none-seen, done'],
    ['section 8, the day after', cow(fresh, heat(-20)), -19, '-'],
    ['section 8, suspect, the day after', cow(fresh, suspect(-20)), -19, 'heat-record: none-seen'],
    ['now to be served', cow(fresh, heat(10)), 10, 'serve: on-heat'],
    ['now a second service', cow(fresh, service(-35), empty(5), heat(10)), 10, 'second-service: on-heat'],
    ['now to take care of', cow(fresh, hold(9), heat(10)), 10, 'take-care: hold > serve'],
    [
      'an empty cow of section 7, seen today',
      cow(fresh, service(-10), empty(25), heat(30)),
      30,
      'second-service: on-heat',
    ],
  ])
})

test('dated counts, not recorded: a fact written down later stands on the day it is dated', () => {
  const late = { ...heat(10), at: '2026-07-01T08:00:00Z' }
  expect(placed(cow(fresh, late), 10)).toBe('serve: on-heat')
})
