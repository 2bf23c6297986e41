import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pairUp } from '../../../source/exchange/csv/import/match.ts'

/** The largest number of rows that can have a fact of their own, by trying everything. */
function most(rows: readonly (readonly boolean[])[], taken: ReadonlySet<number> = new Set()): number {
  const [row, ...rest] = rows
  if (row === undefined) return 0
  const without = most(rest, taken)
  return row.reduce(
    (best, fits, fact) =>
      fits && !taken.has(fact) ? Math.max(best, 1 + most(rest, new Set([...taken, fact]))) : best,
    without,
  )
}

test('as many rows as can be have a fact of their own, and it fits', () => {
  const graph = fc.tuple(fc.nat(5), fc.nat(5)).chain(([rows, facts]) =>
    fc.array(fc.array(fc.boolean(), { minLength: facts, maxLength: facts }), {
      minLength: rows,
      maxLength: rows,
    }),
  )
  fc.assert(
    fc.property(graph, (rows) => {
      const facts = [...(rows[0] ?? []).keys()]
      const paired = pairUp(rows, facts, (row, fact) => row[fact] === true)
      const given = paired.filter((fact) => fact !== undefined)
      expect(new Set(given).size).toBe(given.length)
      for (const [row, fact] of paired.entries()) if (fact !== undefined) expect(rows[row]?.[fact]).toBe(true)
      expect(given.length).toBe(most(rows))
    }),
    { numRuns: 500 },
  )
})

test('thousands of equal rows are paired', () => {
  const many = Array.from({ length: 3000 }, () => 'x')
  expect(pairUp(many, many, (row, fact) => row === fact).filter((fact) => fact === undefined)).toEqual([])
})
