/** What speaks against a row of animals.csv. */
import { isoDay } from '../../../breeding/day.ts'
import { compareNumbers } from '../../../breeding/order.ts'
import { fault, type Problem } from '../../../breeding/problem.ts'
import type { Herd } from './herd.ts'
import type { Fields, TableRow } from './rows.ts'

/**
 * Makes the test of a row: a number that two animals of the herd share, a birth to come, an animal that is its own
 * parent, an international ID that another animal has (parents are named by it).
 *
 * @param rows all rows of the table, @param shared numbers that two animals of the herd share
 */
export function againstAnimal(rows: readonly TableRow[], herd: Herd, shared: ReadonlySet<string>) {
  const owners = internationalIds(rows, herd)
  return (given: Fields, { path }: TableRow): Problem | undefined => {
    const number = String(given.number)
    if (shared.has(number)) return fault('fact-number-shared', path, { column: 'number' }, number)
    if (typeof given.born === 'string' && isoDay(given.born) > herd.today)
      return fault('date-future', path, { column: 'born', date: given.born }, number)
    for (const parent of ['sire', 'dam'])
      if (given[parent] === number) return fault('animal-own-parent', path, { column: parent }, number)
    const id = String(given.internationalId ?? '')
    const other = owners.get(id)?.find((owner) => owner !== number)
    if (other === undefined) return undefined
    return fault('animal-id-shared', path, { column: 'international_id', id, other }, number)
  }
}

/**
 * The numbers of the animals that have each international ID: by their rows, and on record where no row of the
 * animal gives another.
 */
function internationalIds(rows: readonly TableRow[], herd: Herd): ReadonlyMap<string, readonly string[]> {
  const said = rows.flatMap(({ given: { internationalId, number } }) =>
    internationalId === undefined ? [] : [{ id: String(internationalId), number: String(number) }],
  )
  const renamed = new Set(said.map(({ number }) => number))
  const kept = [...herd.book.animals.values()].flatMap(({ number, record: { internationalId } }) =>
    internationalId === undefined || renamed.has(number) ? [] : [{ id: internationalId, number }],
  )
  const owners = new Map<string, string[]>()
  for (const [id, group] of Map.groupBy([...said, ...kept], (each) => each.id))
    owners.set(id, [...new Set(group.map(({ number }) => number))].sort(compareNumbers))
  return owners
}
