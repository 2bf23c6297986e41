/** Rows from placements: chances and ticks are added here, straws in straw-rows.ts. */
import { chanceInCalf, conceptionOfService, returnsOf } from './animal-chances.ts'
import type { HerdBook } from './book.ts'
import { cycleMean } from './chances/cycle.ts'
import type { Rates } from './chances/rates.ts'
import { returnsAfter, returnToday } from './chances.ts'
import type { Day } from './day.ts'
import { doneToday } from './done.ts'
import type { Row } from './list.ts'
import { ratesOfHerd } from './rates-of-herd.ts'
import type { Placement } from './rules/placement.ts'
import type { Section } from './sections.ts'
import type { Standing } from './standing.ts'
import { unwatchedSince, watchedDays } from './watched-weeks.ts'

/** Makes rows: adds chances and ticks to placements. */
export class RowMaker {
  readonly #book: HerdBook
  readonly #rates: Rates
  readonly #today: Day
  readonly #watched: (standing: Standing) => (day: Day) => boolean

  constructor(book: HerdBook, today: Day, standings: readonly Standing[]) {
    this.#book = book
    this.#today = today
    this.#rates = ratesOfHerd(book, today, standings).rates
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
    return {
      section: place.section,
      animal: standing.animal.id,
      number: standing.animal.number,
      block: standing.block,
      days: place.days,
      since: place.since,
      chance: this.#chanceOf(standing, place),
      session: place.serving?.session,
      straw: undefined,
      moment: place.serving === undefined || place.since !== 'heat' ? 0 : momentOfHeat(standing),
      reasons: place.reasons,
      warnings: place.warnings,
      also,
      done: doneToday(standing, place.section, place.reasons[0]),
    }
  }

  #chanceOf(standing: Standing, place: Placement): number | undefined {
    switch (place.section) {
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
