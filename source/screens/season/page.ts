/** The season's figures, as lines. */
import type { SeasonPlace } from '../../morning/place.ts'
import { bit } from '../line.tsx'
import { type DrawPage, wholePage } from '../page-lines.ts'

export const seasonPage: DrawPage<SeasonPlace> = (_desk, _place, room) => wholePage([[bit('')]], room)
