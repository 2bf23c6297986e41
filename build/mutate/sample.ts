/**
 * At most so many of a list, in its order, chosen by a seed.
 *
 * @param seed a whole number: the same one chooses the same
 * @example sample([1, 2, 3], 5, 1) // [1, 2, 3]
 */
export function sample<One>(list: readonly One[], most: number, seed: number): readonly One[] {
  let state = seed
  // mulberry32, public domain: Tommy Ettinger, 2017
  const draw = (): number => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return (mixed ^ (mixed >>> 14)) >>> 0
  }
  const drawn = list.map((one, place) => ({ one, place, lot: draw() }))
  const chosen = drawn.sort((a, b) => a.lot - b.lot).slice(0, most)
  return chosen.sort((a, b) => a.place - b.place).map(({ one }) => one)
}
