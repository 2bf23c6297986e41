/** Setting up the farm: what its keys do. Every line that can be pointed at is an entry; Enter opens its form. */

import type { AnimalRecord } from '../../breeding/book.ts'
import { calvingStartFor, dayIso, isoDay, plusYears } from '../../breeding/day.ts'
import { HERD, type NewFact, type PolicyFact, type SeasonFact } from '../../breeding/facts.ts'
import { compareNumbers } from '../../breeding/order.ts'
import { type Setting as PolicySetting, settings } from '../../breeding/policy.ts'
import { type Desk, herdSettingOf } from '../desk.ts'
import { foundByNumber } from '../find.ts'
import { openHerdForm } from '../forms/edit.ts'
import type { HerdFormName, Values } from '../forms/form.ts'
import { voiding } from '../history.ts'
import { because } from '../message.ts'
import { type SetUpPart, type SetUpPlace, setUpParts } from '../place.ts'
import { asking, type Step } from '../step.ts'
import { withPlace } from './with-place.ts'

/** What can be done here besides moving about. */
export type SetUpAct =
  | { readonly is: 'part'; readonly by: 1 | -1 }
  | { readonly is: 'change' }
  | { readonly is: 'add' }
  | { readonly is: 'next-year' }
  | { readonly is: 'strike' }
  | { readonly is: 'digit'; readonly digit: string }
  | { readonly is: 'open-animal' }

/** An entry: what Enter changes. */
export type SetUpEntry =
  | { readonly is: 'farm' }
  | { readonly is: 'season'; readonly fact: SeasonFact }
  | { readonly is: 'setting'; readonly setting: PolicySetting }
  | { readonly is: 'animal'; readonly animal: AnimalRecord }

/** The screen as it opens. */
export const openSetUp = (_desk: Desk): SetUpPlace => ({ at: 'set-up', pointer: 0, part: 'farm' })

/** The entries of a part, in the order they are shown. */
export function setUpEntries(desk: Desk, part: SetUpPart): readonly SetUpEntry[] {
  const { book } = desk
  switch (part) {
    case 'farm':
      return [{ is: 'farm' }]
    case 'seasons':
      return book.allSeasons
        .toReversed()
        .flatMap((season) => book.live.filter((fact) => fact.id === season.factId))
        .flatMap((fact) => (fact.kind === 'season' ? [{ is: 'season', fact } as const] : []))
    case 'policy':
      return settings.map((setting) => ({ is: 'setting', setting }))
    case 'animals':
      return [...book.animals.values()]
        .sort((a, b) => compareNumbers(a.number, b.number))
        .map((animal) => ({ is: 'animal', animal }))
  }
}

/** The entry pointed at. */
export function entryAt(desk: Desk, place: SetUpPlace): SetUpEntry | undefined {
  return setUpEntries(desk, place.part)[place.pointer]
}

export function actSetUp(desk: Desk, place: SetUpPlace, act: SetUpAct): Step {
  switch (act.is) {
    case 'part': {
      const at = setUpParts.indexOf(place.part) + act.by + setUpParts.length
      const part = setUpParts[at % setUpParts.length] ?? 'farm'
      return { desk: withPlace({ ...desk, typed: '', said: undefined }, { ...place, part, pointer: 0 }) }
    }
    case 'change':
      return change(desk, place)
    case 'add':
      return form(desk, place.part === 'animals' ? 'record' : 'season', undefined)
    case 'next-year':
      return nextYear(desk, place)
    case 'strike':
      return strike(desk, place)
    case 'digit': {
      const typed = desk.typed + act.digit
      const found = foundByNumber(desk.book, typed).animal
      const at = setUpEntries(desk, 'animals').findIndex(
        (entry) => entry.is === 'animal' && entry.animal === found,
      )
      const there = { ...place, part: 'animals', pointer: at < 0 ? place.pointer : at } as const
      return { desk: withPlace({ ...desk, typed, said: undefined }, there) }
    }
    case 'open-animal': {
      const entry = entryAt(desk, place)
      if (entry?.is !== 'animal') return { desk: { ...desk, said: because('no-animal-here') } }
      return {
        desk: {
          ...desk,
          said: undefined,
          places: [...desk.places, { at: 'animal', animal: entry.animal.id, pointer: 0 }],
        },
      }
    }
  }
}

function form(desk: Desk, name: HerdFormName, about: string | undefined, values?: Values): Step {
  const setting = { ...herdSettingOf(desk), ...(about === undefined ? {} : { about }) }
  return {
    desk: { ...desk, said: undefined, slip: { is: 'form', form: openHerdForm(name, setting, values) } },
  }
}

function change(desk: Desk, place: SetUpPlace): Step {
  const entry = entryAt(desk, place)
  switch (entry?.is) {
    case 'farm':
      return form(desk, 'farm', undefined)
    case 'season':
      return form(desk, 'season', entry.fact.id)
    case 'setting':
      return form(desk, 'setting', entry.setting.key)
    case 'animal':
      return form(desk, 'record', entry.animal.id)
    default:
      return { desk: { ...desk, said: because('nothing-to-change') } }
  }
}

/** A season like the one pointed at, a year later. */
function nextYear(desk: Desk, place: SetUpPlace): Step {
  const entry = entryAt(desk, place)
  if (entry?.is !== 'season') return { desk: { ...desk, said: because('no-season-here') } }
  const { fact } = entry
  const start = plusYears(isoDay(fact.matingStart), 1)
  return form(desk, 'season', undefined, {
    block: fact.block,
    'mating-start': dayIso(start),
    'calving-start': dayIso(calvingStartFor(start, desk.book.policy.defaultGestation)),
    'ai-weeks': String(fact.aiWeeks),
    'bull-weeks': String(fact.bullWeeks),
  })
}

/** Strikes a season out, or puts a setting back to what it is by default. */
function strike(desk: Desk, place: SetUpPlace): Step {
  const entry = entryAt(desk, place)
  if (entry?.is === 'season') {
    const facts = [voiding(entry.fact, 'season struck out')]
    return asking(desk, 'void', facts, { tone: 'done', code: 'voided', facts: [entry.fact] })
  }
  if (entry?.is === 'setting') {
    const { key } = entry.setting
    const changed = desk.book.live.filter(
      (fact): fact is PolicyFact => fact.kind === 'policy' && key in fact.set,
    )
    if (changed.length === 0) return { desk: { ...desk, said: because('is-default') } }
    const { [key]: _taken, ...others }: Record<string, string | number | boolean> = Object.assign(
      {},
      ...changed.map((fact) => fact.set),
    )
    const facts: NewFact[] = changed.map((fact) => voiding(fact, 'back to the default'))
    if (Object.keys(others).length > 0) {
      facts.push({ kind: 'policy', about: HERD, date: dayIso(desk.now.day), set: others })
    }
    return asking(desk, 'void', facts, { tone: 'done', code: 'voided', facts: changed })
  }
  return { desk: { ...desk, said: because('nothing-to-strike') } }
}
