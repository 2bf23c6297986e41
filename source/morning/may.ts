/** Whether an action may be done now, and if not, why: read by the reducer, the footer and the help alike. */

import type { MoveDue } from '../breeding/ahead/moves-due.ts'
import type { Action } from './action.ts'
import { type Desk, placeOf, settingOf, showsToday } from './desk.ts'
import type { FormName } from './forms/form.ts'
import { because, type Message } from './message.ts'
import { moveAt } from './page.ts'
import { olderCopyInPlace } from './saving.ts'
import { subjectOf } from './subject.ts'

/** Forms that may be filled in for an animal that has left, or for a male. */
const forAnyone: readonly FormName[] = ['note']
const forMales: readonly FormName[] = ['note', 'left', 'hold', 'score', 'examined']

/**
 * Why an action cannot be done now; undefined where it can.
 *
 * @example whyNot(deskOfTomorrow, { do: 'usual' })?.code // 'list-ahead'
 */
export function whyNot(desk: Desk, action: Action): Message | undefined {
  switch (action.do) {
    case 'usual':
    case 'heat-now':
      return notNow(desk) ?? notForHer(desk, action)
    case 'fill-in':
      return listAhead(desk) ?? notForHer(desk, action)
    case 'form':
      return listAhead(desk) ?? notForHer(desk, action)
    case 'slip':
      if (action.slip === 'menu') return listAhead(desk) ?? notForHer(desk, action)
      if (action.slip === 'notice')
        return desk.said === undefined && desk.saving.problems.length === 0
          ? because('nothing-said')
          : undefined
      if (action.slip === 'older') return olderCopyInPlace(desk.saving) ? undefined : because('no-older-copy')
      return undefined
    case 'open-animal':
      if (moveToOpen(desk) !== undefined || opensKeptResults(desk)) return undefined
      if (placeOf(desk).at === 'animal' && desk.typed === '') return because('her-page-already')
      return subjectOf(desk).whyNot
    case 'here':
      return action.on === 'season' && action.act.is === 'decide' ? notNow(desk) : undefined
    case 'look-all':
      return notNow(desk) ?? (watchToDo(desk).length === 0 ? because('no-watch') : undefined)
    case 'undo':
      return desk.history.last === undefined ? because('nothing-to-take-back') : undefined
    case 'redo':
      return desk.history.takenBack === undefined ? because('nothing-to-put-back') : undefined
    case 'known-then':
      return desk.page.list.day < desk.now.day ? undefined : because('not-past')
    case 'unfold':
      return desk.page.items.some((item) => item.is === 'with-bull') ? undefined : because('nothing-folded')
    default:
      return undefined
  }
}

/** The move that Enter opens on the list. */
export const moveToOpen = (desk: Desk): MoveDue | undefined =>
  placeOf(desk).at === 'morning-list' && desk.typed === '' ? moveAt(desk.page) : undefined

/** Whether Enter on the list opens the results that are to be settled. */
export const opensKeptResults = (desk: Desk): boolean =>
  placeOf(desk).at === 'morning-list' &&
  desk.typed === '' &&
  desk.page.items[desk.page.pointer]?.is === 'kept-results'

/** Rows of the repeat-heat watch that nobody has looked at yet. */
export const watchToDo = (desk: Desk) =>
  desk.page.list.rows.filter((row) => row.section === 'repeat-heat-watch' && !row.done)

const listAhead = (desk: Desk): Message | undefined =>
  desk.page.list.day > desk.now.day ? because('list-ahead') : undefined

/** One key records as of now: only on today's list. */
const notNow = (desk: Desk): Message | undefined =>
  listAhead(desk) ?? (showsToday(desk) ? undefined : because('list-past'))

function notForHer(desk: Desk, action: Action): Message | undefined {
  const her = subjectOf(desk)
  if (her.whyNot !== undefined) return her.whyNot
  const { number } = her.animal
  const setting = settingOf(desk, her.animal, her.row)
  const form = action.do === 'form' ? action.form : undefined
  if (setting.standing.leftOn !== undefined && !(form !== undefined && forAnyone.includes(form)))
    return because('has-left', { number })
  if (!setting.standing.female && action.do !== 'slip' && !(form !== undefined && forMales.includes(form)))
    return because('is-male', { number })
  if (action.do !== 'usual' && action.do !== 'fill-in') return undefined
  if (her.row === undefined)
    return because(placeOf(desk).at === 'animal' ? 'no-usual' : 'not-on-list', { number })
  if (action.do === 'fill-in') return undefined
  if (her.row.done && her.row.section !== 'take-care') return because('already-done', { number })
  return her.row.reasons[0] === 'keep-from-bull' ? because('keep-from-bull', { number }) : undefined
}
