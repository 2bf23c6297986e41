/** The morning list of a day: every animal in at most one section, in the order of the work. */
import { blocksOn } from './blocks.ts'
import type { HerdBook } from './book.ts'
import { contradictionsOf } from './contradictions.ts'
import type { Day } from './day.ts'
import type { MorningList, Row, Section, VisitAhead } from './list.ts'
import { sections } from './list.ts'
import { compareRows } from './order.ts'
import { RowMaker } from './row-maker.ts'
import { heatRecord } from './rules/heat-record.ts'
import { noHeatSeen } from './rules/no-heat-seen.ts'
import type { Placement, Rule, RuleSetting } from './rules/placement.ts'
import { nextVisit, pregnancyCheck } from './rules/pregnancy-check.ts'
import { repeatHeatWatch } from './rules/repeat-heat-watch.ts'
import { secondService, serve } from './rules/serve.ts'
import { sweepBull } from './rules/sweep-bull.ts'
import { takeCare } from './rules/take-care.ts'
import { phaseOf, seasonDay } from './season.ts'
import type { Serving } from './session.ts'
import { type Standing, standingOn } from './standing.ts'
import { withStraws } from './straw-rows.ts'

/** Sections 2 to 8: the first that fits. */
const rules: readonly Rule[] = [
  serve,
  secondService,
  repeatHeatWatch,
  pregnancyCheck,
  sweepBull,
  noHeatSeen,
  heatRecord,
]

/**
 * The morning list of a day, made from every fact dated before it and, of the day itself, heats, calvings, losses,
 * changed blocks and corrections; the other facts of the day tick their rows.
 *
 * @param book the herd book
 * @param today the list's day
 * @example morningList(book, isoDay('2026-05-28')).rows[0]?.section // 'take-care'
 */
export function morningList(book: HerdBook, today: Day): MorningList {
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, today))
  return listOf(book, today, standings)
}

/** The list of standings that are known already, all on the same day. */
export function listOf(book: HerdBook, today: Day, standings: readonly Standing[]): MorningList {
  const setting: RuleSetting = {
    policy: book.policy,
    milkings: book.farm.milkings,
    contradicted: (standing) => contradictionsOf(book, standing).length > 0,
  }
  const rows = new RowMaker(book, today, standings)
  const blocks = blocksOn(book, today)
  const made: Row[] = []
  const toServe = new Map<string, { standing: Standing; serving: Serving }>()
  const waiting = new Map<string, VisitAhead>()
  for (const standing of standings) {
    const place = placeOf(standing, setting)
    const visit = readyForVisit(standing, setting)
    if (visit !== undefined) waiting.set(visit.block, addedTo(waiting.get(visit.block), visit))
    const first = place.takeCare ?? place.further
    if (first !== undefined) {
      const also = place.takeCare === undefined ? undefined : place.further?.section
      made.push(rows.row(standing, first, also))
      if (first.serving !== undefined) toServe.set(standing.animal.id, { standing, serving: first.serving })
    }
  }
  const order = new Map(blocks.map((block, index) => [block.block, index]))
  return {
    day: today,
    blocks,
    rows: withStraws(book, today, made.sort(compareRows(order)), toServe),
    visits: [...waiting.values()].sort((a, b) => a.visit - b.visit),
  }
}

/** Where an animal stands: take care where it fits, and the first other section that fits. */
export interface Place {
  readonly takeCare: Placement | undefined
  readonly further: Placement | undefined
}

/**
 * Places an animal. A check that waits for a planned scanning visit holds no row before it; the sections after it may.
 */
export function placeOf(standing: Standing, setting: RuleSetting): Place {
  const waits = visitAhead(standing) !== undefined
  let further: Placement | undefined
  for (const rule of rules) {
    const found = rule(standing, setting)
    if (found === undefined || (waits && found.section === 'pregnancy-check')) continue
    further = found
    break
  }
  return { takeCare: takeCare(standing, setting), further }
}

/** The next scanning visit of her block, where it is planned on a later day. */
function visitAhead({ season, today }: Standing): Day | undefined {
  const visit = season === undefined ? undefined : nextVisit(season, today)
  return visit === today ? undefined : visit
}

/** The visit that her check waits for, where she will be ready on it if nothing happens before. */
function readyForVisit(standing: Standing, setting: RuleSetting): Omit<VisitAhead, 'ready'> | undefined {
  const { season, block } = standing
  const visit = visitAhead(standing)
  if (visit === undefined || season === undefined || block === undefined) return undefined
  const then = { ...standing, today: visit, s: seasonDay(season, visit), phase: phaseOf(season, visit) }
  return pregnancyCheck(then, setting) === undefined ? undefined : { block, visit }
}

const addedTo = (before: VisitAhead | undefined, visit: Omit<VisitAhead, 'ready'>): VisitAhead => ({
  ...visit,
  ready: (before?.ready ?? 0) + 1,
})

/** Sections that hold a row, in screen order, with their rows. */
export const rowsBySection = (list: MorningList): ReadonlyMap<Section, readonly Row[]> =>
  new Map(
    sections
      .map((section) => [section, list.rows.filter((row) => row.section === section)] as const)
      .filter(([, rows]) => rows.length > 0),
  )
