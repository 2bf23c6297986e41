/** The season: its parts, the lines in them that can be pointed at, and what the keys do. */

import type { FigureName } from '../../breeding/figures/behind.ts'
import type { Phase } from '../../breeding/season.ts'
import { type Desk, placeOf } from '../desk.ts'
import { because } from '../message.ts'
import { type SeasonPart, type SeasonPlace, seasonParts } from '../place.ts'
import { blockShown, knownView } from '../reckoning.ts'
import { type Decision, decide } from '../season/decide.ts'
import { emptyRows, rowsInOrder } from '../season/empties.ts'
import { figureRows } from '../season/figures.ts'
import { listedOf } from '../season/listed.ts'
import { questions } from '../season/questions.ts'
import { type TryEntry, tryEntries, turned } from '../season/tries.ts'
import type { Step } from '../step.ts'
import { openBulls } from './bulls.ts'
import { withPlace } from './with-place.ts'

/** What can be done here besides moving about. */
export type SeasonAct =
  | { readonly is: 'part'; readonly by: 1 | -1 }
  | { readonly is: 'block' }
  /** Looks into the line pointed at. */
  | { readonly is: 'enter' }
  /** From the animals of a figure back to the figures. */
  | { readonly is: 'close' }
  | { readonly is: 'turn'; readonly by: 1 | -1 }
  | { readonly is: 'as-planned' }
  /** What becomes of the animal pointed at among the empties. */
  | { readonly is: 'decide'; readonly decision: Decision }

/** The block whose questions are the most pressing comes first. */
const pressing: readonly Phase[] = ['ai', 'bull', 'before', 'closing', 'closed']

/** The screen as it opens. */
export const openSeason = (desk: Desk): SeasonPlace => ({
  at: 'season',
  pointer: 0,
  block: desk.page.list.blocks.toSorted((a, b) => pressing.indexOf(a.phase) - pressing.indexOf(b.phase))[0]
    ?.block,
  part: 'answers',
  open: undefined,
  change: {},
})

/** The view of the season shown, once it knows its figures; and whether something was recorded since. */
export function figuresShown(desk: Desk, place: SeasonPlace) {
  const season = blockShown(desk, place.block)?.season
  return season === undefined ? undefined : knownView(desk, season, 'figures')
}

/** The same, once it knows the forecast as planned. */
export function forecastShown(desk: Desk, place: SeasonPlace) {
  const season = blockShown(desk, place.block)?.season
  return season === undefined ? undefined : knownView(desk, season, {})
}

export function actSeason(desk: Desk, place: SeasonPlace, act: SeasonAct): Step {
  const to = (change: Partial<SeasonPlace>): Step => ({
    desk: withPlace({ ...desk, typed: '', said: undefined }, { ...place, ...change }),
  })
  switch (act.is) {
    case 'part': {
      const at = seasonParts.indexOf(place.part) + act.by + seasonParts.length
      return to({ part: seasonParts[at % seasonParts.length] ?? 'answers', pointer: 0, open: undefined })
    }
    case 'block': {
      const { blocks } = desk.page.list
      if (blocks.length < 2) return { desk: { ...desk, said: because('one-block') } }
      const at = blocks.findIndex(({ block }) => block === place.block)
      const next = blocks[(at + 1) % blocks.length]
      return to({ block: next?.block, pointer: 0, open: undefined, change: {} })
    }
    case 'enter':
      return entered(desk, place, to)
    case 'close':
      return to({ open: undefined, pointer: figurePointer(desk, place) })
    case 'turn':
      return turnedKnob(desk, place, act.by, to)
    case 'as-planned':
      return to({ change: {} })
    case 'decide':
      return decided(desk, place, act.decision)
  }
}

type To = (change: Partial<SeasonPlace>) => Step

/** Where each question is looked into. */
function entered(desk: Desk, place: SeasonPlace, to: To): Step {
  if (place.part === 'answers') return lookedInto(desk, place, to)
  if (place.part === 'figures' && place.open === undefined) {
    const row = figuresAt(desk, place)
    return row === undefined ? nothing(desk) : to({ open: row.name, pointer: 0 })
  }
  if (place.part === 'forecast') {
    const entry = tryAt(desk, place)
    return entry?.is === 'worth' ? to({ change: entry.change }) : nothing(desk)
  }
  const animal = animalAt(desk, place)
  return animal === undefined
    ? nothing(desk)
    : {
        desk: {
          ...desk,
          typed: '',
          said: undefined,
          places: [...desk.places, { at: 'animal', animal, pointer: 0 }],
        },
      }
}

const nothing = (desk: Desk): Step => ({ desk: { ...desk, said: because('nothing-here') } })

function lookedInto(desk: Desk, place: SeasonPlace, to: To): Step {
  const part = (name: SeasonPart, more: Partial<SeasonPlace> = {}): Step =>
    to({ part: name, pointer: 0, open: undefined, ...more })
  switch (questions[place.pointer]) {
    case 'pace':
      return part('figures', { open: { of: 'submission' } })
    case 'ai':
      return part('figures', { pointer: rowOf(desk, place, 'conception') })
    case 'empties':
      return part('empties', { pointer: firstEmpty(desk, place) })
    case 'bulls':
      return { desk: { ...desk, said: undefined, places: [...desk.places, openBulls(desk)] } }
    case 'another-week':
      return part('forecast', { change: { aiWeeks: 1 } })
    default:
      return nothing(desk)
  }
}

const rowOf = (desk: Desk, place: SeasonPlace, of: FigureName['of']): number => {
  const view = figuresShown(desk, place)?.view
  return view === undefined
    ? 0
    : Math.max(
        0,
        figureRows(view.figures).findIndex(({ name }) => name.of === of),
      )
}

/** The first of those that are probably empty; those that little time is left for stand above them. */
const firstEmpty = (desk: Desk, place: SeasonPlace): number => {
  const view = figuresShown(desk, place)?.view
  return view === undefined ? 0 : emptyRows(view).last.length
}

/** The pointer on the figure whose animals are listed. */
const figurePointer = (desk: Desk, place: SeasonPlace): number => {
  const view = figuresShown(desk, place)?.view
  const wanted = JSON.stringify(place.open)
  return view === undefined
    ? 0
    : Math.max(
        0,
        figureRows(view.figures).findIndex(({ name }) => JSON.stringify(name) === wanted),
      )
}

/** The figure pointed at. */
export function figuresAt(desk: Desk, place: SeasonPlace) {
  const view = figuresShown(desk, place)?.view
  const rows = view === undefined ? [] : figureRows(view.figures)
  return rows[Math.min(place.pointer, rows.length - 1)]
}

/** The line of the forecast pointed at. */
export function tryAt(desk: Desk, place: SeasonPlace): TryEntry | undefined {
  const view = forecastShown(desk, place)?.view
  const entries = view === undefined ? [] : tryEntries(view)
  return entries[Math.min(place.pointer, entries.length - 1)]
}

/** Id of the animal pointed at, in the list of a figure and among the empties. */
export function animalAt(desk: Desk, place: SeasonPlace): string | undefined {
  const view = figuresShown(desk, place)?.view
  if (view === undefined) return undefined
  const animals =
    place.part === 'empties'
      ? rowsInOrder(emptyRows(view)).map(({ standing }) => standing.animal.id)
      : place.open === undefined
        ? []
        : listedOf(view, place.open).flatMap((group) => group.animals.map(({ animal }) => animal.id))
  return animals[Math.min(place.pointer, animals.length - 1)]
}

/** Records what becomes of the animal pointed at; the pointer goes on to the next. */
function decided(desk: Desk, place: SeasonPlace, decision: Decision): Step {
  const view = figuresShown(desk, place)?.view
  const rows = view === undefined || place.part !== 'empties' ? [] : rowsInOrder(emptyRows(view))
  const pointer = Math.min(place.pointer, rows.length - 1)
  const row = rows[pointer]
  if (view === undefined || row === undefined) return { desk: { ...desk, said: because('no-animal-here') } }
  const step = decide(desk, view, row, decision)
  const next = Math.min(pointer + 1, rows.length - 1)
  return step.record === undefined
    ? step
    : { ...step, desk: withPlace(step.desk, { ...place, pointer: next }) }
}

/** The desk with the pointer on an animal among the empties, where they are shown and she is one of them. */
export function pointedAtEmpty(desk: Desk, animal: string | undefined): Desk {
  const place = placeOf(desk)
  if (place.at !== 'season' || place.part !== 'empties') return desk
  const view = figuresShown(desk, place)?.view
  const rows = view === undefined ? [] : rowsInOrder(emptyRows(view))
  const pointer = rows.findIndex(({ standing }) => standing.animal.id === animal)
  return pointer < 0 ? desk : withPlace(desk, { ...place, pointer })
}

function turnedKnob(desk: Desk, place: SeasonPlace, by: 1 | -1, to: To): Step {
  const entry = tryAt(desk, place)
  const forecast = forecastShown(desk, place)?.view.forecast
  if (entry?.is !== 'knob' || forecast === undefined) return nothing(desk)
  return to({ change: turned(place.change, entry.knob, by, forecast) })
}
