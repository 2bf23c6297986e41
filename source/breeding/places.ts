/** Where each animal of a herd stands on a day: what its morning list is made from. */
import type { HerdBook } from './book.ts'
import { contradictionsOf } from './contradictions.ts'
import type { Day } from './day.ts'
import type { VisitAhead } from './list.ts'
import { heatRecord } from './rules/heat-record.ts'
import { noHeatSeen } from './rules/no-heat-seen.ts'
import type { Placement, Rule, RuleSetting } from './rules/placement.ts'
import { pregnancyCheck, visitAhead } from './rules/pregnancy-check.ts'
import { repeatHeatWatch } from './rules/repeat-heat-watch.ts'
import { secondService, serve } from './rules/serve.ts'
import { sweepBull } from './rules/sweep-bull.ts'
import { takeCare } from './rules/take-care.ts'
import { phaseOf, seasonDay } from './season.ts'
import { type Standing, standingOn } from './standing.ts'

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

/** Where an animal stands: take care where it fits, and the first other section that fits. */
interface Place {
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

/** The visit that her check waits for, where she will be ready on it if nothing happens before. */
function readyForVisit(standing: Standing, setting: RuleSetting): VisitAwaited | undefined {
  const { season, block } = standing
  const visit = visitAhead(standing)
  if (visit === undefined || season === undefined || block === undefined) return undefined
  const then = { ...standing, today: visit, s: seasonDay(season, visit), phase: phaseOf(season, visit) }
  return pregnancyCheck(then, setting) === undefined ? undefined : { block, visit }
}

/** The scanning visit that an animal waits for. */
export type VisitAwaited = Omit<VisitAhead, 'ready'>

/** An animal with her place. */
export interface Placed extends Place {
  readonly standing: Standing
  readonly visit: VisitAwaited | undefined
}

export interface Places {
  readonly book: HerdBook
  readonly today: Day
  /** In the order of the book. */
  readonly each: readonly Placed[]
}

/**
 * The places of a herd on a day. Where other places are given, those of the animals to whom nothing happened since
 * are kept: so a list is brought up to date in the time of the animals that a tick concerns.
 *
 * @param before places of any herd on any day; what does not hold any more is not used
 * @example placesOn(withFacts(book, [heat]), today, placesOn(book, today)).each.length // as many as before
 */
export function placesOn(book: HerdBook, today: Day, before?: Places): Places {
  const kept = before?.today === today && sameHerd(before.book, book) ? before.each : []
  const place = placing(book)
  const each = Array.from(book.animals.values(), (animal, index) => {
    const known = kept[index]
    return known?.standing.animal === animal ? known : place(standingOn(book, animal, today))
  })
  return { book, today, each }
}

/** The places of standings that are known already. */
export const placesOf = (book: HerdBook, standings: readonly Standing[]): readonly Placed[] =>
  standings.map(placing(book))

function placing(book: HerdBook): (standing: Standing) => Placed {
  const setting: RuleSetting = {
    policy: book.policy,
    milkings: book.farm.milkings,
    contradicted: (standing) => contradictionsOf(book, standing).length > 0,
  }
  return (standing) => ({
    standing,
    ...placeOf(standing, setting),
    visit: readyForVisit(standing, setting),
  })
}

/** Whether all that places rest on besides an animal's own happenings is the same. */
const sameHerd = (one: HerdBook, other: HerdBook): boolean =>
  one.farm === other.farm &&
  one.policy === other.policy &&
  one.allSeasons === other.allSeasons &&
  one.records === other.records &&
  one.stock === other.stock
