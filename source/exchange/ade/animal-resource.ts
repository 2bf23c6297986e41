/** An animal as a resource of the ICAR ADE standard. */
import { type AnimalRecord, animalNamed } from '../../breeding/book.ts'
import { type Day, isoDay } from '../../breeding/day.ts'
import { resourceTypes, schemes, sourceOf } from './codes.ts'
import type { Event, Writing } from './events.ts'
import { instantOf } from './instants.ts'

/**
 * The resource of an animal: the farm's number, the official, electronic and international ones beside it.
 *
 * @param today whether she is on the farm is told for this day
 */
export function animalResource(animal: AnimalRecord, { book, herdId }: Writing, today: Day): Event {
  const { record, number } = animal
  const { officialId, electronicId, internationalId, sex, born, breed, name, sire, dam, at, by } = record
  const identifier = { scheme: schemes.number, id: number }
  const others = Object.entries({ officialId, electronicId, internationalId }).flatMap(([field, id]) =>
    id === undefined ? [] : [{ scheme: schemes[field as 'officialId'], id }],
  )
  const parents = [
    { name: sire, gender: 'Male' },
    { name: dam, gender: 'Female' },
  ].flatMap((parent) => {
    if (parent.name === undefined) return []
    const known = animalNamed(book, parent.name)?.record.number === parent.name
    const scheme = known ? schemes.number : schemes.sire
    return [
      {
        parentOf: identifier,
        gender: parent.gender,
        relation: 'Genetic',
        identifier: { scheme, id: parent.name },
      },
    ]
  })
  const left = animal.happenings.some(({ fact, day }) => fact.kind === 'left' && day <= today)
  const resource = {
    resourceType: resourceTypes.animal,
    identifier,
    ...(others.length === 0 ? {} : { alternativeIdentifiers: others }),
    location: { scheme: schemes.herd, id: herdId },
    specie: 'Cattle',
    gender: sex === 'F' ? 'Female' : 'Male',
    ...(born === undefined ? {} : { birthDate: instantOf(born, undefined, book.farm) }),
    ...(breed === undefined ? {} : { primaryBreed: { scheme: schemes.breed, id: breed } }),
    managementTag: number,
    ...(name === undefined ? {} : { name }),
    status: born !== undefined && isoDay(born) > today ? 'Unknown' : left ? 'OffFarm' : 'Alive',
    ...(parents.length === 0 ? {} : { parentage: parents }),
    meta: {
      source: sourceOf(herdId),
      sourceId: record.about,
      modified: at,
      ...(by === undefined ? {} : { creator: by }),
    },
  }
  return { name: 'animal', resource }
}
