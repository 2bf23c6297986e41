import { describe, expect, test } from 'vitest'
import { standardPolicy } from '../../source/breeding/policy.ts'
import { checkCountsFrom, serviceCounted } from '../../source/breeding/pregnancy.ts'
import {
  type Animal,
  bullService,
  calving,
  cow,
  empty,
  fromBull,
  type Happening,
  type Herd,
  loss,
  maiden,
  matingStart,
  on,
  pregnant,
  service,
  standingAt,
  unsure,
  withBull,
} from './support.ts'

/** `conceived 12 S1 AI or bull`, `fits none` or `open`. */
function conception(one: Animal, s: number, herd?: Herd): string {
  const { pregnancy } = standingAt(s, one, herd)
  if (pregnancy === undefined) return 'open'
  if (pregnancy.conception === undefined) return 'fits none'
  const { day, sire, aiOrBull } = pregnancy.conception
  return [day - matingStart, sire ?? '?', ...(aiOrBull ? ['AI or bull'] : [])].join(' ')
}

const fresh = calving(-60)
const noBull: Herd = { bullWeeks: 0 }
type Case = readonly [what: string, one: Animal, s: number, expected: string, herd?: Herd]
const table = (cases: readonly Case[]): void => {
  test.each(cases.map((one) => [one[0], one] as const))('%s', (_, [, one, s, expected, herd]) => {
    expect(conception(one, s, herd)).toBe(expected)
  })
}

describe('in calf: a pregnant result with no later loss, calving or empty result', () => {
  const found = [fresh, service(0), pregnant(35)]
  table([
    ['the day of the check it moves nothing', cow(...found), 35, 'open'],
    ['the day after', cow(...found), 36, '0 S1'],
    ['unsure later', cow(...found, unsure(50)), 60, '0 S1'],
    ['empty later', cow(...found, empty(50)), 60, 'open'],
    ['empty, then pregnant', cow(...found, empty(50), pregnant(52)), 60, '0 S1'],
    ['lost, on the day', cow(...found, loss(50)), 50, 'open'],
    ['calved, on the day', cow(...found, calving(50)), 50, 'open'],
    ['unsure alone', cow(fresh, service(0), unsure(35)), 40, 'open'],
    [
      'two results on one day: in order of recording',
      cow(fresh, service(0), empty(35), pregnant(35)),
      36,
      '0 S1',
    ],
  ])
})

describe('a plain result after an earlier one', () => {
  const found = [fresh, service(0), pregnant(35)]
  table([
    ['keeps the conception', cow(...found, pregnant(75)), 76, '0 S1', noBull],
    ['served between: a new one', cow(...found, service(40), pregnant(75)), 76, '40 S1', noBull],
    ['served before and between', cow(...found, service(45), service(66), pregnant(77)), 78, '45 S1', noBull],
    [
      'served on the day of the earlier one: the same',
      cow(...found, service(35), pregnant(75)),
      76,
      '0 S1',
      noBull,
    ],
  ])

  test('served on its own day: the earlier result stands', () => {
    const { pregnancy } = standingAt(76, cow(...found, service(75), pregnant(75)))
    expect((pregnancy?.check.day ?? 0) - matingStart).toBe(35)
  })
})

test('the service that a check counts for is the last one old enough', () => {
  const { cycle, lastCheck } = standingAt(61, cow(fresh, service(0), service(21), service(42), empty(60)))
  const counted = lastCheck && serviceCounted(cycle, lastCheck, standardPolicy)
  expect((counted?.day ?? 0) - matingStart).toBe(21)
})

describe('an age, and what was with her', () => {
  const aged = (s: number, foetalAge: number) => pregnant(s, { foetalAge })
  const bulls = (...periods: readonly [bull: string, from: number, to: number][]) =>
    periods.flatMap(([bull, from, to]) => [withBull(from, { bull }), fromBull(to, { bull })])
  table([
    ['served after the check: the age alone', cow(fresh, aged(60, 40), service(70)), 71, '20 ?', noBull],
    [
      'served on the day of the check: no service fits',
      cow(fresh, service(60), aged(60, 40)),
      61,
      'fits none',
      noBull,
    ],
    [
      'with the bull from the day of the check: none fits',
      cow(fresh, withBull(60), aged(60, 40)),
      61,
      'fits none',
      noBull,
    ],
    [
      'the bull from the day of the service on',
      cow(fresh, service(20), withBull(20), aged(60, 40)),
      61,
      '20 S1 AI or bull',
      noBull,
    ],
    [
      'nearer to the later bull',
      cow(fresh, ...bulls(['B1', 30, 40], ['B2', 50, 60]), aged(87, 40)),
      88,
      '50 B2',
      noBull,
    ],
    [
      'nearer to the earlier bull',
      cow(fresh, ...bulls(['B1', 30, 40], ['B2', 50, 60]), aged(83, 40)),
      84,
      '40 B1',
      noBull,
    ],
    [
      'on the last day of a bull, the next a day later',
      cow(fresh, ...bulls(['B1', 30, 48], ['B2', 49, 60]), aged(88, 40)),
      89,
      '48 B1',
      noBull,
    ],
    [
      'on a day that two bulls were there',
      cow(fresh, ...bulls(['B1', 20, 30], ['B2', 30, 60]), aged(70, 40)),
      71,
      '30 ?',
      noBull,
    ],
  ])
})

describe('the service that the check names', () => {
  table([
    ['named', cow(fresh, service(0), service(21), pregnant(60, { serviceDate: on(0) })), 61, '0 S1'],
    [
      'before the foetal age',
      cow(fresh, service(0), service(21), pregnant(60, { serviceDate: on(0), foetalAge: 39 })),
      61,
      '0 S1',
    ],
    [
      'either date of one heat',
      cow(fresh, service(0), service(1), pregnant(60, { serviceDate: on(0) })),
      61,
      '1 S1',
    ],
    ['not on record', cow(fresh, service(0), pregnant(60, { serviceDate: on(2) })), 61, 'fits none'],
    [
      'of an earlier cycle',
      cow(service(-300), calving(-20), pregnant(60, { serviceDate: on(-300) })),
      61,
      'fits none',
    ],
  ])
})

describe('a foetal age up to 98 days: the nearest service within 7 days', () => {
  const aged = (served: number, checked: number, age: number) =>
    cow(fresh, service(served), pregnant(checked, { foetalAge: age }))
  table([
    ['same day', aged(0, 40, 40), 41, '0 S1', noBull],
    ['7 days before', aged(-7, 98, 98), 99, '-7 S1', noBull],
    ['8 days before', aged(-8, 98, 98), 99, 'fits none', noBull],
    ['7 days after', aged(7, 98, 98), 99, '7 S1', noBull],
    ['8 days after', aged(8, 98, 98), 99, 'fits none', noBull],
    ['older than 98 days: 15 days before', aged(-15, 99, 99), 100, '-15 S1', noBull],
    ['older than 98 days: 16 days before', aged(-16, 99, 99), 100, 'fits none', noBull],
    ['older than 98 days: 15 days after', aged(15, 99, 99), 100, '15 S1', noBull],
    ['older than 98 days: 16 days after', aged(16, 99, 99), 100, 'fits none', noBull],
    [
      'the nearer of two',
      cow(fresh, service(0), service(10), pregnant(60, { foetalAge: 54 })),
      61,
      '10 S1',
      noBull,
    ],
    [
      'a tie: the later',
      cow(fresh, service(0), service(10), pregnant(60, { foetalAge: 55 })),
      61,
      '10 S1',
      noBull,
    ],
    [
      'a service after the check does not fit',
      cow(fresh, service(0), pregnant(25, { foetalAge: 25 }), service(27)),
      50,
      '0 S1',
      noBull,
    ],
    [
      'a bull’s service',
      cow(fresh, bullService(50, { sire: 'B1' }), pregnant(100, { foetalAge: 47 })),
      101,
      '50 B1',
    ],
    [
      'no service and no bull period in the cycle',
      cow(fresh, pregnant(40, { foetalAge: 40 })),
      41,
      '0 ?',
      noBull,
    ],
    ['nor a bull period begun by the check', cow(fresh, pregnant(40, { foetalAge: 40 })), 41, '0 ?'],
  ])
})

describe('a foetal age and no service near: a bull period within 15 days, moved into it', () => {
  const ran = [fresh, withBull(50, { bull: 'B1' }), fromBull(60)]
  const aged = (day: number) => cow(...ran, pregnant(130, { foetalAge: 130 - day }))
  table([
    ['16 days before it', aged(34), 131, 'fits none'],
    ['15 days before it', aged(35), 131, '50 B1'],
    ['its first day', aged(50), 131, '50 B1'],
    ['within it', aged(55), 131, '55 B1'],
    ['its last day', aged(60), 131, '60 B1'],
    ['15 days after it', aged(75), 131, '60 B1'],
    ['16 days after it', aged(76), 131, 'fits none'],
    [
      'still with him',
      cow(fresh, withBull(50, { bull: 'B1' }), pregnant(130, { foetalAge: 40 })),
      131,
      '90 B1',
    ],
    [
      'taken from another bull',
      cow(...ran, withBull(90, { bull: 'B2' }), fromBull(95), pregnant(180, { foetalAge: 85 })),
      181,
      '95 B2',
    ],
    [
      'a period before she calved is not of the cycle',
      cow(withBull(-100), fromBull(-70), calving(-20), pregnant(60, { foetalAge: 110 })),
      61,
      'fits none',
      noBull,
    ],
    [
      'nor is a day before she calved',
      cow(calving(-20), pregnant(60, { foetalAge: 81 })),
      61,
      'fits none',
      noBull,
    ],
    ['the day she calved is', cow(calving(-20), pregnant(60, { foetalAge: 80 })), 61, '-20 ?', noBull],
    [
      'a bull who was there when she calved: from that day on',
      cow(withBull(-100), fromBull(0), calving(-20), pregnant(60, { foetalAge: 90 })),
      61,
      '-20 ?',
      noBull,
    ],
    [
      'of two periods the nearer',
      cow(...ran, withBull(80, { bull: 'B2' }), fromBull(95), pregnant(180, { foetalAge: 112 })),
      181,
      '60 B1',
    ],
  ])
})

describe('two bulls with her: the sire is known only where one of them was', () => {
  const both = [fresh, withBull(42, { bull: 'B1' }), withBull(50, { bull: 'B2' })]
  const aged = (day: number, ...more: readonly Happening[]) =>
    cow(...both, ...more, pregnant(160, { foetalAge: 160 - day }))
  table([
    ['on a day of the first alone', aged(46), 161, '46 B1'],
    ['on a day of both', aged(55), 161, '55 ?'],
    ['the second was taken out before', aged(58, fromBull(52, { bull: 'B2' })), 161, '58 B1'],
    [
      'without an age, both on one day',
      cow(fresh, withBull(50, { bull: 'B1' }), withBull(50, { bull: 'B2' }), pregnant(90)),
      91,
      '50 ?',
    ],
    [
      'the same bull told twice',
      cow(fresh, withBull(50, { bull: 'B1' }), withBull(51, { bull: 'B1' }), pregnant(90)),
      91,
      '51 B1',
    ],
  ])
})

describe('where no period is recorded for her: the bull weeks of her block, s 42-62', () => {
  const aged = (day: number) => cow(fresh, pregnant(160, { foetalAge: 160 - day }))
  table([
    ['16 days before', aged(26), 161, 'fits none'],
    ['15 days before', aged(27), 161, '42 ?'],
    ['within', aged(50), 161, '50 ?'],
    ['15 days after', aged(77), 161, '62 ?'],
    ['16 days after', aged(78), 161, 'fits none'],
    ['5+4 weeks begin on s 35', aged(20), 161, '35 ?', { aiWeeks: 5, bullWeeks: 4 }],
    [
      'a service near goes first',
      cow(fresh, service(35), pregnant(160, { foetalAge: 120 })),
      161,
      '35 S1 AI or bull',
    ],
    [
      'without a block there are none',
      cow({ block: undefined }, pregnant(160, { foetalAge: 110 })),
      161,
      '50 ?',
      { seasons: [] },
    ],
  ])
})

describe('without an age', () => {
  table([
    [
      'the last service it counts for',
      cow(fresh, service(0), service(21), pregnant(51)),
      52,
      '21 S1',
      noBull,
    ],
    [
      'a day too early for the last: the one before',
      cow(fresh, service(0), service(21), pregnant(50)),
      51,
      '0 S1',
      noBull,
    ],
    [
      'by hand 42 days',
      cow(fresh, service(0), service(21), { ...pregnant(62), method: 'hand' }),
      63,
      '0 S1',
      noBull,
    ],
    [
      'it counts for none: the last 24 days or more before',
      cow(fresh, service(0), service(5), pregnant(29)),
      30,
      '5 S1',
      noBull,
    ],
    ['23 days', cow(fresh, service(6), pregnant(29)), 30, 'fits none', noBull],
    ['24 days', cow(fresh, service(5), pregnant(29)), 30, '5 S1', noBull],
    ['a maiden, 28 days', maiden(service(0), service(21), pregnant(49)), 50, '21 S1', noBull],
    [
      'no service: the first day of the last bull period begun 24 days before',
      cow(fresh, withBull(50, { bull: 'B1' }), pregnant(74)),
      75,
      '50 B1',
    ],
    ['23 days', cow(fresh, withBull(51), pregnant(74)), 75, 'fits none'],
    [
      'the last of two',
      cow(fresh, withBull(10), fromBull(20), withBull(50, { bull: 'B2' }), pregnant(90)),
      91,
      '50 B2',
    ],
    ['the bull weeks of her block', cow(fresh, pregnant(90)), 91, '42 ?'],
    [
      'a period of a cow without a calving on record',
      cow(withBull(-100), fromBull(-60), pregnant(0)),
      1,
      '-100 ?',
      noBull,
    ],
    ['nothing', cow(fresh, pregnant(20)), 21, 'fits none'],
  ])
})

describe('AI or bull: a bull was with her after the AI service, and his time fits too', () => {
  table([
    ['without an age, 24 days of the bull', cow(fresh, service(30), pregnant(66)), 67, '30 S1 AI or bull'],
    ['without an age, 23 days of the bull', cow(fresh, service(30), pregnant(65)), 66, '30 S1'],
    [
      'with an age, 15 days',
      cow(fresh, service(30), pregnant(100, { foetalAge: 73 })),
      101,
      '30 S1 AI or bull',
    ],
    ['with an age, 16 days', cow(fresh, service(30), pregnant(100, { foetalAge: 74 })), 101, '30 S1'],
    ['her own period', cow(fresh, service(20), withBull(25), pregnant(60)), 61, '20 S1 AI or bull'],
    [
      'a period begun on the day of the service',
      cow(fresh, withBull(20), service(20), pregnant(60)),
      61,
      '20 S1 AI or bull',
    ],
    [
      'he came before the service, and stayed',
      cow(fresh, withBull(10), service(20), pregnant(60)),
      61,
      '20 S1 AI or bull',
    ],
    [
      'he stayed to the day after it',
      cow(fresh, withBull(10), fromBull(21), service(20), pregnant(60)),
      61,
      '20 S1 AI or bull',
    ],
    [
      'he left on the day of the service',
      cow(fresh, withBull(10), fromBull(20), service(20), pregnant(60)),
      61,
      '20 S1',
    ],
    [
      'he stayed, by foetal age',
      cow(fresh, withBull(10), service(20), pregnant(60, { foetalAge: 38 })),
      61,
      '20 S1 AI or bull',
    ],
    [
      'after a bull’s service it is the bull',
      cow(fresh, bullService(30, { sire: 'B1' }), pregnant(100)),
      101,
      '30 B1',
    ],
    ['named, so AI', cow(fresh, service(30), pregnant(100, { serviceDate: on(30) })), 101, '30 S1'],
  ])
})

test('what a conception rests on', () => {
  const basis = (one: Animal, s: number, herd?: Herd) => standingAt(s, one, herd).pregnancy?.conception?.basis
  expect([
    basis(cow(fresh, service(0), pregnant(40, { serviceDate: on(0) })), 41),
    basis(cow(fresh, service(0), pregnant(40, { foetalAge: 40 })), 41),
    basis(cow(fresh, service(0), pregnant(40)), 41),
    basis(cow(fresh, service(0), pregnant(25)), 26),
    basis(cow(fresh, withBull(50), pregnant(90)), 91),
    basis(cow(fresh, pregnant(40, { foetalAge: 40 })), 41, noBull),
  ]).toEqual(['named-service', 'foetal-age', 'counted-service', 'older-service', 'bull-period', 'age-alone'])
})

describe('a later result', () => {
  const found = [fresh, service(0), service(21), pregnant(60, { serviceDate: on(0) })]
  table([
    ['a plain one keeps the conception', cow(...found, pregnant(90)), 91, '0 S1', noBull],
    [
      'one with an age of its own changes it',
      cow(...found, pregnant(90, { foetalAge: 69 })),
      91,
      '21 S1',
      noBull,
    ],
    [
      'one that names another service too',
      cow(...found, pregnant(90, { serviceDate: on(21) })),
      91,
      '21 S1',
      noBull,
    ],
  ])
})

describe('a later age agrees within 15 days with the earlier result: the conception stays', () => {
  const aged = (s: number, conceived: number) => pregnant(s, { foetalAge: s - conceived })
  const named = [fresh, service(0), pregnant(40, { serviceDate: on(0) })]
  const measured = [fresh, service(0), aged(40, 4)]
  const plain = [fresh, service(0), pregnant(40)]
  table([
    ['named first, 15 days later', cow(...named, aged(100, 15)), 101, '0 S1', noBull],
    ['named first, 16 days later', cow(...named, aged(100, 16)), 101, 'fits none', noBull],
    ['named first, 15 days earlier', cow(...named, aged(80, -15)), 81, '0 S1', noBull],
    ['named first, 16 days earlier', cow(...named, aged(80, -16)), 81, 'fits none', noBull],
    ['aged first, 15 days later', cow(...measured, aged(100, 15)), 101, '0 S1', noBull],
    ['aged first, 16 days later', cow(...measured, aged(100, 16)), 101, 'fits none', noBull],
    ['aged first, 15 days earlier', cow(...measured, aged(80, -15)), 81, '0 S1', noBull],
    ['aged first, 16 days earlier', cow(...measured, aged(80, -16)), 81, 'fits none', noBull],
    ['plain first, 15 days later', cow(...plain, aged(100, 15)), 101, '0 S1', noBull],
    ['plain first, 16 days later', cow(...plain, aged(100, 16)), 101, 'fits none', noBull],
    ['plain first, 15 days earlier', cow(...plain, aged(80, -15)), 81, '0 S1', noBull],
    ['plain first, 16 days earlier', cow(...plain, aged(80, -16)), 81, 'fits none', noBull],
    ['no result before: none fits', cow(fresh, service(0), aged(100, 15)), 101, 'fits none', noBull],
    ['an empty result between: told anew', cow(...named, empty(60), aged(100, 15)), 101, 'fits none', noBull],
    ['an unsure result between: kept', cow(...named, unsure(60), aged(100, 15)), 101, '0 S1', noBull],
    ['a plain result between: kept', cow(...named, pregnant(60), aged(100, 15)), 101, '0 S1', noBull],
    ['served between, in vain: kept', cow(...named, service(50), aged(100, 9)), 101, '0 S1', noBull],
    ['three ages: the first counts', cow(...measured, aged(70, 12), aged(100, 15)), 101, '0 S1', noBull],
    ['of another cycle: told anew', cow(...named, loss(60), aged(100, 61)), 101, '61 ?', noBull],
    ['the first fits none: told anew', cow(fresh, service(0), aged(60, 20), aged(80, 7)), 81, '0 S1', noBull],
    [
      'another service that fits the later age better: the first age is the more exact',
      cow(fresh, service(0), service(10), aged(40, 2), aged(80, 10)),
      81,
      '0 S1',
      noBull,
    ],
    [
      'one that names a service is told anew, whatever its age',
      cow(fresh, service(0), service(10), aged(40, 2), pregnant(80, { foetalAge: 80, serviceDate: on(10) })),
      81,
      '10 S1',
      noBull,
    ],
    [
      'two ages of one day: the one entered last',
      cow(fresh, service(0), service(10), aged(60, 0), aged(60, 10)),
      61,
      '10 S1',
      noBull,
    ],
    [
      'two ages, of one day and the next: the first',
      cow(fresh, service(0), service(10), aged(60, 0), aged(61, 10)),
      62,
      '0 S1',
      noBull,
    ],
  ])

  describe('with a bull beside the AI', () => {
    const withB1 = [withBull(8, { bull: 'B1' })]
    table([
      ['AI by name, the age points to the bull', cow(...named, ...withB1, aged(100, 15)), 101, '0 S1'],
      ['AI by name, 16 days off: the bull', cow(...named, ...withB1, aged(100, 16)), 101, '16 B1'],
      [
        'AI or bull at first, then 9 days off: still not known',
        cow(fresh, service(0), ...withB1, pregnant(40), aged(80, 9)),
        81,
        '0 S1 AI or bull',
      ],
      [
        'the bull too late for a plain first result: AI',
        cow(fresh, service(0), withBull(17), pregnant(40), aged(80, 9)),
        81,
        '0 S1',
      ],
      [
        'AI or bull at first, then the very day of AI and long before him: AI',
        cow(fresh, service(0), withBull(16), pregnant(50), aged(80, 0)),
        81,
        '0 S1',
      ],
      [
        'the bull by age, then an age of the AI',
        cow(fresh, service(0), ...withB1, aged(40, 9), aged(80, 0)),
        81,
        '9 B1',
      ],
      [
        'the bull by age, then 16 days earlier',
        cow(fresh, service(0), ...withB1, aged(40, 16), aged(80, 0)),
        81,
        '0 S1 AI or bull',
      ],
      [
        'the bull by a plain result: the day he came gives way to an age',
        cow(fresh, ...withB1, pregnant(40), aged(80, 20)),
        81,
        '20 B1',
      ],
      ['the bull weeks by age, then 12 days later', cow(fresh, aged(100, 50), aged(150, 62)), 151, '50 ?'],
    ])
  })

  describe('a plain first result with several services: the age tells which', () => {
    table([
      [
        'the earlier of two',
        cow(fresh, service(0), service(10), pregnant(45), aged(80, 1)),
        81,
        '0 S1',
        noBull,
      ],
      [
        'one that was 24 days old then',
        cow(fresh, service(0), service(14), pregnant(38), aged(80, 14)),
        81,
        '14 S1',
        noBull,
      ],
      [
        'one that was 23 days old then, and too young to be found',
        cow(fresh, service(0), service(15), pregnant(38), aged(80, 15)),
        81,
        '0 S1',
        noBull,
      ],
    ])
  })

  test('the pregnancy goes on resting on the earlier result', () => {
    const { pregnancy } = standingAt(101, cow(...named, aged(100, 15)))
    expect((pregnancy?.check.day ?? 0) - matingStart).toBe(40)
    expect(pregnancy?.conception?.basis).toBe('named-service')
  })
})

test.each([
  ['ultrasound', false, 30],
  ['ultrasound', true, 28],
  ['hand', false, 42],
  ['hand', true, 42],
  ['milk', false, 30],
  ['blood', false, 30],
  ['blood', true, 30],
] as const)('a check by %s counts (maiden: %s) from day %i', (method, young, days) => {
  expect(checkCountsFrom(method, young, standardPolicy)).toBe(days)
})
