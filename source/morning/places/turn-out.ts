/** The move to the bull weeks and out of them: what its keys do. */
import type { Step } from '../action.ts'
import type { Desk } from '../desk.ts'
import type { TurnOutPlace } from '../place.ts'

/** What can be done here besides moving about. */
export type TurnOutAct = { readonly is: 'choose' }

/** The screen as it opens. */
export const openTurnOut = (desk: Desk): TurnOutPlace => ({
  at: 'turn-out',
  pointer: 0,
  block: desk.page.list.blocks[0]?.block ?? '',
  what: 'in',
  day: desk.now.day,
  without: [],
})

export function actTurnOut(desk: Desk, _place: TurnOutPlace, _act: TurnOutAct): Step {
  return { desk }
}
