/** Straws promised to animals earlier on the list: not used yet, but no longer there for the next. */
import type { StrawKind } from '../facts.ts'

export interface SetAside {
  /** Straws promised of a sire and kind. */
  readonly straws: (sire: string, straw: StrawKind) => number
  /** Straws promised of a sire, of any kind. */
  readonly ofSire: (sire: string) => number
  readonly total: () => number
  readonly add: (sire: string, straw: StrawKind) => void
}

/** Nothing promised yet. */
export function nothingSetAside(): SetAside {
  const counts = new Map<string, number>()
  const count = (key: string): number => counts.get(key) ?? 0
  let total = 0
  return {
    straws: (sire, straw) => count(`${straw} ${sire}`),
    ofSire: (sire) => count(`any ${sire}`),
    total: () => total,
    add: (sire, straw) => {
      for (const key of [`${straw} ${sire}`, `any ${sire}`]) counts.set(key, count(key) + 1)
      total += 1
    },
  }
}
