/** An animal on one line. */
import type { AnimalRecord } from '../../breeding/book.ts'
import { standingOn } from '../../breeding/standing.ts'
import type { Desk } from '../../morning/desk.ts'
import { safeText } from '../../words/safe.ts'
import { animalWords } from '../words/animal.ts'

/** @example '412 Buttercup, lactation 3, spring block' */
export function animalTitle(desk: Desk, animal: AnimalRecord): string {
  const standing = standingOn(desk.book, animal, desk.page.list.day)
  const name = animal.record.name === undefined ? '' : ` ${safeText(animal.record.name)}`
  const state = standing.inCalf ? `, ${animalWords.inCalf.toLowerCase()}` : ''
  return `${safeText(animal.number)}${name}, ${animalWords.belongs(standing)}${state}`
}
