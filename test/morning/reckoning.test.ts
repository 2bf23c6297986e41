import { expect, test } from 'vitest'
import { finished } from '../../source/breeding/steps.ts'
import { act } from '../../source/morning/act.ts'
import { type Desk, openDesk } from '../../source/morning/desk.ts'
import type { SeasonPart } from '../../source/morning/place.ts'
import { openBulls } from '../../source/morning/places/bulls.ts'
import { openSeason } from '../../source/morning/places/season.ts'
import { openStraws } from '../../source/morning/places/straws.ts'
import { blockShown, forecastOf, knownView, reckoningOf } from '../../source/morning/reckoning.ts'
import { heat, now } from '../terminal/support/herd.ts'
import { seasonHerd } from '../terminal/support/season-herd.ts'

const opened = (): Desk => ({ ...openDesk(seasonHerd(), now, 'MK'), slip: undefined })
const onSeason = (part: SeasonPart): Desk => {
  const desk = opened()
  return act(desk, { do: 'open', place: { ...openSeason(desk), part } }).desk
}

/** Reckons all that the screen wants; the names of what was reckoned, in order. */
function reckonAll(from: Desk): { desk: Desk; names: string[]; steps: number } {
  let desk = from
  let steps = 0
  const names: string[] = []
  for (let wanted = reckoningOf(desk); wanted !== undefined; wanted = reckoningOf(desk)) {
    names.push(wanted.name)
    const doing = wanted.begin()
    while (doing.next().done !== true) steps += 1
    desk = act(desk, { do: 'reckoned' }).desk
    if (names.length > 50) throw new Error('never done')
  }
  return { desk, names, steps }
}

test('the morning list waits for nothing', () => {
  expect(reckoningOf(opened())).toBeUndefined()
})

test('each part of the season wants what it shows, and then nothing more', () => {
  for (const part of ['answers', 'figures', 'pictures', 'forecast', 'empties', 'earlier'] as const) {
    const before = onSeason(part)
    expect(reckoningOf(before), part).toBeDefined()
    const { desk, names } = reckonAll(before)
    expect(reckoningOf(desk), part).toBeUndefined()
    expect(new Set(names).size, part).toBe(names.length)
  }
})

test('the figures come before the forecast, which takes longer; what is known is not reckoned again', () => {
  const { names, desk } = reckonAll(onSeason('answers'))
  expect(names.map((name) => JSON.parse(name)[2])).toEqual(['figures', {}, { aiWeeks: 1 }])
  const again = act(desk, { do: 'open', place: { ...openSeason(desk), part: 'pictures' } }).desk
  expect(reckoningOf(again)).toBeUndefined()
})

test('it is done in many small steps', () => {
  const { steps } = reckonAll(onSeason('answers'))
  expect(steps).toBeGreaterThan(20)
})

test('after a fact the old numbers stand, marked as such, until the new are known', () => {
  const { desk } = reckonAll(onSeason('answers'))
  const season = blockShown(desk, 'spring')?.season
  if (season === undefined) throw new Error('no season')
  expect(knownView(desk, season, {})?.stale).toBe(false)
  const [animal] = [...desk.book.animals.keys()]
  const fact = { ...heat(0), id: 'new', about: animal, at: '2026-05-28T04:20:00.000Z', action: 'a' } as never
  const recorded = act(desk, { do: 'recorded', facts: [fact] }).desk
  expect(recorded.book).not.toBe(desk.book)
  expect(knownView(recorded, season, {})?.stale).toBe(true)
  expect(forecastOf(recorded, season)).toBe(forecastOf(desk, season))
  const first = reckoningOf(recorded)?.begin()
  if (first !== undefined) finished(first)
  const half = act(recorded, { do: 'reckoned' }).desk
  expect(knownView(half, season, 'figures')?.stale).toBe(false)
  expect(knownView(half, season, {})?.stale).toBe(true)
  const after = reckonAll(recorded).desk
  expect(knownView(after, season, {})?.stale).toBe(false)
})

test('what is known stands in although it was reckoned for another part of the screen', () => {
  const desk = onSeason('answers')
  const figures = reckoningOf(desk)?.begin()
  if (figures !== undefined) finished(figures)
  const half = act(desk, { do: 'reckoned' }).desk
  expect(half.reckoned).toBeUndefined()
  const place = half.places.at(-1)
  const empties = { ...half, places: [{ ...place, part: 'empties' } as never] }
  expect(reckoningOf(empties)).toBeUndefined()
  const [animal] = [...desk.book.animals.keys()]
  const fact = { ...heat(0), id: 'new', about: animal, at: '2026-05-28T04:20:00.000Z', action: 'a' } as never
  const recorded = act(empties, { do: 'recorded', facts: [fact] }).desk
  const season = blockShown(desk, 'spring')?.season
  expect(season && knownView(recorded, season, 'figures')?.stale).toBe(true)
})

test('straws and bulls want the forecast of the blocks ahead', () => {
  const desk = opened()
  for (const place of [openStraws(desk), openBulls(desk)]) {
    const { desk: after } = reckonAll(act(desk, { do: 'open', place }).desk)
    const season = blockShown(after, 'spring')?.season
    expect(season && forecastOf(after, season)?.animals, place.at).toBeGreaterThan(5)
  }
})

test('what is left half done does no harm: begun anew it ends the same', () => {
  const desk = onSeason('forecast')
  const wanted = reckoningOf(desk)
  wanted?.begin().next()
  expect(reckoningOf(desk)?.name).toBe(wanted?.name)
  const again = reckoningOf(desk)?.begin()
  if (again !== undefined) finished(again)
  expect(reckoningOf(desk)?.name).not.toBe(wanted?.name)
})
