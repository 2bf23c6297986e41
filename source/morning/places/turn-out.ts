/** The move to the bull weeks and out of them: what its keys do. */

import { movesDue, withBull } from '../../breeding/ahead/moves-due.ts'
import { animalNamed } from '../../breeding/book.ts'
import { type Day, dayIso, plusDays } from '../../breeding/day.ts'
import { HERD, type NewFact, type SeasonFact } from '../../breeding/facts.ts'
import type { BlockDay } from '../../breeding/list.ts'
import { dayOfSeason } from '../../breeding/season.ts'
import { bookNow } from '../book-now.ts'
import { type Desk, subjectOnList } from '../desk.ts'
import { readTypedDay } from '../forms/reader.ts'
import type { Message } from '../message.ts'
import type { TurnOutPlace } from '../place.ts'
import { knownView } from '../reckoning.ts'
import { asking, refused, type Step } from '../step.ts'
import {
  blockOf,
  blocksWithBull,
  changeOf,
  chosenBulls,
  factsOfMove,
  heatsADay,
  type Move,
  moveOf,
  openAnimals,
} from '../turn-out.ts'
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

/** The screen as it opens: on the move that is due, else on the next one. */
export function openTurnOut(desk: Desk): TurnOutPlace {
  const [due] = movesDue(desk.book, desk.page.list)
  if (due !== undefined) return placeFor(desk, due.block, due.what)
  const order: readonly BlockDay['phase'][] = ['bull', 'ai', 'closing', 'before', 'closed']
  const [next] = blocksWithBull(desk).toSorted((a, b) => order.indexOf(a.phase) - order.indexOf(b.phase))
  const what = next?.phase === 'bull' || next?.phase === 'closing' ? 'out' : 'in'
  return placeFor(desk, next?.block ?? '', what)
}

/** The screen of one move: on the day of the plan, or today where that is past. */
export function placeFor(desk: Desk, block: string, what: TurnOutPlace['what']): TurnOutPlace {
  const season = blocksWithBull(desk).find((one) => one.block === block)?.season
  const today = desk.now.day
  const planned =
    season === undefined ? today : dayOfSeason(season, (what === 'in' ? season.aiEnd : season.bullEnd) + 1)
  return { at: 'turn-out', pointer: 0, block, what, day: Math.max(planned, today) as Day, without: [] }
}

/**
 * One bull comes out today, lame or worn out: of the block where he is with most, so that another can go in for him.
 *
 * @param bull his number
 * @example placeForBull(desk, 'B9')?.what // 'out'; undefined where he is with none
 */
export function placeForBull(desk: Desk, bull: string): TurnOutPlace | undefined {
  const { day } = desk.now
  const count = (block: string): number =>
    withBull(bookNow(desk), block, day).filter(({ bulls }) => bulls.includes(bull)).length
  const [most] = blocksWithBull(desk)
    .map(({ block }) => ({ block, count: count(block) }))
    .toSorted((a, b) => b.count - a.count)
  if (most === undefined || most.count === 0) return undefined
  return { ...placeFor(desk, most.block, 'out'), day, bull }
}

/** What can be taken off: the bulls, then the animals. Who does not go can be pointed at below them. */
const pointable = (move: Move): readonly string[] => [
  ...move.bulls.map(({ bull }) => bull.id),
  ...move.goes.map(({ animal }) => animal.id),
]

/** Whether a move on that day can be recorded: what has happened, and what is agreed for the next morning. */
export const canBeRecorded = (desk: Desk, day: Day): boolean => day <= plusDays(desk.now.day, 1)

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

function isDayOfMove(desk: Desk, place: TurnOutPlace, { season }: Move, day: Day): boolean {
  const last = place.what === 'in' ? dayOfSeason(season, season.bullEnd) : plusDays(desk.now.day, 60)
  return day >= season.matingStart && day <= last
}

/**
 * The day of a move that is typed: it may have been, where the move is recorded late. A day without a year is the one
 * within the season.
 *
 * @returns the day, or the code of what is the matter with it
 * @example moveDayTyped(desk, place, '30 feb') // 'no-date'
 */
export function moveDayTyped(
  desk: Desk,
  place: TurnOutPlace,
  text: string,
): Day | 'no-date' | 'move-outside-season' {
  const days = [false, true].flatMap((ahead) => readTypedDay(text, desk.now.day, ahead) ?? [])
  const move = moveOf(desk, place)
  if (days.length === 0 || move === undefined) return 'no-date'
  return days.find((day) => isDayOfMove(desk, place, move, day)) ?? 'move-outside-season'
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

/** AI goes on for a week in the place of the bull's first; he comes out on the same day as planned. */
function longer(desk: Desk, place: TurnOutPlace, move: Move): Step {
  const phase = blockOf(desk, place)?.phase
  if (place.what !== 'in' || (phase !== 'ai' && phase !== 'before')) return refused(desk, 'ai-is-over')
  const fact = desk.book.live.find(
    (one): one is SeasonFact => one.kind === 'season' && one.id === move.season.factId,
  )
  if (fact === undefined || fact.bullWeeks < 1) return refused(desk, 'no-bull-week-left')
  const { id: _id, at: _at, by: _by, action: _action, ...season } = fact
  const facts: readonly NewFact[] = [
    {
      ...season,
      about: HERD,
      date: dayIso(desk.now.day),
      aiWeeks: fact.aiWeeks + 1,
      bullWeeks: fact.bullWeeks - 1,
    },
  ]
  const closes = plusDays(move.planned, 6)
  const said: Message = {
    tone: 'done',
    code: 'ai-longer',
    values: { block: place.block, day: closes, weeks: fact.aiWeeks + 1 },
    facts,
  }
  const asked = asking(desk, 'ai-longer', facts, said).desk
  const after = { ...place, day: plusDays(move.planned, 7) }
  return { desk: asked.slip?.is === 'question' ? { ...asked, slip: { ...asked.slip, after } } : asked }
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
