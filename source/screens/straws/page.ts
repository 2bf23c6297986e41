/** Straws in the flask, as lines. */
import type { StrawsPlace } from '../../morning/place.ts'
import { bit } from '../line.tsx'
import { type DrawPage, wholePage } from '../page-lines.ts'

export const strawsPage: DrawPage<StrawsPlace> = (_desk, _place, room) => wholePage([[bit('')]], room)
