/** Straws in the flask: what the lines are that can be pointed at, and what the keys do with them. */

import { compareTexts } from '../../breeding/compare-texts.ts'
import type { Problem } from '../../breeding/problem.ts'
import type { NitrogenLevel } from '../../breeding/straws/nitrogen.ts'
import type { Lot } from '../../breeding/straws/stock.ts'
import { type Desk, herdSettingOf } from '../desk.ts'
import { flaskOn } from '../flask.ts'
import { openHerdForm } from '../forms/edit.ts'
import type { HerdFormName, Values } from '../forms/form.ts'
import { because } from '../message.ts'
import type { StrawsPlace } from '../place.ts'
import type { Step } from '../step.ts'
import { withPlace } from './with-place.ts'

/** What can be done here besides moving about. */
export type StrawsAct =
  | { readonly is: 'record'; readonly form: StrawsForm }
  /** Shows what stands beside as the page, and back. */
  | { readonly is: 'whole' }
  | { readonly is: 'used-up' }

type StrawsForm = HerdFormName & ('delivery' | 'stock-take' | 'spoiled' | 'nitrogen')

/** A line that can be pointed at. */
export type StrawsEntry =
  | { readonly is: 'nitrogen'; readonly level: NitrogenLevel }
  | { readonly is: 'lot'; readonly lot: Lot }
  /** Stands for the lots that are used up. */
  | { readonly is: 'used-up'; readonly count: number }
  | { readonly is: 'notice'; readonly problem: Problem }

/** The screen as it opens. */
export const openStraws = (_desk: Desk): StrawsPlace => ({
  at: 'straws',
  pointer: 0,
  top: undefined,
  usedUp: false,
})

/**
 * The lines that can be pointed at, in order: nitrogen, what is odd, the lots by flask and canister, those used up.
 *
 * @example strawsEntries(desk, place)[0]?.is // 'nitrogen'
 */
export function strawsEntries(desk: Desk, { usedUp }: StrawsPlace): readonly StrawsEntry[] {
  const { stock, nitrogen } = flaskOn(desk.book, desk.page.list.day)
  const inPlace = stock.lots.toSorted(byPlace)
  const full = inPlace.filter((lot) => lot.left > 0)
  const empty = inPlace.filter((lot) => lot.left === 0)
  return [
    ...nitrogen.map((level) => ({ is: 'nitrogen' as const, level })),
    ...stock.notices.map((problem) => ({ is: 'notice' as const, problem })),
    ...full.map((lot) => ({ is: 'lot' as const, lot })),
    ...(empty.length === 0 ? [] : [{ is: 'used-up' as const, count: empty.length }]),
    ...(usedUp ? empty.map((lot) => ({ is: 'lot' as const, lot })) : []),
  ]
}

const text = (a = '', b = ''): number => compareTexts(a, b)
const byPlace = (a: Lot, b: Lot): number =>
  text(a.flask, b.flask) ||
  (a.canister ?? '').localeCompare(b.canister ?? '', 'en', { numeric: true }) ||
  text(a.sire, b.sire) ||
  text(a.straw, b.straw)

/** The line pointed at. */
export function strawsEntryAt(desk: Desk, place: StrawsPlace): StrawsEntry | undefined {
  const entries = strawsEntries(desk, place)
  return entries[Math.min(place.pointer, entries.length - 1)]
}

export function actStraws(desk: Desk, place: StrawsPlace, act: StrawsAct): Step {
  const entry = strawsEntryAt(desk, place)
  switch (act.is) {
    case 'record':
      return record(desk, entry, act.form)
    case 'whole':
      if (entry?.is === 'used-up') return { desk: unfolded(desk, place) }
      return entry === undefined
        ? { desk: { ...desk, said: because('nothing-here') } }
        : {
            desk: withPlace(
              { ...desk, said: undefined },
              { ...place, top: place.top === undefined ? 0 : undefined },
            ),
          }
    case 'used-up':
      return { desk: unfolded(desk, place) }
  }
}

function unfolded(desk: Desk, place: StrawsPlace): Desk {
  const entries = strawsEntries(desk, place)
  const at = entries.findIndex((entry) => entry.is === 'used-up')
  if (at < 0) return { ...desk, said: because('none-used-up') }
  return withPlace(
    { ...desk, said: undefined },
    {
      ...place,
      usedUp: !place.usedUp,
      pointer: place.usedUp ? at : at + 1,
    },
  )
}

/** Opens a form with what the line pointed at tells already. */
function record(desk: Desk, entry: StrawsEntry | undefined, name: StrawsForm): Step {
  if (desk.page.list.day > desk.now.day) return { desk: { ...desk, said: because('list-ahead') } }
  const values = name === 'nitrogen' ? flaskOf(entry) : lotOf(entry)
  const at = name === 'nitrogen' ? 'depth' : name === 'delivery' || values === undefined ? 'sire' : 'count'
  const form = openHerdForm(name, herdSettingOf(desk), values, at)
  return { desk: { ...desk, said: undefined, slip: { is: 'form', form } } }
}

function flaskOf(entry: StrawsEntry | undefined): Values | undefined {
  const flask =
    entry?.is === 'nitrogen' ? entry.level.flask : entry?.is === 'lot' ? entry.lot.flask : undefined
  return flask === undefined ? undefined : { flask }
}

function lotOf(entry: StrawsEntry | undefined): Values | undefined {
  if (entry?.is !== 'lot') return undefined
  const { sire, straw, batch, flask, canister } = entry.lot
  return { sire, kind: straw, batch: batch ?? '', flask: flask ?? '', canister: canister ?? '' }
}
