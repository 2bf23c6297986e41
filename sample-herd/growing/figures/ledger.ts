/** The facts of a herd gathered by animal, for counting: a plain reading that shares nothing with the program's own rules. */
import { type Day, isoDay } from '../../../source/breeding/day.ts'
import type {
  AnimalRecordFact,
  CheckFact,
  Fact,
  SeasonFact,
  ServiceFact,
} from '../../../source/breeding/facts.ts'

export interface Life {
  record: AnimalRecordFact
  heats: Day[]
  services: { day: Day; fact: ServiceFact }[]
  checks: { day: Day; fact: CheckFact }[]
  calvings: Day[]
  losses: Day[]
  bars: { day: Day; barred: boolean }[]
  blocks: { day: Day; block: string }[]
  entered: Day
  left: Day | undefined
  readyFrom: Day | undefined
}

export interface Ledger {
  readonly lives: readonly Life[]
  readonly seasons: readonly SeasonFact[]
}

/** Gathers facts; what a correction voids is left out. */
export function ledgerOf(facts: readonly Fact[]): Ledger {
  const voided = new Set(facts.flatMap((fact) => (fact.kind === 'correction' ? [fact.voids] : [])))
  const lives = new Map<string, Life>()
  const seasons: SeasonFact[] = []
  for (const fact of facts) {
    if (voided.has(fact.id)) continue
    const day = isoDay(fact.date)
    if (fact.kind === 'season') seasons.push(fact)
    else if (fact.kind === 'animal') enter(lives, fact, day)
    const life = lives.get(fact.about)
    if (life === undefined) continue
    if (fact.kind === 'heat' && fact.certainty === 'sure') life.heats.push(day)
    else if (fact.kind === 'service') life.services.push({ day, fact })
    else if (fact.kind === 'check') life.checks.push({ day, fact })
    else if (fact.kind === 'calving') life.calvings.push(day)
    else if (fact.kind === 'loss') life.losses.push(day)
    else if (fact.kind === 'bar' || fact.kind === 'unbar')
      life.bars.push({ day, barred: fact.kind === 'bar' })
    else if (fact.kind === 'block') life.blocks.push({ day, block: fact.block })
    else if (fact.kind === 'left') life.left = day
  }
  return {
    lives: [...lives.values()],
    seasons: seasons.toSorted((a, b) => (a.matingStart < b.matingStart ? -1 : 1)),
  }
}

function enter(lives: Map<string, Life>, record: AnimalRecordFact, day: Day): void {
  if (record.sex === 'M') return
  const known = lives.get(record.about)
  const readyFrom = record.ready === false ? undefined : day
  if (known !== undefined) {
    known.record = record
    known.readyFrom ??= readyFrom
    return
  }
  lives.set(record.about, {
    record,
    heats: [],
    services: [],
    checks: [],
    calvings: [],
    losses: [],
    bars: [],
    blocks: [],
    entered: day,
    left: undefined,
    readyFrom,
  })
}

/** Whether she is a maiden on a day. */
export const maidenOn = (life: Life, day: Day): boolean =>
  (life.record.lactation ?? 0) + life.calvings.filter((calved) => calved <= day).length === 0

/** Whether a season counts her on a day: of the block, here, not barred, ready where a maiden. */
export function countsOn(life: Life, block: string, day: Day): boolean {
  if (life.entered > day || (life.left !== undefined && life.left <= day)) return false
  if ((life.blocks.findLast((move) => move.day <= day)?.block ?? life.record.block) !== block) return false
  if (life.bars.findLast((bar) => bar.day <= day)?.barred === true) return false
  return !maidenOn(life, day) || (life.readyFrom !== undefined && life.readyFrom <= day)
}
