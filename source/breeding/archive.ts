/**
 * Which facts nothing rests on any more: cycles that a calving closed in seasons older than two years. What the rules
 * and figures still need stays: records, calvings, losses, blocks, bars, holds, who left, seasons, stock.
 */
import type { HerdBook } from './book.ts'
import { bullPeriods } from './bull-period.ts'
import { compareTexts } from './compare-texts.ts'
import { contradictionsOf } from './contradictions.ts'
import { type Day, dayIso, type IsoDate, isoDay } from './day.ts'
import type { ArchiveFact, CorrectionFact, Fact, FactKind } from './facts.ts'
import { DAYS_BACK } from './figures/own-rates.ts'
import { dayOfSeason, PRE_MATING, type Season, seasonOn } from './season.ts'
import { type Standing, standingOn } from './standing.ts'
import { servicesSettled } from './straws/settled.ts'

/** Kinds that count in their own cycle only. */
const kindsOfCycle: ReadonlySet<FactKind> = new Set([
  'heat',
  'looked',
  'service',
  'check',
  'examined',
  'score',
  'dry',
  'note',
  'to-bull',
  'with-bull',
  'from-bull',
])

/** What can be archived. */
interface Archivable {
  /** The season day -35 that the oldest season kept whole begins with; every fact to archive is dated before it. */
  readonly before: Day
  /** In order of the file, corrections of such facts among them. */
  readonly facts: readonly Fact[]
}

const beginOf = (season: Season): Day => dayOfSeason(season, PRE_MATING)

/**
 * The facts that can be archived: without them lists, pages of animals in the herd as to their present cycle, straws,
 * forecast and the figures of the seasons kept are the same on the day and on every later one.
 *
 * Archived are heats, services, checks and the like of an animal before her last calving before the limit, or of one
 * that left before it. They stay where the animal has a contradiction, where a bull is still with her, and where the
 * stock of straws still rests on them. A correction goes with what it voids.
 *
 * @returns undefined where no season is old enough: own results reach back 24 months and five weeks
 * @example archivableOn(book, isoDay('2026-05-28'))?.before // 27 March 2024, where spring 2024 began on 1 May
 */
export function archivableOn(book: HerdBook, today: Day): Archivable | undefined {
  const standings = Array.from(book.animals.values(), (animal) => standingOn(book, animal, today))
  const before = limitOn(book, standings, today)
  if (before === undefined) return undefined
  const closed = new Map(
    standings.map((standing) => [standing.animal.id, closedUntil(book, standing, before)]),
  )
  const settled = servicesSettled(book, (before - 1) as Day)
  const withBull = new Set(standings.filter((one) => bullStays(one, closed.get(one.animal.id))).map(idOf))
  const goes = (fact: Fact): boolean => {
    const until = closed.get(fact.about)
    if (until === undefined || !kindsOfCycle.has(fact.kind) || isoDay(fact.date) >= until) return false
    if (book.voided.has(fact.id)) return true
    if (fact.kind === 'service') return settled.has(fact.id)
    if (fact.kind === 'with-bull' || fact.kind === 'from-bull') return !withBull.has(fact.about)
    return fact.kind !== 'examined' || fact.serveOn === undefined || isoDay(fact.serveOn) < before
  }
  const byId = new Map(book.facts.map((fact) => [fact.id, fact]))
  const facts = book.facts.filter((fact) => goes(fact.kind === 'correction' ? corrected(fact, byId) : fact))
  return { before, facts }
}

/**
 * The day that the oldest season to keep begins on: not so late that own results, or the season that an animal stands
 * in, reach back behind it.
 */
function limitOn(book: HerdBook, standings: readonly Standing[], today: Day): Day | undefined {
  const blocks = new Set(standings.filter(({ inHerd }) => inHerd).map(({ block }) => block))
  let latest = today - DAYS_BACK + PRE_MATING
  for (const [block, seasons] of book.seasons) {
    const current = seasonOn(seasons, today)
    if (current !== undefined && blocks.has(block)) latest = Math.min(latest, beginOf(current))
  }
  return book.allSeasons.map(beginOf).findLast((begin) => begin <= latest)
}

/** The day before which everything of an animal is closed: by a calving, or because she left. */
function closedUntil(book: HerdBook, standing: Standing, before: Day): Day | undefined {
  if (contradictionsOf(book, standing).length > 0) return undefined
  if (standing.leftOn !== undefined && standing.leftOn < before) return before
  return standing.calvings.findLast(({ lastDay }) => lastDay < before)?.day
}

/** Whether a bull that was put with her before a day was not taken from her before it. */
const bullStays = ({ animal }: Standing, until: Day | undefined): boolean =>
  until !== undefined && bullPeriods(animal, (day) => day < until).some(({ to }) => to === undefined)

const idOf = ({ animal }: Standing): string => animal.id

/** The fact that a correction is about in the end: it may correct another correction. */
function corrected(correction: CorrectionFact, byId: ReadonlyMap<string, Fact>): Fact {
  const seen = new Set<Fact>()
  let fact: Fact = correction
  while (fact.kind === 'correction' && !seen.has(fact)) {
    seen.add(fact)
    fact = byId.get(fact.voids) ?? fact
  }
  return fact
}

/** The latest archive of a herd: of all its archives the one that reaches furthest. */
export const archiveOf = (book: HerdBook): ArchiveFact | undefined =>
  book.archives.toSorted((a, b) => compareTexts(a.before, b.before)).at(-1)

/** Whether facts of a season are in an archive, so that its figures cannot be counted from the herd. */
export const isArchived = (season: Season, before: IsoDate | undefined): boolean =>
  before !== undefined && dayIso(beginOf(season)) < before
