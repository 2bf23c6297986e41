import { describe, expect, test } from 'vitest'
import { maybeByBull } from '../../source/breeding/maybe-by-bull.ts'
import {
  calving,
  cow,
  empty,
  fromBull,
  type Happening,
  heat,
  loss,
  matingStart,
  pregnant,
  standingAt,
  suspect,
  unsure,
  withBull,
} from './support.ts'

const fresh = calving(-60)
const ran = [fresh, withBull(0), fromBull(10)]

/** First season day of the time with a bull that she may be in calf from, on the morning of s. */
function maybe(s: number, ...happenings: Happening[]): number | undefined {
  const found = maybeByBull(standingAt(s, cow(...happenings)), 42)
  return found === undefined ? undefined : found.from - matingStart
}

describe('she may be in calf to a bull that nobody saw serve her', () => {
  test.each<[string, number, Happening[], number | undefined]>([
    ['never with one', 40, [fresh], undefined],
    ['since he was taken out', 40, ran, 0],
    ['he is with her still', 40, [fresh, withBull(0)], 0],
    ['he comes today', 0, [fresh, withBull(0)], undefined],
    ['the last of two', 60, [...ran, withBull(30), fromBull(40)], 30],
    ['found in calf: it is no question', 60, [...ran, pregnant(55)], undefined],
    ['a calf of then is not born yet', 310, ran, 0],
    ['a calf of then is born', 311, ran, undefined],
    ['a heat seen on his last day', 40, [...ran, heat(10)], 0],
    ['a heat seen the day after', 40, [...ran, heat(11)], undefined],
    ['a suspect heat seen the day after', 40, [...ran, suspect(11)], 0],
    ['the heat that is asked about', 40, [...ran, heat(40)], 0],
    ['and a heat before it', 40, [...ran, heat(19), heat(40)], undefined],
    ['a heat after the first time, and him again', 60, [...ran, heat(20), withBull(30), fromBull(40)], 30],
    ['empty 41 days after him', 60, [...ran, empty(51)], 0],
    ['empty 42 days after him', 60, [...ran, empty(52)], undefined],
    ['unsure 42 days after him', 60, [...ran, unsure(52)], 0],
    ['empty while he is with her', 60, [fresh, withBull(0), empty(50)], 0],
  ])('%s', (_, s, told, expected) => {
    expect(maybe(s, ...told)).toBe(expected)
  })
})

describe('only since she calved or lost her calf', () => {
  test.each<[string, Happening[], number | undefined]>([
    ['calved after him', [withBull(0), fromBull(10), calving(20)], undefined],
    ['lost after him', [fresh, withBull(0), fromBull(10), loss(20)], undefined],
    ['he left on the day she calved', [withBull(0), fromBull(20), calving(20)], 0],
    ['he came on the day she calved', [calving(20), withBull(20)], 20],
    ['he came before and was never taken out: forgotten', [withBull(0), calving(20)], undefined],
    ['no calving on record', [withBull(0), fromBull(10)], 0],
  ])('%s', (_, told, expected) => {
    expect(maybe(30, ...told)).toBe(expected)
  })
})
