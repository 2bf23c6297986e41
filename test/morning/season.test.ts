import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { BlockForecast } from '../../source/breeding/forecast/block.ts'
import type { Change } from '../../source/breeding/forecast/what-if.ts'
import { finished } from '../../source/breeding/steps.ts'
import { act } from '../../source/morning/act.ts'
import { type Desk, openDesk } from '../../source/morning/desk.ts'
import type { SeasonPlace } from '../../source/morning/place.ts'
import { actSeason, figuresShown, openSeason, type SeasonAct } from '../../source/morning/places/season.ts'
import { reckoningOf } from '../../source/morning/reckoning.ts'
import { figureGroups, figureRows } from '../../source/morning/season/figures.ts'
import { listedOf } from '../../source/morning/season/listed.ts'
import { knobs, planned, turned } from '../../source/morning/season/tries.ts'
import { now } from '../terminal/support/herd.ts'
import { seasonHerd } from '../terminal/support/season-herd.ts'

const forecast = {
  own: { heatSeen: 0.913, conception: { cowConventional: { mean: 0.567 } } },
  bulls: 3,
  bullsNeeded: 2,
} as unknown as BlockForecast

test('a knob turned on and back is as planned', () => {
  fc.assert(
    fc.property(fc.constantFrom(...knobs), fc.constantFrom(1 as const, -1 as const), (knob, by) => {
      const once = turned({}, knob, by, forecast)
      const value = once[knob] ?? planned(forecast)[knob]
      if (by > 0) expect(value).toBeGreaterThanOrEqual(planned(forecast)[knob])
      else expect(value).toBeLessThanOrEqual(planned(forecast)[knob])
      if (knob === 'aiWeeks' || knob === 'bulls') expect(turned(once, knob, -by, forecast)).toEqual({})
    }),
  )
})

test('shares move along the twentieths from where the plan lies between two', () => {
  expect(turned({}, 'heatSeen', 1, forecast)).toEqual({ heatSeen: 0.95 })
  expect(turned({}, 'heatSeen', -1, forecast)).toEqual({ heatSeen: 0.9 })
  expect(turned({ heatSeen: 0.9 }, 'heatSeen', -1, forecast)).toEqual({ heatSeen: 0.85 })
  expect(turned({}, 'cowConception', 1, forecast)).toEqual({ cowConception: 0.6 })
})

test('knobs stay within what may be asked, and leave one another alone', () => {
  let change: Change = { bulls: 1 }
  for (let i = 0; i < 30; i += 1) for (const knob of knobs) change = turned(change, knob, 1, forecast)
  expect(change).toEqual({ aiWeeks: 2, heatSeen: 0.95, cowConception: 0.95, bulls: 20 })
  for (let i = 0; i < 60; i += 1) for (const knob of knobs) change = turned(change, knob, -1, forecast)
  expect(change).toEqual({ aiWeeks: -2, heatSeen: 0.05, cowConception: 0.05, bulls: 0 })
})

/** The season's screen with all that it wants known. */
function seasonDesk(): Desk {
  const first = { ...openDesk(seasonHerd(), now, 'MK'), slip: undefined }
  let desk: Desk = act(first, { do: 'open', place: openSeason(first) }).desk
  for (let wanted = reckoningOf(desk); wanted !== undefined; wanted = reckoningOf(desk)) {
    finished(wanted.begin())
    desk = act(desk, { do: 'reckoned' }).desk
  }
  return desk
}
const place = (desk: Desk): SeasonPlace => desk.places.at(-1) as SeasonPlace
const doing = (desk: Desk, ...acts: readonly SeasonAct[]): Desk =>
  acts.reduce((before, one) => actSeason(before, place(before), one).desk, desk)

test('the parts go round in both directions', () => {
  const desk = seasonDesk()
  const on: SeasonAct = { is: 'part', by: 1 }
  expect(place(doing(desk, on)).part).toBe('figures')
  expect(place(doing(desk, on, on, on, on, on, on)).part).toBe('answers')
  expect(place(doing(desk, { is: 'part', by: -1 })).part).toBe('earlier')
})

test('every row of the figures opens to its animals, and Esc comes back to the row', () => {
  const desk = doing(seasonDesk(), { is: 'part', by: 1 })
  const view = figuresShown(desk, place(desk))?.view
  if (view === undefined) throw new Error('not known')
  const rows = figureRows(view.figures)
  expect(figureGroups(view.figures).flatMap((group) => group.rows)).toEqual(rows)
  for (const [pointer, row] of rows.entries()) {
    const at: Desk = { ...desk, places: [{ at: 'morning-list' }, { ...place(desk), pointer }] }
    const opened = doing(at, { is: 'enter' })
    expect(place(opened).open).toEqual(row.name)
    const listed = listedOf(view, row.name).flatMap((group) => group.animals)
    if (row.figure !== undefined) {
      expect(listed.filter(({ counts }) => counts === 'yes').length).toBe(row.figure.numerator)
    } else expect(listed.length).toBe(row.count)
    const closed = doing(opened, { is: 'close' })
    expect(place(closed)).toMatchObject({ open: undefined, pointer })
  }
})

test('each question leads to where it is looked into', () => {
  const desk = seasonDesk()
  const from = (pointer: number): Desk =>
    doing({ ...desk, places: [{ at: 'morning-list' }, { ...place(desk), pointer }] }, { is: 'enter' })
  expect(place(from(0))).toMatchObject({ part: 'figures', open: { of: 'submission' } })
  expect(place(from(1))).toMatchObject({ part: 'figures', open: undefined })
  expect(place(from(2))).toMatchObject({ part: 'empties' })
  expect(place(from(3))).toMatchObject({ at: 'bulls' })
  expect(place(from(4))).toMatchObject({ part: 'forecast', change: { aiWeeks: 1 } })
})

test('with one block there is no other, and that is said', () => {
  const desk = doing(seasonDesk(), { is: 'block' })
  expect(desk.said?.code).toBe('one-block')
})
