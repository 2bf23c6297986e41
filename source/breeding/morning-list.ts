/** The morning list of a day: every animal in at most one section, in the order of the work. */
import type { HerdBook } from './book.ts'
import { cycleMean } from './chances/cycle.ts'
import { type Rates, serviceClass } from './chances/rates.ts'
import { inCalfWithoutReturn, type Returns, returnsAfter, returnToday } from './chances.ts'
import { contradictionsOf } from './contradictions.ts'
import type { Service } from './cycle.ts'
import type { Day } from './day.ts'
import { doneToday } from './done.ts'
import type { BlockDay, MorningList, Row, Section, VisitAhead, Warning } from './list.ts'
import { sections } from './list.ts'
import { compareRows } from './order.ts'
import { ratesOfPolicy } from './rates-of-policy.ts'
import { heatRecord } from './rules/heat-record.ts'
import { noHeatSeen } from './rules/no-heat-seen.ts'
import type { Placement, Rule, RuleSetting } from './rules/placement.ts'
import { nextVisit, pregnancyCheck } from './rules/pregnancy-check.ts'
import { repeatHeatWatch } from './rules/repeat-heat-watch.ts'
import { secondService, serve } from './rules/serve.ts'
import { sweepBull } from './rules/sweep-bull.ts'
import { takeCare } from './rules/take-care.ts'
import { phaseEnd, phaseOf, seasonDay, seasonOn } from './season.ts'
import { checkedEmpty, returned, type Standing, standingOn } from './standing.ts'
import { strawChooser } from './straws/choose.ts'
import { unwatchedSince, watchedDays } from './watched-weeks.ts'

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
 * The blocks on a day: by mating start of the season shown (live, else next, else last), then name.
 *
 * @example blocksOn(book, isoDay('2026-05-28'))[0]?.phase // 'ai'
 */
export function blocksOn(book: HerdBook, today: Day): readonly BlockDay[] {
  const blocks: BlockDay[] = []
  for (const [block, seasons] of book.seasons) {
    const current = seasonOn(seasons, today)
    if (current === undefined) continue
    const season =
      phaseOf(current, today) === 'closed'
        ? (seasons.find((one) => one.matingStart > today) ?? current)
        : current
    blocks.push({
      block,
      season,
      phase: phaseOf(season, today),
      day: seasonDay(season, today),
      closes: phaseEnd(season, today),
    })
  }
  return blocks.sort(
    (a, b) =>
      a.season.matingStart - b.season.matingStart || (a.block < b.block ? -1 : a.block > b.block ? 1 : 0),
  )
}

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
  const waiting = new Map<string, VisitAhead>()
  for (const standing of standings) {
    const place = placeOf(standing, setting)
    const visit = place.further === undefined ? undefined : visitBefore(place.further, standing)
    if (visit !== undefined) {
      const before = waiting.get(visit.block)
      waiting.set(visit.block, { ...visit, ready: (before?.ready ?? 0) + 1 })
    }
    const further = visit === undefined ? place.further : undefined
    const first = place.takeCare ?? further
    if (first !== undefined)
      made.push(rows.row(standing, first, place.takeCare === undefined ? undefined : further?.section))
  }
  const order = new Map(blocks.map((block, index) => [block.block, index]))
  return {
    day: today,
    blocks,
    rows: made.sort(compareRows(order)),
    visits: [...waiting.values()].sort((a, b) => a.visit - b.visit),
  }
}

/** Take care where it fits, and the first other section that fits. */
export function placeOf(
  standing: Standing,
  setting: RuleSetting,
): { takeCare: Placement | undefined; further: Placement | undefined } {
  let further: Placement | undefined
  for (const rule of rules) {
    further = rule(standing, setting)
    if (further !== undefined) break
  }
  return { takeCare: takeCare(standing, setting), further }
}

/** A check waits where a scanning visit of the block is planned on a later day. */
function visitBefore(place: Placement, standing: Standing): VisitAhead | undefined {
  if (place.section !== 'pregnancy-check' || standing.season === undefined || standing.block === undefined)
    return undefined
  const visit = nextVisit(standing.season, standing.today)
  return visit === undefined || visit === standing.today
    ? undefined
    : { block: standing.block, visit, ready: 0 }
}

/** Makes rows: adds chances, straws and ticks to placements. */
class RowMaker {
  readonly #book: HerdBook
  readonly #rates: Rates
  readonly #today: Day
  readonly #choose: ReturnType<typeof strawChooser>
  readonly #watched: (standing: Standing) => (day: Day) => boolean

  constructor(book: HerdBook, today: Day, standings: readonly Standing[]) {
    this.#book = book
    this.#today = today
    this.#rates = ratesOfPolicy(book.policy)
    this.#choose = strawChooser(book, today)
    const byBlock = new Map<string | undefined, (day: Day) => boolean>()
    this.#watched = (standing) => {
      const found = byBlock.get(standing.block)
      if (found !== undefined) return found
      const block = standings.filter((one) => one.block === standing.block)
      const watched = standing.season === undefined ? () => true : watchedDays(standing.season, block, today)
      byBlock.set(standing.block, watched)
      return watched
    }
  }

  row(standing: Standing, place: Placement, also: Section | undefined): Row {
    const done = doneToday(standing, place.section)
    const straw = this.#strawOf(standing, place)
    return {
      section: place.section,
      animal: standing.animal.id,
      number: standing.animal.number,
      block: standing.block,
      days: place.days,
      since: place.since,
      chance: this.#chanceOf(standing, place, straw.straw),
      session: place.serving?.session,
      straw: straw.straw,
      moment: place.serving === undefined ? 0 : momentOfHeat(standing),
      reasons: place.reasons,
      warnings: straw.warnings.length === 0 ? place.warnings : [...place.warnings, ...straw.warnings],
      also,
      done,
    }
  }

  /** The proposed straw; once she is served, the one that was used. */
  #strawOf(standing: Standing, place: Placement): { straw: Row['straw']; warnings: readonly Warning[] } {
    if (place.serving === undefined) return { straw: undefined, warnings: [] }
    const used = standing.todays.findLast((fact) => fact.kind === 'service' && fact.natural !== true)
    if (used?.kind === 'service' && used.sire !== undefined && used.straw !== undefined) {
      return { straw: { sire: used.sire, straw: used.straw }, warnings: [] }
    }
    return this.#choose(standing, place.serving)
  }

  #chanceOf(standing: Standing, place: Placement, straw: Row['straw']): number | undefined {
    switch (place.section) {
      case 'serve':
      case 'second-service':
        return straw === undefined
          ? undefined
          : this.#rates.conception[serviceClass(standing.maiden, straw.straw)]
      case 'repeat-heat-watch':
        return place.since === 'heat' ? this.#heatAgain(standing) : this.#returnsToday(standing)
      case 'pregnancy-check':
        return chanceInCalf(standing, this.#book, this.#rates)
      default:
        return undefined
    }
  }

  #returnsToday(standing: Standing): number | undefined {
    const service = standing.lastService
    if (service === undefined) return undefined
    return returnToday(
      conceptionOfService(service, this.#rates),
      this.#today - service.day,
      returnsOf(service, this.#rates),
    )
  }

  #heatAgain(standing: Standing): number | undefined {
    const heat = standing.latestSureHeat
    if (heat === undefined) return undefined
    const unwatched = unwatchedSince(heat.day, this.#today, this.#watched(standing))
    const returns = returnsAfter('heat', cycleMean(standing.parity, this.#rates), this.#rates, unwatched)
    return returnToday(0, this.#today - heat.day, returns)
  }
}

const momentOfHeat = ({ latestHeat, today }: Standing): number =>
  latestHeat === undefined ? 0 : (latestHeat.day - today) * 1440 + latestHeat.minute

/** Chance that a service holds, by the class of animal and straw. */
export const conceptionOfService = (service: Service, rates: Rates): number =>
  rates.conception[serviceClass(service.maiden, service.ai ? (service.straw ?? 'conventional') : 'natural')]

const returnsOf = (service: Service, rates: Rates): Returns =>
  returnsAfter('service', cycleMean(service.parity, rates), rates)

/**
 * Chance that she is in calf on the morning of the standing's day, before that day's heats are seen: what is known
 * where it is known, else from her last service and the days without a return.
 *
 * @returns 0-1; undefined where she has not been served in this cycle
 */
export function chanceInCalf(standing: Standing, book: HerdBook, rates: Rates): number | undefined {
  if (standing.inCalf) return 1
  const service = standing.lastService
  if (service === undefined) return undefined
  if (checkedEmpty(standing) || returned(standing, book.policy.watchFrom)) return 0
  return inCalfWithoutReturn(
    conceptionOfService(service, rates),
    standing.today - service.day - 1,
    returnsOf(service, rates),
  )
}

/**
 * Chance that her return to the last service is seen on a later day, as known on the morning of the standing's day.
 *
 * @param day on which it would be seen, the standing's day or later
 * @returns 0-1; 0 where no return is awaited
 */
export function returnsExpected(standing: Standing, book: HerdBook, day: Day): number {
  const service = standing.lastService
  if (service === undefined || standing.inCalf || !standing.inHerd) return 0
  if (standing.countingCheck !== undefined || returned(standing, book.policy.watchFrom)) return 0
  const rates = ratesOfPolicy(book.policy)
  const returns = returnsOf(service, rates)
  const open = 1 - conceptionOfService(service, rates)
  const unseen = 1 - open * (returns.byDay[Math.max(0, standing.today - service.day - 1)] ?? 0)
  return (open * (returns.onDay[day - service.day] ?? 0)) / unseen
}

/** Sections that hold a row, in screen order, with their rows. */
export const rowsBySection = (list: MorningList): ReadonlyMap<Section, readonly Row[]> =>
  new Map(
    sections
      .map((section) => [section, list.rows.filter((row) => row.section === section)] as const)
      .filter(([, rows]) => rows.length > 0),
  )
