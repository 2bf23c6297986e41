/** The scanning visit: what its keys do. */
import type { Step } from '../action.ts'
import type { Desk } from '../desk.ts'
import type { ScanningPlace } from '../place.ts'

/** What can be done here besides moving about. */
export type ScanningAct = { readonly is: 'choose' }

/** The screen as it opens. */
export const openScanning = (desk: Desk): ScanningPlace => ({
  at: 'scanning',
  pointer: 0,
  day: desk.page.list.day,
  typed: '',
  unmatched: [],
})

export function actScanning(desk: Desk, _place: ScanningPlace, _act: ScanningAct): Step {
  return { desk }
}
