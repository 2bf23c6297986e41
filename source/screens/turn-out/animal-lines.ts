/** One animal on a line of the move: a bull on hand, one that goes with him or is taken from him, one that is kept. */

import type { BullOfFarm } from '../../breeding/ahead/turn-out.ts'
import { chanceInCalf } from '../../breeding/animal-chances.ts'
import type { AnimalRecord } from '../../breeding/book.ts'
import type { Day } from '../../breeding/day.ts'
import { checkedEmpty, returned } from '../../breeding/questions.ts'
import { ratesOfHerd } from '../../breeding/rates-of-herd.ts'
import type { Standing } from '../../breeding/standing.ts'
import { bookNow } from '../../morning/book-now.ts'
import type { Desk } from '../../morning/desk.ts'
import type { Going } from '../../morning/turn-out/move.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import type { Room } from '../page-lines.ts'
import { margin } from '../ruled.ts'
import type { Tone } from '../theme.ts'
import { fill } from '../width.ts'
import { turnOutWords } from '../words/turn-out.ts'

const NUMBER = 6
const NAME = 13
const YEAR = 365.25

/** Number, and the name where there is room. */
function named(animal: AnimalRecord, tone: Tone, { cells, theme }: Room): Line {
  const name = cells < 70 ? '' : ` ${fill(safeText(animal.record.name ?? ''), NAME, theme.signs.cut)}`
  return [bit(fill(safeText(animal.number), NUMBER, theme.signs.cut, 'right'), 'strong'), bit(name, tone)]
}

function row(animal: AnimalRecord, words: string, off: boolean, pointed: boolean, room: Room): Line {
  const { toDo, done } = room.theme.signs
  const tone: Tone = off ? 'faint' : pointed ? 'pointed' : 'plain'
  const mark = off ? toDo : done
  return margin(
    pointed,
    mark,
    room,
    [...named(animal, tone, room), bit(`  ${words}`, tone)],
    off ? 'plain' : 'good',
  )
}

/** A bull: his age, and how many open animals he can serve where he is young. */
export function bullLine(
  desk: Desk,
  { bull, young }: BullOfFarm,
  day: Day,
  off: boolean,
  pointed: boolean,
  room: Room,
): Line {
  const { policy } = desk.book
  const age =
    bull.born === undefined
      ? turnOutWords.ageUnknown
      : young
        ? turnOutWords.young(policy.openPerYoungBull)
        : turnOutWords.age(Math.floor((day - bull.born) / YEAR))
  const breed = bull.record.breed === undefined ? '' : `${safeText(bull.record.breed)}, `
  return row(bull, `${breed}${age}`, off, pointed, room)
}

/** An animal of the move: why she is open, or since when she is with him. */
export function goingLine(desk: Desk, going: Going, off: boolean, pointed: boolean, room: Room): Line {
  const { animal, standing, since } = going
  const words =
    since !== undefined
      ? turnOutWords.since(since, going.with)
      : standing === undefined
        ? ''
        : whyOpen(desk, standing)
  return row(animal, words, off, pointed, room)
}

function whyOpen(desk: Desk, standing: Standing): string {
  const book = bookNow(desk)
  const service = standing.lastService
  const used = turnOutWords.chances(standing.chancesUsed, book.policy.chances)
  if (service === undefined) return turnOutWords.open
  const age = standing.today - 1 - service.day
  const parts = [service.ai ? turnOutWords.served(age) : turnOutWords.servedByBull(age)]
  if (checkedEmpty(standing)) parts.push(turnOutWords.empty)
  else if (returned(standing, book.policy.watchFrom)) parts.push(turnOutWords.returned)
  else {
    const chance = chanceInCalf(standing, book, ratesOfHerd(book, standing.today).rates)
    if (chance !== undefined) parts.push(turnOutWords.inCalf(chance))
  }
  return service.ai ? [...parts, used].join(', ') : parts.join(', ')
}

/** One that is kept from him, and why. */
export const keptLine = (animal: AnimalRecord, why: string, pointed: boolean, room: Room): Line =>
  margin(pointed, ' ', room, [
    ...named(animal, pointed ? 'pointed' : 'plain', room),
    bit(`  ${why}`, pointed ? 'pointed' : 'plain'),
  ])
