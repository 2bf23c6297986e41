/** The move to the bull weeks and out of them: what its keys do. */
import { movesDue } from '../../breeding/ahead/moves-due.ts'
import { animalNamed } from '../../breeding/book.ts'
import { plusDays } from '../../breeding/day.ts'
import { type Desk, subjectOnList } from '../desk.ts'
import type { Message } from '../message.ts'
import type { TurnOutPlace } from '../place.ts'
import { knownView } from '../reckoning.ts'
import { asking, refused, type Step } from '../step.ts'
import { canBeRecorded, isDayOfMove } from '../turn-out/day.ts'
import { longer } from '../turn-out/longer.ts'
import {
  blocksWithBull,
  changeOf,
  chosenBulls,
  factsOfMove,
  heatsADay,
  type Move,
  moveOf,
  openAnimals,
} from '../turn-out/move.ts'
import { placeFor } from '../turn-out/opening.ts'
import { withPlace } from './with-place.ts'

/** What can be done here besides moving about. */
export type TurnOutAct =
  /** Takes the animal or bull pointed at, or the number typed, off the move, or puts it back. */
  | { readonly is: 'toggle' }
  /** Takes all animals off the move; where some are off, puts all back. */
  | { readonly is: 'all-or-none' }
  | { readonly is: 'day'; readonly by: 1 | -1 }
  /** In or out. */
  | { readonly is: 'other-way' }
  | { readonly is: 'block' }
  /** AI goes on for a week, and the bull comes a week later. */
  | { readonly is: 'longer' }
  | { readonly is: 'record' }
  | { readonly is: 'back' }

/** What can be taken off: the bulls, then the animals. Who does not go can be pointed at below them. */
const pointable = (move: Move): readonly string[] => [
  ...move.bulls.map(({ bull }) => bull.id),
  ...move.goes.map(({ animal }) => animal.id),
]

/** Open animals to reckon with. */
export const openAt = (desk: Desk, move: Move): number =>
  openAnimals(move, knownView(desk, move.season, {})?.view.forecast)

export function actTurnOut(desk: Desk, place: TurnOutPlace, act: TurnOutAct): Step {
  const move = moveOf(desk, place)
  if (act.is === 'back') return back(desk, place, move)
  if (move === undefined) return refused(desk, 'no-bull-weeks')
  switch (act.is) {
    case 'toggle':
      return toggle(desk, place, move)
    case 'all-or-none': {
      const animals = move.goes.map(({ animal }) => animal.id)
      const others = place.without.filter((id) => !animals.includes(id))
      const noneOff = others.length === place.without.length
      return shown(desk, { ...place, without: noneOff ? [...others, ...animals] : others })
    }
    case 'day':
      return toDay(desk, place, move, act.by)
    case 'other-way':
      return shown(desk, otherWay(desk, place))
    case 'block': {
      const blocks = blocksWithBull(desk).map(({ block }) => block)
      const block = blocks[(blocks.indexOf(place.block) + 1) % blocks.length] ?? place.block
      return shown(desk, placeFor(desk, block, place.what))
    }
    case 'longer':
      return longer(desk, place, move)
    case 'record':
      return record(desk, place, move)
  }
}

/** After one bull came out the others may go in for him. */
function otherWay(desk: Desk, { block, what, bull }: TurnOutPlace): TurnOutPlace {
  const place = placeFor(desk, block, what === 'in' ? 'out' : 'in')
  const off = bull === undefined ? undefined : animalNamed(desk.book, bull)
  return off === undefined ? place : { ...place, without: [off.id] }
}

const shown = (desk: Desk, place: TurnOutPlace): Step => ({
  desk: withPlace({ ...desk, said: undefined, typed: '' }, place),
})

function toggle(desk: Desk, place: TurnOutPlace, move: Move): Step {
  const her = desk.typed === '' ? undefined : subjectOnList(desk)
  if (her?.whyNot !== undefined) return { desk: { ...desk, typed: '', said: her.whyNot } }
  const ids = pointable(move)
  if (her === undefined && place.pointer >= ids.length && ids.length > 0)
    return stays(desk, move, place.pointer - ids.length)
  const id = her === undefined ? ids[Math.min(place.pointer, ids.length - 1)] : her.animal.id
  if (id === undefined || !ids.includes(id))
    return refused({ ...desk, typed: '' }, 'not-of-the-move', { number: her?.animal.number ?? '' })
  const without = place.without.includes(id)
    ? place.without.filter((one) => one !== id)
    : [...place.without, id]
  return shown(desk, { ...place, without, pointer: ids.indexOf(id) })
}

/** Why one that does not go stays. */
function stays(desk: Desk, { kept }: Move, index: number): Step {
  const one = kept[index]
  return one === undefined
    ? refused(desk, 'in-calf-no-bull')
    : refused(desk, 'kept-from-him', { number: one.standing.animal.number, why: one.reason })
}

/** The day of the move: within the season, and out not before in. */
function toDay(desk: Desk, place: TurnOutPlace, move: Move, by: 1 | -1): Step {
  const day = plusDays(place.day, by)
  return isDayOfMove(desk, place, move, day)
    ? shown(desk, { ...place, day })
    : refused(desk, 'move-outside-season')
}

function record(desk: Desk, place: TurnOutPlace, move: Move): Step {
  const facts = factsOfMove(move, place)
  const count = new Set(facts.map(({ about }) => about)).size
  if (count === 0) return refused(desk, place.what === 'in' ? 'nobody-goes' : 'nobody-with-bull')
  const values = { count, day: place.day, block: place.block, ...lateness(desk, place, move) }
  if (!canBeRecorded(desk, place.day)) return refused(desk, `move-${place.what}-later`, values)
  const bulls = chosenBulls(move, place)
    .map(({ bull }) => bull.number)
    .join(', ')
  const which = place.bull === undefined ? `${place.what}` : 'one-out'
  const said: Message = {
    tone: 'care',
    code: `moved-${which}`,
    values: { ...values, bulls: place.bull ?? bulls },
    facts,
  }
  return asking(desk, `move-${which}`, facts, said)
}

/** What another day than the planned one does, for words. */
function lateness(desk: Desk, place: TurnOutPlace, move: Move): { days: number; unserved: number } {
  const { days, unserved } = changeOf(move, openAt(desk, move))
  return { days, unserved: place.what === 'in' ? unserved : 0 }
}

/** Leaving a move that is due puts it off: what that does is said. */
function back(desk: Desk, place: TurnOutPlace, move: Move | undefined): Step {
  if (desk.typed !== '') return { desk: { ...desk, typed: '', said: undefined } }
  const left = { ...desk, said: undefined, places: desk.places.slice(0, -1) }
  const due = movesDue(desk.book, desk.page.list).find(
    (one) => one.block === place.block && one.what === place.what,
  )
  if (due === undefined || move === undefined) return { desk: left }
  const heats = heatsADay(openAt(desk, move))
  return {
    desk: {
      ...left,
      said: {
        tone: 'care',
        code: `put-off-${place.what}`,
        values: { block: place.block, heats, day: due.day },
      },
    },
  }
}
