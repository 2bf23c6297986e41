/** The season, as lines: a line that names its parts, and the part that is open. */
import type { Desk } from '../../morning/desk.ts'
import type { SeasonPlace } from '../../morning/place.ts'
import { blockShown } from '../../morning/reckoning.ts'
import { bit, type Line } from '../line.tsx'
import { type DrawPage, wholePage } from '../page-lines.ts'
import { seasonWords } from '../words/season/shared.ts'
import { answersPage } from './answers.ts'
import { earlierPage } from './earlier.ts'
import { emptiesPage } from './empties.ts'
import { figuresPage } from './figures.ts'
import { forecastPage } from './forecast.ts'
import { listedPage } from './listed.ts'
import { partsLine } from './parts-line.ts'
import { picturesPage } from './pictures.ts'

export const seasonPage: DrawPage<SeasonPlace> = (desk, place, room) => {
  const block = blockShown(desk, place.block)
  if (block === undefined) return wholePage([[bit(` ${seasonWords.noSeason}`)]], room)
  const kept: readonly Line[] = [partsLine(place.part, block, isStale(desk, place), room)]
  return drawn(place)({ desk, place, block, room, kept })
}

function drawn({ part, open }: SeasonPlace) {
  switch (part) {
    case 'answers':
      return answersPage
    case 'figures':
      return open === undefined ? figuresPage : listedPage
    case 'pictures':
      return picturesPage
    case 'forecast':
      return forecastPage
    case 'empties':
      return emptiesPage
    case 'earlier':
      return earlierPage
  }
}

/** Something was recorded since that what is shown does not know of yet. */
const isStale = (desk: Desk, _place: SeasonPlace): boolean =>
  desk.reckoned !== undefined && desk.reckoned !== desk.book
