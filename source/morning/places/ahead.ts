/** The next two weeks: what its keys do. */

import { type Day, dayIso } from '../../breeding/day.ts'
import { HERD, type NewFact, type SeasonFact } from '../../breeding/facts.ts'
import { PRE_MATING, type Season, seasonDay } from '../../breeding/season.ts'
import { type AheadLine, aheadLines, plannedVisits, readyOn } from '../ahead.ts'
import { type Desk, withDay } from '../desk.ts'
import type { AheadPlace } from '../place.ts'
import { asking, refused, type Step } from '../step.ts'
import { withPlace } from './with-place.ts'

/** What can be done here besides moving about. */
export type AheadAct =
  /** Opens the list of the day pointed at. */
  | { readonly is: 'open-day' }
  /** Plans a scanning visit on the day pointed at. */
  | { readonly is: 'plan' }
  /** Moves the planned visit that is nearest to the day pointed at to it. */
  | { readonly is: 'move-visit' }
  /** Takes the planned visit pointed at out of the plan. */
  | { readonly is: 'cancel-visit' }
  /** The next block to plan for. */
  | { readonly is: 'block' }

/** The screen as it opens. */
export const openAhead = (_desk: Desk): AheadPlace => ({ at: 'ahead', pointer: 0, block: undefined })

/** Blocks that a visit can be planned for, those of the list first. */
const blocksOf = (desk: Desk): readonly string[] => desk.page.list.blocks.map(({ block }) => block)

/** The line pointed at. */
export const aheadLineAt = (desk: Desk, place: AheadPlace): AheadLine | undefined => {
  const lines = aheadLines(desk)
  return lines[Math.min(place.pointer, lines.length - 1)]
}

/** The block that a visit on the day pointed at would be planned for: that of the line, else the chosen one. */
export function blockToPlan(desk: Desk, place: AheadPlace): string | undefined {
  const line = aheadLineAt(desk, place)
  if (line?.is === 'visit' || line?.is === 'scan') return line.block
  const blocks = blocksOf(desk)
  return blocks.find((block) => block === place.block) ?? blocks[0]
}

export function actAhead(desk: Desk, place: AheadPlace, act: AheadAct): Step {
  const line = aheadLineAt(desk, place)
  if (line === undefined) return { desk }
  switch (act.is) {
    case 'open-day':
      return { desk: { ...withDay(desk, line.day), said: undefined, places: desk.places.slice(0, 1) } }
    case 'block': {
      const blocks = blocksOf(desk)
      const at = blocks.indexOf(blockToPlan(desk, { ...place, pointer: 0 }) ?? '')
      const block = blocks[(at + 1) % blocks.length]
      return { desk: withPlace({ ...desk, said: undefined }, { ...place, block }) }
    }
    case 'plan':
      return plan(desk, place, line.day, [])
    case 'move-visit': {
      const block = blockToPlan(desk, place)
      const [nearest] = plannedVisits(desk)
        .filter((visit) => visit.block === block)
        .sort((a, b) => Math.abs(a.day - line.day) - Math.abs(b.day - line.day))
      return nearest === undefined
        ? refused(desk, 'no-visit-to-move', { block: block ?? '' })
        : plan(desk, place, line.day, [nearest.day])
    }
    case 'cancel-visit':
      return line.is === 'visit' ? cancel(desk, line.block, line.day) : refused(desk, 'point-at-visit')
  }
}

/** Asks whether a visit is to be planned on a day; in the place of others where it is moved. */
function plan(desk: Desk, place: AheadPlace, day: Day, instead: readonly Day[]): Step {
  const block = blockToPlan(desk, place)
  const season = block === undefined ? undefined : seasonFactOn(desk, block, day)
  if (block === undefined || season === undefined)
    return refused(desk, 'no-season-then', { block: block ?? '', day })
  if (datesOf(season).includes(dayIso(day))) return refused(desk, 'visit-planned-already', { block, day })
  const from = instead[0]
  const moved = from === undefined ? undefined : seasonFactOfVisit(desk, block, from)
  const values = { block, day, ready: readyOn(desk, block, day), ...(from === undefined ? {} : { from }) }
  const dates = (fact: SeasonFact): readonly string[] =>
    datesOf(fact).filter((date) => !instead.map(dayIso).includes(date))
  const facts =
    moved === undefined || moved.id === season.id
      ? [withDates(desk, season, [...dates(season), dayIso(day)])]
      : [withDates(desk, moved, dates(moved)), withDates(desk, season, [...datesOf(season), dayIso(day)])]
  const code = from === undefined ? 'visit-planned' : 'visit-moved'
  return asking(desk, `plan-${code}`, facts, { tone: 'done', code, values, facts })
}

function cancel(desk: Desk, block: string, day: Day): Step {
  const season = seasonFactOfVisit(desk, block, day)
  if (season === undefined) return { desk }
  const facts = [
    withDates(
      desk,
      season,
      datesOf(season).filter((date) => date !== dayIso(day)),
    ),
  ]
  const code = 'visit-cancelled'
  return asking(desk, `plan-${code}`, facts, { tone: 'done', code, values: { block, day }, facts })
}

const datesOf = (fact: SeasonFact): readonly string[] => fact.scanDates ?? []

/** The season as it is to be from now on. Of two facts of one season the latest counts. */
function withDates(desk: Desk, fact: SeasonFact, dates: readonly string[]): NewFact<SeasonFact> {
  const { id: _id, at: _at, by: _by, action: _action, ...season } = fact
  return { ...season, about: HERD, date: dayIso(desk.now.day), scanDates: dates.toSorted() }
}

/** The season that a block's animals are in on a day: a visit on that day is theirs. */
const seasonFactOn = (desk: Desk, block: string, day: Day): SeasonFact | undefined =>
  factOf(
    desk,
    (desk.book.seasons.get(block) ?? []).findLast((season) => seasonDay(season, day) >= PRE_MATING),
  )

const seasonFactOfVisit = (desk: Desk, block: string, day: Day): SeasonFact | undefined =>
  factOf(
    desk,
    (desk.book.seasons.get(block) ?? []).find((season) => season.scanDays.includes(day)),
  )

const factOf = (desk: Desk, season: Season | undefined): SeasonFact | undefined =>
  desk.book.live.find((fact): fact is SeasonFact => fact.kind === 'season' && fact.id === season?.factId)
