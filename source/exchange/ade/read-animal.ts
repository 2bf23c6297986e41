/** An animal of the ICAR ADE standard as a row of animals. */
import { fault, type Problem } from '../../breeding/problem.ts'
import type { TableRow } from '../csv/import/rows.ts'
import { isOurs, schemes } from './codes.ts'
import type { Found } from './documents.ts'
import { fieldOf, type Identities } from './identities.ts'
import { momentIn } from './instants.ts'
import { idOf, isObject, listOf, schemeOf, textOf } from './json.ts'

const sexes: Readonly<Record<string, 'F' | 'M'>> = {
  Female: 'F',
  FemaleNeuter: 'F',
  Male: 'M',
  MaleNeuter: 'M',
  MaleCryptorchid: 'M',
}

/** Whether an animal is said to be no longer on the farm. */
export const isGone = ({ resource }: Found): boolean =>
  resource.status === 'Dead' || resource.status === 'OffFarm'

/**
 * The row of an animal.
 *
 * @param zone of the farm, for the date of birth
 * @returns the row, or why it is refused: ade-no-animal, ade-species, ade-date
 */
export function animalRow(
  { path, resource }: Found,
  identities: Identities,
  zone: string,
): TableRow | Problem {
  const number = textOf(resource.managementTag) ?? identities.numberOf(resource.identifier)
  if (number === undefined) return fault('ade-no-animal', path)
  const specie = textOf(resource.specie) ?? 'Cattle'
  if (specie !== 'Cattle') return fault('ade-species', path, { specie }, number)
  const given: Record<string, unknown> = { number }
  const put = (field: string, value: unknown): void => {
    if (value !== undefined) given[field] = value
  }
  for (const identifier of [resource.identifier, ...listOf(resource.alternativeIdentifiers)]) {
    const id = idOf(identifier)
    const field = fieldOf(identifier)
    const isNumberAgain = id === number && schemeOf(identifier) !== schemes[field]
    if (field !== 'number' && !isNumberAgain) put(field, id)
  }
  put('name', textOf(resource.name))
  put('sex', sexes[textOf(resource.gender) ?? ''])
  put('breed', idOf(resource.primaryBreed))
  for (const parent of listOf(resource.parentage)) {
    if (!isObject(parent) || (parent.relation ?? 'Genetic') !== 'Genetic') continue
    const scheme = schemeOf(parent.identifier)
    const id = scheme === schemes.sire ? idOf(parent.identifier) : identities.numberOf(parent.identifier)
    put(parent.gender === 'Male' ? 'sire' : 'dam', id)
  }
  const birth = textOf(resource.birthDate)
  if (birth !== undefined) {
    const moment = momentIn(birth, zone)
    if (moment === undefined) return fault('ade-date', path, { field: 'birthDate', value: birth }, number)
    put('born', moment.date)
  }
  const meta = isObject(resource.meta) ? resource.meta : {}
  return { path, given, asRecorded: isOurs(meta.source) }
}
