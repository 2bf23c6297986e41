/** Actions on a slip: what lies on top of a screen and takes the keys. */

import type { SlipAsked } from '../action.ts'
import { type Desk, placeOf, type Slip, withDay } from '../desk.ts'
import { foundByText } from '../find.ts'
import { accept as acceptForm, leavesAsItWas, rubIn, toField, turn, typeInto } from '../forms/edit.ts'
import { readTypedDay } from '../forms/reader.ts'
import { voiding } from '../history.ts'
import type { Message } from '../message.ts'
import { pointedAt } from '../page.ts'
import { withPlace } from '../places/with-place.ts'
import { recording, type Step } from '../step.ts'
import { moveDayTyped } from '../turn-out/day.ts'

/** Initials, in characters. */
const LONGEST_INITIALS = 8
const LONGEST_SEARCH = 40
/** Animals that a search shows. */
export const MOST_HITS = 8

const withSlip = (desk: Desk, slip: Slip | undefined): Step => ({ desk: { ...desk, slip } })

export function openSlip(desk: Desk, slip: SlipAsked): Step {
  if (slip === 'notice') return withSlip(desk, { is: 'notice', top: 0 })
  const cleared = { ...desk, said: undefined }
  if (slip === 'menu' || slip === 'go') return withSlip(cleared, { is: slip })
  if (slip === 'day') return withSlip(cleared, { is: 'day', text: '' })
  if (slip === 'search') return withSlip(cleared, { is: 'search', text: '', at: 0 })
  if (slip === 'copy') return withSlip(cleared, { is: 'copy', text: '' })
  if (slip === 'older') return withSlip(cleared, { is: 'older' })
  return withSlip(cleared, { is: 'initials', text: desk.by ?? '', fresh: true })
}

/** A character typed, or text pasted. */
export function put(desk: Desk, text: string): Step {
  const { slip } = desk
  if (slip === undefined) return { desk }
  const line = text.replaceAll(/[\r\n\t]+/g, ' ')
  switch (slip.is) {
    case 'form':
      return withSlip(desk, { ...slip, form: typeInto(slip.form, text) })
    case 'day':
      return withSlip(desk, { is: 'day', text: slip.text + line })
    case 'initials':
    case 'opening':
      return withSlip(desk, {
        ...slip,
        text: ((slip.fresh ? '' : slip.text) + line.trim()).toUpperCase().slice(0, LONGEST_INITIALS),
        fresh: false,
      })
    case 'copy':
      return withSlip(desk, { ...slip, text: slip.text + line })
    case 'search':
      return withSlip(desk, { ...slip, text: (slip.text + line).slice(0, LONGEST_SEARCH), at: 0 })
    default:
      return { desk }
  }
}

export function rub(desk: Desk): Step {
  const { slip } = desk
  if (slip === undefined) return { desk: { ...desk, typed: desk.typed.slice(0, -1), said: undefined } }
  if (slip.is === 'form') return withSlip(desk, { ...slip, form: rubIn(slip.form) })
  if ('text' in slip) {
    const text = [...slip.text].slice(0, -1).join('')
    if (slip.is === 'day') return withSlip(desk, { is: 'day', text })
    return withSlip(desk, 'fresh' in slip ? { ...slip, text, fresh: false } : { ...slip, text })
  }
  return { desk }
}

export function field(desk: Desk, by: 1 | -1): Step {
  const { slip } = desk
  if (slip?.is === 'form') return withSlip(desk, { ...slip, form: toField(slip.form, by) })
  if (slip?.is === 'search') {
    const hits = foundByText(desk.book, slip.text, MOST_HITS).length
    return withSlip(desk, { ...slip, at: Math.max(0, Math.min(hits - 1, slip.at + by)) })
  }
  return { desk }
}

export const turned = (desk: Desk, by: 1 | -1): Step =>
  desk.slip?.is === 'form' ? withSlip(desk, { ...desk.slip, form: turn(desk.slip.form, by) }) : { desk }

export const scrolled = (desk: Desk, by: number, most: number): Step =>
  desk.slip?.is === 'opening' || desk.slip?.is === 'notice'
    ? withSlip(desk, { ...desk.slip, top: Math.max(0, Math.min(most, desk.slip.top + by)) })
    : { desk }

/** Enter: records the form, confirms the question, takes the text. */
export function accepted(desk: Desk): Step {
  const { slip } = desk
  switch (slip?.is) {
    case 'form': {
      if (leavesAsItWas(slip.form))
        return { desk: { ...desk, slip: undefined, said: { tone: 'why', code: 'nothing-changed' } } }
      const outcome = acceptForm(slip.form)
      if ('form' in outcome) return withSlip(desk, { ...slip, form: outcome.form })
      const { facts } = outcome
      const { changes } = slip.form
      const tone = slip.form.danger === undefined ? 'done' : 'care'
      const all = changes === undefined ? facts : [voiding(changes, 'changed'), ...facts]
      return recording(desk, all, { tone, code: 'recorded', facts })
    }
    case 'question':
      return recording(slip.after === undefined ? desk : withPlace(desk, slip.after), slip.facts, slip.said)
    case 'day':
      return dayTyped(desk, slip)
    case 'initials':
    case 'opening': {
      const by = slip.text === '' ? undefined : slip.text
      const said: Message | undefined =
        slip.is === 'initials'
          ? { tone: 'done', code: by === undefined ? 'nobody-records' : 'records', values: { by: by ?? '' } }
          : undefined
      return { desk: { ...desk, by, said, slip: undefined } }
    }
    case 'leaving':
      return { desk: { ...desk, slip: undefined }, leave: 'quit-unsaved' }
    case 'older':
      return { desk: { ...desk, slip: undefined }, ask: { do: 'over-older' } }
    case 'copy':
      return slip.text.trim() === ''
        ? { desk }
        : { desk: { ...desk, slip: undefined }, ask: { do: 'copy', path: slip.text.trim() } }
    case 'search': {
      const hit = foundByText(desk.book, slip.text, MOST_HITS)[slip.at]
      if (hit === undefined) return { desk }
      const onList = pointedAt(desk.page, hit.id)
      return onList === undefined
        ? {
            desk: {
              ...desk,
              slip: undefined,
              places: [...desk.places, { at: 'animal', animal: hit.id, pointer: 0 }],
            },
          }
        : { desk: { ...desk, slip: undefined, page: onList, places: desk.places.slice(0, 1) } }
    }
    default:
      return { desk }
  }
}

/** The list of the day typed; on the move to the bull weeks, the day of the move. */
function dayTyped(desk: Desk, slip: Slip & { is: 'day' }): Step {
  const place = placeOf(desk)
  if (place.at === 'turn-out') {
    const day = moveDayTyped(desk, place, slip.text)
    return typeof day === 'string'
      ? withSlip(desk, { ...slip, wrong: day })
      : { desk: { ...withPlace(desk, { ...place, day }), slip: undefined } }
  }
  const day = readTypedDay(slip.text, desk.now.day, true)
  return day === undefined
    ? withSlip(desk, { ...slip, wrong: 'no-date' })
    : { desk: { ...withDay(desk, day), slip: undefined } }
}

/** Esc: nothing is recorded. */
export function cancelled(desk: Desk): Step {
  const { slip } = desk
  const recordsNothing = slip?.is === 'form' || slip?.is === 'question'
  const said: Message | undefined = recordsNothing ? { tone: 'why', code: 'cancelled' } : undefined
  return { desk: { ...desk, slip: undefined, said } }
}
