/** Bulls, as lines. */
import type { BullsPlace } from '../../morning/place.ts'
import { bit } from '../line.tsx'
import { type DrawPage, wholePage } from '../page-lines.ts'

export const bullsPage: DrawPage<BullsPlace> = (_desk, _place, room) => wholePage([[bit('')]], room)
