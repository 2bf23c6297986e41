/** The page of each screen of its own. */
import type { Desk } from '../morning/desk.ts'
import type { OwnPlace } from '../morning/place.ts'
import { aheadPage } from './ahead/page.ts'
import { bullsPage } from './bulls/page.ts'
import type { PageLines, Room } from './page-lines.ts'
import { scanningPage } from './scanning/page.ts'
import { seasonPage } from './season/page.ts'
import { setUpPage } from './set-up/page.ts'
import { strawsPage } from './straws/page.ts'
import { turnOutPage } from './turn-out/page.ts'

/** Draws the screen that is shown. */
export function ownPage(desk: Desk, place: OwnPlace, room: Room): PageLines {
  switch (place.at) {
    case 'ahead':
      return aheadPage(desk, place, room)
    case 'season':
      return seasonPage(desk, place, room)
    case 'straws':
      return strawsPage(desk, place, room)
    case 'bulls':
      return bullsPage(desk, place, room)
    case 'scanning':
      return scanningPage(desk, place, room)
    case 'turn-out':
      return turnOutPage(desk, place, room)
    case 'set-up':
      return setUpPage(desk, place, room)
  }
}
