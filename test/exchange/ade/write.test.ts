import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import { isoDay } from '../../../source/breeding/day.ts'
import type { Fact, NewFact } from '../../../source/breeding/facts.ts'
import { adeExport, collectionText } from '../../../source/exchange/ade/write.ts'
import { harmlessJson } from '../../../source/herd/escape.ts'
import { cow, herd } from '../csv/support/herd.ts'
import { herds } from '../csv/support/herds.ts'
import { schemasPresent, validators } from './support/schemas.ts'

const today = isoDay('2026-06-01')

const resourcesOf = (facts: readonly Fact[]): Record<string, unknown>[] =>
  adeExport(facts, openBook(facts), 'k2m9', today).collections.flatMap(
    (collection) =>
      (JSON.parse(collectionText(collection, harmlessJson)) as { member: Record<string, unknown>[] }).member,
  )

const validatorOf = schemasPresent ? validators() : () => () => false

function expectValid(resources: readonly Record<string, unknown>[]): void {
  for (const resource of resources) {
    const validate = validatorOf(String(resource.resourceType))
    expect(validate(resource), JSON.stringify(resource)).toBe(true)
  }
}

// ICAR, Animal Data Exchange (ADE) JSON schemas, branch ADE-1, version 1.3.
test.skipIf(!schemasPresent)('everything that is written is valid by the schemas of the standard', () => {
  fc.assert(
    fc.property(herds, (facts) => expectValid(resourcesOf(facts))),
    { numRuns: 60 },
  )
})

test.skipIf(!schemasPresent)(
  'so is the whole sample herd',
  () => {
    const { facts } = JSON.parse(
      readFileSync(new URL('../../../sample-herd/sample-herd.json', import.meta.url), 'utf8'),
    ) as { facts: Fact[] }
    const resources = resourcesOf(facts)
    expect(resources.length).toBeGreaterThan(5000)
    expectValid(resources)
  },
  120_000,
)

test.skipIf(!schemasPresent)('the schemas are asked: a wrong word and a time without Z are refused', () => {
  const [heat] = resourcesOf(
    herd(cow('1'), { about: '1', date: '2026-05-01', kind: 'heat', how: 'paint', certainty: 'sure' }),
  ).filter(({ resourceType }) => resourceType === 'icarReproHeatEventResource')
  const validate = validatorOf('icarReproHeatEventResource')
  expect(validate(heat)).toBe(true)
  expect(validate({ ...heat, certainty: 'Sure' })).toBe(false)
  expect(validate({ ...heat, eventDateTime: '2026-05-01T05:00:00' })).toBe(false)
  expect(validate({ ...heat, animal: undefined })).toBe(false)
})

const cowOf = (...facts: NewFact[]): Record<string, unknown>[] =>
  resourcesOf(
    herd(
      cow('412', {
        name: 'Bess',
        sex: 'F',
        born: '2021-02-03',
        breed: 'HF',
        sire: 'S1',
        dam: '40',
        officialId: 'UK 123450 600001',
        lactation: 1,
      }),
      ...facts,
    ),
  ).map(({ meta: _meta, location: _location, id: _id, ...said }) => said)

const event = { animal: { scheme: 'dawnlist.number', id: '412' } }

test('an animal', () => {
  expect(cowOf()[0]).toEqual({
    resourceType: 'icarAnimalCoreResource',
    identifier: { scheme: 'dawnlist.number', id: '412' },
    alternativeIdentifiers: [{ scheme: 'dawnlist.official-id', id: 'UK 123450 600001' }],
    specie: 'Cattle',
    gender: 'Female',
    birthDate: '2021-02-03T00:00:00Z',
    primaryBreed: { scheme: 'dawnlist.breed', id: 'HF' },
    managementTag: '412',
    name: 'Bess',
    status: 'Alive',
    parentage: [
      {
        parentOf: { scheme: 'dawnlist.number', id: '412' },
        gender: 'Male',
        relation: 'Genetic',
        identifier: { scheme: 'dawnlist.sire', id: 'S1' },
      },
      {
        parentOf: { scheme: 'dawnlist.number', id: '412' },
        gender: 'Female',
        relation: 'Genetic',
        identifier: { scheme: 'dawnlist.sire', id: '40' },
      },
    ],
  })
})

test('services: the rank counts within the cycle and begins anew after a calving', () => {
  const service = (date: string): NewFact => ({
    about: '412',
    date,
    kind: 'service',
    sire: 'S17',
    straw: 'sexed',
    batch: 'b7',
    inseminator: 'MK',
  })
  const events = cowOf(
    service('2025-05-01'),
    service('2025-05-22'),
    { about: '412', date: '2026-02-27', kind: 'calving' },
    service('2026-05-05'),
  )
  const services = events.filter(({ resourceType }) => resourceType === 'icarReproInseminationEventResource')
  expect(services.map(({ rank }) => rank)).toEqual([1, 2, 1])
  const sire = [{ scheme: 'dawnlist.sire', id: 'S17' }]
  expect(services[0]).toEqual({
    ...event,
    resourceType: 'icarReproInseminationEventResource',
    eventDateTime: '2025-05-01T00:00:00Z',
    inseminationType: 'Insemination',
    rank: 1,
    sireIdentifiers: sire,
    straw: {
      resourceType: 'icarReproSemenStrawResource',
      batch: 'b7',
      sireIdentifiers: sire,
      isSexedSemen: true,
      sexedGender: 'Female',
    },
    semenFromFarmStocks: true,
    responsible: 'MK',
  })
})

test('a calving: ease in words, parity, live and all calves', () => {
  const [calving] = cowOf({
    about: '412',
    date: '2026-02-27',
    time: '22:15',
    kind: 'calving',
    ease: 4,
    calves: 2,
    dead: 1,
    calfSex: 'FM',
  }).slice(1)
  expect(calving).toEqual({
    ...event,
    resourceType: 'icarReproParturitionEventResource',
    eventDateTime: '2026-02-27T22:15:00Z',
    damParity: 2,
    liveProgeny: 1,
    totalProgeny: 2,
    calvingEase: 'DifficultVeterinaryCare',
    progenyDetails: [
      { resourceType: 'icarProgenyDetailsResource', specie: 'Cattle', gender: 'Female' },
      { resourceType: 'icarProgenyDetailsResource', specie: 'Cattle', gender: 'Male' },
    ],
  })
})

test('a time with the bull is one event with its end', () => {
  const [run, ...rest] = cowOf(
    { about: '412', date: '2026-05-01', kind: 'with-bull', bull: 'B4' },
    { about: '412', date: '2026-05-20', kind: 'from-bull' },
  ).slice(1)
  expect(rest).toEqual([])
  expect(run).toMatchObject({
    inseminationType: 'RunWithBull',
    eventDateTime: '2026-05-01T00:00:00Z',
    eventEndDateTime: '2026-05-20T00:00:00Z',
  })
})

test('what was voided is marked as deleted at the time of the correction; what the standard cannot carry is counted', () => {
  const facts = herd(
    cow('412'),
    { about: '412', date: '2026-05-01', kind: 'heat', how: 'paint', certainty: 'sure' },
    { about: '412', date: '2026-05-01', kind: 'correction', voids: 'k2' },
    { about: '412', date: '2026-05-02', kind: 'looked' },
    { about: '412', date: '2026-05-03', kind: 'looked' },
  )
  const { collections, leftOut } = adeExport(facts, openBook(facts), 'k2m9', today)
  const [heat] = collections.find(({ file }) => file === 'heats.json')?.members ?? []
  expect(heat).toMatchObject({
    id: 'k2',
    meta: { source: 'dawnlist:k2m9', sourceId: 'k2', isDeleted: true, modified: '2026-06-01T05:00:00.000Z' },
  })
  expect([...leftOut]).toEqual([['looked', 2]])
})
