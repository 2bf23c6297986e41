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
  const straws: { readonly sire: string; readonly straw: StrawKind }[] = []
  const count = (sire: string, straw?: StrawKind): number =>
    straws.filter((one) => one.sire === sire && (straw === undefined || one.straw === straw)).length
  return {
    straws: count,
    ofSire: (sire) => count(sire),
    total: () => straws.length,
    add: (sire, straw) => {
      straws.push({ sire, straw })
    },
  }
}
