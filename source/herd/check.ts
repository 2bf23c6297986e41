/**
 * Judges a list of facts as a whole: the shape of each, and what they say of one another. Loaded only when needed,
 * with zod behind it.
 */
import { isDeepStrictEqual } from 'node:util'
import { type Fact, type FactKind, HERD } from '../breeding/facts.ts'
import { fault, notice, type Problem } from '../breeding/problem.ts'
import { problemOf, shown } from './issues.ts'
import { KnownFacts } from './known-facts.ts'
import { factShapes, textLimit } from './schema.ts'

type Loose = Readonly<Record<string, unknown>>
/** Deepest nesting of the fields of a fact that this version does not know. */
const depthLimit = 20

/**
 * Everything wrong with the facts of a file.
 *
 * @param facts what the file holds, of any shape
 * @returns faults, which keep the file from being used, and notices (two animals with one number), which do not
 * @example checkFacts([{ kind: 'heat', date: '2026-02-30', … }]) // [{ code: 'field-date', path: 'facts[0].date', … }]
 */
export function checkFacts(facts: readonly unknown[]): Problem[] {
  const all = new KnownFacts()
  for (const fact of facts) if (isLoose(fact)) all.add(fact as unknown as Fact)
  const problems = facts.flatMap((fact, index) => factProblems(fact, `facts[${index}]`, all))
  const shared = problems.length > 0 ? [] : all.sharedNumbers()
  return [
    ...problems,
    ...shared.map((record) =>
      notice(
        'number-shared',
        `facts[${facts.indexOf(record)}].number`,
        { number: shown(record.number) },
        shown(record.number),
      ),
    ),
  ]
}

/**
 * What speaks against recording facts. Stricter than for a file: a number that another animal has is refused.
 *
 * @param known the facts of the herd, which were checked before
 * @param added facts to record
 * @returns problems with paths into `added`; none where all are good
 */
export function checkAdded(known: KnownFacts, added: readonly Fact[]): Problem[] {
  const all = new KnownFacts(known)
  for (const fact of added) all.add(fact)
  const problems = added.flatMap((fact, index) => factProblems(fact, `facts[${index}]`, all))
  if (problems.length > 0 || !added.some((fact) => fact.kind === 'animal')) return problems
  return all.sharedNumbers().flatMap((record) => {
    const index = added.indexOf(record)
    const number = shown(record.number)
    return index === -1 ? [] : [fault('number-taken', `facts[${index}].number`, { number }, number)]
  })
}

function factProblems(fact: unknown, place: string, all: KnownFacts): Problem[] {
  const about = isLoose(fact) ? fact.about : undefined
  const number = typeof about === 'string' ? all.numberOf(about) : undefined
  const animal = number === undefined ? undefined : shown(number)
  const shape = shapeProblems(fact, place, animal)
  if (shape.length > 0 || !isLoose(fact)) return shape
  const problems: Problem[] = []
  const id = shown(fact.id)
  const first: unknown = all.find(fact.id as string)
  if (first !== fact) {
    problems.push(
      fault(isDeepStrictEqual(first, fact) ? 'id-twice' : 'id-other-content', `${place}.id`, { id }, animal),
    )
  }
  if (about !== HERD && number === undefined) {
    problems.push(fault('animal-unknown', `${place}.about`, { id: shown(about), kind: shown(fact.kind) }))
  }
  for (const field of ['voids', 'with']) {
    if (fact.kind !== 'correction' || fact[field] === undefined || all.has(fact[field] as string)) continue
    problems.push(fault('correction-unknown', `${place}.${field}`, { id: shown(fact[field]) }, animal))
  }
  return problems
}

function shapeProblems(fact: unknown, place: string, animal: string | undefined): Problem[] {
  if (!isLoose(fact)) return [fault('fact-no-object', place, { found: shown(fact) })]
  const { kind } = fact
  if (typeof kind !== 'string') return [fault('field-missing', `${place}.kind`, { field: 'kind' }, animal)]
  if (!Object.hasOwn(factShapes, kind))
    return [fault('kind-unknown', `${place}.kind`, { kind: shown(kind) }, animal)]
  const result = factShapes[kind as FactKind].safeParse(fact)
  const problems = result.success
    ? []
    : result.error.issues.map((issue) => problemOf(issue, fact, place, animal))
  return problems.length > 0 ? problems : unfitValues(fact, place, animal)
}

/** Texts too long, numbers that JSON cannot hold and nesting without end, in fields known or not. */
function unfitValues(value: unknown, path: string, animal: string | undefined, depth = 0): Problem[] {
  if (typeof value === 'string') {
    return value.length > textLimit
      ? [
          fault(
            'field-too-long',
            path,
            { field: path.slice(path.lastIndexOf('.') + 1), limit: textLimit, found: shown(value) },
            animal,
          ),
        ]
      : []
  }
  if (typeof value === 'number')
    return Number.isFinite(value) ? [] : [fault('field-number', path, { found: shown(value) }, animal)]
  if (typeof value !== 'object' || value === null) return []
  if (depth >= depthLimit) return [fault('field-too-deep', path, { limit: depthLimit }, animal)]
  return Object.entries(value).flatMap(([key, inner]) =>
    unfitValues(inner, Array.isArray(value) ? `${path}[${key}]` : `${path}.${shown(key)}`, animal, depth + 1),
  )
}

const isLoose = (value: unknown): value is Loose =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
