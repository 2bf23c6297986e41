import { describe, expect, test } from 'vitest'
import { refusals } from '../csv/support/herd.ts'
import { imported } from './support/files.ts'

import { heat, start } from './support/others.ts'

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
