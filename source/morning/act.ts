/** The reducer of the screen: a desk and an action in, the desk after it and the facts to record out. Pure. */

import type { Fact } from '../breeding/facts.ts'
import { notOnList } from '../breeding/not-on-list.ts'
import { standingOn } from '../breeding/standing.ts'
import * as moving from './act/moving.ts'
import * as recordings from './act/recording.ts'
import * as slips from './act/slips.ts'
import type { Action } from './action.ts'
import { type Desk, showsToday, withDay } from './desk.ts'
import { historyOf } from './history.ts'
import { turnKnownThen } from './known-then.ts'
import { whyNot } from './may.ts'
import { because, type Message } from './message.ts'
import type { Now } from './now.ts'
import { movedOn, pointedAt, rowAt, rowOf } from './page.ts'
import { actInPlace } from './places/acts.ts'
import { reckoningOf } from './reckoning.ts'
import type { Leave, Step } from './step.ts'
import { settled, tickedPage } from './tick.ts'

/**
 * What an action does.
 *
 * @param desk the state before, @param action what was done
 * @returns the state after it, with the facts to record as one action; an action that cannot be done now says why
 * @example act(desk, { do: 'usual' }).record // [{ kind: 'service', about: cow, … }]
 */
export function act(desk: Desk, action: Action): Step {
  const refused = whyNot(desk, action)
  if (refused !== undefined) return { desk: { ...desk, said: refused } }
  switch (action.do) {
    case 'move':
      return moving.move(desk, action.by, action.most)
    case 'section':
      return moving.section(desk, action.by)
    case 'open':
      return moving.open(desk, action.place)
    case 'open-animal':
      return moving.openAnimal(desk)
    case 'back':
      return moving.back(desk)
    case 'here':
      return actInPlace(desk, action)
    case 'known-then':
      return { desk: { ...turnKnownThen(desk), typed: '', said: undefined } }
    case 'unfold':
      return moving.unfold(desk)
    case 'more-about':
      return moving.moreAbout(desk)
    case 'day':
      return moving.toDay(desk, action.day)
    case 'digit':
      return moving.digit(desk, action.digit)
    case 'usual':
      return recordings.usual(desk)
    case 'fill-in':
      return recordings.fillIn(desk)
    case 'heat-now':
      return recordings.heatNow(desk)
    case 'look-all':
      return recordings.lookAll(desk)
    case 'form':
      return recordings.form(desk, action.form, action.values, action.at)
    case 'void':
      return recordings.voidFact(desk)
    case 'change-fact':
      return recordings.changeFact(desk)
    case 'undo':
    case 'redo':
      return recordings.undo(desk, action)
    case 'slip':
      return slips.openSlip(desk, action.slip)
    case 'put':
      return slips.put(desk, action.text)
    case 'rub':
      return slips.rub(desk)
    case 'field':
      return slips.field(desk, action.by)
    case 'turn':
      return slips.turned(desk, action.by)
    case 'scroll':
      return slips.scrolled(desk, action.by, action.most)
    case 'accept':
      return slips.accepted(desk)
    case 'cancel':
      return slips.cancelled(desk)
    case 'leave':
      return leave(desk, action.how)
    case 'recorded':
      return { desk: recorded(desk, action.facts) }
    case 'changed-elsewhere':
      return { desk: { ...settled(desk, action.log), said: { tone: 'why', code: 'changed-elsewhere' } } }
    case 'settle':
      return { desk: desk.unsettled.length === 0 ? desk : settled(desk) }
    case 'same-facts':
      return { desk: { ...desk, log: action.log, history: historyOf(action.log) } }
    case 'saving':
      return saving({ ...desk, saving: action.saving })
    case 'say':
      return { desk: { ...desk, said: action.message } }
    case 'clock':
      return { desk: clock(desk, action.now) }
    case 'reckoned':
      // Until all is known, what was known of the book before stands in for what is not.
      return { desk: reckoningOf(desk) === undefined ? { ...desk, reckoned: desk.book } : { ...desk } }
  }
}

/** What is being saved is waited for by who is leaving. */
function saving(desk: Desk): Step {
  if (desk.leaving === undefined || desk.saving.state === 'saving') return { desk }
  const { leaving: _, ...here } = desk
  return leave(here, 'quit')
}

/** Leaving waits for what is being saved, and asks about what is not saved; Ctrl+C is not held up. */
function leave(desk: Desk, how: Leave): Step {
  if (how === 'quit' && desk.saving.state === 'saving')
    return { desk: { ...desk, leaving: true, said: because('leaves-when-saved') } }
  if (how === 'quit' && desk.saving.state === 'not-saved')
    return { desk: { ...desk, slip: { is: 'leaving' } } }
  return { desk, leave: how }
}

/** Facts have been recorded: their rows are ticked or the list is made anew; the pointer goes on to the next work. */
function recorded(desk: Desk, facts: readonly Fact[]): Desk {
  const before = rowAt(desk.page)
  const log = [...desk.log, ...facts]
  const ticked = tickedPage(desk, facts)
  const after =
    ticked === undefined
      ? settled(desk, log)
      : { ...desk, log, page: ticked, unsettled: [...desk.unsettled, ...facts] }
  const now = before === undefined ? undefined : rowOf(after.page, before.animal)
  const left = before !== undefined && (now === undefined || now.done || now.section !== before.section)
  const about = facts[0]?.about
  const alone = about !== undefined && facts.every((fact) => fact.about === about)
  const broughtBack = alone && desk.said?.code === 'taken-back' ? pointedAt(after.page, about) : undefined
  const page = broughtBack ?? (left && !before.done ? movedOn(after.page, desk.page) : after.page)
  const whereabouts = alone && after.said !== undefined ? whereaboutsOf({ ...after, page }, desk, facts) : {}
  return { ...after, page, said: after.said && { ...after.said, ...whereabouts } }
}

/** What is said of where an animal stands after facts about her: her new section; after a heat why she has none. */
function whereaboutsOf(
  after: Desk,
  before: Desk,
  facts: readonly Fact[],
): Pick<Message, 'stands' | 'notOnList'> {
  const about = facts[0]?.about ?? ''
  const stands = rowOf(after.page, about)?.section
  if (stands !== undefined) return stands === rowOf(before.page, about)?.section ? {} : { stands }
  const animal = after.book.animals.get(about)
  if (animal === undefined || !facts.some(({ kind }) => kind === 'heat')) return {}
  return { notOnList: notOnList(standingOn(after.book, animal, after.page.list.day), after.book.policy) }
}

/** Time has passed; at midnight the list of the new day takes the place of yesterday's. */
function clock(desk: Desk, now: Now): Desk {
  if (now.day === desk.now.day) return { ...desk, now }
  const turned = showsToday(desk) ? withDay({ ...desk, now }, now.day) : { ...desk, now }
  // The cautions of the new day are shown in full to whoever comes to the screen first.
  const slip = desk.slip ?? ({ is: 'opening', text: desk.by ?? '', fresh: true, top: 0 } as const)
  return { ...turned, slip, said: { tone: 'care', code: 'new-day', values: { day: now.day } } }
}
