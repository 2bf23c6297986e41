/** The season's figures: what its keys do. */
import type { Step } from '../action.ts'
import type { Desk } from '../desk.ts'
import type { SeasonPlace } from '../place.ts'

/** What can be done here besides moving about. */
export type SeasonAct = { readonly is: 'choose' }

/** The screen as it opens. */
export const openSeason = (desk: Desk): SeasonPlace => ({
  at: 'season',
  pointer: 0,
  block: desk.page.list.blocks[0]?.block,
  part: 'answers',
  open: undefined,
  change: {},
})

export function actSeason(desk: Desk, _place: SeasonPlace, _act: SeasonAct): Step {
  return { desk }
}
