/** The thawing card: what to do with a straw between the flask and the cow. The supplier's own card wins. */
import type { StrawKind } from '../facts.ts'

/** Steps in the order in which they are done; their words stand in one table at the edge. */
export type ThawingStep =
  | 'supplier-card'
  | 'right-straw'
  | 'canister-low'
  | 'one-straw'
  | 'thaw'
  | 'dry'
  | 'keep-warm'
  | 'sexed-hours'
  | 'serve-soon'

export interface ThawingCard {
  readonly straw: StrawKind
  readonly volumeMl: number | undefined
  /** Temperature of the water, degrees Celsius, from and to. */
  readonly water: readonly [number, number]
  /** Time in the water; undefined for a volume that the source does not name, where the supplier's card decides. */
  readonly seconds: number | undefined
  /** In the cow within so many minutes, and at the very most. */
  readonly minutes: number
  readonly minutesAtMost: number
  readonly strawsAtOnce: number
  /** The canister is lifted into the neck for so many seconds at most. */
  readonly canisterSeconds: number
  readonly steps: readonly ThawingStep[]
}

const secondsByVolume = new Map([
  [0.25, 30],
  [0.5, 45],
])

/**
 * The card of a straw.
 * Source: Diskin 2018, Semen handling, time of insemination and insemination technique in cattle, Animal 12:s75-s84;
 * S. Johnson, Kansas State University, Proper semen handling maximizes fertility, 2022.
 *
 * @param straw kind, @param volumeMl ml of the straw, where known
 * @example thawingCard('conventional', 0.25).seconds // 30
 */
export function thawingCard(straw: StrawKind, volumeMl: number | undefined): ThawingCard {
  return {
    straw,
    volumeMl,
    water: [35, 37],
    seconds: volumeMl === undefined ? undefined : secondsByVolume.get(volumeMl),
    minutes: 8,
    minutesAtMost: 10,
    strawsAtOnce: 1,
    canisterSeconds: 8,
    steps: [
      'supplier-card',
      'right-straw',
      'canister-low',
      'one-straw',
      'thaw',
      'dry',
      'keep-warm',
      ...(straw === 'sexed' ? (['sexed-hours'] as const) : []),
      'serve-soon',
    ],
  }
}
