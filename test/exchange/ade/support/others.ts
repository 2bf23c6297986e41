/** Events as other programs tell them, and the small herd that they are read into. */
import type { NewFact } from '../../../../source/breeding/facts.ts'
import { cow, herd } from '../../csv/support/herd.ts'
import { imported } from './files.ts'

/** A heat as another program tells it. */
export const heat = {
  resourceType: 'icarReproHeatEventResource',
  id: 'e1',
  animal: { scheme: 'x.farm', id: '412' },
  eventDateTime: '2026-05-01T05:10:00Z',
  meta: { source: 'org.example', sourceId: 'e1', modified: '2026-05-01T06:00:00Z' },
}

/** The herd that it is read into, and what the reading makes of one event. */
export const start = () =>
  herd(cow('412', { officialId: 'UK 123450 600001', electronicId: '826012345678901' }))
export const read = (resource: object, facts = start()) =>
  imported(facts, { 'a.json': { member: [resource] } })
export const said = (resource: object) =>
  read(resource).facts.map(({ id: _id, ...fact }: NewFact & { id?: string }) => fact)
/** What every fact of such an event has in common. */
export const envelope = { about: '412', date: '2026-05-01', time: '05:10' }
