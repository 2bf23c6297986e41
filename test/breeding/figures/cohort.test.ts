import { expect, test } from 'vitest'
import {
  type Animal,
  bar,
  bullService,
  calving,
  cow,
  left,
  maiden,
  matingStart,
  on,
  service,
} from '../support.ts'
import { seasonAt } from './herd.ts'

/** Numbers of the cohort, with the season days of their services. */
const members = (s: number, ...animals: readonly Animal[]): readonly string[] =>
  seasonAt(s, animals).counted.members.map(({ animal, services }) =>
    [animal.number, ...services.map(({ service: { day } }) => day - matingStart)].join(' '),
  )

test('services count from season day -35 to the last day with the bull', () => {
  const one = cow(calving(-90), service(-36), bullService(62))
  const two = cow(calving(-90), service(-35), bullService(63))
  expect(members(100, one, two)).toEqual(['1 62', '2 -35'])
})

test('a maiden is of it when she is a year old at the mating start, or was served', () => {
  expect(
    members(
      50,
      maiden({ born: on(-365) }),
      maiden({ born: on(-364) }),
      maiden({ born: on(-364) }, service(40)),
      maiden(),
      maiden({ ready: false, born: on(-500) }),
      maiden({ ready: false, born: on(-500) }, service(40)),
      cow({ ready: false }, calving(-60)),
    ),
  ).toEqual(['1', '3 40', '4', '6 40', '7'])
})

test('who leaves or is barred after the mating start stays in it', () => {
  const herd = [
    cow(calving(-60), left(-1)),
    cow(calving(-60), left(1)),
    cow(calving(-60), bar(-1)),
    cow(calving(-60), bar(1)),
  ]
  expect(members(50, ...herd)).toEqual(['2', '4'])
  expect(members(-5, ...herd)).toEqual(['1', '2', '3', '4'])
})
