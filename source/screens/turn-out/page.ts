/** The move to the bull weeks and out of them, as lines. */
import type { TurnOutPlace } from '../../morning/place.ts'
import { bit } from '../line.tsx'
import { type DrawPage, wholePage } from '../page-lines.ts'

export const turnOutPage: DrawPage<TurnOutPlace> = (_desk, _place, room) => wholePage([[bit('')]], room)
