import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { NewFact } from '../../../source/breeding/facts.ts'
import { checkFacts } from '../../../source/herd/check.ts'
import { asFacts } from '../../../source/herd/recording.ts'
import { at, refusals } from '../csv/support/herd.ts'
import { farm, herds } from '../csv/support/herds.ts'
import { exported, type Files, imported } from './support/files.ts'

describe('our own events', () => {
  test('read back into their herd they add nothing, whatever the standard could not carry', () => {
    fc.assert(
      fc.property(herds, (facts) => {
        const back = imported(facts, exported(facts))
        expect(refusals(back)).toEqual([])
        expect(back.facts).toEqual([])
      }),
      { numRuns: 150 },
    )
  })

  test('read into a new herd they are the same events; read twice they add nothing', () => {
    const withoutSource = (files: Files): unknown =>
      Object.entries(files).map(([name, text]) => [
        name,
        (JSON.parse(String(text)) as { member: Record<string, unknown>[] }).member
          .filter(({ meta }) => (meta as { isDeleted?: true }).isDeleted !== true)
          .map(({ meta: _meta, id: _id, location: _location, ...said }) => JSON.stringify(said))
          .sort(),
      ])
    fc.assert(
      fc.property(herds, (mixed) => {
        // Animals that left are not taken into a new herd. A milking becomes its time there, so that of two services
        // on a day the order can change; such herds are left aside.
        const facts = mixed.filter(
          (fact) =>
            fact.kind !== 'left' && !(fact.kind === 'service' && fact.time === undefined && fact.session),
        )
        const empty = asFacts([farm as unknown as NewFact], { at })
        const once = imported(empty, exported(facts), 'other')
        expect(checkFacts(once.after)).toEqual([])
        const twice = imported(once.after, exported(facts), 'other')
        expect(twice.facts).toEqual([])
        if (refusals(once).length === 0)
          expect(withoutSource(exported(once.after, 'other'))).toEqual(withoutSource(exported(facts)))
      }),
      { numRuns: 150 },
    )
  })
})
