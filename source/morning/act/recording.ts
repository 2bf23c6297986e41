/** Actions that record facts, or open what will. */

import { dayIso, plusDays } from '../../breeding/day.ts'
import type { NewFact } from '../../breeding/facts.ts'
import { standingOn } from '../../breeding/standing.ts'
import { dateInZone } from '../../herd/zone.ts'
import type { Action } from '../action.ts'
import { type Desk, dateFor, placeOf, settingOf } from '../desk.ts'
import { openForm } from '../forms/edit.ts'
import type { FormName, Values } from '../forms/form.ts'
import { formOfFact } from '../forms/of-fact.ts'
import { type Deed, putBack, takeBack, voiding } from '../history.ts'
import { watchToDo } from '../may.ts'
import { because, type Message } from '../message.ts'
import { pointedAtEmpty } from '../places/season.ts'
import { asking, recording, type Step } from '../step.ts'
import { subjectOf } from '../subject.ts'
import { formOf, usualOf } from '../usual.ts'

/** A deed of more facts than this is asked about before it is taken back. */
const MANY = 50

export function heatNow(desk: Desk): Step {
  const her = subjectOf(desk)
  if (her.whyNot !== undefined) return { desk }
  const { date, now } = settingOf(desk, her.animal, her.row)
  return recording(desk, [
    { kind: 'heat', about: her.animal.id, date, time: now.time, how: 'standing', certainty: 'sure' },
  ])
}

export function usual(desk: Desk): Step {
  const her = subjectOf(desk)
  if (her.whyNot !== undefined || her.row === undefined) return { desk }
  const does = usualOf(her.row, settingOf(desk, her.animal, her.row))
  if ('form' in does) return form(desk, does.form)
  if (does.danger !== undefined) {
    return asking(desk, does.danger, does.facts, { tone: 'care', code: 'recorded', facts: does.facts })
  }
  return recording(desk, does.facts)
}

export function fillIn(desk: Desk): Step {
  const her = subjectOf(desk)
  return her.whyNot !== undefined || her.row === undefined ? { desk } : form(desk, formOf(her.row))
}

/** Opens a form about her; "do not breed" opens the one that lifts it where she is barred already. */
export function form(desk: Desk, name: FormName, values?: Values, at?: string): Step {
  const her = subjectOf(desk)
  if (her.whyNot !== undefined) return { desk: { ...desk, said: her.whyNot } }
  const setting = settingOf(desk, her.animal, her.row)
  const barred = standingOn(desk.book, her.animal, plusDays(desk.now.day, 1)).barred
  const meant = name === 'bar' && barred ? 'unbar' : name
  return {
    desk: {
      ...desk,
      typed: '',
      said: undefined,
      slip: { is: 'form', form: openForm(meant, setting, values, at) },
    },
  }
}

/** Asks before a whole section is ticked. */
export function lookAll(desk: Desk): Step {
  const facts = watchToDo(desk).map(
    (row): NewFact => ({ kind: 'looked', about: row.animal, date: dateFor(desk) }),
  )
  return asking(desk, 'look-all', facts, { tone: 'done', code: 'recorded', facts })
}

/** The move to the bull weeks, or out of them: one step, taken back as it was made. */
const isMove = ({ facts }: Deed): boolean =>
  facts.every(({ kind }) => kind === 'with-bull') || facts.every(({ kind }) => kind === 'from-bull')

export function undo(desk: Desk, action: Action & { do: 'undo' | 'redo' }): Step {
  const { last, takenBack } = desk.history
  const deed = action.do === 'undo' ? last : takenBack?.deed
  if (deed === undefined) return { desk }
  const facts = action.do === 'undo' ? takeBack(deed) : takenBack === undefined ? [] : putBack(takenBack.by)
  const said: Message = {
    tone: 'done',
    code: action.do === 'undo' ? 'taken-back' : 'put-back',
    facts: deed.facts,
  }
  if (deed.facts.length > MANY && !isMove(deed)) return asking(desk, `${action.do}-many`, facts, said)
  // What was done on another day is out of sight: it is shown before it is taken back.
  const { zone } = desk.book.farm
  const today = dayIso(desk.now.day)
  const old = deed.facts.some((fact) => fact.date !== today && dateInZone(new Date(fact.at), zone) !== today)
  if (old) return asking(desk, `${action.do}-old`, facts, said)
  return recording(pointedAtEmpty(desk, deed.facts[0]?.about), facts, said)
}

/** Opens the fact pointed at on her page in its form; recording it voids the old one. */
export function changeFact(desk: Desk): Step {
  const place = placeOf(desk)
  const animal = place.at === 'animal' ? desk.book.animals.get(place.animal) : undefined
  if (place.at === 'animal' && place.more !== undefined)
    return { desk: { ...desk, said: because('facts-first') } }
  const happening = place.at === 'animal' ? animal?.happenings.toReversed()[place.pointer] : undefined
  if (animal === undefined || happening === undefined)
    return { desk: { ...desk, said: because('no-fact-here') } }
  const form = formOfFact(happening.fact)
  if (form === undefined) return { desk: { ...desk, said: because('not-in-a-form') } }
  const setting = {
    ...settingOf(desk, animal, undefined),
    standing: standingOn(desk.book, animal, happening.day),
  }
  const opened = { ...openForm(form.name, setting, form.values), changes: happening.fact }
  return { desk: { ...desk, said: undefined, slip: { is: 'form', form: opened } } }
}

/** Asks before a fact on her page is struck out. */
export function voidFact(desk: Desk): Step {
  const place = placeOf(desk)
  if (place.at !== 'animal') return { desk }
  if (place.more !== undefined) return { desk: { ...desk, said: because('facts-first') } }
  const happening = desk.book.animals.get(place.animal)?.happenings.toReversed()[place.pointer]
  if (happening === undefined) return { desk: { ...desk, said: because('no-fact-here') } }
  const { fact } = happening
  return asking(desk, 'void', [voiding(fact, 'recorded by mistake')], {
    tone: 'done',
    code: 'voided',
    facts: [fact],
  })
}
