/** Actions that move about: on the list, between days and screens. */

import { archiveOf } from '../../breeding/archive.ts'
import { type Day, dayIso } from '../../breeding/day.ts'
import { type Desk, placeOf, withDay } from '../desk.ts'
import { foundByNumber } from '../find.ts'
import { moveToOpen, opensKeptResults } from '../may.ts'
import { because, type Message } from '../message.ts'
import { moved, movedBySection, pageOf, pointedAt } from '../page.ts'
import type { Place } from '../place.ts'
import { actScanning, openScanning } from '../places/scanning.ts'
import type { Step } from '../step.ts'
import { subjectOf } from '../subject.ts'
import { placeFor } from '../turn-out/opening.ts'

/** Digits of a number being typed. */
const LONGEST_NUMBER = 16

/**
 * Moves the pointer of the screen shown; a page without one moves itself.
 *
 * @param by lines, negative up; @param most furthest that such a page moves
 */
export function move(desk: Desk, by: number, most = 0): Step {
  const place = placeOf(desk)
  if (place.at === 'morning-list') return { desk: { ...desk, typed: '', page: moved(desk.page, by) } }
  if (place.at === 'help') return inPlace(desk, { ...place, top: clamp(place.top + by, most) })
  if (place.at === 'straws' && place.top !== undefined)
    return inPlace(desk, { ...place, top: clamp(place.top + by, most) })
  if (place.at !== 'animal') return inPlace(desk, { ...place, pointer: clamp(place.pointer + by, most) })
  if (place.more !== undefined) return inPlace(desk, { ...place, more: clamp(place.more + by, most) })
  const count = desk.book.animals.get(place.animal)?.happenings.length ?? 0
  return inPlace(desk, { ...place, pointer: clamp(place.pointer + by, count - 1) })
}

const clamp = (value: number, most: number): number => Math.max(0, Math.min(most, value))

const inPlace = (desk: Desk, place: Place): Step => ({
  desk: { ...desk, places: [...desk.places.slice(0, -1), place] },
})

export const section = (desk: Desk, by: 1 | -1): Step => ({
  desk: { ...desk, typed: '', page: movedBySection(desk.page, by) },
})

/** A digit of a number: the pointer goes to her row at once where she has one. */
export function digit(desk: Desk, typed: string): Step {
  const place = placeOf(desk)
  if (place.at === 'scanning') return actScanning(desk, place, { is: 'type', digits: typed })
  // A number that no animal has is not gone on with.
  const begun = desk.said?.code === 'no-such-number' ? '' : desk.typed
  const number = (begun + typed).slice(0, LONGEST_NUMBER)
  const found = foundByNumber(desk.book, number)
  const page = found.animal === undefined ? undefined : pointedAt(desk.page, found.animal.id)
  return { desk: { ...desk, typed: number, said: undefined, ...(page === undefined ? {} : { page }) } }
}

/** Opens a screen on top of those that lie open; one that lies open already is not opened twice. */
export function open(desk: Desk, place: Place): Step {
  const below = desk.places.filter((one) => one.at === 'morning-list' || one.at !== place.at)
  return { desk: { ...desk, typed: '', said: undefined, slip: undefined, places: [...below, place] } }
}

export function openAnimal(desk: Desk): Step {
  const move = moveToOpen(desk)
  if (move !== undefined) return open(desk, placeFor(desk, move.block, move.what))
  if (opensKeptResults(desk)) return open(desk, { ...openScanning(desk), pointer: 1 })
  const her = subjectOf(desk)
  if (her.whyNot !== undefined) return { desk: { ...desk, said: her.whyNot } }
  const { id } = her.animal
  const place = placeOf(desk)
  const places = place.at === 'animal' ? desk.places.slice(0, -1) : desk.places
  return open({ ...desk, places }, { at: 'animal', animal: id, pointer: 0 })
}

/** On her page: from her facts to what they come to, and back. */
export function moreAbout(desk: Desk): Step {
  const place = placeOf(desk)
  if (place.at !== 'animal') return { desk }
  const { more, ...facts } = place
  return inPlace({ ...desk, said: undefined }, more === undefined ? { ...facts, more: 0 } : facts)
}

/** One step back: the number being typed, then the screen. */
export function back(desk: Desk): Step {
  const cleared = { ...desk, said: undefined }
  if (desk.typed !== '') return { desk: { ...cleared, typed: '' } }
  return { desk: desk.places.length > 1 ? { ...cleared, places: desk.places.slice(0, -1) } : cleared }
}

export const toDay = (desk: Desk, day: Day): Step => ({
  desk: { ...withDay(desk, day), typed: '', said: archivedSince(desk, day) },
})

/** Where facts that a day rests on have gone to an archive since. */
function archivedSince({ book }: Desk, day: Day): Message | undefined {
  const archive = archiveOf(book)
  return archive === undefined || dayIso(day) >= archive.date
    ? undefined
    : because('archived-since', { before: archive.before, file: archive.file })
}

export function unfold(desk: Desk): Step {
  const page = { ...desk.page, withBullOpen: !desk.page.withBullOpen }
  const { knownThen } = page
  const laid = pageOf(page.list, desk.book, page)
  return { desk: { ...desk, page: knownThen === undefined ? laid : { ...laid, knownThen } } }
}
