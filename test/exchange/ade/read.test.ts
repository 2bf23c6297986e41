import { describe, expect, test } from 'vitest'
import type { NewFact } from '../../../source/breeding/facts.ts'
import { cow, herd, refusals } from '../csv/support/herd.ts'
import { type Files, imported } from './support/files.ts'

import { envelope, heat, read, said, start } from './support/others.ts'

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
