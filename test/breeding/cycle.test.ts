import { describe, expect, test } from 'vitest'
import { hardCalving, intervalClass } from '../../source/breeding/cycle.ts'
import { calvedAtLeast, daysCalved } from '../../source/breeding/questions.ts'
import {
  type Animal,
  bullService,
  calving,
  cow,
  empty,
  heat,
  loss,
  maiden,
  matingStart,
  onset,
  pregnant,
  rowAt,
  service,
  standingAt,
  suspect,
} from './support.ts'

/** Her heats in the open cycle as season days: `3 sure served 4`. */
const heatsOf = (one: Animal, s: number): string[] =>
  standingAt(s, one).heats.map(({ day, sure, service: served }) =>
    [
      day - matingStart,
      sure ? 'sure' : 'suspect',
      ...(served === undefined ? [] : [served.ai ? 'AI' : 'bull', served.day - matingStart]),
    ].join(' '),
  )

describe('records at most one day apart are one heat, dated by the first sure one', () => {
  test.each([
    ['same day', cow(heat(3), heat(3)), ['3 sure']],
    ['1 day apart', cow(heat(3), heat(4)), ['3 sure']],
    ['2 days apart', cow(heat(3), heat(5)), ['3 sure', '5 sure']],
    ['each a day after the one before', cow(heat(3), heat(4), heat(5), heat(6)), ['3 sure']],
    ['a service joins', cow(heat(3), service(4)), ['3 sure AI 4']],
    ['a service alone is a heat', cow(service(4)), ['4 sure AI 4']],
    ['a heat after the service joins', cow(service(4), heat(5)), ['4 sure AI 4']],
    ['a service two days on is another heat', cow(heat(3), service(5)), ['3 sure', '5 sure AI 5']],
    ['two services are one, on the last date', cow(service(4), service(5)), ['4 sure AI 5']],
    ['AI, then the bull: AI', cow(service(4), bullService(5)), ['4 sure AI 5']],
    ['the bull, then AI: AI', cow(bullService(4), service(5)), ['4 sure AI 5']],
    ['the bull twice', cow(bullService(4), bullService(4)), ['4 sure bull 4']],
    ['suspect', cow(suspect(3)), ['3 suspect']],
    ['suspect twice', cow(suspect(3), suspect(4)), ['3 suspect']],
    ['suspect for three days: from the third', cow(suspect(3), suspect(4), suspect(5)), ['5 suspect']],
    ['suspect for four days', cow(suspect(3), suspect(4), suspect(5), suspect(6)), ['5 suspect']],
    [
      'suspect for three days, then served',
      cow(suspect(3), suspect(4), suspect(5), service(6)),
      ['5 sure AI 6'],
    ],
    ['suspect, then sure', cow(suspect(3), heat(4)), ['4 sure']],
    ['suspect twice, then sure', cow(suspect(3), suspect(4), heat(5)), ['5 sure']],
    ['suspect, then sure twice', cow(suspect(3), heat(4), heat(5)), ['4 sure']],
    ['suspect, served, then sure', cow(suspect(3), service(4), heat(5)), ['3 sure AI 4']],
    ['sure, then suspect', cow(heat(3), suspect(4)), ['3 sure']],
    ['suspect, then served', cow(suspect(3), service(4)), ['3 sure AI 4']],
    ['told in another order', cow(heat(4), suspect(3)), ['4 sure']],
  ])('%s', (_, one, expected) => {
    expect(heatsOf(one, 20)).toEqual(expected)
  })

  test('how it was seen is told by its first sure record; of a service nobody tells how', () => {
    const how = (...told: ReturnType<typeof heat>[]) =>
      standingAt(20, cow(...told)).heats.map((one) => one.how)
    expect(how(suspect(3))).toEqual(['paint'])
    expect(how(suspect(3), onset(4), heat(5))).toEqual(['activity'])
    expect(how(onset(3), heat(4))).toEqual(['activity'])
    expect(how(suspect(3), service(4))).toEqual(['paint'])
    expect(how(suspect(3), suspect(4), service(5))).toEqual([undefined])
    expect(how(service(3))).toEqual([undefined])
  })

  test('the services of a heat are one of those of the cycle', () => {
    const { services } = standingAt(20, cow(service(0), bullService(4), service(5), service(6)))
    expect(services.map((one) => [one.day - matingStart, one.facts.length])).toEqual([
      [0, 1],
      [6, 3],
    ])
  })

  test('the sire is that of the last AI among the services of a heat', () => {
    const served = cow(
      service(4, { sire: 'S1' }),
      service(4, { sire: 'S2', time: 'evening' }),
      bullService(5, { sire: 'B1' }),
    )
    expect(standingAt(20, served).lastService).toMatchObject({ sire: 'S2', straw: 'conventional' })
    expect(standingAt(20, cow(bullService(4, { sire: 'B1' }))).lastService?.sire).toBe('B1')
  })

  test('a service remembers who was served', () => {
    const served = (one: Animal) => [
      standingAt(20, one).lastService?.maiden,
      standingAt(20, one).lastService?.parity,
    ]
    expect(served(maiden(service(4)))).toEqual([true, 0])
    expect(served(cow({ lactation: 0 }, calving(-60), service(4)))).toEqual([false, 1])
    expect(served(cow({ lactation: 3 }, calving(-60), service(4)))).toEqual([false, 4])
  })

  test('a service of the list’s day is seen as its heat', () => {
    expect(heatsOf(cow(service(4)), 4)).toEqual(['4 sure'])
    expect(heatsOf(cow(heat(3), service(4)), 4)).toEqual(['3 sure'])
    expect(heatsOf(cow(service(3), service(4)), 4)).toEqual(['3 sure AI 3'])
  })
})

describe('a calving or a loss closes what came before', () => {
  const before = [heat(-5), service(0), empty(30)]
  test.each([
    ['calving', calving(31)],
    ['loss', loss(31)],
  ])('%s', (_, event) => {
    const standing = standingAt(40, cow(...before, event, heat(35)))
    expect(standing.heats.map((one) => one.day - matingStart)).toEqual([35])
    expect([standing.services, standing.checks]).toEqual([[], []])
    expect(standing.chancesUsed).toBe(1)
  })

  test('facts of the day it happened: by time, and at the same time the calving comes first', () => {
    expect(heatsOf(cow(heat(5), calving(5)), 6)).toEqual(['5 sure'])
    expect(heatsOf(cow(heat(5, { time: '04:00' }), calving(5)), 6)).toEqual([])
    expect(standingAt(6, cow(pregnant(5), loss(5))).inCalf).toBe(false)
  })
})

describe('parity', () => {
  test.each([
    ['as stated', cow({ lactation: 3 }), 3],
    ['and calvings', cow({ lactation: 3 }, calving(-400), calving(-30)), 5],
    ['0 days apart are one', cow({ lactation: 3 }, calving(-30), calving(-30)), 4],
    ['1 day apart are one', cow({ lactation: 3 }, calving(-30), calving(-29)), 4],
    ['2 days apart are two', cow({ lactation: 3 }, calving(-30), calving(-28)), 5],
    ['not stated', cow({ lactation: undefined }, calving(-30)), 1],
    ['a loss is no calving', maiden(service(-100), loss(-30)), 0],
    ['a calving of today counts', maiden(calving(0)), 1],
    ['one of tomorrow does not', maiden(calving(1)), 0],
  ])('%s', (_, one, parity) => {
    const standing = standingAt(0, one)
    expect([standing.parity, standing.maiden]).toEqual([parity, parity === 0])
  })
})

describe('days calved count from the calving, or from a loss at 120 days of pregnancy or more', () => {
  const calved = calving(-200)
  test.each([
    ['a calving', cow(calved), 200, 'calving'],
    ['calved in two facts: from the first', cow(calved, calving(-199)), 200, 'calving'],
    ['a loss at 119 days', cow(calved, service(-130), pregnant(-90), loss(-11)), 200, 'calving'],
    ['a loss at 120 days', cow(calved, service(-130), pregnant(-90), loss(-10)), 10, 'loss'],
    [
      'not checked: from the last service, 119 days',
      cow(calved, service(-160), service(-130), loss(-11)),
      200,
      'calving',
    ],
    [
      'not checked: from the last service, 120 days',
      cow(calved, service(-160), service(-130), loss(-10)),
      10,
      'loss',
    ],
    [
      'by foetal age with no service, 119 days',
      cow(calved, pregnant(-90, { foetalAge: 40 }), loss(-11)),
      200,
      'calving',
    ],
    [
      'by foetal age with no service, 120 days',
      cow(calved, pregnant(-90, { foetalAge: 40 }), loss(-10)),
      10,
      'loss',
    ],
    [
      'from conception, not from a service after it',
      cow(calved, service(-150), pregnant(-100), service(-60), loss(-20)),
      20,
      'loss',
    ],
    ['nothing known of it', cow(calved, loss(-10)), 10, 'loss'],
    [
      'an early loss after a late one',
      cow(calving(-400), service(-330), loss(-100), service(-70), loss(-20)),
      100,
      'loss',
    ],
    ['two losses 2 days apart', cow(calved, service(-60), loss(-12), loss(-10)), 10, 'loss'],
    ['one loss told twice', cow(calved, service(-60), loss(-11), loss(-10)), 200, 'calving'],
    ['calved since', cow(calving(-600), loss(-300), calving(-30)), 30, 'calving'],
    ['none known', cow(), undefined, undefined],
  ])('%s', (_, one, days, since) => {
    const standing = standingAt(0, one)
    expect([daysCalved(standing), standing.waitSince]).toEqual([days, since])
  })

  test('maidens pass every test, a cow without a calving date none', () => {
    expect(calvedAtLeast(standingAt(0, maiden()), 500)).toBe(true)
    expect(calvedAtLeast(standingAt(0, cow()), 0)).toBe(false)
    expect(calvedAtLeast(standingAt(0, cow(calving(0))), 0)).toBe(true)
    expect(calvedAtLeast(standingAt(0, cow(calving(0))), 1)).toBe(false)
  })

  test('a wait begun by a loss says loss', () => {
    const lost = cow(calving(-300), service(-160), loss(-30), heat(10))
    expect(rowAt(10, lost)).toMatchObject({ since: 'loss', days: 40, reasons: ['calved-30-41'] })
  })
})

// Remnant 2019, Measuring dairy herd heat detection (University of Nottingham): classes of inter-service intervals.
test.each([
  [2, 'short-irregular'],
  [17, 'short-irregular'],
  [18, 'short-regular'],
  [24, 'short-regular'],
  [25, 'long-irregular'],
  [35, 'long-irregular'],
  [36, 'long-regular'],
  [48, 'long-regular'],
  [49, 'extended'],
  [300, 'extended'],
])('%i days between services: %s', (days, expected) => {
  expect(intervalClass(days)).toBe(expected)
})

describe('a hard calving', () => {
  test.each<[string, boolean, Record<string, unknown>]>([
    ['easy', false, {}],
    ['nothing told', false, { ease: undefined }],
    ['ease 3', false, { ease: 3 }],
    ['ease 4', true, { ease: 4 }],
    ['a single calf', false, { calves: 1 }],
    ['twins', true, { calves: 2 }],
    ['none dead', false, { dead: 0 }],
    ['a dead calf', true, { dead: 1 }],
  ])('%s', (_, hard, more) => {
    expect(standingAt(0, cow(calving(-60, more))).calvings.map(hardCalving)).toEqual([hard])
  })
})

test('the day of the first sure record of a heat', () => {
  const sureOn = (...records: ReturnType<typeof heat>[]) =>
    standingAt(20, cow(...records)).heats.map((one) => one.sureOn && one.sureOn - matingStart)
  expect(sureOn(suspect(3), heat(4))).toEqual([4])
  expect(sureOn(heat(3), heat(4))).toEqual([3])
  expect(sureOn(heat(3), suspect(4))).toEqual([3])
  expect(sureOn(suspect(3), suspect(4))).toEqual([undefined])
})
