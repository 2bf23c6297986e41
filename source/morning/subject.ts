/** Whom a key that records is about, on whichever screen. */
import { type Desk, placeOf, type Subject, subjectFor, subjectOnList } from './desk.ts'
import { because } from './message.ts'
import { bullsEntryAt } from './places/bulls.ts'
import { animalAt } from './places/season.ts'
import { animalOfMoveAt } from './turn-out/move.ts'

/**
 * The number being typed, else the animal whose page is open, else the one pointed at: on the list, among the animals of
 * the season, among the bulls, on the move to the bull weeks.
 *
 * @example subjectOf(desk).whyNot?.code // 'no-animal-here' on a screen of other lines
 */
export function subjectOf(desk: Desk): Subject {
  const place = placeOf(desk)
  if (desk.typed !== '' || place.at === 'morning-list' || place.at === 'animal' || place.at === 'help')
    return subjectOnList(desk)
  const id = pointedAt(desk)
  const animal = id === undefined ? undefined : desk.book.animals.get(id)
  return animal === undefined ? { whyNot: because('no-animal-here') } : subjectFor(desk, animal)
}

/** Id of the animal that a line of another screen is about. */
function pointedAt(desk: Desk): string | undefined {
  const place = placeOf(desk)
  if (place.at === 'season') return animalAt(desk, place)
  if (place.at === 'turn-out') return animalOfMoveAt(desk, place)
  if (place.at !== 'bulls') return undefined
  const entry = bullsEntryAt(desk, place)
  return entry?.is === 'bull' ? entry.bull.animal?.id : undefined
}
