/** Events that were deleted where they come from. */
import type { CorrectionFact, NewFact } from '../../breeding/facts.ts'
import type { Herd } from '../csv/import/herd.ts'
import type { Change } from '../csv/import/outcome.ts'
import { sourceOf } from './codes.ts'
import type { Found } from './documents.ts'
import { factId, isEvent, metaOf } from './meta.ts'

/** Corrections for events that were deleted, and for ends of times with a bull that are no longer told; and what to show of them. */
export function deletions(events: readonly Found[], herd: Herd, herdId: string) {
  const corrections: NewFact<CorrectionFact>[] = []
  const changes: Change[] = []
  for (const event of events.filter(isEvent)) {
    const meta = metaOf(event)
    const gone: ('' | 'end')[] = meta.isDeleted
      ? ['', 'end']
      : event.resource.eventEndDateTime === undefined
        ? ['end']
        : []
    for (const part of gone) {
      const id = factId(meta, herdId, part)
      const own = meta.source === sourceOf(herdId)
      // What the herd itself voided and replaced is deleted already: its replacement is an event of its own.
      const fact = id === undefined || (own && herd.book.voided.has(id)) ? undefined : herd.standing(id)
      const animal = fact === undefined ? undefined : herd.book.animals.get(fact.about)
      if (fact === undefined || animal === undefined) continue
      corrections.push({ about: fact.about, date: fact.date, kind: 'correction', voids: fact.id })
      const differences = [{ column: 'fact', before: `${fact.kind} ${fact.date}`, after: '' }]
      changes.push({ path: event.path, name: animal.number, differences })
    }
  }
  return { corrections, changes }
}
