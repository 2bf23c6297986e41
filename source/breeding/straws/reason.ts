/** Why a straw is proposed or not, as codes with the numbers that matter; the words are made at the edge. */

/** Why the kind of straw is what it is. */
export const kindReasons = [
  'last-week-beef',
  'plan-beef',
  'sexed-fits',
  'sexed-hours-best',
  'sexed-off',
  'calved-often',
  'not-first-service',
  'outside-sexed-days',
  'calving-unknown',
  'calved-lately',
  'thin',
  'not-seen-cycling',
  'hard-calving',
  'lost-calf',
  'treated',
  'heifers-enough',
  'no-heat-hours',
  'outside-sexed-hours',
] as const
export type KindReasonCode = (typeof kindReasons)[number]

/** Why a straw of another kind is proposed than she should have. */
export const insteadReasons = ['kind-out', 'kind-related', 'kind-not-easy'] as const
export type InsteadReasonCode = (typeof insteadReasons)[number]

/** What speaks for or against one sire's straw for an animal. */
export const sireReasons = [
  'proposed-kind',
  'other-kind',
  'sexed-not-now',
  'easy-calving',
  'not-easy-calving',
  'related-6',
  'related-12',
  'parents-unknown',
  'above-share',
  'later-calves',
  'earlier-calves',
] as const
export type SireReasonCode = (typeof sireReasons)[number]

/** What puts one sire before the next of the same kind. */
export const placeReasons = [
  'placed-alone',
  'placed-confirm',
  'placed-easy',
  'placed-related',
  'placed-share',
  'placed-inbreeding',
  'placed-use',
  'placed-name',
] as const
export type PlaceReasonCode = (typeof placeReasons)[number]

export type StrawReasonCode = KindReasonCode | InsteadReasonCode | SireReasonCode | PlaceReasonCode

export interface StrawReason<C extends string = StrawReasonCode> {
  readonly code: C
  readonly values: Readonly<Record<string, number | string>>
}

export const because = <C extends string>(
  code: C,
  values: Readonly<Record<string, number | string>> = {},
): StrawReason<C> => ({ code, values })
