/** Which row tells of which fact. */

/**
 * Pairs rows with facts so that as many rows as can be have one of their own (a maximum matching, found by
 * augmenting paths): a row that says little leaves the fact that only another row fits.
 *
 * @param rows in an order that does not depend on their order in the file
 * @param fits whether a fact says all that a row says
 * @returns for each row the index of its fact, or undefined
 * @example pairUp(['a', 'ab'], ['ab', 'a'], (row, fact) => fact.includes(row)) // [1, 0]
 */
export function pairUp<R, F>(
  rows: readonly R[],
  facts: readonly F[],
  fits: (row: R, fact: F) => boolean,
): (number | undefined)[] {
  const factOf: (number | undefined)[] = rows.map(() => undefined)
  const rowOf: (number | undefined)[] = facts.map(() => undefined)
  for (const [start, first] of rows.entries()) {
    const open = facts.findIndex((fact, index) => rowOf[index] === undefined && fits(first, fact))
    const cameFrom = new Map<number, number>(open < 0 ? [] : [[open, start]])
    let free = open < 0 ? undefined : open
    const queue = open < 0 ? [start] : []
    for (let next = queue.shift(); next !== undefined && free === undefined; next = queue.shift()) {
      for (const [index, fact] of facts.entries()) {
        if (cameFrom.has(index) || !fits(rows[next] as R, fact)) continue
        cameFrom.set(index, next)
        const holder = rowOf[index]
        if (holder === undefined) {
          free = index
          break
        }
        queue.push(holder)
      }
    }
    while (free !== undefined) {
      const row = cameFrom.get(free) as number
      const given = factOf[row]
      factOf[row] = free
      rowOf[free] = row
      free = row === start ? undefined : given
    }
  }
  return factOf
}
