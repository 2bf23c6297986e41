/** Who is awaited at a scanning visit, and how far it has got. */
import type { AnimalRecord, HerdBook } from '../../breeding/book.ts'
import { type Day, dayIso } from '../../breeding/day.ts'
import type { CheckFact, CheckMethod, CheckResult } from '../../breeding/facts.ts'
import { compareNumbers } from '../../breeding/order.ts'
import { pregnancyCheck } from '../../breeding/rules/pregnancy-check.ts'
import { standingOn } from '../../breeding/standing.ts'

/** A visit: its day and the method it is done by. */
interface Visit {
  readonly day: Day
  readonly method: CheckMethod
}

interface Awaited {
  readonly animal: AnimalRecord
  readonly block: string
}

interface BlockTally {
  readonly block: string
  readonly results: Readonly<Record<CheckResult, number>>
  readonly toCome: number
}

export interface VisitSoFar {
  /** Blocks that the visit is planned for; empty: not planned, so for all. */
  readonly plannedFor: readonly string[]
  readonly tally: readonly BlockTally[]
  /** By number. */
  readonly toCome: readonly Awaited[]
  /** Ids of the animals that a check of the day is due of, those checked already too. */
  readonly due: ReadonlySet<string>
  readonly blockOf: (animal: AnimalRecord) => string
  /** The day's checks in the order they were recorded, the last first. */
  readonly results: readonly CheckFact[]
}

interface Known {
  readonly key: string
  readonly policy: HerdBook['policy']
  readonly seasons: HerdBook['allSeasons']
  readonly due: boolean
  readonly block: string
}
const known = new WeakMap<AnimalRecord, Known>()

/** Whether a check of hers is due on the day, planned visits or not, and her block. Kept while nothing happens to her. */
function dueOf(book: HerdBook, animal: AnimalRecord, { day, method }: Visit): Known {
  const key = `${day} ${method}`
  const found = known.get(animal)
  if (found?.key === key && found.policy === book.policy && found.seasons === book.allSeasons) return found
  const standing = standingOn(book, animal, day)
  const setting = {
    policy: { ...book.policy, checkMethod: method },
    milkings: book.farm.milkings,
    contradicted: () => false,
  }
  const made: Known = {
    key,
    policy: book.policy,
    seasons: book.allSeasons,
    due: pregnancyCheck(standing, setting) !== undefined,
    block: standing.block ?? '',
  }
  known.set(animal, made)
  return made
}

/** Blocks that a scanning visit is planned for on a day. */
const blocksVisited = (book: HerdBook, day: Day): readonly string[] => [
  ...new Set(book.allSeasons.filter(({ scanDays }) => scanDays.includes(day)).map(({ block }) => block)),
]

/** Checks of a day in the order they were recorded, the last first. */
export function checksOf(book: HerdBook, day: Day): readonly CheckFact[] {
  const date = dayIso(day)
  return book.live.filter((fact): fact is CheckFact => fact.kind === 'check' && fact.date === date).reverse()
}

/**
 * How far a visit has got.
 *
 * @example visitSoFar(book, { day, method: 'ultrasound' }).tally[0]
 *   // { block: 'spring', results: { pregnant: 41, empty: 6, unsure: 1 }, toCome: 72 }
 */
export function visitSoFar(book: HerdBook, visit: Visit): VisitSoFar {
  const key = `${visit.day} ${visit.method}`
  const kept = visits.get(book)
  if (kept?.key === key) return kept.visit
  const made = counted(book, visit)
  visits.set(book, { key, visit: made })
  return made
}
const visits = new WeakMap<HerdBook, { readonly key: string; readonly visit: VisitSoFar }>()

function counted(book: HerdBook, visit: Visit): VisitSoFar {
  const plannedFor = blocksVisited(book, visit.day)
  const results = checksOf(book, visit.day)
  const checked = new Map(results.toReversed().map((check) => [check.about, check]))
  const due = new Set<string>()
  const toCome: Awaited[] = []
  const blocks = new Map<string, { results: Record<CheckResult, number>; toCome: number }>()
  const tallyOf = (block: string) => {
    const found = blocks.get(block) ?? { results: { pregnant: 0, empty: 0, unsure: 0 }, toCome: 0 }
    blocks.set(block, found)
    return found
  }
  for (const block of plannedFor) tallyOf(block)
  for (const animal of book.animals.values()) {
    const { due: isDue, block } = dueOf(book, animal, visit)
    if (isDue) due.add(animal.id)
    const check = checked.get(animal.id)
    if (check !== undefined) tallyOf(block).results[check.result] += 1
    else if (isDue && (plannedFor.length === 0 || plannedFor.includes(block))) {
      tallyOf(block).toCome += 1
      toCome.push({ animal, block })
    }
  }
  return {
    plannedFor,
    tally: [...blocks]
      .map(([block, counts]) => ({ block, ...counts }))
      .sort((a, b) => (a.block < b.block ? -1 : 1)),
    toCome: toCome.sort((a, b) => compareNumbers(a.animal.number, b.animal.number)),
    due,
    blockOf: (animal) => dueOf(book, animal, visit).block,
    results,
  }
}
