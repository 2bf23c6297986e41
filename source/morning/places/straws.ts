/** Straws in the flask: what its keys do. */
import type { Step } from '../action.ts'
import type { Desk } from '../desk.ts'
import type { StrawsPlace } from '../place.ts'

/** What can be done here besides moving about. */
export type StrawsAct = { readonly is: 'choose' }

/** The screen as it opens. */
export const openStraws = (_desk: Desk): StrawsPlace => ({
  at: 'straws',
  pointer: 0,
  whole: false,
  usedUp: false,
})

export function actStraws(desk: Desk, _place: StrawsPlace, _act: StrawsAct): Step {
  return { desk }
}
