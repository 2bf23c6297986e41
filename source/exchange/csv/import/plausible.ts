/** Facts that cannot have happened as a row tells them: a typing error, most likely in the date or the number. */
import { type Day, isoDay } from '../../../breeding/day.ts'
import type { AnimalFact } from '../../../breeding/facts.ts'
import { fault, type Problem } from '../../../breeding/problem.ts'
import type { PlannedAnimal } from './herd.ts'
import type { Fields } from './rows.ts'

/** What only females do. */
const female: readonly AnimalFact['kind'][] = ['heat', 'looked', 'service', 'check', 'calving', 'loss', 'dry']

/**
 * What speaks against a fact of an animal.
 *
 * @param fields values of the columns, dates among them
 * @param path of the row
 * @returns the first of date-future, date-before-birth, animal-male, date-order; undefined where all is well
 */
export function implausible(
  fields: Fields,
  animal: PlannedAnimal,
  today: Day,
  path: string,
): Problem | undefined {
  const date = String(fields.date)
  const kind = fields.kind as AnimalFact['kind']
  if (isoDay(date) > today) return fault('date-future', path, { date }, animal.number)
  if (animal.born !== undefined && date < animal.born)
    return fault('date-before-birth', path, { date, born: animal.born }, animal.number)
  if (animal.sex === 'M' && female.includes(kind))
    return fault('animal-male', path, { fact: kind }, animal.number)
  const pairs = [
    ['service_date', fields.serviceDate, 'date', date],
    ['date', date, 'until', fields.until],
    ['date', date, 'serve_on', fields.serveOn],
  ] as const
  for (const [first, early, second, late] of pairs)
    if (typeof early === 'string' && typeof late === 'string' && early > late)
      return fault('date-order', path, { first, early, second, late }, animal.number)
  return undefined
}

/**
 * What the values of one fact say against each other, or leave out.
 *
 * @param needs fields that this kind of fact must have, by the names of their columns
 */
export function inconsistent(
  fields: Fields,
  needs: ReadonlyMap<string, string>,
  path: string,
  animal?: string,
): Problem | undefined {
  for (const [field, column] of needs)
    if (fields[field] === undefined)
      return fault('cell-needed', path, { column, fact: String(fields.kind) }, animal)
  if (fields.kind !== 'calving') return undefined
  const calves = Number(fields.calves ?? 1)
  if (Number(fields.dead ?? 0) > calves)
    return fault('calving-dead', path, { column: 'dead', dead: Number(fields.dead), calves }, animal)
  if (typeof fields.calfSex === 'string' && fields.calfSex.length !== calves)
    return fault('calving-sexes', path, { column: 'calf_sex', sexes: fields.calfSex, calves }, animal)
  return undefined
}
