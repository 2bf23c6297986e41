import { describe, expect, test } from 'vitest'
import {
  bar,
  block,
  bullService,
  calving,
  cow,
  dry,
  empty,
  examined,
  fromBull,
  heat,
  listAt,
  loss,
  maiden,
  on,
  pregnant,
  rowAt,
  service,
  suspect,
  table,
  toBull,
  unsure,
  withBull,
} from '../support.ts'

const fresh = calving(-60)
const twoYears = { seasons: [{}, { matingStart: on(365) }] }
const due = 'pregnancy-check: due'
const second = 'pregnancy-check: due (second-round)'

describe('due: the last service is old enough for the method', () => {
  const served = cow(fresh, service(0))
  const heifer = maiden(service(0))
  const by = (checkMethod: string) => ({ policy: { checkMethod } })
  table([
    ['ultrasound, cow, day 29', served, 29, '-'],
    ['ultrasound, cow, day 30', served, 30, due],
    ['ultrasound, maiden, day 27', heifer, 27, '-'],
    ['ultrasound, maiden, day 28', heifer, 28, due],
    ['hand, day 41', served, 41, '-', by('hand')],
    ['hand, day 42', served, 42, second, by('hand')],
    ['hand, maiden, day 41', heifer, 41, '-', by('hand')],
    ['hand, maiden, day 42', heifer, 42, second, by('hand')],
    ['milk, day 29', served, 29, '-', by('milk')],
    ['milk, day 30', served, 30, due, by('milk')],
    ['milk, a maiden gives none', heifer, 30, '-', by('milk')],
    ['milk, dried off', cow(fresh, service(0), dry(20)), 30, '-', by('milk')],
    ['milk, dried off on the day she calved', cow(fresh, dry(-60), service(0)), 30, '-', by('milk')],
    ['milk, dried off before she calved', cow(dry(-100), fresh, service(0)), 30, due, by('milk')],
    [
      'milk, dried off between two calvings',
      cow(calving(-400), dry(-100), fresh, service(0)),
      30,
      due,
      by('milk'),
    ],
    ['milk, dried off today: ticked tomorrow', cow(fresh, service(0), dry(30)), 30, due, by('milk')],
    ['milk, calved 59 days', cow(calving(-26), service(0)), 33, '-', by('milk')],
    ['milk, calved 60 days', cow(calving(-26), service(0)), 34, due, by('milk')],
    ['blood, calved 59 days', cow(calving(-26), service(0)), 33, '-', by('blood')],
    ['blood, calved 60 days', cow(calving(-26), service(0)), 34, due, by('blood')],
    ['blood, a maiden, day 29', heifer, 29, '-', by('blood')],
    ['blood, a maiden, day 30', heifer, 30, due, by('blood')],
    [
      'blood, 59 days after an early loss',
      cow(calving(-90), service(-60), loss(-26), service(0)),
      33,
      '-',
      by('blood'),
    ],
    [
      'blood, 60 days after an early loss',
      cow(calving(-90), service(-60), loss(-26), service(0)),
      34,
      due,
      by('blood'),
    ],
    [
      'blood, 59 days after the later of two losses',
      cow(calving(-300), service(-200), loss(-160), service(-60), loss(-26), service(0)),
      33,
      '-',
      by('blood'),
    ],
    ['ultrasound does not ask for days calved', cow(calving(-20), service(0)), 30, due],
    ['barred', cow(fresh, service(0), bar(10)), 30, '-'],
    ['left to the bull by hand: first the check', cow(fresh, service(0), toBull(10)), 30, due],
  ])
})

describe('due: second round on days 36-48', () => {
  const served = cow(fresh, service(-5))
  table([
    ['day 35', served, 30, due],
    ['day 36', served, 31, second],
    ['day 48', served, 43, second],
    ['day 49', served, 44, due],
  ])
})

describe('due: unchecked and not returned', () => {
  const returned = cow(fresh, service(0), heat(20))
  table([
    ['checked on day 29: it does not count', cow(fresh, service(0), unsure(29)), 30, due],
    ['checked on day 30', cow(fresh, service(0), unsure(30)), 31, '-'],
    [
      'checked by hand on day 41: it does not count',
      cow(fresh, service(-20), { ...unsure(21), method: 'hand' }),
      22,
      second,
    ],
    ['checked today: ticked', cow(fresh, service(0), empty(30)), 30, `${due}, done`],
    ['a heat on day 17 is no return', cow(fresh, service(0), heat(17)), 30, due],
    ['returned on day 18', cow(fresh, service(0), heat(18)), 30, '-'],
    ['a suspect return', cow(fresh, service(0), suspect(20)), 30, due],
    ['returned, last bull day', returned, 62, 'sweep-bull: window'],
    ['returned, from B+1 on', returned, 63, due],
    ['from B+1 on without bull weeks', returned, 42, second, { bullWeeks: 0 }],
    ['the last service counts', cow(fresh, service(0), service(21)), 50, 'sweep-bull: window'],
    ['a bull service is a service', cow(fresh, service(0), bullService(50)), 80, due],
    ['closed', cow(fresh, bullService(140)), 170, 'pregnancy-check: due final'],
    ['before the next season', cow(calving(-200), service(-60)), -30, due],
  ])
})

describe('due: with a bull by her own facts, 42 days after he left', () => {
  const since = [withBull(-60), fromBull(-40)]
  const autumn = { seasons: [{}, { block: 'autumn', matingStart: on(203) }] }
  table([
    ['41 days', cow(fresh, ...since, examined(0)), 1, '-'],
    ['42 days', cow(fresh, ...since, examined(0)), 2, 'pregnancy-check: due'],
    ['before mating', cow(calving(-120), withBull(-100), fromBull(-77)), -35, 'pregnancy-check: due'],
    ['he is still there', cow(fresh, withBull(-60), examined(0)), 2, '-'],
    ['a heat since', cow(fresh, ...since, heat(-5), examined(0)), 2, '-'],
    ['found empty since', cow(fresh, ...since, empty(2), examined(0)), 3, '-'],
    ['found in calf', cow(fresh, ...since, pregnant(2), examined(0)), 3, '-'],
    ['bull weeks', cow(fresh, withBull(-20), fromBull(2)), 44, 'sweep-bull: window'],
    ['closing weeks', cow(fresh, withBull(42), fromBull(55)), 100, '-'],
    [
      'moved to the autumn before her final check',
      cow(fresh, withBull(42), fromBull(63), block(64, 'autumn')),
      105,
      'pregnancy-check: due',
      autumn,
    ],
    ['the day before', cow(fresh, withBull(42), fromBull(63), block(64, 'autumn')), 104, '-', autumn],
  ])
})

describe('unsure: the last check was, 14 days ago or more, no service since', () => {
  table([
    ['13 days', cow(fresh, service(0), unsure(30)), 43, 'sweep-bull: window'],
    ['14 days', cow(fresh, service(0), unsure(30)), 44, 'pregnancy-check: unsure'],
    ['served since', cow(fresh, service(0), unsure(30), service(32)), 46, 'sweep-bull: window'],
    [
      'served on its day, not since',
      cow(fresh, service(0), service(30), unsure(30)),
      44,
      'pregnancy-check: unsure',
    ],
    ['never served', cow(fresh, unsure(30)), 44, 'pregnancy-check: unsure'],
    [
      'found in calf before: still asked',
      cow(fresh, service(0), pregnant(30), unsure(40)),
      54,
      'pregnancy-check: unsure',
    ],
    ['clear since', cow(fresh, service(0), unsure(30), empty(40)), 54, 'sweep-bull: window'],
  ])
})

describe('heat-in-calf: a sure heat without a service since the last check', () => {
  const inCalf = [fresh, service(-30), pregnant(5)]
  table([
    ['two days ago', cow(...inCalf, heat(10)), 12, 'pregnancy-check: heat-in-calf'],
    ['weeks ago', cow(...inCalf, heat(10)), 29, 'pregnancy-check: heat-in-calf'],
    ['suspect', cow(...inCalf, suspect(10)), 12, '-'],
    ['checked since', cow(...inCalf, heat(10), pregnant(11)), 12, '-'],
    ['seen on the day of the check', cow(...inCalf, heat(5)), 12, '-'],
    ['seen before the check', cow(fresh, service(-30), heat(4), pregnant(5)), 12, '-'],
  ])
})

describe('confirm: 60 days or more after conception, more than 60 before due', () => {
  // Conceived on s 0, due 282 days later.
  const inCalf = cow(fresh, service(0), pregnant(35))
  table([
    ['day 59', inCalf, 59, '-'],
    ['day 60', inCalf, 60, 'pregnancy-check: confirm'],
    [
      'checked on day 59: too early to confirm',
      cow(fresh, service(0), pregnant(59)),
      60,
      'pregnancy-check: confirm',
    ],
    ['checked on day 60', cow(fresh, service(0), pregnant(60)), 61, '-'],
    ['checked unsure on day 60', cow(fresh, service(0), pregnant(35), unsure(60)), 61, '-'],
    ['61 days before due, closed', inCalf, 221, 'pregnancy-check: confirm'],
    ['60 days before due', inCalf, 222, '-'],
    ['barred', cow(fresh, service(0), pregnant(35), bar(40)), 60, '-'],
  ])
})

describe('final: from B+42 on, not in calf, not calved after B, not checked since B+42', () => {
  const never = cow(fresh)
  const final = 'pregnancy-check: final'
  table([
    ['s 103 of 6+3 weeks', never, 103, '-'],
    ['s 104 of 6+3 weeks', never, 104, final],
    ['5+4 weeks', never, 103, '-', { aiWeeks: 5, bullWeeks: 4 }],
    ['5+4 weeks, s 104', never, 104, final, { aiWeeks: 5, bullWeeks: 4 }],
    ['9+0 weeks, s 103', never, 103, '-', { aiWeeks: 9, bullWeeks: 0 }],
    ['9+0 weeks, s 104', never, 104, final, { aiWeeks: 9, bullWeeks: 0 }],
    ['12+0 weeks, s 124', never, 124, '-', { aiWeeks: 12, bullWeeks: 0 }],
    ['12+0 weeks, s 125', never, 125, final, { aiWeeks: 12, bullWeeks: 0 }],
    ['last day of closing, s 146', never, 146, final],
    ['closed, s 147', never, 147, final],
    ['until the next season begins', never, 329, final, twoYears],
    ['which begins on its s -35', never, 330, 'heat-record: none-seen', twoYears],
    ['calved on B', cow(calving(62)), 104, final],
    ['calved after B', cow(calving(63)), 104, '-'],
    ['lost on B', cow(fresh, service(0), pregnant(40), loss(62)), 104, final],
    ['lost after B: known to be empty', cow(fresh, service(0), pregnant(40), loss(63)), 104, '-'],
    ['empty on B+41', cow(fresh, empty(103)), 104, final],
    ['empty on B+42', cow(fresh, empty(104)), 105, '-'],
    ['unsure on B+42: asked again after 14 days', cow(fresh, unsure(104)), 118, 'pregnancy-check: unsure'],
    ['in calf', cow(fresh, service(0), pregnant(61)), 104, '-'],
    ['a maiden', maiden(), 104, final],
    ['a maiden not ready', maiden({ ready: false }), 104, '-'],
    ['a maiden of 330 days on B', maiden({ born: on(62 - 330) }), 104, final],
    ['a maiden of 329 days on B: not of that season', maiden({ born: on(62 - 329) }), 104, '-'],
    [
      'served all the same',
      maiden({ born: on(62 - 329) }, bullService(60)),
      104,
      'pregnancy-check: due final (second-round)',
    ],
    ['barred', cow(fresh, bar(90)), 104, '-'],
    ['unchecked service as well', cow(fresh, service(30)), 104, 'pregnancy-check: due final'],
  ])
})

describe('with a scanning visit planned', () => {
  const served = cow(fresh, service(0))
  const herd = { scans: [50, 70] }
  table([
    ['before it no row', served, 30, '-', herd],
    ['the day before it', cow(fresh, service(0), examined(40)), 49, 'sweep-bull: window', herd],
    ['on it', served, 50, due, herd],
    ['after it the next one is waited for', served, 51, 'sweep-bull: window', herd],
    ['on the last', served, 70, due, herd],
    ['after the last a row each day', served, 71, due, herd],
    [
      'the danger is shown at once',
      cow(fresh, service(0), pregnant(30), heat(40)),
      40,
      'take-care: in-calf-heat',
      herd,
    ],
    [
      'a bull she is to be kept from does not wait',
      cow(fresh, service(0), { kind: 'hold', date: on(40) }),
      45,
      'sweep-bull: keep-from-bull',
      herd,
    ],
  ])

  test('one line says how many will be ready on it, if nothing happens before', () => {
    const three = [
      cow({ number: '1' }, fresh, service(0)),
      cow({ number: '2' }, fresh, service(20)),
      cow({ number: '3' }, fresh, service(21)),
      cow({ number: '4' }, fresh, service(0), pregnant(30)),
    ]
    const readyOn = (s: number) =>
      listAt(s, three, herd).visits.map(({ visit, ready }) => [visit - listAt(0, three).day, ready])
    expect(readyOn(32)).toEqual([[50, 2]])
    expect(readyOn(50)).toEqual([])
    expect(readyOn(51)).toEqual([[70, 4]])
    expect(readyOn(71)).toEqual([])
  })

  test('what is dated between the list and the visit is not known yet', () => {
    const dried = cow(fresh, service(0), dry(40))
    const readyOn = (s: number) =>
      listAt(s, dried, { ...herd, policy: { checkMethod: 'milk' } }).visits.map(({ ready }) => ready)
    expect(readyOn(39)).toEqual([1])
    expect(readyOn(41)).toEqual([])
  })
})

test('oldest first, and how sure it is that she is in calf', () => {
  const rows = listAt(40, [
    cow({ number: '1' }, fresh, service(5)),
    cow({ number: '2' }, fresh, service(0)),
    cow({ number: '10' }, fresh, service(5)),
    cow({ number: '3' }, fresh, unsure(20)),
  ]).rows
  expect(rows.map((row) => [row.number, row.since, row.days])).toEqual([
    ['3', 'calving', 100],
    ['2', 'service', 40],
    ['1', 'service', 35],
    ['10', 'service', 35],
  ])
  // Known in this file's chances: no return through day 34 (heats seen 0.90, one in twenty late), p 0.55.
  expect(rows[2]?.chance).toBeGreaterThan(0.87)
  expect(rows[2]?.chance).toBeLessThan(0.9142)
  expect(rows[0]?.chance).toBeUndefined()
})

test('an empty result soon after the bull is not known, and her row does not say so', () => {
  // Empty on s 75 to her AI on s 30, with the bull until s 62: thirteen days, too few to find his calf.
  const row = rowAt(104, cow(fresh, service(30), empty(75)))
  expect(row?.reasons).toEqual(['final'])
  expect(row?.chance).toBeUndefined()
  // The same of a return before the bull weeks.
  expect(rowAt(104, cow(fresh, service(3), heat(24)))?.chance).toBeUndefined()
  // Where no bull ran it is known.
  expect(rowAt(104, cow(fresh, service(3), heat(24)), { bullWeeks: 0 })?.chance).toBe(0)
  expect(rowAt(104, cow(fresh, service(30), withBull(40), fromBull(42), empty(83)))?.chance).toBeUndefined()
  expect(rowAt(104, cow(fresh, service(30), withBull(40), fromBull(42), empty(84)))?.chance).toBe(0)
})
