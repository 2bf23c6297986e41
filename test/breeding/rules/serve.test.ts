import { describe } from 'vitest'
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
  loss,
  maiden,
  on,
  planned,
  pregnant,
  service,
  suspect,
  table,
  toBull,
  unbar,
  unsure,
  withBull,
} from '../support.ts'

const serve = 'serve: on-heat'
const second = 'second-service: on-heat'
const fresh = calving(-60)

describe('Serve: on heat today or yesterday', () => {
  table([
    ['today', cow(fresh, heat(10)), 10, serve],
    ['yesterday', cow(fresh, heat(9)), 10, serve],
    ['two days ago', cow(fresh, heat(8)), 10, 'take-care: unserved-heat'],
    ['suspect', cow(fresh, suspect(10)), 10, 'serve: on-heat (suspect)'],
    ['suspect, then sure within a day', cow(fresh, suspect(9), heat(10)), 10, serve],
    [
      'suspect for two days, then served',
      cow(fresh, suspect(8), suspect(9), service(10)),
      10,
      `${serve}, done`,
    ],
    ['a calf that the bull served', maiden({ born: on(-300) }, bullService(-15), heat(10)), 10, '-'],
    ['at 329 days', maiden({ born: on(-319) }, bullService(-15), heat(10)), 10, '-'],
    ['at 330 days', maiden({ born: on(-320) }, bullService(-15), heat(10)), 10, `${serve} (late-return)`],
    ['suspect for two days, then sure', cow(fresh, suspect(8), suspect(9), heat(10)), 10, serve],
    ['suspect two days ago, sure yesterday', cow(fresh, suspect(8), heat(9)), 10, serve],
    [
      'suspect for three days, today too',
      cow(fresh, suspect(8), suspect(9), suspect(10)),
      10,
      `${serve} (suspect)`,
    ],
    [
      'suspect for three days, to yesterday',
      cow(fresh, suspect(7), suspect(8), suspect(9)),
      10,
      `${serve} (suspect)`,
    ],
    ['suspect yesterday and the day before', cow(fresh, suspect(8), suspect(9), examined(0)), 10, '-'],
    ['a maiden', maiden(heat(10)), 10, serve],
    ['a maiden not ready', maiden({ ready: false }, heat(10)), 10, '-'],
    ['barred', cow(fresh, bar(0), heat(10)), 10, '-'],
    ['barred and lifted', cow(fresh, bar(0), unbar(1), heat(10)), 10, serve],
    [
      'in calf',
      cow(fresh, pregnant(-1, { foetalAge: 40 }), heat(10)),
      10,
      'take-care: in-calf-heat > pregnancy-check',
    ],
    ['left to the bull by hand', cow(fresh, toBull(0), heat(10)), 10, 'sweep-bull: by-hand'],
    ['left to the bull on s -35', cow(fresh, toBull(-35), heat(10)), 10, 'sweep-bull: by-hand'],
    ['left to the bull before s -35: last season', cow(fresh, toBull(-36), heat(10)), 10, serve],
  ])
})

describe('Serve: calved 42 days or more', () => {
  const heatOn10 = heat(10)
  table([
    ['29 days', cow(calving(-19), heatOn10), 10, 'take-care: calved-under-30'],
    ['30 days', cow(calving(-20), heatOn10), 10, 'take-care: calved-30-41'],
    ['41 days', cow(calving(-31), heatOn10), 10, 'take-care: calved-30-41'],
    ['42 days', cow(calving(-32), heatOn10), 10, serve],
    ['42 days today, the heat came at 41', cow(calving(-32), heat(9)), 10, serve],
    ['no calving date', cow(heatOn10), 10, 'take-care: calving-unknown'],
    [
      'a late loss counts as a calving',
      cow(calving(-300), service(-160), loss(-25), heat(10)),
      10,
      'take-care: calved-30-41',
    ],
    ['an early loss does not', cow(fresh, service(-45), loss(-10), heat(10)), 10, serve],
    ['a maiden’s too', maiden(service(-130), loss(-5), heat(10)), 10, 'take-care: calved-under-30'],
    ['a maiden’s, 42 days later', maiden(service(-152), loss(-32), heat(10)), 10, serve],
    ['a maiden’s early loss does not', maiden(service(-124), loss(-5), heat(10)), 10, serve],
  ])
})

describe('Serve: in the AI weeks only', () => {
  table([
    ['s -1', cow(fresh, heat(-20), heat(-1)), -1, '-'],
    ['s 0, seen on s -1', cow(fresh, heat(-1)), 0, serve],
    ['s A', cow(fresh, heat(41)), 41, serve],
    ['s A+1', cow(fresh, heat(41)), 42, 'sweep-bull: window'],
    ['s 62 of nine weeks', cow(fresh, heat(62)), 62, serve, { aiWeeks: 9, bullWeeks: 0 }],
    ['s 34 of five weeks', cow(fresh, heat(34)), 34, serve, { aiWeeks: 5, bullWeeks: 4 }],
    ['s 35 of five weeks', cow(fresh, heat(35)), 35, 'sweep-bull: window', { aiWeeks: 5, bullWeeks: 4 }],
    ['s 83 of twelve weeks', cow(fresh, heat(83)), 83, serve, { aiWeeks: 12, bullWeeks: 0 }],
  ])
})

describe('chances', () => {
  table([
    ['a service on s -35 is a chance', cow(fresh, service(-35), heat(0)), 0, `${second} (late-return)`],
    ['one on s -36 is none', cow(calving(-90), service(-36), heat(0)), 0, `${serve} (late-return)`],
    ['a bull service is none', cow(fresh, bullService(0), heat(21)), 21, serve],
    ['a bull service 25 days ago', cow(fresh, bullService(0), heat(25)), 25, `${serve} (late-return)`],
    ['unsure to a bull service', cow(fresh, bullService(-20), unsure(15), heat(20)), 20, `${serve} (unsure)`],
    ['a loss does not give it back', cow(fresh, service(-20), loss(10), heat(20)), 20, second],
    ['two services of one heat are one', cow(fresh, service(0), service(1), heat(22)), 22, second],
    [
      'two services 2 days apart are two',
      cow(fresh, service(0), service(2), heat(22)),
      22,
      'sweep-bull: chances',
    ],
    ['AI and bull in one heat are a chance', cow(fresh, service(0), bullService(1), heat(22)), 22, second],
    [
      'two used: nothing is proposed',
      cow(fresh, service(0), service(20), heat(40)),
      40,
      'sweep-bull: chances',
    ],
    [
      'three chances by policy',
      cow(fresh, service(0), service(20), heat(40)),
      40,
      second,
      { policy: { chances: 3 } },
    ],
  ])
})

describe('Second service: days after the last service', () => {
  const back = (k: number) => cow(fresh, service(0), heat(k))
  table([
    ['day 1 is the same heat', back(1), 1, '-'],
    ['day 2', back(2), 2, 'take-care: short-interval'],
    ['day 17', back(17), 17, 'take-care: short-interval'],
    ['day 18', back(18), 18, second],
    ['day 24', back(24), 24, second],
    ['day 25', back(25), 25, `${second} (late-return)`],
    ['day 25, checked empty', cow(fresh, service(0), empty(30), heat(31)), 31, second],
    ['day 31, unsure', cow(fresh, service(0), unsure(30), heat(31)), 31, `${second} (unsure)`],
    [
      'day 25, a check that does not count',
      cow(fresh, service(0), unsure(24), heat(25)),
      25,
      `${second} (late-return unsure)`,
    ],
    ['suspect', cow(fresh, service(0), suspect(20)), 20, 'second-service: on-heat (suspect)'],
    ['none since a loss', cow(fresh, service(-30), loss(0), heat(20)), 20, second],
    ['yesterday, day 17 then', back(17), 18, 'take-care: short-interval > repeat-heat-watch'],
  ])
})

describe('with a bull before, and nobody has looked since', () => {
  const late = 'serve: on-heat (late-return)'
  const stayed = [withBull(-40), fromBull(-20)]
  table([
    ['on heat', cow(fresh, ...stayed, heat(10)), 10, late],
    ['on heat yesterday', cow(fresh, ...stayed, heat(9)), 10, late],
    ['24 days after he came', cow(fresh, withBull(-14), fromBull(5), heat(10)), 10, serve],
    ['25 days after he came', cow(fresh, withBull(-15), fromBull(5), heat(10)), 10, late],
    ['a heat after he left', cow(fresh, ...stayed, heat(-11), heat(10)), 10, serve],
    ['a suspect one', cow(fresh, ...stayed, suspect(-11), heat(10)), 10, late],
    ['a heat while he was there', cow(fresh, ...stayed, heat(-25), heat(10)), 10, late],
    ['empty 42 days after he left', cow(fresh, withBull(-55), fromBull(-40), empty(2), heat(10)), 10, serve],
    ['empty too soon', cow(fresh, withBull(-55), fromBull(-39), empty(2), heat(10)), 10, late],
    ['calved since', cow(withBull(-200), fromBull(-100), fresh, heat(10)), 10, serve],
    ['left open over a calving: forgotten', cow(withBull(-200), fresh, heat(10)), 10, serve],
    ['by the clock', cow(fresh, ...stayed, planned(0, 10)), 10, 'serve: fixed-time (late-return)'],
  ])
})

describe('a fixed-time service planned for the day', () => {
  const onDay10 = planned(0, 10)
  const missedPlan = 'take-care: unserved-heat'
  table([
    ['Serve', cow(fresh, onDay10), 10, 'serve: fixed-time'],
    ['the day before', cow(fresh, onDay10), 9, '-'],
    ['the day after, not done', cow(fresh, onDay10), 11, 'take-care: unserved-heat'],
    ['three days after, not done', cow(fresh, onDay10), 13, 'take-care: unserved-heat'],
    ['four days after, not done', cow(fresh, onDay10), 14, '-'],
    ['the day after, done', cow(fresh, onDay10, service(10)), 11, '-'],
    ['the day after, served the day before', cow(fresh, onDay10, service(9)), 11, '-'],
    ['of two that were due the later', cow(fresh, planned(0, 10), planned(11, 20)), 23, missedPlan],
    ['moved to an earlier day: the old plan is gone', cow(fresh, planned(0, 20), planned(1, 10)), 21, '-'],
    ['on heat as well', cow(fresh, onDay10, heat(10)), 10, 'serve: on-heat fixed-time'],
    ['moved to a later day: the old plan is gone', cow(fresh, planned(0, 10), planned(5, 12)), 10, '-'],
    ['nor is it missed', cow(fresh, planned(0, 10), planned(5, 12)), 11, '-'],
    ['moved on its own day', cow(fresh, planned(0, 10), planned(10, 12)), 11, '-'],
    ['a new plan after the old one was due', cow(fresh, planned(0, 10), planned(11, 20)), 12, missedPlan],
    ['found in calf since: no plan', cow(fresh, service(-30), planned(0, 10), pregnant(5)), 10, '-'],
    ['nor is that one missed', cow(fresh, service(-30), planned(0, 10), pregnant(5)), 11, '-'],
    ['planned today: nothing moves until midnight', cow(fresh, heat(0), planned(10, 10)), 10, '-'],
    [
      'second service, 18 days',
      cow(fresh, service(-8), onDay10),
      10,
      'second-service: fixed-time (late-return)',
    ],
    ['after a loss', cow(fresh, service(-30), loss(-10), onDay10), 10, 'second-service: fixed-time'],
    ['served two days ago', cow(fresh, service(8), onDay10), 10, 'take-care: short-interval'],
    ['served yesterday', cow(fresh, service(9), onDay10), 10, '-'],
    [
      'a bull was there yesterday',
      cow(fresh, bullService(9), onDay10),
      10,
      'serve: fixed-time (late-return)',
    ],
    ['in calf', cow(fresh, pregnant(5, { foetalAge: 40 }), onDay10), 10, '-'],
    ['calved 29 days', cow(calving(-19), onDay10), 10, 'take-care: calved-under-30'],
    ['calved 41 days', cow(calving(-31), onDay10), 10, 'take-care: calved-30-41'],
    ['no calving date', cow(onDay10), 10, 'take-care: calving-unknown'],
    ['on hold', cow(fresh, hold(5), onDay10), 10, 'take-care: hold > serve'],
    ['outside the AI weeks', cow(fresh, planned(30, 45)), 45, 'sweep-bull: window'],
    ['barred', cow(fresh, bar(5), onDay10), 10, '-'],
  ])
})
