import { expect, test } from 'vitest'
import { emptyTrack, scale, spread, together, weightOf } from '../../../source/breeding/forecast/track.ts'

const none = { conventional: 0, sexed: 0, beef: 0 }

test('heats within the days of the track, the rest after them', () => {
  const track = emptyTrack(none, 0, 4)
  spread(track, 2, 0.5, [0.2, 0.4, 0.3, 0.1])
  expect(track.heats).toEqual([0, 0, 0.1, 0.2])
  expect(track.later).toBeCloseTo(0.2, 12)
  spread(track, 0, 0.5, [1])
  expect(track.heats[0]).toBe(0.5)
  expect(weightOf(track, 0)).toBeCloseTo(1, 12)
  expect(weightOf(track, 1)).toBeCloseTo(0.5, 12)
})

test('what is still to come and every pregnancy are scaled, heats that are over are not', () => {
  const track = emptyTrack(none, 0, 3)
  spread(track, 0, 1, [0.2, 0.2, 0.2, 0.2])
  track.conceived[0] = 0.2
  track.inCalf = 0.1
  scale(track, 1, 2)
  expect(track).toMatchObject({ heats: [0.2, 0.4, 0.4], later: 0.4, conceived: [0.4, 0, 0], inCalf: 0.2 })
})

test('tracks laid together take no more straws', () => {
  const one = emptyTrack(none, 1, 2)
  spread(one, 0, 1, [0.25, 0.25, 0.5])
  one.conceived[1] = 0.125
  one.inCalf = 0.125
  const other = emptyTrack({ ...none, beef: 1 }, 2, 2)
  spread(other, 0, 1, [0.5, 0.25, 0.25])
  expect(together([one, other])).toEqual({
    taken: undefined,
    used: 2,
    steps: {},
    heats: [0.75, 0.5],
    later: 0.75,
    conceived: [0, 0.125],
    inCalf: 0.125,
  })
})
