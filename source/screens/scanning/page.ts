/** The scanning visit, as lines. */
import type { ScanningPlace } from '../../morning/place.ts'
import { bit } from '../line.tsx'
import { type DrawPage, wholePage } from '../page-lines.ts'

export const scanningPage: DrawPage<ScanningPlace> = (_desk, _place, room) => wholePage([[bit('')]], room)
