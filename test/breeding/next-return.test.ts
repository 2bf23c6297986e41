import { expect, test } from 'vitest'
import { nextReturn } from '../../source/breeding/next-return.ts'
import { standardPolicy } from '../../source/breeding/policy.ts'
import { calving, cow, heat, maiden, matingStart, pregnant, service, standingAt, suspect } from './support.ts'

const fresh = calving(-60)

test.each([
  ['after a service', cow(fresh, service(0)), 10, [18, 24, 22]],
  ['until its last day', cow(fresh, service(0)), 24, [18, 24, 22]],
  ['then the second round', cow(fresh, service(0)), 25, [36, 48, 44]],
  ['until its last day', cow(fresh, service(0)), 48, [36, 48, 44]],
  ['then nobody knows', cow(fresh, service(0)), 49, undefined],
  ['after a heat that was not served', cow(fresh, service(0), heat(20)), 25, [38, 44, 42]],
  ['from the last date of a service', cow(fresh, service(0), service(1)), 10, [19, 25, 23]],
  ['a suspect heat does not count', cow(fresh, service(0), suspect(10)), 12, [18, 24, 22]],
  ['a first-calver', cow({ lactation: 0 }, fresh, service(0)), 10, [18, 24, 21]],
  ['a maiden', maiden(service(0)), 10, [18, 24, 21]],
  ['in calf', cow(fresh, service(0), pregnant(35)), 40, undefined],
  ['nothing seen', cow(fresh), 0, undefined],
])('%s, on s %#', (_, one, s, expected) => {
  const found = nextReturn(standingAt(s, one), standardPolicy)
  expect(found && [found.from, found.to, found.likely].map((day) => day - matingStart)).toEqual(expected)
})
