/** What a part of the season's screen is drawn from. */
import type { BlockDay } from '../../breeding/list.ts'
import type { Desk } from '../../morning/desk.ts'
import type { SeasonPlace } from '../../morning/place.ts'
import { bit, type Line } from '../line.tsx'
import { type PageLines, type Room, wholePage } from '../page-lines.ts'
import { seasonWords } from '../words/season/shared.ts'

interface PartOf {
  readonly desk: Desk
  readonly place: SeasonPlace
  readonly block: BlockDay
  readonly room: Room
  /** Lines that stay in sight above the part. */
  readonly kept: readonly Line[]
}

export type DrawPart = (part: PartOf) => PageLines

/** A part while what it shows is being reckoned. */
export const reckoningPage = ({ kept, room }: PartOf): PageLines =>
  wholePage([...kept, [], [bit(` ${seasonWords.reckoning}${room.theme.signs.cut}`, 'faint')]], room)
