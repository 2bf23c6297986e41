/** Whether the straws in the flask will last. */
import type { StrawKind } from '../facts.ts'
import type { Stock } from './stock.ts'

type SupplyState = 'enough' | 'low' | 'out'

export interface Supply {
  readonly straw: StrawKind
  readonly left: number
  /** Straws still needed in the season; undefined where there is no forecast. */
  readonly needed: number | undefined
  /** How many are missing, 0 or more. */
  readonly missing: number
  /** `out`: none is left and some are needed, or were kept before; `low`: fewer are left than are needed. */
  readonly state: SupplyState
}

const kinds: readonly StrawKind[] = ['conventional', 'sexed', 'beef']

/**
 * Stock against need, by kind. A kind that was never in stock and is not needed is left out.
 *
 * @param stock of the day
 * @param needed straws of a kind still needed, whole; the high end of the forecast, so that they last in nine
 * seasons of ten
 * @example supplyOf(stock, (straw) => forecast.straws[straw].high)[0]?.state // 'low'
 */
export function supplyOf(stock: Stock, needed: (straw: StrawKind) => number | undefined): readonly Supply[] {
  return kinds.flatMap((straw) => {
    const pools = stock.pools.filter((pool) => pool.straw === straw)
    const left = pools.reduce((sum, pool) => sum + pool.left, 0)
    const need = needed(straw)
    if (pools.length === 0 && (need ?? 0) === 0) return []
    const missing = Math.max(0, (need ?? 0) - left)
    const out = left === 0 && need !== 0
    return [{ straw, left, needed: need, missing, state: out ? 'out' : missing > 0 ? 'low' : 'enough' }]
  })
}
