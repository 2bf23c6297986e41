/** Resources of the ICAR ADE standard as rows of animals and facts. */
import { isDeepStrictEqual } from 'node:util'
import type { HerdBook } from '../../breeding/book.ts'
import type { AnimalFact } from '../../breeding/facts.ts'
import { fault, notice, type Problem } from '../../breeding/problem.ts'
import { textLimit } from '../csv/cells.ts'
import { fieldsOf } from '../csv/import/fact-fields.ts'
import type { Herd } from '../csv/import/herd.ts'
import type { Fields, TableRow } from '../csv/import/rows.ts'
import { isOurs, sourceOf } from './codes.ts'
import type { Found } from './documents.ts'
import { eventOf } from './events.ts'
import { Identities } from './identities.ts'
import { textOf, wholeOf } from './json.ts'
import { factId, isEvent, metaOf } from './meta.ts'
import { placesOf } from './places.ts'
import { animalRow, isGone } from './read-animal.ts'
import { eventFields, type Reading } from './read-event.ts'

interface Rows {
  readonly animals: TableRow[]
  readonly events: TableRow[]
  readonly refusedAnimals: Problem[]
  readonly refusedEvents: Problem[]
  readonly notices: Problem[]
}

/**
 * The rows of resources. Animals that left before the herd knew them are left out, and so are their events.
 *
 * @param herdId of this herd, to know its own events, @param path of what was read
 */
export function rowsOf(found: readonly Found[], herd: Herd, herdId: string, path: string): Rows {
  const rows: Rows = { animals: [], events: [], refusedAnimals: [], refusedEvents: [], notices: [] }
  const { book } = herd
  const identities = new Identities(book, found)
  const reading: Reading = {
    identities,
    zone: book.farm.zone,
    checkMethod: book.policy.checkMethod,
    unsexedKindOf: unsexedKinds(herd),
  }
  const firstParity = firstParities(found, identities)
  const gone = new Set<string>()
  for (const each of found) {
    if (each.name !== 'animal' || metaOf(each).isDeleted) continue
    const read = animalRow(each, identities, book.farm.zone)
    const row = ('code' in read ? undefined : tooLong(read.given, each.path)) ?? read
    if ('code' in row) rows.refusedAnimals.push(row)
    else if (isGone(each) && !book.byNumber.has(String(row.given.number))) gone.add(String(row.given.number))
    else rows.animals.push(withLactation(row, book, firstParity))
  }
  let eventsOfGone = 0
  for (const each of found.filter(isEvent)) {
    if (metaOf(each).isDeleted) continue
    const own = ownFacts(each, herd, herdId)
    if (own !== undefined) rows.events.push(...own)
    else if (gone.has(identities.numberOf(each.resource.animal) ?? '')) eventsOfGone += 1
    else putEvent(each, reading, rows, herdId)
  }
  if (gone.size > 0) rows.notices.push(notice('ade-gone', path, { animals: gone.size, events: eventsOfGone }))
  return rows
}

/** What speaks against a row with a text that the herd file cannot take. */
function tooLong(given: Fields, path: string): Problem | undefined {
  const [field] = Object.entries(given).find(([, value]) => String(value).length > textLimit) ?? []
  return field === undefined ? undefined : fault('ade-long', path, { field, limit: textLimit })
}

/** The parity that each animal's first calving in the file tells of. */
function firstParities(found: readonly Found[], identities: Identities): ReadonlyMap<string, number> {
  const first = new Map<string, { readonly when: string; readonly parity: number }>()
  for (const { name, resource } of found) {
    const parity = wholeOf(resource.damParity)
    const number = identities.numberOf(resource.animal)
    const when = textOf(resource.eventDateTime)
    if (name !== 'parturition' || parity === undefined || number === undefined || when === undefined) continue
    const before = first.get(number)
    if (before === undefined || when < before.when) first.set(number, { when, parity })
  }
  return new Map([...first].map(([number, { parity }]) => [number, parity]))
}

/** A new animal has calved before as often as her first calving in the file says, less that one. */
function withLactation(row: TableRow, book: HerdBook, parities: ReadonlyMap<string, number>): TableRow {
  const number = String(row.given.number)
  const parity = parities.get(number)
  if (book.byNumber.has(number) || parity === undefined || parity < 1 || parity > 30) return row
  return { ...row, given: { ...row.given, lactation: parity - 1 } }
}

function putEvent(each: Found, reading: Reading, rows: Rows, herdId: string): void {
  const read = eventFields(each, reading)
  const fields = ('code' in read ? undefined : tooLong(Object.assign({}, ...read), each.path)) ?? read
  if ('code' in fields) {
    rows.refusedEvents.push(fields)
    return
  }
  const meta = metaOf(each)
  for (const [place, given] of fields.entries()) {
    const id = factId(meta, herdId, place === 0 ? '' : 'end')
    rows.events.push({
      path: each.path,
      given: id === undefined ? given : { ...given, id },
      asRecorded: isOurs(meta.source),
    })
  }
}

/**
 * The facts of an event of this herd that says what the herd would say today, as rows that say all of them: so they
 * are known, however much of a fact the standard cannot carry.
 */
function ownFacts(each: Found, { book, byId, today }: Herd, herdId: string): TableRow[] | undefined {
  const { source, sourceId } = metaOf(each)
  if (source !== sourceOf(herdId) || sourceId === undefined) return undefined
  const fact = byId.get(sourceId)
  const animal = fact === undefined ? undefined : book.animals.get(fact.about)
  if (fact === undefined || animal === undefined) return undefined
  const place = placesOf(animal, today).places.get(sourceId)
  const event = eventOf(fact as AnimalFact, animal, { book, herdId }, place)
  if (event === undefined || !saysTheSame(event.resource, each.resource)) return undefined
  return [fact as AnimalFact, ...(place?.end === undefined ? [] : [place.end])].map((told) => ({
    path: each.path,
    given: fieldsOf(told, animal.number),
  }))
}

/** Whether two events say the same; what is told about them, and what follows from their neighbours, is no matter. */
function saysTheSame(one: object, other: object): boolean {
  const aside = { meta: undefined, rank: undefined, damParity: undefined }
  const plain = (resource: object): unknown => JSON.parse(JSON.stringify({ ...resource, ...aside }))
  return isDeepStrictEqual(plain(one), plain(other))
}

/** The kind of a sire's straws that are not sexed: beef where the stock has no conventional ones of him. */
function unsexedKinds({ book }: Herd): Reading['unsexedKindOf'] {
  const kinds = Map.groupBy(book.stock, ({ sire }) => sire)
  return (sire) => {
    const lots = sire === undefined ? [] : (kinds.get(sire) ?? [])
    const beef = lots.some(({ straw }) => straw === 'beef')
    return beef && !lots.some(({ straw }) => straw === 'conventional') ? 'beef' : 'conventional'
  }
}
