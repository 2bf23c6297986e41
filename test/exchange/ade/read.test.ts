import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import type { NewFact } from '../../../source/breeding/facts.ts'
import { checkFacts } from '../../../source/herd/check.ts'
import { asFacts } from '../../../source/herd/recording.ts'
import { at, counts, cow, herd, refusals } from '../csv/support/herd.ts'
import { farm, herds } from '../csv/support/herds.ts'
import { exported, type Files, imported } from './support/files.ts'

vi.setConfig({ testTimeout: 180_000 })

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

const heat = {
  resourceType: 'icarReproHeatEventResource',
  id: 'e1',
  animal: { scheme: 'x.farm', id: '412' },
  eventDateTime: '2026-05-01T05:10:00Z',
  meta: { source: 'org.example', sourceId: 'e1', modified: '2026-05-01T06:00:00Z' },
}
const start = () => herd(cow('412', { officialId: 'UK 123450 600001', electronicId: '826012345678901' }))
const read = (resource: object, facts = start()) => imported(facts, { 'a.json': { member: [resource] } })
const said = (resource: object) =>
  read(resource).facts.map(({ id: _id, ...fact }: NewFact & { id?: string }) => fact)
const envelope = { about: '412', date: '2026-05-01', time: '05:10' }

describe('events of others, read leniently', () => {
  test.each([
    ['the file name of the type', { ...heat }],
    ['its short name', { ...heat, resourceType: 'ReproHeatEvent' }],
    [
      'an address that ends in it',
      { ...heat, resourceType: 'https://example.org/resources/icarReproHeatEventResource.json' },
    ],
    ['a number where text is due', { ...heat, id: 17, animal: { scheme: 'x.farm', id: 412 } }],
    ['a time without Z', { ...heat, eventDateTime: '2026-05-01T05:10:00' }],
    ['an animal by her number alone', { ...heat, animal: '412' }],
    ['her ear tag without spaces', { ...heat, animal: { scheme: 'x.gov', id: 'uk123450600001' } }],
    ['her electronic number', { ...heat, animal: { scheme: 'x.iso', id: '826 012345678901' } }],
    ['no meta', { ...heat, meta: undefined }],
  ])('%s', (_what, resource) => {
    expect(said(resource)).toEqual([{ ...envelope, kind: 'heat', how: 'other', certainty: 'sure' }])
  })

  test.each<[string, Files]>([
    [
      'a collection that says what it holds',
      {
        'x.json': {
          resourceType: 'icarReproHeatEventCollection',
          member: [{ ...heat, resourceType: undefined }],
        },
      },
    ],
    ['a file named after it', { 'icarReproHeatEventResource.json': [{ ...heat, resourceType: undefined }] }],
    [
      'an object of collections',
      { 'x.json': { icarReproHeatEvent: { member: [{ ...heat, resourceType: undefined }] } } },
    ],
    ['a list', { 'x.json': [heat] }],
    ['one event alone', { 'x.json': heat }],
    ['one member that is no list', { 'x.json': { member: heat } }],
  ])('%s', (_what, files) => {
    expect(imported(start(), files).facts).toHaveLength(1)
  })

  test.each([
    [
      'a heat seen by a pedometer',
      { heatDetectionMethod: 'Pedometer', certainty: 'Suspect' },
      { how: 'activity', certainty: 'suspect' },
    ],
    [
      'a standing heat',
      { heatDetectionMethod: 'Visual', visualDetection: { heatSigns: ['Bawling', 'StandsUnder'] } },
      { how: 'standing', certainty: 'sure' },
    ],
    [
      'mucus',
      { heatDetectionMethod: 'Visual', visualDetection: { heatSigns: ['Slime'] } },
      { how: 'mucus', certainty: 'sure' },
    ],
    ['a remark', { remark: 'restless' }, { how: 'other', certainty: 'sure', signs: 'restless' }],
  ])('%s', (_what, more, fields) => {
    expect(said({ ...heat, ...more })).toEqual([{ ...envelope, kind: 'heat', ...fields }])
  })

  const event = (type: string, more: object) => ({ ...heat, resourceType: type, ...more })
  test.each([
    [
      'an AI',
      event('icarReproInseminationEventResource', {
        inseminationType: 'Insemination',
        responsible: 'MK',
        straw: { batch: 7, isSexedSemen: true, sireIdentifiers: [{ scheme: 'x', id: 'S17' }] },
      }),
      [{ ...envelope, kind: 'service', sire: 'S17', straw: 'sexed', batch: '7', inseminator: 'MK' }],
    ],
    [
      'a natural service',
      event('ReproInseminationEvent', {
        inseminationType: 'NaturalService',
        sireIdentifiers: [{ id: 'B4', scheme: 'x' }],
      }),
      [{ ...envelope, kind: 'service', natural: true, sire: 'B4' }],
    ],
    [
      'a time with the bull',
      event('ReproInseminationEvent', {
        inseminationType: 'RunWithBull',
        eventEndDateTime: '2026-05-20T00:00:00Z',
      }),
      [
        { ...envelope, kind: 'with-bull' },
        { about: '412', date: '2026-05-20', kind: 'from-bull' },
      ],
    ],
    [
      'a check of twins',
      event('ReproPregnancyCheckEvent', { method: 'Echography', result: 'Multiple', foetalAge: '42' }),
      [{ ...envelope, kind: 'check', method: 'ultrasound', result: 'pregnant', foetalAge: 42, foetuses: 2 }],
    ],
    [
      'a check that does not tell its method',
      event('ReproPregnancyCheckEvent', { result: 'Unknown' }),
      [{ ...envelope, kind: 'check', method: 'ultrasound', result: 'unsure' }],
    ],
    [
      'a calving',
      event('ReproParturitionEvent', {
        calvingEase: 'CaesareanOrSurgery',
        totalProgeny: 2,
        liveProgeny: 1,
        progenyDetails: [{ gender: 'Female' }, { gender: 'Male' }],
      }),
      [{ ...envelope, kind: 'calving', ease: 5, calves: 2, dead: 1, calfSex: 'FM' }],
    ],
    [
      'a calving that tells each calf',
      event('ReproParturitionEvent', {
        progeny: [
          { gender: 'Female', birthStatus: 'Alive' },
          { gender: 'Unknown', birthStatus: 'Stillborn' },
        ],
      }),
      [{ ...envelope, kind: 'calving', calves: 2, dead: 1 }],
    ],
    ['an abortion', event('ReproAbortionEvent', {}), [{ ...envelope, kind: 'loss' }]],
    [
      'do not breed, which is the rule',
      event('ReproDoNotBreedEvent', { remark: 'old' }),
      [{ ...envelope, kind: 'bar', reason: 'old' }],
    ],
    [
      'may be bred again',
      event('ReproDoNotBreedEvent', { doNotBreed: false }),
      [{ ...envelope, kind: 'unbar' }],
    ],
  ])('%s', (_what, resource, facts) => {
    expect(said(resource)).toEqual(facts)
  })

  test('straws that are not sexed are beef where the stock has only beef of that sire', () => {
    const take = (sire: string, straw: 'beef' | 'conventional'): NewFact => ({
      about: 'herd',
      date: '2026-04-01',
      kind: 'stock-take',
      sire,
      straw,
      count: 9,
    })
    const facts = herd(cow('412'), take('A1', 'beef'), take('H1', 'conventional'))
    const kindOf = (sire: string) => {
      const [fact] = read(
        event('ReproInseminationEvent', {
          inseminationType: 'Insemination',
          sireIdentifiers: [{ scheme: 'x', id: sire }],
          straw: { isSexedSemen: false },
        }),
        facts,
      ).facts
      return fact?.kind === 'service' ? fact.straw : undefined
    }
    expect([kindOf('A1'), kindOf('H1'), kindOf('new')]).toEqual(['beef', 'conventional', 'conventional'])
  })

  test.each([
    ['no date', { eventDateTime: undefined }, 'ade-no-date a.json: member[0]'],
    ['30 February', { eventDateTime: '2026-02-30T05:10:00Z' }, 'ade-date a.json: member[0]'],
    ['no animal', { animal: undefined }, 'ade-no-animal a.json: member[0]'],
    [
      'an animal that nobody knows',
      { animal: { scheme: 'x', id: '777' } },
      'fact-animal-unknown a.json: member[0] number',
    ],
    ['a day to come', { eventDateTime: '2027-05-01T05:10:00Z' }, 'date-future a.json: member[0]'],
    [
      'an embryo',
      { resourceType: 'ReproInseminationEvent', inseminationType: 'Implantation' },
      'ade-embryo a.json: member[0]',
    ],
    [
      'a word of nobody',
      { resourceType: 'ReproInseminationEvent', inseminationType: 'Magic' },
      'ade-word a.json: member[0]',
    ],
    [
      'a method that the herd does not know',
      { resourceType: 'ReproPregnancyCheckEvent', result: 'Pregnant', method: 'Visual' },
      'ade-word a.json: member[0]',
    ],
    [
      'a foetus of a year',
      { resourceType: 'ReproPregnancyCheckEvent', result: 'Pregnant', foetalAge: 365 },
      'ade-number a.json: member[0]',
    ],
    [
      'more alive than born',
      { resourceType: 'ReproParturitionEvent', totalProgeny: 1, liveProgeny: 2 },
      'ade-number a.json: member[0]',
    ],
  ])('%s is refused and named', (_what, more, refusal) => {
    const result = read({ ...heat, ...more })
    expect(refusals(result)).toEqual([refusal])
    expect(result.facts).toEqual([])
  })

  test('what is no breeding event is counted and left out, vendors’ own fields are ignored', () => {
    const result = imported(start(), {
      'a.json': {
        member: [{ ...heat, someVendorOptions: { x: 1 } }, { resourceType: 'icarWeightEventResource' }],
      },
    })
    expect(result.facts).toHaveLength(1)
    expect(result.tables[0]?.notices).toMatchObject([
      { code: 'ade-left-out', values: { type: 'icarWeightEventResource', count: 1 } },
    ])
  })
})

describe('the same event again', () => {
  test('the same id replaces, the latest change counts', () => {
    const once = read(heat)
    const suspect = {
      ...heat,
      certainty: 'Suspect',
      meta: { ...heat.meta, modified: '2026-05-02T06:00:00Z' },
    }
    const later = imported(once.after, { 'a.json': [suspect, heat] })
    expect(counts(later)).toEqual({ animals: [0, 0, 0, 0], facts: [0, 0, 1, 0] })
    expect(
      openBook(later.after)
        .animals.get('412')
        ?.happenings.map(({ fact }) => (fact.kind === 'heat' ? fact.certainty : '')),
    ).toEqual(['suspect'])
    expect(imported(later.after, { 'a.json': [suspect, heat] }).facts).toEqual([])
  })

  test('an older file does not undo what was corrected since', () => {
    const once = read(heat)
    const suspect = {
      ...heat,
      certainty: 'Suspect',
      meta: { ...heat.meta, modified: '2026-05-02T06:00:00Z' },
    }
    const later = imported(once.after, { 'a.json': [suspect] })
    const stale = imported(later.after, { 'a.json': [{ ...heat, certainty: 'InHeat' }] })
    expect(stale.facts).toEqual([])
    expect(stale.tables[1]?.notices.map(({ code }) => code)).toEqual(['row-corrected-since'])
  })

  test('what is deleted there is taken back here, once', () => {
    const once = read(heat)
    const gone = { 'a.json': [{ ...heat, meta: { ...heat.meta, isDeleted: true } }] }
    const later = imported(once.after, gone)
    expect(later.facts).toMatchObject([
      { kind: 'correction', date: '2026-05-01', voids: once.after.at(-1)?.id },
    ])
    expect(openBook(later.after).animals.get('412')?.happenings).toEqual([])
    expect(imported(later.after, gone).facts).toEqual([])
    expect(read({ ...heat, meta: { ...heat.meta, isDeleted: true } }).facts).toEqual([])
  })

  test('a time with the bull whose end is no longer told goes on', () => {
    const run = { ...heat, resourceType: 'ReproInseminationEvent', inseminationType: 'RunWithBull' }
    const once = read({ ...run, eventEndDateTime: '2026-05-20T00:00:00Z' })
    const later = imported(once.after, { 'a.json': [run] })
    expect(
      openBook(later.after)
        .animals.get('412')
        ?.happenings.map(({ fact }) => fact.kind),
    ).toEqual(['with-bull'])
    expect(imported(later.after, { 'a.json': [run] }).facts).toEqual([])
  })

  test('a heat that was recorded by hand before is known', () => {
    const facts = herd(cow('412'), { ...envelope, kind: 'heat', how: 'paint', certainty: 'sure' } as NewFact)
    expect(counts(imported(facts, { 'a.json': [heat] }))).toMatchObject({ facts: [0, 1, 0, 0] })
  })
})

describe('animals of others', () => {
  const animal = {
    resourceType: 'icarAnimalCoreResource',
    identifier: { scheme: 'x.gov', id: 'UK 284205 600015' },
    alternativeIdentifiers: [
      { scheme: 'x.iso', id: '826012345678902' },
      { scheme: 'x.ib', id: 'HOLGBRF000000A12345' },
    ],
    specie: 'Cattle',
    gender: 'Female',
    birthDate: '2023-02-11T00:00:00Z',
    primaryBreed: { scheme: 'x', id: 'HOL' },
    managementTag: 413,
    name: 'Blanche',
    parentage: [
      {
        parentOf: { scheme: 'x.gov', id: 'UK 284205 600015' },
        gender: 'Female',
        identifier: { scheme: 'x.farm', id: '412' },
      },
      {
        parentOf: { scheme: 'x.gov', id: 'UK 284205 600015' },
        gender: 'Male',
        relation: 'Adoptive',
        identifier: { scheme: 'x', id: 'B9' },
      },
    ],
  }

  test('each identity in its place, the number from the management tag, foster parents left out', () => {
    expect(imported(start(), { 'a.json': animal }).facts).toEqual([
      {
        about: '413',
        date: '2026-06-01',
        kind: 'animal',
        sex: 'F',
        number: '413',
        name: 'Blanche',
        officialId: 'UK 284205 600015',
        electronicId: '826012345678902',
        internationalId: 'HOLGBRF000000A12345',
        born: '2023-02-11',
        breed: 'HOL',
        dam: '412',
      },
    ])
  })

  test('events find the animals of their own file by any of their identifiers', () => {
    const event = { ...heat, animal: { scheme: 'x.gov', id: 'UK284205600015' } }
    expect(imported(start(), { 'a.json': [animal, event] }).facts.map(({ about }) => about)).toEqual([
      '413',
      '413',
    ])
  })

  test('who has left is not taken in, and neither are her events', () => {
    const event = { ...heat, animal: animal.identifier }
    const result = imported(start(), { 'a.json': [{ ...animal, status: 'OffFarm' }, event] })
    expect(result.facts).toEqual([])
    expect(refusals(result)).toEqual([])
    expect(result.tables[0]?.notices).toMatchObject([{ code: 'ade-gone', values: { animals: 1, events: 1 } }])
  })

  test('a horse', () => {
    expect(refusals(imported(start(), { 'a.json': { ...animal, specie: 'Horse' } }))).toEqual([
      'ade-species a.json',
    ])
  })
})

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
