/** The next two weeks: what its keys do. */
import type { Step } from '../action.ts'
import type { Desk } from '../desk.ts'
import type { AheadPlace } from '../place.ts'

/** What can be done here besides moving about. */
export type AheadAct = { readonly is: 'choose' }

/** The screen as it opens. */
export const openAhead = (_desk: Desk): AheadPlace => ({ at: 'ahead', pointer: 0 })

export function actAhead(desk: Desk, _place: AheadPlace, _act: AheadAct): Step {
  return { desk }
}
