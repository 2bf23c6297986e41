/** The line of a scanning visit that is being typed, and what single keys do to it. Pure: place in, place out. */
import type { CheckResult } from '../../breeding/facts.ts'
import type { ScanEntry, ScanningPlace } from '../place.ts'

/** Foetal age, days. */
export const AGE = { least: 20, most: 290 } as const
const LONGEST_NUMBER = 16
const LONGEST_AGE = 3

export const emptyEntry: ScanEntry = { typed: '', result: undefined, age: '', twins: false }

/** The place with nothing typed, on its own visit again. */
export const cleared = (place: ScanningPlace): ScanningPlace => ({
  ...place,
  ...place.backTo,
  backTo: undefined,
  pointer: 0,
  entry: emptyEntry,
  to: 'number',
  fresh: false,
  settles: undefined,
  corrects: undefined,
})

/** Code of why a key does nothing here. */
type Refused = { readonly whyNot: string }
const entered = (place: ScanningPlace, change: Partial<ScanEntry>): ScanningPlace => ({
  ...place,
  pointer: 0,
  fresh: false,
  entry: { ...place.entry, ...change },
})

/**
 * Types digits: of the number until there is a result, then of the foetal age.
 *
 * @param digits one or more
 * @example typeDigits(place, '4').entry.typed // '4'
 */
export function typeDigits(place: ScanningPlace, digits: string): ScanningPlace | Refused {
  const { entry, to, fresh } = place
  if (to === 'number') {
    const typed = ((fresh ? '' : entry.typed) + digits).slice(0, LONGEST_NUMBER)
    return entered(place, { typed })
  }
  if (entry.result !== 'pregnant') return { whyNot: 'scan-age-in-calf-only' }
  const age = (fresh ? '' : entry.age) + digits
  return age.length > LONGEST_AGE ? { whyNot: 'scan-age-long' } : entered(place, { age })
}

/** Sets the result; only one in calf has an age and twins. */
export function withResult(place: ScanningPlace, result: CheckResult): ScanningPlace | Refused {
  if (place.entry.typed === '') return { whyNot: 'scan-number-first' }
  const kept = result === 'pregnant' ? {} : { age: '', twins: false }
  return { ...entered(place, { result, ...kept }), to: 'age' }
}

export function withTwins(place: ScanningPlace): ScanningPlace | Refused {
  if (place.entry.result !== 'pregnant') return { whyNot: 'scan-twins-in-calf-only' }
  return entered(place, { twins: !place.entry.twins })
}

/** Takes the last thing typed away: a digit of the age, twins, the result, a digit of the number. */
export function rubbed(place: ScanningPlace): ScanningPlace {
  const { entry, to } = place
  if (to === 'number') return entered(place, { typed: entry.typed.slice(0, -1) })
  if (entry.age !== '') return entered(place, { age: entry.age.slice(0, -1) })
  if (entry.twins) return entered(place, { twins: false })
  return { ...entered(place, { result: undefined }), to: 'number' }
}
