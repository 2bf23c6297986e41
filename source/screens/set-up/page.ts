/** Setting up the farm, as lines. */
import type { SetUpPlace } from '../../morning/place.ts'
import { bit } from '../line.tsx'
import { type DrawPage, wholePage } from '../page-lines.ts'

export const setUpPage: DrawPage<SetUpPlace> = (_desk, _place, room) => wholePage([[bit('')]], room)
