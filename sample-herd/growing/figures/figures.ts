/** What the invented herd comes to, beside what is published of real ones. */
import { type Day, isoDay } from '../../../source/breeding/day.ts'
import type { Fact, SeasonFact } from '../../../source/breeding/facts.ts'
import type { Figure } from './figure.ts'
import { type Ledger, ledgerOf } from './ledger.ts'
import { calvingFigures, seasonFigures } from './seasons.ts'
import { conceptionFigures, returnFigures } from './services.ts'

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
