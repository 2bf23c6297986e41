/** Of source/breeding/straws, and of the order of texts that the flask stands in. */
import type { Equivalent } from './entry.ts'

const entry =
  (file: string) =>
  (at: string, becomes: readonly string[], why: string): Equivalent => ({
    file: `source/breeding/${file}.ts`,
    at,
    becomes,
    why,
  })
const straws = (name: string) => entry(`straws/${name}`)

export const ofStraws: readonly Equivalent[] = [
  straws('heifers')(
    'if (animal === undefined || (animal.record.lactation ?? «0») > 0) return false',
    ['(-1)'],
    'fewer lactations than none are none',
  ),
  straws('kind')(
    'values: ({ calved }, policy) => ({ calved: calved ?? «0», least: policy.sexedCalved }),',
    ['1', '(-1)'],
    'said only of one that has calved',
  ),
  straws('kind')('score: occasion.condition ?? «0»,', ['1', '(-1)'], 'said only of one that has a score'),
  straws('kind')(
    'values: ({ serving }) => ({ hours: Math.round(serving?.hours ?? «0») }),',
    ['1', '(-1)'],
    'said only where there are hours',
  ),
  straws('kind')(
    '«s !== undefined && lastAiDay !== undefined» && s > lastAiDay - LAST_WEEK && s <= lastAiDay',
    ['(s !== undefined) || (lastAiDay !== undefined)'],
    'no comparison with an unknown day holds',
  ),
  straws('movements')(
    'const START_OF_DAY: Minute = «0»',
    ['(-1)'],
    'a count comes first of what happened at one moment',
  ),
  straws('rank')(
    "return [because(«days > 0» ? 'later-calves' : 'earlier-calves', { days: Math.abs(days) })]",
    ['(days) >= (0)'],
    'no day more or less is said a line above',
  ),
  straws('rank')(
    "return [because(days > «0» ? 'later-calves' : 'earlier-calves', { days: Math.abs(days) })]",
    ['(-1)'],
    'days are whole, and none is said a line above',
  ),
  straws('settled')(
    "const counts = «movements.filter(({ fact }) => fact.kind === 'stock-take')».toReversed()",
    ['movements'],
    'nothing but a count makes straws certain again: the others are tried in vain',
  ),
  straws('stock')(
    'let lot = «pool.lots.find((one) => fieldsOfPlace.every((field) => one[field] === fact[field]))»',
    ['pool.lots.findLast((one) => fieldsOfPlace.every((field) => one[field] === fact[field]))'],
    'there is one lot of a batch in a place',
  ),
  straws('stock')(
    'said === undefined ? «0» : lot === said ? 2 : lot === undefined ? 1 : 0',
    ['1', '(-1)'],
    'the same for every lot',
  ),
  straws('straws-of-day')('«known.set(kind, found)»', [''], 'ordered anew they are the same'),
  straws('straws-of-day')('«return undefined»', [''], 'the end of a function gives nothing by itself'),
  straws('supply')(
    'const missing = Math.max(0, (need ?? «0») - left)',
    ['(-1)'],
    'fewer than none needed are none missing',
  ),
  entry('straws-on-list')(
    '«return nothingSetAside()»',
    [''],
    'where nothing is given the ranking sets nothing aside',
  ),
]
