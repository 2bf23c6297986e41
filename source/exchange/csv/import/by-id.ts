/** Rows of facts that carry an id. */
import { HERD } from '../../../breeding/facts.ts'
import { fault, type Problem } from '../../../breeding/problem.ts'
import { factColumns } from '../tables/facts.ts'
import { contentOf } from './differences.ts'
import type { Herd, PlannedAnimal } from './herd.ts'
import type { TableRow } from './rows.ts'

/** A row whose animal is known. */
export interface AnimalRow {
  readonly row: TableRow
  readonly animal: PlannedAnimal
}

/**
 * Takes apart the rows that name a fact of the herd by its id, once each, and the others. Rows with one id that say
 * the same are one; where they differ all are refused. A fact that went to an archive is known.
 */
export function splitById(
  rows: readonly AnimalRow[],
  herd: Herd,
  refuse: (row: TableRow, problem: Problem) => void,
) {
  const byIdentity = new Map<string, AnimalRow>()
  const others: AnimalRow[] = []
  const repeated: TableRow[] = []
  for (const [id, group] of Map.groupBy(rows, ({ row }) => row.given.id)) {
    const [first, ...more] = group
    if (typeof id !== 'string' || first === undefined) {
      others.push(...group)
      continue
    }
    const contents = new Set(group.map(({ row }) => contentOf(factColumns, row.given)))
    const fact = herd.byId.get(id)
    if (contents.size > 1) {
      for (const { row, animal } of group) {
        const other = row === first.row ? more[0]?.row.path : first.row.path
        refuse(row, fault('row-id-twice', row.path, { column: 'id', id, other: other ?? '' }, animal.number))
      }
    } else if (herd.archived.has(id)) {
      repeated.push(...group.map(({ row }) => row))
    } else if (
      fact !== undefined &&
      (fact.about === HERD || fact.kind === 'animal' || fact.kind === 'correction')
    ) {
      for (const { row, animal } of group)
        refuse(row, fault('id-taken', row.path, { column: 'id', id }, animal.number))
    } else {
      repeated.push(...more.map(({ row }) => row))
      if (fact === undefined) others.push(first)
      else byIdentity.set(id, first)
    }
  }
  return { byIdentity, others, repeated }
}
