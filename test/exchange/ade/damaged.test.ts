/** Files of events with a few bytes or values changed: each is read or refused with a reason, and nothing else happens. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Fact } from '../../../source/breeding/facts.ts'
import { checkFacts } from '../../../source/herd/check.ts'
import { cow, herd, refusals } from '../csv/support/herd.ts'
import { herds } from '../csv/support/herds.ts'
import { exported, imported } from './support/files.ts'

/** What may stand anywhere in a damaged file. */
const odd = fc.constantFrom<unknown>(
  null,
  '',
  0,
  -1,
  1e9,
  true,
  [],
  {},
  [null],
  { id: '412' },
  412,
  'x'.repeat(11_000),
  '=cmd|x',
  'Pregnant',
  'RunWithBull',
  '1900-01-01T10:00:00Z',
  '2100-01-01T10:00:00Z',
  '2026-13-01',
  '2026-05-01',
  'icarReproHeatEventResource',
)
const hit = fc.tuple(fc.nat(100_000), fc.constantFrom('put', 'drop', 'twice'), odd)

/** Changes one value somewhere in a document: puts another one there, drops it, or has an event twice. */
function damage(document: unknown, [where, how, value]: readonly [number, string, unknown]): void {
  let place = document as Record<string, unknown>
  let left = where
  for (;;) {
    if (Array.isArray(place) && how === 'twice' && place.length > 0) {
      place.push(structuredClone(place[left % place.length]))
      return
    }
    const keys = Object.keys(place)
    const key = keys[left % Math.max(1, keys.length)]
    if (key === undefined) return
    left = Math.floor(left / keys.length)
    const inside = place[key]
    if (typeof inside === 'object' && inside !== null && left % 5 > 0)
      place = inside as Record<string, unknown>
    else {
      if (how === 'drop') delete place[key]
      else place[key] = structuredClone(value)
      return
    }
  }
}

const start = () => herd(cow('412'), cow('413', { born: '2024-01-01' }))

/** Whether no two animals bear the same tag: whose an event is could not be told, and the forms refuse such a tag. */
function tagsDiffer(facts: readonly Fact[]): boolean {
  const tags = facts.flatMap((fact) =>
    fact.kind === 'animal' && fact.officialId !== undefined ? [fact.officialId] : [],
  )
  return new Set(tags).size === tags.length
}

test('1,000 damaged files of events: read or refused with a reason, read twice nothing more, the herd stays valid', () => {
  let recorded = 0
  fc.assert(
    fc.property(herds, fc.array(hit, { maxLength: 6 }), (facts, hits) => {
      fc.pre(tagsDiffer(facts))
      const files = Object.fromEntries(
        Object.entries(exported(facts)).map(([name, text]) => {
          const document = JSON.parse(String(text)) as unknown
          for (const one of hits) damage(document, one)
          return [name, document]
        }),
      )
      const once = imported(start(), files)
      expect(checkFacts(once.after)).toEqual([])
      for (const code of refusals(once)) expect(code).toMatch(/^[a-z-]+ /)
      expect(imported(once.after, files).facts).toEqual([])
      recorded += once.facts.length
    }),
    { numRuns: 1000 },
  )
  expect(recorded).toBeGreaterThan(1000)
})

test('a collection that was cut off anywhere is refused by its name, and nothing of the folder is recorded', () => {
  fc.assert(
    fc.property(herds, fc.nat(), (facts, where) => {
      const whole = Object.entries(exported(facts)) as [string, string][]
      const cut = whole.map(([name, text], place) =>
        place === where % whole.length
          ? [name, text.trimEnd().slice(0, -1 - (where % (text.length - 2)))]
          : [name, text],
      )
      const result = imported(start(), Object.fromEntries(cut))
      expect(result.facts).toEqual([])
      expect(refusals(result)).toEqual([`ade-not-json ${whole[where % whole.length]?.[0]}`])
    }),
    { numRuns: 200 },
  )
})

test('a text that the herd file cannot take refuses its own row only', () => {
  const resource = { resourceType: 'icarAnimalCoreResource', gender: 'Female', specie: 'Cattle' }
  const named = (id: string) => ({ ...resource, identifier: { id, scheme: 'any' } })
  const heat = {
    resourceType: 'icarReproHeatEventResource',
    id: 'e1',
    animal: { id: '414', scheme: 'any' },
    eventDateTime: '2026-05-01T05:10:00Z',
  }
  const animals = [named('x'.repeat(10_001)), named('414')]
  const result = imported(start(), { 'a.json': { member: animals }, 'b.json': { member: [heat] } })
  expect(refusals(result)).toEqual(['ade-long a.json: member[0]'])
  expect(result.facts.map(({ kind }) => kind)).toEqual(['animal', 'heat'])
})
