import { describe, expect, test } from 'vitest'
import {
  bar,
  block,
  bullService,
  calving,
  cow,
  empty,
  fromBull,
  heat,
  hold,
  loss,
  maiden,
  on,
  pregnant,
  rowAt,
  service,
  suspect,
  table,
  toBull,
  withBull,
} from '../support.ts'

const fresh = calving(-60)

describe('in the AI weeks: two chances used, and returned or checked empty', () => {
  const row = 'sweep-bull: chances'
  const long = { aiWeeks: 12, bullWeeks: 3 }
  table([
    ['not back yet', cow(fresh, service(0), service(10)), 27, '-'],
    ['back on day 17: perhaps no heat', cow(fresh, service(0), service(10), heat(27)), 27, '-'],
    ['back on day 18', cow(fresh, service(0), service(10), heat(28)), 28, row],
    [
      'a suspect return',
      cow(fresh, service(0), service(10), suspect(28)),
      28,
      'repeat-heat-watch: since-service',
    ],
    ['checked empty', cow(fresh, service(0), service(5), empty(35)), 36, row],
    ['checked too early', cow(fresh, service(0), service(5), empty(34)), 35, 'pregnancy-check: due'],
    ['in calf', cow(fresh, service(0), service(5), pregnant(35)), 36, '-'],
    [
      'lost again: open for certain',
      cow(fresh, service(0), service(5), pregnant(35), loss(50)),
      60,
      row,
      long,
    ],
    ['one chance used', cow(fresh, service(0), heat(21)), 30, '-'],
  ])
})

describe('in the AI weeks: left by hand, or ready in the bull weeks', () => {
  table([
    ['by hand', cow(fresh, toBull(3)), 10, 'sweep-bull: by-hand'],
    ['a maiden after a late loss', maiden(service(-130), loss(10)), 20, 'sweep-bull: late'],
    ['a maiden after an early loss', maiden(service(-100), loss(10)), 20, 'no-heat-seen: cycling-not-seen'],
    [
      'by hand today: moves nothing until midnight',
      cow(fresh, heat(10), toBull(10)),
      10,
      'serve: on-heat, done',
    ],
    [
      'by hand, and returned twice',
      cow(fresh, service(0), service(10), heat(28), toBull(29)),
      30,
      'sweep-bull: chances by-hand',
    ],
    ['42 days calved on A', cow(calving(-1)), 30, '-'],
    ['42 days calved on A+1', cow(calving(0)), 30, 'sweep-bull: late'],
    ['42 days calved on B', cow(calving(20)), 30, 'sweep-bull: late'],
    ['42 days calved on B+1', cow(calving(21)), 30, '-'],
    ['5+4 weeks: on A+1', cow(calving(-7)), 30, 'sweep-bull: late', { aiWeeks: 5, bullWeeks: 4 }],
    ['no bull weeks', cow(calving(21)), 30, '-', { aiWeeks: 9, bullWeeks: 0 }],
    ['maidens are never late', maiden(heat(0)), 10, '-'],
    ['before mating', cow(calving(-3)), -1, 'heat-record: none-seen'],
  ])
})

describe('in the bull weeks: everyone not placed above', () => {
  const window = 'sweep-bull: window'
  table([
    ['last day of AI', cow(fresh, heat(30)), 41, '-'],
    ['A+1', cow(fresh, heat(30)), 42, window],
    ['B', cow(fresh, heat(30)), 62, window],
    ['B+1', cow(fresh, heat(30)), 63, '-'],
    ['5+4 weeks, A', cow(fresh, heat(30)), 34, '-', { aiWeeks: 5, bullWeeks: 4 }],
    ['5+4 weeks, A+1', cow(fresh, heat(30)), 35, window, { aiWeeks: 5, bullWeeks: 4 }],
    ['a maiden', maiden(), 42, window],
    ['a maiden not ready', maiden({ ready: false }), 42, '-'],
    ['barred', cow(fresh, bar(0)), 42, '-'],
    ['in calf', cow(fresh, service(-5), pregnant(30)), 42, '-'],
    ['served lately', cow(fresh, service(38)), 42, window],
    ['no calving date', cow(), 42, window],
  ])
})

describe('keep from the bull', () => {
  const kept = 'sweep-bull: keep-from-bull'
  table([
    ['42 days calved on B', cow(calving(20)), 50, 'sweep-bull: window'],
    ['42 days calved on B+1', cow(calving(21)), 50, kept],
    ['after a late loss', cow(calving(-200), service(-110), loss(30)), 50, kept],
    ['a calf that the bull served', maiden({ born: on(-279) }, bullService(35)), 50, kept],
    ['at 330 days', maiden({ born: on(-280) }, bullService(35)), 50, 'sweep-bull: window'],
    ['on hold', cow(fresh, hold(45)), 50, kept],
    ['last day of the hold', cow(fresh, hold(45, 50)), 50, kept],
    ['hold over', cow(fresh, hold(45, 49)), 50, 'sweep-bull: window'],
    ['a hold of today', cow(fresh, hold(50)), 50, 'sweep-bull: window'],
    ['running with him is no tick', cow(fresh, withBull(42), hold(45)), 50, kept],
    ['taken from him today is', cow(fresh, withBull(42), hold(45), fromBull(50)), 50, `${kept}, done`],
  ])
})

describe('ticks: with a bull on the day, or a natural service dated on it', () => {
  const done = 'sweep-bull: window, done'
  table([
    ['with the bull since yesterday', cow(fresh, withBull(49)), 50, done],
    ['turned out today', cow(fresh, withBull(50)), 50, done],
    ['taken from him yesterday', cow(fresh, withBull(42), fromBull(49)), 50, 'sweep-bull: window'],
    ['taken from him today', cow(fresh, withBull(42), fromBull(50)), 50, done],
    [
      'another bull still runs',
      cow(fresh, withBull(42, { bull: 'B1' }), withBull(43, { bull: 'B2' }), fromBull(49, { bull: 'B1' })),
      50,
      done,
    ],
    ['his service today', cow(fresh, bullService(50)), 50, done],
    ['AI today', cow(fresh, service(50)), 50, done],
    ['AI yesterday', cow(fresh, service(49)), 50, 'sweep-bull: window'],
    ['in the AI weeks too', cow(fresh, toBull(0), withBull(5)), 10, 'sweep-bull: by-hand, done'],
  ])
})

describe('bull-return: a sure heat 18-24 days after his service', () => {
  const back = (k: number) => cow(fresh, bullService(38), heat(38 + k))
  const warned = 'sweep-bull: window (bull-return)'
  table([
    ['day 17', back(17), 58, 'repeat-heat-watch: since-service'],
    ['day 17, past the watch', cow(fresh, bullService(36), heat(53)), 61, 'sweep-bull: window'],
    ['day 18', back(18), 58, warned],
    ['day 24', back(24), 62, warned],
    ['day 25', cow(fresh, bullService(36), heat(61)), 61, 'sweep-bull: window'],
    ['suspect', cow(fresh, bullService(36), suspect(56)), 61, 'sweep-bull: window'],
    ['after AI', cow(fresh, service(36), heat(56)), 61, 'sweep-bull: window'],
    ['served again by him', cow(fresh, bullService(40), bullService(60)), 61, warned],
    ['in the AI weeks not here', cow(fresh, toBull(-1), bullService(0), heat(20)), 20, 'sweep-bull: by-hand'],
  ])
})

describe('days count from her service of this season, else from calving', () => {
  test.each([
    ['served on s -35', cow(calving(-100), service(-35), heat(-10), toBull(0)), 'service', 45],
    ['served on s -36', cow(calving(-100), service(-36), heat(-10), toBull(0)), 'calving', 110],
    ['never served', cow(calving(-100), toBull(0)), 'calving', 110],
    ['after a late loss', cow(calving(-300), service(-160), loss(-20), toBull(0)), 'loss', 30],
    ['a maiden', maiden(toBull(0)), undefined, undefined],
  ])('%s', (_, one, since, days) => {
    const row = rowAt(10, one)
    expect([row?.section, row?.since, row?.days, row?.chance]).toEqual(['sweep-bull', since, days, undefined])
  })
})

describe('two blocks', () => {
  const seasons = [{ block: 'spring' }, { block: 'autumn', matingStart: on(40) }]
  table([
    ['her own block’s phase', cow(fresh), 45, 'sweep-bull: window', { seasons }],
    [
      'moved: the other block’s',
      cow(fresh, heat(45), block(45, 'autumn')),
      45,
      'serve: on-heat',
      { seasons },
    ],
    [
      'the day before she is moved',
      cow(fresh, heat(45), block(46, 'autumn')),
      45,
      'sweep-bull: window',
      { seasons },
    ],
  ])
})
