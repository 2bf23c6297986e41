/** Bulls: what the lines are that can be pointed at, and what the keys do with them. */

import type { BlockDay } from '../../breeding/list.ts'
import { type BullHere, bullsHere } from '../bulls-here.ts'
import type { Desk } from '../desk.ts'
import { because } from '../message.ts'
import type { BullsPlace } from '../place.ts'
import { blocksWithBull } from '../reckoning.ts'
import type { Step } from '../step.ts'

/** What can be done here besides moving about. */
export type BullsAct = { readonly is: 'open' }

/** A line that can be pointed at. */
export type BullsEntry =
  | { readonly is: 'block'; readonly block: BlockDay }
  | { readonly is: 'bull'; readonly bull: BullHere }

/** The screen as it opens. */
export const openBulls = (_desk: Desk): BullsPlace => ({ at: 'bulls', pointer: 0 })

/** The blocks that have bull weeks, then the bulls. */
export const bullsEntries = (desk: Desk): readonly BullsEntry[] => [
  ...blocksWithBull(desk).map((block) => ({ is: 'block' as const, block })),
  ...bullsHere(desk).map((bull) => ({ is: 'bull' as const, bull })),
]

export function bullsEntryAt(desk: Desk, { pointer }: BullsPlace): BullsEntry | undefined {
  const entries = bullsEntries(desk)
  return entries[Math.min(pointer, entries.length - 1)]
}

export function actBulls(desk: Desk, place: BullsPlace, _act: BullsAct): Step {
  const entry = bullsEntryAt(desk, place)
  if (entry?.is !== 'bull') return { desk: { ...desk, said: because('no-bull-here') } }
  const { animal } = entry.bull
  if (animal === undefined) return { desk: { ...desk, said: because('bull-not-on-record') } }
  return {
    desk: {
      ...desk,
      said: undefined,
      places: [...desk.places, { at: 'animal', animal: animal.id, pointer: 0 }],
    },
  }
}
