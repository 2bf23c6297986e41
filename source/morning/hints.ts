/** Hints of the first mornings: one at a time, each gone once it was done, all gone after a few mornings. */
import { type Fact, HERD } from '../breeding/facts.ts'
import { type Desk, placeOf, showsToday } from './desk.ts'
import { watchToDo } from './may.ts'

const hints = ['no-season', 'no-animal', 'usual', 'heat', 'look-all'] as const
export type Hint = (typeof hints)[number]

/** So many mornings on which somebody has recorded make the keys known to them. */
const MORNINGS = 3
/** A watch of so many rows is quicker looked at all at once. */
const LONG_WATCH = 4

/**
 * What to tell whoever records, where they are new to the keys: on today's list, while nothing else is said.
 *
 * @example hintOf(deskOfANewHerd) // 'no-season'
 */
export function hintOf(desk: Desk): Hint | undefined {
  const { book, slip, typed, said } = desk
  if (placeOf(desk).at !== 'morning-list' || slip !== undefined || typed !== '' || said !== undefined)
    return undefined
  if (book.allSeasons.length === 0) return 'no-season'
  if (book.animals.size === 0) return 'no-animal'
  if (!showsToday(desk)) return undefined
  const done = doneBy(desk.log, desk.by)
  if (done.mornings >= MORNINGS) return undefined
  if (!done.any && desk.page.toDo > 0) return 'usual'
  if (!done.heat) return 'heat'
  return !done.looked && watchToDo(desk).length >= LONG_WATCH ? 'look-all' : undefined
}

interface Done {
  readonly mornings: number
  readonly any: boolean
  readonly heat: boolean
  readonly looked: boolean
}
const known = new WeakMap<readonly Fact[], { readonly by: string | undefined; readonly done: Done }>()

/** What somebody has recorded about animals, as far as it need be known. Tables that were read in count for nobody. */
function doneBy(log: readonly Fact[], by: string | undefined): Done {
  const found = known.get(log)
  if (found !== undefined && found.by === by) return found.done
  const dates = new Set<string>()
  let heat = false
  let looked = false
  for (let i = log.length - 1; i >= 0 && dates.size < MORNINGS; i -= 1) {
    const fact = log[i]
    if (fact?.action === undefined || fact.by !== by || fact.about === HERD || fact.kind === 'animal')
      continue
    const alone = log[i - 1]?.action !== fact.action && log[i + 1]?.action !== fact.action
    if (by === undefined && !alone) continue
    dates.add(fact.date)
    heat ||= fact.kind === 'heat'
    looked ||= fact.kind === 'looked'
  }
  const done = { mornings: dates.size, any: dates.size > 0, heat, looked }
  known.set(log, { by, done })
  return done
}
