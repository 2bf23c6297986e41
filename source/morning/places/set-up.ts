/** Setting up the farm: what its keys do. */
import type { Step } from '../action.ts'
import type { Desk } from '../desk.ts'
import type { SetUpPlace } from '../place.ts'

/** What can be done here besides moving about. */
export type SetUpAct = { readonly is: 'choose' }

/** The screen as it opens. */
export const openSetUp = (_desk: Desk): SetUpPlace => ({ at: 'set-up', pointer: 0, part: 'farm' })

export function actSetUp(desk: Desk, _place: SetUpPlace, _act: SetUpAct): Step {
  return { desk }
}
