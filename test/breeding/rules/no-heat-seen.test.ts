import { describe, expect, test } from 'vitest'
import {
  bar,
  bullService,
  calving,
  cow,
  empty,
  examined,
  fromBull,
  heat,
  hold,
  listAt,
  loss,
  maiden,
  on,
  pregnant,
  service,
  suspect,
  table,
  toBull,
  unsure,
  withBull,
} from '../support.ts'

const row = 'no-heat-seen: cycling-not-seen'
const none24 = 'no-heat-seen: no-heat-24-days'
const record = 'heat-record: none-seen'

describe('cycling not seen, before mating: from s -14, calved 30 days or more', () => {
  table([
    ['s -15', cow(calving(-100)), -15, record],
    ['s -14', cow(calving(-100)), -14, row],
    ['s -1', cow(calving(-100)), -1, row],
    ['29 days calved', cow(calving(-39)), -10, record],
    ['30 days calved', cow(calving(-40)), -10, row],
    ['no calving date', cow(), -10, record],
    ['a maiden', maiden(), -10, row],
    ['a maiden not ready', maiden({ ready: false }), -10, '-'],
    ['barred', cow(calving(-100), bar(-50)), -10, '-'],
    ['in calf', cow(calving(-200), service(-60), pregnant(-20)), -10, '-'],
  ])
})

describe('cycling not seen, AI weeks: calved 60 days or more', () => {
  table([
    ['59 days', cow(calving(-54)), 5, '-'],
    ['60 days', cow(calving(-55)), 5, row],
    ['bull weeks', cow(calving(-55)), 42, 'sweep-bull: window'],
    ['a chance used', cow(calving(-55), service(2)), 15, '-'],
    ['served by a bull only', cow(calving(-55), bullService(-10)), 5, '-'],
  ])
})

describe('cycling seen: a sure heat since calving; for maidens and from 151 days, since s -42', () => {
  table([
    ['a heat long ago', cow(calving(-140), heat(-90)), 10, '-'],
    ['a suspect heat', cow(calving(-140), suspect(-90)), 10, row],
    ['a heat before she calved', cow(heat(-145), calving(-140)), 10, row],
    ['150 days calved', cow(calving(-140), heat(-90)), 10, '-'],
    ['151 days calved', cow(calving(-141), heat(-90)), 10, row],
    ['151 days calved, seen on s -42', cow(calving(-141), heat(-42)), 10, '-'],
    ['151 days calved, seen on s -43', cow(calving(-141), heat(-43)), 10, row],
    ['a maiden, seen on s -42', maiden(heat(-42)), 10, '-'],
    ['a maiden, seen on s -43', maiden(heat(-43)), 10, row],
    ['no calving date, seen last year', cow(heat(-300)), -20, record],
    ['a service is a sure heat', cow(calving(-140), bullService(-20)), 5, '-'],
  ])
})

describe('no sure heat in the last 24 days, from s 21, calved 42 days or more', () => {
  table([
    ['s 20', cow(calving(-55), heat(-10)), 20, '-'],
    ['s 21', cow(calving(-55), heat(-10)), 21, none24],
    ['41 days calved', cow(calving(-20), heat(-10)), 21, '-'],
    ['42 days calved', cow(calving(-21), heat(-10)), 21, none24],
    ['seen 24 days ago', cow(calving(-55), heat(0)), 24, 'repeat-heat-watch: since-heat'],
    ['seen 25 days ago', cow(calving(-55), heat(0)), 25, none24],
    ['both', cow(calving(-55)), 21, 'no-heat-seen: cycling-not-seen no-heat-24-days'],
    ['a chance used', cow(calving(-55), service(-20)), 30, 'pregnancy-check: due'],
    ['a chance used, back and not seen again', cow(calving(-90), service(-30), heat(-9)), 21, none24],
    [
      'a chance used, back 24 days ago',
      cow(calving(-90), service(-20), heat(0)),
      24,
      'repeat-heat-watch: since-heat',
    ],
    ['a chance used, the calf lost 24 days ago', cow(calving(-90), service(-30), loss(1)), 25, '-'],
    ['a chance used, the calf lost 25 days ago', cow(calving(-90), service(-30), loss(0)), 25, none24],
    [
      'two chances used, the calf lost',
      cow(calving(-90), service(-30), service(-10), loss(5)),
      21,
      'sweep-bull: chances',
    ],
    ['checked unsure: she may be in calf', cow(calving(-90), heat(-30), unsure(15)), 25, '-'],
    ['checked unsure to a bull', cow(calving(-90), bullService(-20), unsure(15)), 25, '-'],
    [
      'seen after an unsure check, then no more',
      cow(calving(-90), bullService(-30), unsure(0), heat(2)),
      27,
      'pregnancy-check: unsure',
    ],
    [
      'seen the day after an unsure check that waits for the scanner',
      cow(calving(-90), unsure(0), heat(1)),
      26,
      none24,
      { scans: [60] },
    ],
    ['seen on its day', cow(calving(-90), unsure(0), heat(0)), 26, '-', { scans: [60] }],
    ['served by a bull, not back', cow(calving(-90), bullService(-5)), 22, '-'],
  ])
})

describe('empty: checked empty, may be served, no sure heat since', () => {
  const found = [calving(-90), service(-10), empty(21)]
  table([
    ['the day after', cow(...found), 22, 'no-heat-seen: empty'],
    ['seen since', cow(...found, heat(24)), 30, '-'],
    ['seen the day after the check', cow(...found, heat(22)), 30, '-'],
    ['seen on the day of the check', cow(...found, heat(21)), 30, 'no-heat-seen: empty'],
    ['suspect since', cow(...found, suspect(24)), 30, 'no-heat-seen: empty'],
    [
      'an empty result that does not count',
      cow(calving(-90), service(-5), empty(21)),
      30,
      'pregnancy-check: due',
    ],
    ['two chances used', cow(calving(-90), service(-30), service(-10), empty(21)), 22, 'sweep-bull: chances'],
    ['left to the bull', cow(...found, toBull(22)), 23, 'sweep-bull: by-hand'],
    ['bull weeks', cow(...found), 42, 'sweep-bull: window'],
    ['before mating', cow(calving(-140), service(-100), empty(-60)), -20, '-'],
  ])
})

describe('with a bull: she may be in calf, and treatment would end it', () => {
  const since = [withBull(-30), fromBull(-15)]
  table([
    ['he is there', cow(calving(-100), withBull(-30)), 10, '-'],
    ['he has left', cow(calving(-100), ...since), 26, '-'],
    ['once a check finds his calf she is checked', cow(calving(-100), ...since), 27, 'pregnancy-check: due'],
    ['empty before that', cow(calving(-100), service(-30), ...since, empty(8), examined(-60)), 10, '-'],
    [
      'found empty',
      cow(calving(-100), ...since, empty(27)),
      28,
      'no-heat-seen: cycling-not-seen no-heat-24-days',
    ],
    [
      'a hard calving',
      cow(calving(-100, { ease: 5 }), withBull(-60), fromBull(-50)),
      -28,
      'heat-record: none-seen',
    ],
    [
      'calved since',
      cow(withBull(-150), fromBull(-110), calving(-100)),
      10,
      'no-heat-seen: cycling-not-seen',
    ],
    [
      'so long ago that it were born',
      maiden(withBull(-340), fromBull(-301)),
      0,
      'no-heat-seen: cycling-not-seen',
    ],
    ['300 days ago', maiden(withBull(-340), fromBull(-300)), 0, 'pregnancy-check: due'],
  ])
})

describe('at risk: from s -28, calved 21 days or more, not examined since', () => {
  const hard = calving(-60, { ease: 4 })
  const risk = 'no-heat-seen: at-risk'
  table([
    ['s -29', cow(hard), -29, record],
    ['s -28', cow(hard), -28, risk],
    ['20 days calved', cow(calving(-40, { ease: 4 })), -20, record],
    ['21 days calved', cow(calving(-41, { ease: 4 })), -20, risk],
    ['ease 3', cow(calving(-60, { ease: 3 })), -20, record],
    ['ease 5', cow(calving(-60, { ease: 5 })), -20, risk],
    ['twins', cow(calving(-60, { calves: 2 })), -20, risk],
    ['twins told in two facts', cow(calving(-60), calving(-60)), -20, risk],
    ['a dead calf', cow(calving(-60, { dead: 1 })), -20, risk],
    ['a loss', cow(calving(-200), service(-90), loss(-40)), -20, risk],
    ['a hard calving before the last', cow(calving(-400, { ease: 5 }), calving(-60)), -20, record],
    ['seen in heat as well', cow(hard, heat(-30)), -20, risk],
    ['examined before she calved', cow(examined(-61), hard), -20, risk],
    ['examined since, long ago', cow(hard, examined(-50)), -20, record],
    ['examined on the day', cow(hard, examined(-60)), -20, record],
    ['a loss before she calved', cow(calving(-700), loss(-350), calving(-60)), -20, record],
    [
      'a loss before she calved and one since',
      cow(calving(-700), service(-450), loss(-350), calving(-140), service(-90), loss(-45)),
      -20,
      risk,
    ],
    ['AI weeks', cow(hard, heat(-30)), 10, '-'],
    ['both', cow(hard), -10, 'no-heat-seen: cycling-not-seen at-risk'],
  ])
})

describe('not examined in the last 21 days', () => {
  table([
    ['21 days ago', cow(calving(-100), examined(-16)), 5, '-'],
    ['22 days ago', cow(calving(-100), examined(-17)), 5, row],
    ['today: ticked', cow(calving(-100), examined(5)), 5, `${row}, done`],
    ['a hold of today ticks', cow(calving(-100), hold(5)), 5, `${row}, done`],
    ['on hold she stands here all the same', cow(calving(-100), hold(0)), 5, row],
  ])
})

describe('a heat of today ticks and does not move her', () => {
  table([
    ['before mating', cow(calving(-100), heat(-10)), -10, `${row}, done`],
    ['gone the day after', cow(calving(-100), heat(-10)), -9, '-'],
    ['made sure today, suspect yesterday', cow(calving(-100), suspect(-11), heat(-10)), -10, `${row}, done`],
    ['unless she is now to be served', cow(calving(-100), heat(5)), 5, 'serve: on-heat'],
    ['or to be cared about', cow(calving(-100), hold(0), heat(5)), 5, 'take-care: hold > serve'],
  ])
})

describe('Heat record: before mating, cycling not seen', () => {
  table([
    ['s -36', cow(calving(-100)), -36, '-'],
    ['s -35', cow(calving(-100)), -35, record],
    ['the day she calved', cow(calving(-20)), -20, record],
    ['a heat of today ticks', cow(calving(-60), heat(-20)), -20, `${record}, done`],
    [
      'a suspect heat of yesterday, sure today',
      cow(calving(-60), suspect(-21), heat(-20)),
      -20,
      `${record}, done`,
    ],
    ['gone the day after', cow(calving(-60), heat(-20)), -19, '-'],
    ['s 0', cow(calving(-59)), 0, '-'],
    ['in calf', cow(calving(-200), service(-80), pregnant(-40)), -30, '-'],
    ['a maiden not ready', maiden({ ready: false }), -20, '-'],
    ['a maiden of 329 days', maiden({ born: on(-20 - 329) }), -20, '-'],
    ['a maiden of 330 days', maiden({ born: on(-20 - 330) }), -20, record],
    ['a maiden once served', maiden({ ready: false }, service(-80), loss(-50)), -35, record],
    [
      'a maiden once in calf, bought in',
      maiden({ ready: false }, pregnant(-80, { foetalAge: 50 }), loss(-50)),
      -35,
      record,
    ],
  ])
})

test('longest calved first; who has no calving date last', () => {
  const rows = listAt(-10, [
    cow({ number: '1' }, calving(-50)),
    maiden({ number: '2' }),
    cow({ number: '3' }, calving(-90)),
    cow({ number: '20' }, calving(-50)),
  ]).rows
  expect(rows.map((one) => [one.number, one.since, one.days])).toEqual([
    ['3', 'calving', 80],
    ['1', 'calving', 40],
    ['20', 'calving', 40],
    ['2', undefined, undefined],
  ])
})
