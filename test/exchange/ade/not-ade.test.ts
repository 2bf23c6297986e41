import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { NewFact } from '../../../source/breeding/facts.ts'
import { checkFacts } from '../../../source/herd/check.ts'
import { cow, herd, refusals } from '../csv/support/herd.ts'
import { imported } from './support/files.ts'

import { envelope, start } from './support/others.ts'

describe('files that are none', () => {
  test.each([
    ['no JSON', 'number,date\n', 'ade-not-json a.json'],
    ['nothing of breeding', '{"kind":"book"}', 'ade-nothing a.json'],
    ['an empty collection', '{"member":[]}', 'ade-nothing a.json'],
    ['an empty file', '', 'ade-not-json a.json'],
  ])('%s', (_what, text, refusal) => {
    expect(refusals(imported(start(), { 'a.json': text }))).toEqual([refusal])
  })

  test('any JSON is read or refused, and never makes a herd that the schema refuses', () => {
    const resource = fc.record(
      {
        resourceType: fc.constantFrom(
          'icarReproHeatEventResource',
          'ReproInseminationEvent',
          'ReproPregnancyCheckEvent',
          'ReproParturitionEvent',
          'icarAnimalCoreResource',
          'ReproDoNotBreedEvent',
          7,
        ),
        id: fc.constantFrom('e1', 'e2', 17, null, {}),
        animal: fc.constantFrom('412', 412, { id: '412' }, null, []),
        identifier: fc.constantFrom({ id: '412', scheme: 'x' }, { id: '9', scheme: 'x' }, null),
        managementTag: fc.constantFrom('412', 9, ''),
        eventDateTime: fc.constantFrom('2026-05-01T05:10:00Z', '2026-05-01', 5, '', null),
        inseminationType: fc.constantFrom('Insemination', 'RunWithBull', 'NaturalService', null),
        eventEndDateTime: fc.constantFrom('2026-05-20', '2026-04-01', {}, 'x'),
        straw: fc.constantFrom({ isSexedSemen: false, batch: {} }, [], 'x', null),
        result: fc.constantFrom('Pregnant', 'Empty', 3),
        foetalAge: fc.constantFrom(42, '42', -1, 1e9, 'old'),
        totalProgeny: fc.constantFrom(1, 2, 9, 'two'),
        liveProgeny: fc.constantFrom(0, 1, 3),
        calvingEase: fc.constantFrom('EasyAssisted', 'x', 4),
        progenyDetails: fc.constantFrom([{ gender: 'Female' }], [null, 3], {}),
        meta: fc.constantFrom(
          { source: 'a', sourceId: 'e1' },
          { source: 'dawnlist:k2m9', sourceId: 'k2' },
          { source: 'a', sourceId: 'e1', isDeleted: true, modified: '2027' },
          [],
          'x',
        ),
      },
      { requiredKeys: ['resourceType'] },
    )
    const facts = herd(cow('412'), { ...envelope, kind: 'heat', how: 'paint', certainty: 'sure' } as NewFact)
    fc.assert(
      fc.property(fc.oneof(fc.array(resource, { maxLength: 8 }), fc.jsonValue()), (json) => {
        const once = imported(facts, { 'a.json': json })
        expect(checkFacts(once.after)).toEqual([])
        expect(imported(once.after, { 'a.json': json }).facts).toEqual([])
      }),
      { numRuns: 1000 },
    )
  })
})
