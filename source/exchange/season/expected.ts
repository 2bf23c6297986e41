import type { SeasonView } from '../../breeding/figures/season-view.ts'

/** Until the final check there is something to expect; then what is known is shown. */
export const isExpected = ({ forecast, s, season, book }: SeasonView): boolean =>
  forecast !== undefined && s < season.bullEnd + book.policy.finalCheckDays
