/** Services of two bulls that were seen: the cows of B2 come back, those of B1 do not. All wait for their final check. */
import { type Case, cow, heat, servedByBull } from './case.ts'

/** Days ago: in the bull weeks of the closing block. */
const toB2 = [74, 74, 73, 73, 72, 71, 71, 70]
const toB1 = [74, 72, 70, 68]
/** Days until they came back; the last one has not. */
const back = [21, 22, 20, 22, 21, 19, 23]

export const bullCases: readonly Case[] = [
  ...toB2.map((days, index) => {
    const after = back[index]
    const came = after === undefined ? 'not back' : `back after ${after} days`
    return cow(
      String(201 + index),
      'final',
      `served by B2, ${came}`,
      'closing',
      190,
      servedByBull(days, 'B2'),
      ...(after === undefined ? [] : [heat(days - after)]),
    )
  }),
  ...toB1.map((days, index) =>
    cow(String(211 + index), 'final', 'served by B1, not back', 'closing', 190, servedByBull(days)),
  ),
]
