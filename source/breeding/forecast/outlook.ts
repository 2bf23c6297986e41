/**
 * What the forecast needs to know. All days are season days: 0 is the mating start.
 */
import type { Rates } from '../chances/rates.ts'
import type { StrawKind } from '../facts.ts'
import type { ConceptionRates } from './conception-points.ts'

/** Where a pregnancy comes from. */
export type ServedBy = StrawKind | 'natural'

/** Conceptions of one day; `share` as conceived, losses not taken off; `gestation` in days. */
export interface Conception {
  readonly day: number
  readonly by: ServedBy
  readonly share: number
  readonly gestation: number
}

/** The season as the forecast sees it. */
export interface SeasonDays {
  /** The morning it is made on; from here on heats are seen and served. -35 or later. */
  readonly today: number
  /** Last day of AI (41 for six weeks), and of the sweep bull (62 for three weeks more; without a bull the same). */
  readonly lastAiDay: number
  readonly lastBullDay: number
  /** The check that finds the empty ones, 42 days after the bull's last day. */
  readonly finalCheckDay: number
  /** In the weeks of AI a heat so many days after a service, or later, is served again; a sooner one is not. */
  readonly returnsFrom: number
  /** AI services an animal gets, 1 or more. */
  readonly chances: number
}

/** The last fact that fixes an animal's cycle. `gestation` in days. */
export type Anchor =
  /** In calf since `conceived`; known on day `confirmed`, so that no loss came before it. */
  | {
      readonly kind: 'in-calf'
      readonly conceived: number
      readonly confirmed: number
      readonly by: ServedBy
      readonly gestation: number
    }
  /** Served on `day`, not returned and not found in calf. */
  | { readonly kind: 'served'; readonly day: number; readonly by: ServedBy; readonly gestation: number }
  /** Latest sure heat, not served. */
  | { readonly kind: 'heat'; readonly day: number }
  /** Calved, or will calve, on `day`; no heat known since. */
  | { readonly kind: 'calved'; readonly day: number }
  /** A maiden without a heat: anywhere in her cycle on `day`, when watching began. */
  | { readonly kind: 'anywhere'; readonly day: number }
  /** Nothing known: next heat equally likely on each of `days` days from `day` on. */
  | { readonly kind: 'evenly'; readonly day: number; readonly days: number }
  /** Stands under Serve or Second service this morning: served today for certain. */
  | { readonly kind: 'serve-today' }

/** One animal as the forecast sees her. */
export interface AnimalOutlook {
  readonly anchor: Anchor
  /** AI services of this season. */
  readonly chancesUsed: number
  /** First day she can be served: 0, 42 days after calving, the day after a hold; the latest of them. */
  readonly earliestDay: number
  readonly leftToBull: boolean
  /** Days before today on which a heat of hers would not have been seen. */
  readonly unwatched: ReadonlySet<number>
  /** Her last check said empty: she was not in calf then since this day or before (what is younger it does not find). */
  readonly emptyCheck?: { readonly on: number; readonly rulesOutTo: number }
  readonly maiden: boolean
  /** Mean days of her cycle. */
  readonly cycleMean: number
  /** Kind of straw by chances used, then by season day from 0; the last entry of a list holds on. */
  readonly straws: readonly (readonly StrawKind[])[]
  /** Days of gestation by what she is served with from today on. */
  readonly gestation: Readonly<Record<ServedBy, number>>
}

/** What a forecast of a block is asked. */
export interface HerdQuestion {
  readonly animals: readonly AnimalOutlook[]
  readonly season: SeasonDays
  readonly rates: Rates
  /** Conception rates, equally likely to be the true ones; at least one. */
  readonly conception: readonly ConceptionRates[]
  /** Working bulls in the bull weeks; absent: as many as are needed. */
  readonly bulls?: number
}

/** Days after an AI service before which a heat is not served again; from the bull's first day on he serves any. */
export const tooSoon = ({ returnsFrom, lastAiDay }: SeasonDays, day: number): number =>
  Math.min(returnsFrom, Math.max(0, lastAiDay + 1 - day))

/**
 * The kind of straw planned for an animal.
 *
 * @param chancesUsed before the service, @param day season day, 0 or more
 * @example strawOn({ ...cow, straws: [['sexed', 'conventional'], ['beef']] }, 0, 30) // 'conventional'
 */
export function strawOn({ straws }: AnimalOutlook, chancesUsed: number, day: number): StrawKind {
  const list = straws[Math.min(chancesUsed, straws.length - 1)]
  return list?.[Math.min(day, list.length - 1)] ?? 'conventional'
}
