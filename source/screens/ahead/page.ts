/** The next two weeks, as lines. */
import type { AheadPlace } from '../../morning/place.ts'
import { bit } from '../line.tsx'
import { type DrawPage, wholePage } from '../page-lines.ts'

export const aheadPage: DrawPage<AheadPlace> = (_desk, _place, room) => wholePage([[bit('')]], room)
