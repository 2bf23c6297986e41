import { describe, expect, test } from 'vitest'
import {
  bar,
  bullService,
  calving,
  cow,
  empty,
  type Happening,
  heat,
  hold,
  looked,
  loss,
  maiden,
  pregnant,
  rowAt,
  service,
  suspect,
  table,
  toBull,
} from '../support.ts'

const watch = 'repeat-heat-watch: since-service'
const watchHeat = 'repeat-heat-watch: since-heat'
const fresh = calving(-60)

describe('18-24 days after a service', () => {
  const served = cow(fresh, service(3))
  table([
    ['day 17', served, 20, '-'],
    ['day 18', served, 21, watch],
    ['day 21', served, 24, watch],
    ['day 24', served, 27, watch],
    ['day 25', served, 28, '-'],
    ['a maiden, day 18', maiden(service(3)), 21, watch],
    ['a maiden, day 25', maiden(service(3)), 28, '-'],
    ['the second service is watched like the first', cow(fresh, service(0), service(21)), 42, watch],
    ['so is a third beyond the chances', cow(fresh, service(0), service(10), service(21)), 40, watch],
    ['looked yesterday, none seen', cow(fresh, service(3), looked(23)), 24, watch],
    ['looked today: ticked', cow(fresh, service(3), looked(24)), 24, `${watch}, done`],
    ['barred', cow(fresh, service(3), bar(10)), 24, '-'],
    ['on hold', cow(fresh, service(3), hold(10)), 24, watch],
  ])
})

describe('in every phase but closed', () => {
  table([
    ['before: served on s -30', cow(fresh, service(-30)), -9, watch],
    ['bull', cow(fresh, service(41)), 62, watch],
    ['a bull service', cow(fresh, bullService(45)), 66, watch],
    ['closing', cow(fresh, service(41)), 63, watch],
    ['last day of closing, s B+84', cow(fresh, bullService(125)), 146, watch],
    ['closed, s B+85', cow(fresh, bullService(126)), 147, 'pregnancy-check: final'],
    ['closed before s -35', cow(fresh, service(-57)), -36, '-'],
    ['opens on s -35', cow(fresh, service(-57)), -35, watch],
  ])
})

describe('what ends the wait for a return', () => {
  table([
    ['a suspect heat does not', cow(fresh, service(3), suspect(21)), 24, watch],
    ['a sure heat on day 17 is no return', cow(fresh, service(3), heat(20)), 24, watch],
    ['one on day 18 is', cow(fresh, service(3), heat(21)), 24, 'take-care: unserved-heat'],
    [
      'a check too early for the service does not',
      cow(fresh, service(3), pregnant(10, { foetalAge: 60 }), empty(20)),
      24,
      watch,
    ],
    [
      'found in calf to it does',
      cow(fresh, service(3), pregnant(23, { serviceDate: '2026-05-04' })),
      24,
      '-',
    ],
    ['a loss does', cow(fresh, service(3), loss(16)), 24, '-'],
  ])
})

describe('18-24 days after a sure heat that was not served', () => {
  const seen = cow(fresh, heat(-20))
  table([
    ['day 17', seen, -3, '-'],
    ['day 18, before', seen, -2, watchHeat],
    ['day 20, on the mating start', seen, 0, watchHeat],
    ['day 24', seen, 4, watchHeat],
    ['day 25', seen, 5, '-'],
    ['a suspect heat since changes nothing', cow(fresh, heat(-20), suspect(-5)), 0, watchHeat],
    ['a suspect heat alone is not waited on', cow(fresh, suspect(-20)), 0, 'no-heat-seen: cycling-not-seen'],
    ['calved 25 days: watched like all', cow(calving(-25), heat(-20)), 0, watchHeat],
    ['barred', cow(fresh, heat(-20), bar(-10)), 0, '-'],
    ['left to the bull by hand', cow(fresh, heat(-20), toBull(-1)), 0, 'sweep-bull: by-hand'],
    ['her bull weeks have come', cow(fresh, heat(24)), 45, 'sweep-bull: window'],
    ['a return that was not served', cow(fresh, service(-15), heat(6)), 27, watchHeat],
    ['closing', cow(fresh, heat(50)), 70, '-'],
  ])
})

test('the days count from the service, or from the heat', () => {
  const counted = (s: number, ...given: readonly Happening[]) => {
    const row = rowAt(s, cow(fresh, ...given))
    return [row?.since, row?.days]
  }
  expect(counted(20, service(0))).toEqual(['service', 20])
  expect(counted(0, heat(-20))).toEqual(['heat', 20])
})
