/**
 * Everything about a season of a block on the morning of a day, for whoever shows it: each part is reckoned when it is
 * first asked for, and kept.
 */
import { type BullPlan, bullPlan } from '../ahead/bull-plan.ts'
import { type LastChance, lastChances } from '../ahead/last-chances.ts'
import { archiveOf, isArchived } from '../archive.ts'
import { blocksOn } from '../blocks.ts'
import type { HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import type { ArchiveFact } from '../facts.ts'
import { type Assumption, assumptionsOf } from '../forecast/assumptions.ts'
import { type BlockForecast, forecastBlockInSteps } from '../forecast/block.ts'
import { type Change, changesWorthALook } from '../forecast/what-if.ts'
import { type HerdRates, ratesOfHerd } from '../rates-of-herd.ts'
import { CLOSING_DAYS, type Phase, phaseOf, type Season, seasonDay } from '../season.ts'
import type { Standing } from '../standing.ts'
import { finished, type Steps } from '../steps.ts'
import { type Counted, countedIn, countedInSteps, figuresOf, type SeasonFigures } from './season-figures.ts'

/** What of a view takes time to reckon: a change stands for the forecast with it, an empty one for the plan's. */
export type Part = 'figures' | 'earlier' | Change

const nameOf = (part: Part): string => (typeof part === 'string' ? part : `what if ${JSON.stringify(part)}`)

export class SeasonView {
  readonly book: HerdBook
  readonly season: Season
  readonly today: Day
  /** Season day of the morning. */
  readonly s: number
  readonly phase: Phase
  readonly #standings: readonly Standing[]
  readonly #kept = new Map<string, unknown>()

  constructor(book: HerdBook, standings: readonly Standing[], season: Season, today: Day) {
    this.book = book
    this.season = season
    this.today = today
    this.s = seasonDay(season, today)
    this.phase = phaseOf(season, today)
    this.#standings = standings
  }

  /** The rates that chances and forecast rest on, with the counts behind them. */
  get rates(): HerdRates {
    return ratesOfHerd(this.book, this.today, this.#standings)
  }

  /** Whom and what the figures are counted from. */
  get counted(): Counted {
    return this.#keep('counted', () => countedIn(this.book, this.#standings, this.season, this.today))
  }

  /** What has happened so far. */
  get figures(): SeasonFigures {
    return this.#keep('figures', () => figuresOf(this.counted, this.book, this.season, this.today))
  }

  /** The season ahead as it is planned; undefined once the closing weeks are over. */
  get forecast(): BlockForecast | undefined {
    return this.whatIf({})
  }

  /** The same with a change of the plan. */
  whatIf(change: Change): BlockForecast | undefined {
    return this.isOver ? undefined : this.#keep(nameOf(change), () => finished(this.#ahead(change)))
  }

  /** Changes worth a look beside the plan; each is reckoned by `whatIf`. */
  get changes(): readonly Change[] {
    const { forecast } = this
    if (forecast === undefined) return []
    return changesWorthALook({
      s: this.s,
      aiEnd: this.season.aiEnd,
      bullEnd: this.season.bullEnd,
      heatSeen: forecast.own.heatSeen,
      cowConception: forecast.own.conception.cowConventional.mean,
      bulls: forecast.bulls ?? forecast.bullsNeeded,
    })
  }

  /** Undefined without bull weeks, and once the closing weeks are over. */
  get bulls(): BullPlan | undefined {
    return this.forecast && bullPlan(this.book, this.season, this.forecast)
  }

  /** Late calvers and empties, those that were decided about too. */
  get lastChances(): readonly LastChance[] {
    const { book, counted, season, today } = this
    return this.#keep('last chances', () =>
      lastChances(book, this.#standings, counted.members, season, today),
    )
  }

  /** Where facts of earlier seasons of the block went, so that their figures are not among `earlier`. */
  get archive(): ArchiveFact | undefined {
    const archive = archiveOf(this.book)
    return this.#seasonsBefore().some((season) => isArchived(season, archive?.before)) ? archive : undefined
  }

  /** The seasons of the block before this one, the latest first; not those in an archive. */
  get earlier(): readonly SeasonFigures[] {
    return this.#keep('earlier', () => finished(this.#before()))
  }

  /** What the forecast rests on. */
  get assumptions(): readonly Assumption[] {
    return this.forecast === undefined ? [] : assumptionsOf(this.forecast, this.rates.rates, this.book.policy)
  }

  /** The closing weeks are over: nothing lies ahead. */
  get isOver(): boolean {
    return this.s > this.season.bullEnd + CLOSING_DAYS
  }

  /** Whether a part has been reckoned, so that asking for it takes no time. */
  knows(part: Part): boolean {
    return this.#kept.has(nameOf(part)) || (typeof part !== 'string' && this.isOver)
  }

  /** Reckons a part in small steps; nothing where it is known. */
  *reckon(part: Part): Steps<void> {
    if (this.knows(part)) return
    if (part === 'figures') {
      const counted = yield* countedInSteps(this.book, this.#standings, this.season, this.today)
      this.#keep('counted', () => counted)
      yield
      void this.figures
      return
    }
    const made = part === 'earlier' ? yield* this.#before() : yield* this.#ahead(part)
    this.#keep<unknown>(nameOf(part), () => made)
  }

  #ahead(change: Change): Steps<BlockForecast> {
    return forecastBlockInSteps(this.book, this.#standings, this.season, this.today, change)
  }

  #seasonsBefore(): readonly Season[] {
    const ofBlock = this.book.seasons.get(this.season.block) ?? []
    return ofBlock.filter((season) => season.matingStart < this.season.matingStart)
  }

  *#before(): Steps<readonly SeasonFigures[]> {
    const archive = archiveOf(this.book)
    const figures: SeasonFigures[] = []
    for (const season of this.#seasonsBefore()) {
      if (isArchived(season, archive?.before)) continue
      const counted = yield* countedInSteps(this.book, this.#standings, season, this.today)
      yield
      figures.push(figuresOf(counted, this.book, season, this.today))
      yield
    }
    return figures.toReversed()
  }

  #keep<T>(name: string, reckon: () => T): T {
    if (!this.#kept.has(name)) this.#kept.set(name, reckon())
    return this.#kept.get(name) as T
  }
}

const views = new WeakMap<HerdBook, Map<string, SeasonView>>()

/** So many seasons and days of one book are kept. */
const VIEWS_KEPT = 8

/**
 * The view of a season on the morning of a day; the same one as long as the book is the same.
 *
 * @param standings of all animals on the day, those that left too
 * @param season one that is over, on or to come
 * @example seasonView(book, standings, season, today).figures.submission.all.percent // 84.2
 */
export function seasonView(
  book: HerdBook,
  standings: readonly Standing[],
  season: Season,
  today: Day,
): SeasonView {
  const ofBook = views.get(book) ?? new Map<string, SeasonView>()
  views.set(book, ofBook)
  const key = `${season.factId} ${today}`
  const found = ofBook.get(key)
  if (found !== undefined) return found
  if (ofBook.size >= VIEWS_KEPT) ofBook.clear()
  const view = new SeasonView(book, standings, season, today)
  ofBook.set(key, view)
  return view
}

/**
 * The season that a block is looked at in on a day: live, else next, else last, as on the morning list.
 *
 * @param block undefined: the block that is bred now, else the one that is next, else the one that closes
 * @example seasonShown(book, today, 'autumn')?.matingStart // 24 November 2025
 */
export const seasonShown = (book: HerdBook, today: Day, block?: string): Season | undefined =>
  blocksOn(book, today)
    .filter((one) => block === undefined || one.block === block)
    .toSorted((a, b) => mostWanted.indexOf(a.phase) - mostWanted.indexOf(b.phase))[0]?.season

const mostWanted: readonly Phase[] = ['ai', 'bull', 'before', 'closing', 'closed']
