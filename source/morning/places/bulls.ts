/** Bulls: what its keys do. */
import type { Step } from '../action.ts'
import type { Desk } from '../desk.ts'
import type { BullsPlace } from '../place.ts'

/** What can be done here besides moving about. */
export type BullsAct = { readonly is: 'choose' }

/** The screen as it opens. */
export const openBulls = (_desk: Desk): BullsPlace => ({ at: 'bulls', pointer: 0 })

export function actBulls(desk: Desk, _place: BullsPlace, _act: BullsAct): Step {
  return { desk }
}
