/** Where two rules fit one animal the first wins; Take care names the section she would stand in without it. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type HerdBook, openBook } from '../../source/breeding/book.ts'
import { contradictionsOf } from '../../source/breeding/contradictions.ts'
import { heatRecord } from '../../source/breeding/rules/heat-record.ts'
import { noHeatSeen } from '../../source/breeding/rules/no-heat-seen.ts'
import type { Rule } from '../../source/breeding/rules/placement.ts'
import { pregnancyCheck } from '../../source/breeding/rules/pregnancy-check.ts'
import { repeatHeatWatch } from '../../source/breeding/rules/repeat-heat-watch.ts'
import { secondService, serve } from '../../source/breeding/rules/serve.ts'
import { sweepBull } from '../../source/breeding/rules/sweep-bull.ts'
import { takeCare } from '../../source/breeding/rules/take-care.ts'
import { type Section, sections } from '../../source/breeding/sections.ts'
import { type Standing, standingOn } from '../../source/breeding/standing.ts'
import { anyMorning } from './histories.ts'
import {
  type Animal,
  bookOf,
  bullService,
  calving,
  cow,
  dayAt,
  empty,
  type Herd,
  heat,
  hold,
  loss,
  planned,
  pregnant,
  rowAt,
  service,
  standingAt,
  suspect,
  toBull,
  unsure,
} from './support.ts'

const rules: Readonly<Record<Section, Rule>> = {
  'take-care': takeCare,
  serve,
  'second-service': secondService,
  'repeat-heat-watch': repeatHeatWatch,
  'pregnancy-check': pregnancyCheck,
  'sweep-bull': sweepBull,
  'no-heat-seen': noHeatSeen,
  'heat-record': heatRecord,
}

/** Every section whose rule fits, each asked for itself. */
function fitting(book: HerdBook, standing: Standing): Section[] {
  const setting = {
    policy: book.policy,
    milkings: book.farm.milkings,
    contradicted: (one: Standing) => contradictionsOf(book, one).length > 0,
  }
  return sections.filter((section) => rules[section](standing, setting) !== undefined)
}

const fresh = calving(-60)
const meetings: readonly (readonly [readonly Section[], what: string, Animal, s: number, Herd?])[] = [
  [
    ['serve', 'repeat-heat-watch'],
    'a suspect heat 20 days after a sure one',
    cow(fresh, heat(0), suspect(20)),
    20,
  ],
  [
    ['serve', 'pregnancy-check'],
    'back after the bull and an unsure check',
    cow(fresh, bullService(-20), unsure(15), heat(30)),
    30,
  ],
  [['serve', 'no-heat-seen'], 'the first heat, today', cow(fresh, heat(10)), 10],
  [['second-service', 'repeat-heat-watch'], 'a suspect return', cow(fresh, service(0), suspect(20)), 20],
  [
    ['second-service', 'pregnancy-check'],
    'a suspect return on day 35',
    cow(fresh, service(0), suspect(35)),
    35,
  ],
  [
    ['take-care', 'second-service', 'sweep-bull'],
    'served too early, a second heat before 42 days',
    cow(calving(5), service(6), heat(24)),
    24,
  ],
  [
    ['second-service', 'no-heat-seen'],
    'a suspect heat after an empty check',
    cow(fresh, service(-10), empty(21), suspect(25)),
    25,
  ],
  [
    ['repeat-heat-watch', 'pregnancy-check'],
    'checked unsure, a heat 20 days ago',
    cow(fresh, unsure(-20), heat(-20)),
    0,
  ],
  [['repeat-heat-watch', 'sweep-bull'], 'served in the last AI week', cow(fresh, service(40)), 60],
  [
    ['repeat-heat-watch', 'no-heat-seen'],
    'a hard calving, a heat 20 days ago',
    cow(calving(-60, { ease: 5 }), heat(-30)),
    -10,
  ],
  [
    ['repeat-heat-watch', 'heat-record'],
    'calved long ago, a heat before s -42',
    cow(calving(-200), heat(-50)),
    -28,
  ],
  [['pregnancy-check', 'sweep-bull'], 'old enough in the bull weeks', cow(fresh, service(10)), 50],
  [
    ['pregnancy-check', 'no-heat-seen'],
    'checked unsure, a heat since, none for 24 days',
    cow(fresh, unsure(-30), heat(-20)),
    25,
  ],
  [
    ['pregnancy-check', 'heat-record'],
    'served before the season, long ago',
    cow(calving(-200), service(-60)),
    -28,
  ],
  [['sweep-bull', 'no-heat-seen'], 'left to the bull, never seen', cow(fresh, toBull(0)), 10],
  [['no-heat-seen', 'heat-record'], 'never seen, two weeks to go', cow(fresh), -10],
  [['take-care', 'serve'], 'on hold', cow(fresh, heat(-12), hold(5), heat(10)), 10],
  [['take-care', 'second-service'], 'on hold, back', cow(fresh, service(0), hold(10), heat(25)), 25],
  [
    ['take-care', 'repeat-heat-watch'],
    'a heat 17 days after a service, yesterday',
    cow(fresh, service(0), heat(17)),
    18,
  ],
  [
    ['take-care', 'pregnancy-check'],
    'in calf and on heat',
    cow(calving(-150), service(-60), pregnant(-20), heat(5)),
    5,
  ],
  [['take-care', 'sweep-bull'], 'calved 20 days in the AI weeks', cow(calving(0), heat(20)), 20],
  [['take-care', 'no-heat-seen'], 'a loss', cow(calving(-150), service(-60), pregnant(-20), loss(10)), 12],
  [['take-care', 'heat-record'], 'calvings that cannot both be right', cow(calving(-100), calving(-60)), -30],
]

describe('the first wins', () => {
  test.each(meetings.map((one) => [one[0].join(' and '), one[1], one] as const))(
    '%s: %s',
    (_, _what, [met, , one, s, herd]) => {
      const found = fitting(bookOf(one, herd), standingAt(s, one, herd))
      expect(found).toEqual(expect.arrayContaining([...met]))
      const row = rowAt(s, one, herd)
      expect(row?.section).toBe(met[0])
      expect(row?.also).toBe(met[0] === 'take-care' ? met[1] : undefined)
    },
  )
})

test('no other two rules meet, in any history', () => {
  const known = new Set(
    meetings.flatMap(([met]) =>
      met.flatMap((first, i) => met.slice(i + 1).map((second) => `${first} and ${second}`)),
    ),
  )
  fc.assert(
    fc.property(anyMorning(), ({ facts, s }) => {
      const book = openBook(facts)
      for (const animal of book.animals.values()) {
        const found = fitting(book, standingOn(book, animal, dayAt(s)))
        found.forEach((first, i) => {
          for (const second of found.slice(i + 1)) expect(known).toContain(`${first} and ${second}`)
        })
      }
    }),
    { numRuns: 1000 },
  )
})

describe('with a scanning visit ahead the check does not stand, and what comes after it may', () => {
  const scans = [60]
  test.each([
    ['the sweep bull', cow(fresh, service(10)), 50, 'sweep-bull'],
    ['no heat seen', cow(fresh, unsure(-30), heat(-20)), 25, 'no-heat-seen'],
    ['heat record', cow(calving(-200), service(-60)), -28, 'heat-record'],
    ['nothing', cow(fresh, service(0)), 35, undefined],
  ])('%s', (_, one, s, expected) => {
    expect(rowAt(s, one, { scans })?.section).toBe(expected)
  })

  test('and Take care does not name it', () => {
    const one = cow(calving(-150), service(-60), pregnant(-20), heat(5))
    expect(rowAt(5, one, { scans })?.also).toBeUndefined()
  })
})

test('of several reasons all are told, the first places her', () => {
  const row = rowAt(10, cow(calving(-15), service(5), hold(6), heat(10)))
  expect(row?.reasons).toEqual(['calved-under-30', 'short-interval', 'hold'])
  expect([row?.since, row?.days]).toEqual(['calving', 25])
  const planTwice = rowAt(10, cow(fresh, planned(0, 10), heat(10)))
  expect(planTwice?.reasons).toEqual(['on-heat', 'fixed-time'])
})
