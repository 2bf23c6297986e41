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
  heat,
  hold,
  left,
  looked,
  loss,
  maiden,
  note,
  on,
  pregnant,
  rowAt,
  service,
  suspect,
  table,
  toBull,
  unsure,
} from '../support.ts'

const fresh = calving(-60)
/** In calf to her service on s -60. */
const inCalf = [calving(-150), service(-60), pregnant(-20)]

describe('in-calf-heat: in calf and on heat', () => {
  const row = 'take-care: in-calf-heat > pregnancy-check'
  table([
    ['today', cow(...inCalf, heat(20)), 20, row],
    ['yesterday', cow(...inCalf, heat(19)), 20, row],
    ['two days ago', cow(...inCalf, heat(18)), 20, 'pregnancy-check: heat-in-calf confirm'],
    ['suspect', cow(...inCalf, suspect(20)), 20, 'take-care: in-calf-heat (suspect) > pregnancy-check'],
    ['before mating', cow(...inCalf, heat(-10)), -10, row],
    ['bull weeks', cow(...inCalf, heat(50)), 50, row],
    ['closed', cow(calving(0), service(80), pregnant(120), heat(150)), 150, row],
    ['barred', cow(...inCalf, bar(0), heat(20)), 20, 'take-care: in-calf-heat'],
    [
      'without a block',
      cow({ block: undefined }, service(-60), pregnant(-20), heat(20)),
      20,
      'take-care: in-calf-heat',
    ],
    ['found empty since', cow(...inCalf, empty(10), heat(20)), 20, 'serve: on-heat'],
    ['unsure since: still in calf', cow(...inCalf, unsure(19), heat(20)), 20, row],
    ['served today: ticked, and her heat is shown', cow(...inCalf, service(20)), 20, `${row}, done`],
  ])
})

describe('served-in-calf: served 2 days or more after conception, for 7 days', () => {
  const row = 'take-care: served-in-calf > pregnancy-check'
  const served = cow(...inCalf, service(10))
  table([
    ['the day after', served, 11, row],
    ['7 days after', served, 17, row],
    ['8 days after', served, 18, 'pregnancy-check: confirm'],
    ['29 days after', served, 39, 'pregnancy-check: confirm'],
    ['once it is old enough for a check', served, 40, 'pregnancy-check: served-in-calf confirm'],
    ['a bull service too', cow(...inCalf, bullService(10)), 11, row],
    ['the day after conception', cow(calving(-150), service(-60), service(-59), pregnant(-20)), -19, '-'],
    [
      '2 days after conception',
      cow(calving(-150), service(-60), service(-58), pregnant(-31, { serviceDate: on(-60) })),
      -24,
      'take-care: served-in-calf > pregnancy-check',
    ],
    [
      'the pregnant result later than the service',
      cow(calving(-150), service(-60), service(-38), pregnant(-20)),
      -13,
      'take-care: served-in-calf',
    ],
    ['its eighth day', cow(calving(-150), service(-60), service(-38), pregnant(-20)), -12, '-'],
    [
      'a check that counts for it',
      cow(...inCalf, service(-15), pregnant(15, { foetalAge: 75 })),
      15,
      'pregnancy-check: served-in-calf confirm, done',
    ],
    ['and the day after', cow(...inCalf, service(-15), pregnant(15, { foetalAge: 75 })), 16, '-'],
    ['barred', cow(...inCalf, bar(0), service(10)), 11, 'take-care: served-in-calf'],
  ])
})

describe('overdue: more than 14 days past due', () => {
  // Served on s -300 by a sire of unknown breed: due 282 days later, on s -18.
  const overdue = cow(calving(-380), service(-300), pregnant(-250))
  table([
    ['14 days', overdue, -4, '-'],
    ['15 days', overdue, -3, 'take-care: overdue'],
    [
      'calved meanwhile',
      cow(calving(-380), service(-300), pregnant(-250), calving(-20)),
      -3,
      'heat-record: none-seen',
    ],
    ['barred', cow(calving(-380), service(-300), pregnant(-250), bar(-20)), -3, 'take-care: overdue'],
    ['by the sire’s own figure of 270 days', overdue, -15, 'take-care: overdue', { extra: [sireWith270()] }],
  ])
})

describe('a heat that asks for a decision, in the AI weeks', () => {
  table([
    ['calving unknown', cow(heat(10)), 10, 'take-care: calving-unknown'],
    ['calving unknown, before mating', cow(heat(-10)), -9, '-'],
    ['calved under 30 days, bull weeks', cow(calving(30), heat(50)), 50, 'sweep-bull: keep-from-bull'],
    [
      'calved under 30 days, chances used',
      cow(calving(-60), service(-35), service(-15), calving(-1), heat(10)),
      10,
      'take-care: contradiction > sweep-bull',
    ],
    ['hold', cow(fresh, hold(5), heat(10)), 10, 'take-care: hold > serve'],
    ['hold, last day', cow(fresh, hold(5, 10), heat(10)), 10, 'take-care: hold > serve'],
    ['hold, the day after', cow(fresh, hold(5, 9), heat(10)), 10, 'serve: on-heat'],
    ['hold that begins today', cow(fresh, hold(10), heat(10)), 10, 'serve: on-heat, done'],
    ['an open hold ended by the next', cow(fresh, hold(0), hold(6, 7), heat(10)), 10, 'serve: on-heat'],
    [
      'two holds, the longer counts',
      cow(fresh, hold(0, 20), hold(6, 7), heat(10)),
      10,
      'take-care: hold > serve',
    ],
    ['hold, and not on heat', cow(fresh, hold(5)), 10, 'no-heat-seen: cycling-not-seen'],
    [
      'several at once, in order',
      cow(calving(-15), service(5), hold(6), heat(10)),
      10,
      'take-care: calved-under-30 short-interval hold',
    ],
    ['barred: nobody means to serve her', cow(calving(-15), bar(0), heat(10)), 10, '-'],
    ['a maiden not ready: likewise', maiden({ ready: false }, hold(5), heat(10)), 10, '-'],
    ['after two chances', cow(fresh, service(0), service(5), heat(10)), 10, '-'],
  ])
})

describe('unserved-heat: a sure heat of two or three days ago', () => {
  const row = 'take-care: unserved-heat'
  table([
    ['yesterday: still to be served', cow(fresh, heat(9)), 10, 'serve: on-heat'],
    ['2 days', cow(fresh, heat(8)), 10, row],
    ['3 days', cow(fresh, heat(7)), 10, row],
    ['4 days', cow(fresh, heat(6)), 10, '-'],
    ['suspect', cow(fresh, suspect(8), examined(0)), 10, '-'],
    ['served', cow(fresh, heat(8), service(9)), 10, '-'],
    ['came at 41 days', cow(calving(-33), heat(8)), 10, '-'],
    ['came at 42 days', cow(calving(-34), heat(8)), 10, row],
    ['no calving date', cow(heat(8)), 10, '-'],
    ['17 days after a service', cow(fresh, service(-9), heat(8)), 10, 'repeat-heat-watch: since-service'],
    ['18 days after a service', cow(fresh, service(-10), heat(8)), 10, row],
    ['on hold', cow(fresh, hold(0), heat(8)), 10, '-'],
    ['left to the bull', cow(fresh, toBull(9), heat(8)), 10, 'sweep-bull: by-hand'],
    ['barred', cow(fresh, bar(0), heat(8)), 10, '-'],
    ['a maiden not ready', maiden({ ready: false }, heat(8)), 10, '-'],
    ['bull weeks', cow(fresh, heat(41)), 43, 'sweep-bull: window'],
    ['before mating', cow(fresh, heat(-5)), -3, '-'],
    ['seen on s -1, so to be served on s 0', cow(fresh, heat(-1)), 1, row],
    ['seen on s -2: never to be served', cow(fresh, heat(-2)), 0, '-'],
    ['ticked by any fact of today', cow(fresh, heat(8), note(10)), 10, `${row}, done`],
    ['but not by a suspect heat', cow(fresh, heat(8), suspect(10)), 10, 'serve: on-heat (suspect)'],
  ])
})

describe('no-service-fits, until corrected', () => {
  const row = 'take-care: no-service-fits'
  table([
    [
      'a service named that is not on record',
      cow(calving(-150), service(-60), pregnant(-20, { serviceDate: on(-58) })),
      100,
      row,
    ],
    ['an age that fits none', cow(calving(-150), service(-60), pregnant(-20, { foetalAge: 60 })), 20, row],
    ['nothing on record before the bull weeks', cow(calving(-150), pregnant(-20)), 0, row],
    [
      'voided',
      cow(calving(-150), pregnant(-20, { id: 'wrong' })),
      -14,
      'no-heat-seen: cycling-not-seen',
      { extra: [{ kind: 'correction', date: on(-20), voids: 'wrong' }] },
    ],
  ])
})

describe('loss: from a loss to 7 days after it', () => {
  const conceived = [calving(-90), heat(-30), service(-20), pregnant(12)]
  const lost = cow(...conceived, loss(15))
  table([
    ['the day', lost, 15, 'take-care: loss'],
    ['7 days after', lost, 22, 'take-care: loss'],
    ['8 days after', lost, 23, '-'],
    ['ticked by what is done about it', cow(...conceived, loss(15), note(15)), 15, 'take-care: loss, done'],
    ['and not by the loss of a twin', cow(...conceived, loss(15), loss(15)), 15, 'take-care: loss'],
    ['barred', cow(...inCalf, bar(0), loss(10)), 12, 'take-care: loss'],
    ['on heat within the week', cow(...inCalf, loss(10), heat(15)), 15, 'take-care: loss > serve'],
    ['for the vet as well', cow(...inCalf, loss(10)), 12, 'take-care: loss > no-heat-seen'],
  ])
})

describe('contradiction, until corrected', () => {
  const row = 'take-care: contradiction'
  const born = (s: number) => ({ born: on(s) })
  table([
    ['calvings on one day', cow(calving(-60), calving(-60)), -36, '-'],
    ['calvings 1 day apart', cow(calving(-60), calving(-59)), -36, '-'],
    ['calvings 2 days apart', cow(calving(-60), calving(-58)), -36, row],
    ['calvings 199 days apart', cow(calving(-260), calving(-61)), -36, row],
    ['calvings 200 days apart', cow(calving(-260), calving(-60)), -36, '-'],
    ['a heat after she left', cow(fresh, left(-50), heat(-49)), -36, row],
    ['a heat on the day she left', cow(fresh, left(-50), heat(-50)), -36, '-'],
    ['a note after she left', cow(fresh, left(-50), note(-49)), -36, '-'],
    ['a loss before her birth', cow(born(-40), loss(-41)), -36, 'take-care: loss contradiction'],
    ['a calving at 539 days', cow(born(-599), fresh), -36, row],
    ['a calving at 540 days', cow(born(-600), fresh), -36, '-'],
    ['a check on a male', cow({ sex: 'M' }, unsure(-50)), -36, row],
    ['a note on a male', cow({ sex: 'M' }, note(-50)), -36, '-'],
    ['a birth date to come, and facts', cow(born(400), fresh, looked(-3)), 0, row],
  ])
})

describe('what the days of a row count from, by its first reason', () => {
  test.each([
    ['in-calf-heat', cow(...inCalf, heat(19)), 20, 'heat', 1],
    ['served-in-calf', cow(...inCalf, service(10)), 12, 'service', 2],
    ['overdue', cow(calving(-380), service(-300), pregnant(-250)), -3, 'service', 297],
    ['calving-unknown', cow(heat(9)), 10, 'heat', 1],
    ['calved-under-30', cow(calving(-19), heat(9)), 10, 'calving', 29],
    ['calved-30-41', cow(calving(-20), heat(9)), 10, 'calving', 30],
    ['short-interval', cow(fresh, service(0), heat(9)), 10, 'service', 10],
    ['hold', cow(fresh, hold(5), heat(9)), 10, 'heat', 1],
    ['unserved-heat', cow(fresh, heat(7)), 10, 'heat', 3],
    ['no-service-fits', cow(calving(-150), pregnant(-20)), 0, undefined, undefined],
    ['loss', cow(fresh, loss(-50), service(-20), loss(10)), 12, 'loss', 2],
    ['loss', cow(fresh, service(-20), loss(10)), 12, 'loss', 2],
    ['contradiction', cow(calving(-60), calving(-58)), 0, undefined, undefined],
  ])('%s', (reason, one, s, since, days) => {
    const row = rowAt(s, one)
    expect([row?.reasons[0], row?.since, row?.days, row?.chance]).toEqual([reason, since, days, undefined])
  })

  test('a planned service that was missed counts from nothing but a heat of these days', () => {
    const row = rowAt(11, cow(fresh, heat(-10), examined(0, { serveOn: on(10) })))
    expect([row?.reasons, row?.since]).toEqual([['unserved-heat'], undefined])
  })
})

describe('unserved-heat: too soon after the last of several services', () => {
  table([['10 days after the second', cow(fresh, bullService(-20), service(0), heat(10)), 12, '-']])
})

describe('suspect: the heat of now, and no other', () => {
  table([
    ['long gone', cow(fresh, suspect(0), pregnant(40)), 45, 'take-care: no-service-fits', { bullWeeks: 0 }],
  ])
})

describe('who is in no section but Take care', () => {
  table([
    ['no block', cow({ block: undefined }, heat(10)), 10, '-'],
    ['a block without a season', cow({ block: 'winter' }, fresh, heat(10)), 10, '-'],
    ['left', cow(fresh, left(5), heat(5)), 6, '-'],
    ['left in calf, her day gone by', cow(...inCalf, left(100)), 260, '-'],
    ['a male', cow({ sex: 'M' }), -10, '-'],
    ['not born yet', cow({ born: on(20) }), -10, '-'],
    ['dried off does not matter', cow(fresh, dry(0), heat(10)), 10, 'serve: on-heat'],
    ['moved to a block without a season', cow(fresh, heat(10), block(9, 'winter')), 10, '-'],
  ])
})

function sireWith270() {
  return {
    kind: 'stock-take' as const,
    date: on(-300),
    sire: 'S1',
    straw: 'conventional',
    count: 5,
    gestationDays: 270,
  }
}
