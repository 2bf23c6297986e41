/** Which animal an identifier means. */
import type { HerdBook } from '../../breeding/book.ts'
import { electronicFits } from '../../breeding/identity/electronic.ts'
import { readInternationalId } from '../../breeding/identity/international.ts'
import { schemes } from './codes.ts'
import type { Found } from './documents.ts'
import { idOf, listOf, schemeOf, textOf } from './json.ts'

/** Kinds of identity of an animal, in the order in which a number of an unknown scheme is tried. */
const identityFields = ['number', 'officialId', 'electronicId', 'internationalId'] as const
type IdentityField = (typeof identityFields)[number]

const plain = (id: string): string => id.replace(/\s/g, '').toUpperCase()

/** Numbers of the farm by what else names the animal: on record, or in the file's own animals. */
export class Identities {
  readonly #byField = new Map<IdentityField, Map<string, string>>()
  readonly #byIdentifier = new Map<string, string>()

  constructor(book: HerdBook, found: readonly Found[]) {
    for (const { record } of book.animals.values())
      for (const field of identityFields) {
        const id = record[field]
        if (id !== undefined) this.#put(field, id, record.number)
      }
    for (const { name, resource } of found) {
      if (name !== 'animal') continue
      const identifiers = [resource.identifier, ...listOf(resource.alternativeIdentifiers)]
      const number = textOf(resource.managementTag) ?? this.#known(identifiers) ?? idOf(resource.identifier)
      if (number === undefined) continue
      for (const identifier of identifiers) {
        const key = keyOf(identifier)
        if (key === undefined) continue
        this.#byIdentifier.set(key, number)
        this.#put(fieldOf(identifier), idOf(identifier) ?? '', number)
      }
    }
  }

  /**
   * The farm's number of the animal that an identifier means.
   *
   * @returns the number; the id itself where no animal is known by it; undefined where there is none
   */
  numberOf(identifier: unknown): string | undefined {
    const key = keyOf(identifier)
    if (key === undefined) return undefined
    return this.#byIdentifier.get(key) ?? this.#known([identifier]) ?? idOf(identifier)
  }

  #put(field: IdentityField, id: string, number: string): void {
    const numbers = this.#byField.get(field) ?? new Map<string, string>()
    numbers.set(plain(id), number)
    this.#byField.set(field, numbers)
  }

  #known(identifiers: readonly unknown[]): string | undefined {
    for (const identifier of identifiers) {
      const id = idOf(identifier)
      if (id === undefined) continue
      const scheme = schemeOf(identifier)
      const fields = identityFields.filter((field) => schemes[field] === scheme)
      for (const field of fields.length > 0 ? fields : identityFields) {
        const number = this.#byField.get(field)?.get(plain(id))
        if (number !== undefined) return number
      }
    }
    return undefined
  }
}

function keyOf(identifier: unknown): string | undefined {
  const id = idOf(identifier)
  return id === undefined ? undefined : JSON.stringify([schemeOf(identifier) ?? '', plain(id)])
}

/**
 * Which of an animal's identities an identifier is: by its scheme where that is ours, else by its shape. A number of
 * an unknown scheme that is neither electronic nor international is taken for the official one.
 *
 * @example fieldOf({ scheme: 'x', id: '826012345678901' }) // 'electronicId'
 */
export function fieldOf(identifier: unknown): IdentityField {
  const scheme = schemeOf(identifier)
  const ours = identityFields.find((field) => schemes[field] === scheme)
  if (ours !== undefined) return ours
  const id = idOf(identifier) ?? ''
  if (electronicFits(id)) return 'electronicId'
  return readInternationalId(id) === undefined ? 'officialId' : 'internationalId'
}
