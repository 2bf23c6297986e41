import fc from 'fast-check'
import { expect, test } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import type { Fact } from '../../../source/breeding/facts.ts'
import { checkFacts } from '../../../source/herd/check.ts'
import { counts, cow, type Files, herd, imported, refusals } from './support/herd.ts'
import { fileOf, type Tables, tables } from './support/tables.ts'

const start = () =>
  herd(
    cow('1', { born: '2021-02-01', internationalId: 'I1' }),
    { about: '1', date: '2026-05-01', kind: 'heat', how: 'paint', certainty: 'sure' },
    { about: '1', date: '2026-05-01', kind: 'calving', ease: 1 },
    cow('2'),
    {
      about: 'herd',
      date: '2026-05-01',
      kind: 'stock-take',
      sire: 'S17',
      straw: 'sexed',
      flask: '1',
      count: 20,
    },
  )

const filesOf = (typed: Tables): Files =>
  Object.fromEntries(Object.entries(typed).map(([name, rows]) => [name, fileOf(rows)]))

test('what is planned is always accepted by the schema, and each row counts once', () => {
  fc.assert(
    fc.property(tables, (typed) => {
      const result = imported(start(), filesOf(typed))
      expect(result.problems).toEqual([])
      expect(checkFacts(result.after)).toEqual([])
      for (const [name, numbers] of Object.entries(counts(result)))
        expect(numbers.reduce((sum, each) => sum + each, 0)).toBe((typed[name]?.length ?? 0) - 1)
    }),
    { numRuns: 250 },
  )
})

test('reading files twice adds nothing, whatever stood in the herd before', () => {
  fc.assert(
    fc.property(tables, tables, (before, typed) => {
      const earlier = imported(start(), filesOf(before)).after
      const once = imported(earlier, filesOf(typed))
      const twice = imported(once.after, filesOf(typed))
      expect(twice.facts).toEqual([])
      expect(refusals(twice)).toEqual(refusals(once))
      for (const numbers of Object.values(counts(twice))) expect([numbers[0], numbers[2]]).toEqual([0, 0])
    }),
    { numRuns: 300 },
  )
})

/** Facts with what they say in the place of ids that were made up on the way. */
function withoutMadeIds(facts: readonly object[]): unknown[] {
  const said = new Map<string, string>()
  for (const fact of facts as readonly { id?: string }[])
    if (fact.id?.startsWith('n')) said.set(fact.id, JSON.stringify({ ...fact, id: 'made' }))
  return JSON.parse(JSON.stringify(facts), (_key, value: unknown) =>
    typeof value === 'string' ? (said.get(value) ?? value) : value,
  )
}

test('the order of the rows does not matter', () => {
  const shuffled = tables.chain((typed) =>
    fc
      .tuple(
        ...Object.values(typed).map(([header = [], ...rows]) =>
          fc
            .shuffledSubarray(
              rows.map((row) => row),
              { minLength: rows.length },
            )
            .map((mixed) => [header, ...mixed]),
        ),
      )
      .map(
        (mixed) =>
          [typed, Object.fromEntries(Object.keys(typed).map((name, place) => [name, mixed[place]]))] as const,
      ),
  )
  fc.assert(
    fc.property(shuffled, ([typed, mixed]) => {
      const one = imported(start(), filesOf(typed))
      const other = imported(start(), filesOf(mixed as Tables))
      expect(withoutMadeIds(other.facts)).toEqual(withoutMadeIds(one.facts))
      expect(counts(other)).toEqual(counts(one))
    }),
    { numRuns: 250 },
  )
})

test('a correction carries the date of the fact it voids and names the one in its place', () => {
  fc.assert(
    fc.property(tables, (typed) => {
      const { after } = imported(start(), filesOf(typed))
      const byId = new Map(after.map((fact) => [fact.id, fact]))
      for (const fact of after) {
        if (fact.kind !== 'correction') continue
        expect(fact.date).toBe(byId.get(fact.voids)?.date)
        expect(byId.get(fact.with ?? '')).toBeDefined()
        expect(openBook(after).voided.has(fact.voids)).toBe(true)
      }
    }),
  )
})

/** A few bytes of a file changed, doubled, cut out or swapped for those that matter in a CSV. */
const damage = fc.array(
  fc.tuple(
    fc.nat(4000),
    fc.constantFrom('cut', 'double', 'put'),
    fc.constantFrom('"', ',', ';', '\n', '\r', '\0', '\u00ff', '=', '9', '-'),
  ),
  { minLength: 1, maxLength: 6 },
)

function damaged(bytes: Buffer, hits: readonly (readonly [number, string, string])[]): Buffer {
  let text = bytes.toString('latin1')
  for (const [where, how, what] of hits) {
    const place = where % (text.length + 1)
    if (how === 'cut') text = text.slice(0, place) + text.slice(place + 1 + (where % 7))
    else if (how === 'double') text = text.slice(0, place) + text.slice(place % 11, place)
    else text = text.slice(0, place) + what + text.slice(place + 1)
  }
  return Buffer.from(text, 'latin1')
}

test('1,000 damaged files: each is read or refused with a reason, and never makes a herd that the schema refuses', () => {
  fc.assert(
    fc.property(tables, damage, (typed, hits) => {
      const files = Object.fromEntries(
        Object.entries(filesOf(typed)).map(([name, bytes]) => [name, damaged(bytes as Buffer, hits)]),
      )
      const once = imported(start(), files)
      for (const code of refusals(once)) expect(code).toMatch(/^[a-z-]+ \w+\.csv/)
      expect(checkFacts(once.after)).toEqual([])
      expect(imported(once.after as Fact[], files).facts).toEqual([])
    }),
    { numRuns: 1000, seed: 20260601 },
  )
})
