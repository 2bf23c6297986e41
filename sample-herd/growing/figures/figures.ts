/** What the invented herd comes to, beside what is published of real ones. */
import { type Day, isoDay } from '../../../source/breeding/day.ts'
import type { Fact, SeasonFact } from '../../../source/breeding/facts.ts'
import { type Ledger, ledgerOf } from './ledger.ts'
import { calvingFigures, seasonFigures } from './seasons.ts'
import { conceptionFigures, returnFigures } from './services.ts'

/** One figure: counted in the herd, and published. */
export interface Figure {
  readonly name: string
  readonly counted: number
  readonly of: number
  /** Percent, or days where `of` counts animals. */
  readonly published: string
  readonly source: string
}

/** Seasons whose AI weeks are over by the last fact. */
const finished = (ledger: Ledger, last: Day): SeasonFact[] =>
  ledger.seasons.filter((season) => last - isoDay(season.matingStart) > 150)

/** Everything that is counted, season by season and together. */
export function figuresOf(facts: readonly Fact[], last: Day): Figure[] {
  const ledger = ledgerOf(facts)
  const seasons = finished(ledger, last)
  return [
    ...returnFigures(ledger, seasons),
    ...conceptionFigures(ledger, seasons),
    ...seasonFigures(ledger, seasons),
    ...calvingFigures(ledger),
  ]
}

/** One line a figure: what was counted, and what is published. */
export const figureLine = (figure: Figure): string =>
  `${figure.name.padEnd(58)} ${String(figure.counted).padStart(4)} of ${String(figure.of).padStart(4)} ${percent(figure).padStart(6)}   published: ${figure.published}`

const percent = ({ counted, of }: Figure): string =>
  of === 0 ? '-' : `${((100 * counted) / of).toFixed(1)} %`
