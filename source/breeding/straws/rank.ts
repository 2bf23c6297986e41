/** The straws of one kind ranked for an animal. */

import { compareTexts } from '../compare-texts.ts'
import type { StrawKind } from '../facts.ts'
import { gestationDays } from '../gestation.ts'
import type { Policy } from '../policy.ts'
import type { Sire } from '../sire.ts'
import type { Occasion } from './occasion.ts'
import { because, type PlaceReasonCode, type SireReasonCode, type StrawReason } from './reason.ts'
import { aboveShare } from './use.ts'

/** A sire's straws as they stand for one animal. */
export interface Candidate {
  readonly sire: Sire
  readonly straw: StrawKind
  /** Straws left that nobody on the list has been promised. */
  readonly left: number
  /** AI services by this sire in the season, and by all sires. */
  readonly used: number
  readonly usedInAll: number
  /** Inbreeding of the calf, 0-1. */
  readonly inbreeding: number
  /** Generations of ancestors that are known of her and of him. */
  readonly generations: number
}

export interface RankedStraw {
  readonly sire: string
  readonly straw: StrawKind
  readonly left: number
  readonly inbreeding: number
  readonly generations: number
  readonly easyCalving: boolean
  /** Never proposed: the calf would be so inbred that the user must confirm the sire. */
  readonly needsConfirming: boolean
  readonly reasons: readonly StrawReason<SireReasonCode | PlaceReasonCode>[]
}

/** Whether a sire must be confirmed: inbreeding of the calf at 12.5 % or more. */
export const needsConfirming = (inbreeding: number, policy: Policy): boolean =>
  inbreeding >= policy.inbreedingConfirm

/** Whether the calf's inbreeding is worth a warning: above 6.25 %. */
export const related = (inbreeding: number, policy: Policy): boolean => inbreeding > policy.inbreedingWarn

/** A beef calf is not bred from, so that it does not matter whom she descends from. */
const parentsUnknown = ({ straw }: Candidate, { parentsKnown }: Occasion): boolean =>
  !parentsKnown && straw !== 'beef'

/** In the last weeks of AI the days of gestation decide how late in the block a calf comes. */
const LATE_DAYS = 21

/**
 * Steps in which the inbreeding of calves is compared: that of second cousins. A difference within one step is no
 * reason to use one sire of the team more than the others.
 * Source: Boggess, table of inbreeding by relationship; the step itself is our judgement, no source.
 */
const INBREEDING_STEP = 1 / 64

/** What decides between two sires, the first thing first; less is better. */
interface Criterion {
  readonly code: PlaceReasonCode
  readonly of: (one: Candidate, occasion: Occasion, policy: Policy) => number
}

const criteria: readonly Criterion[] = [
  { code: 'placed-confirm', of: (one, _, policy) => Number(needsConfirming(one.inbreeding, policy)) },
  { code: 'placed-easy', of: (one, { maiden }) => Number(maiden && one.sire.easyCalving !== true) },
  { code: 'placed-related', of: (one, _, policy) => Number(related(one.inbreeding, policy)) },
  {
    code: 'placed-share',
    of: (one, _, policy) => Number(aboveShare(one.used, one.usedInAll, policy.sireShare)),
  },
  { code: 'placed-inbreeding', of: (one) => Math.floor(one.inbreeding / INBREEDING_STEP) },
  { code: 'placed-use', of: (one) => one.used },
]

/**
 * The straws of one kind, best first: none that must be confirmed before one that need not, for a maiden easy-calving
 * sires first, none related before a related one, none above his share of the season's services before one that is;
 * then the lowest inbreeding in steps of second cousins, then the least used, then the name.
 * Source: Boggess, table of inbreeding by relationship; Teagasc, Plan to use teams of bulls equally, 2022.
 *
 * @param candidates of one kind, in stock
 * @example bestFirst(candidates, occasion, policy)[0]?.sire.code // 'S17'
 */
export function bestFirst(
  candidates: readonly Candidate[],
  occasion: Occasion,
  policy: Policy,
): readonly Candidate[] {
  return candidates.toSorted((a, b) => {
    for (const { of } of criteria) {
      const difference = of(a, occasion, policy) - of(b, occasion, policy)
      if (difference !== 0) return difference
    }
    return compareTexts(a.sire.code, b.sire.code)
  })
}

/**
 * Why a straw has its place among those of its kind: what puts it before the next one where it is the first, else what
 * put the one above before it.
 *
 * @param ordered as `bestFirst` orders them, @param at the place, from 0
 * @example placeReason(ordered, 0, occasion, policy) // { code: 'placed-use', values: { first: 'S17', … } }
 */
export function placeReason(
  ordered: readonly Candidate[],
  at: number,
  occasion: Occasion,
  policy: Policy,
): StrawReason<PlaceReasonCode> {
  const [first, second] = at === 0 ? ordered : ordered.slice(at - 1)
  if (first === undefined || second === undefined) return because('placed-alone')
  const decided = criteria.find(({ of }) => of(first, occasion, policy) !== of(second, occasion, policy))
  return because(decided?.code ?? 'placed-name', {
    first: first.sire.code,
    second: second.sire.code,
    used: first.used,
    usedBySecond: second.used,
  })
}

/**
 * A straw with what speaks for and against it.
 *
 * @param first what is said before the rest
 * @example rankedStraw(candidate, occasion, policy, [because('proposed-kind')]).reasons.length // 2
 */
export function rankedStraw(
  candidate: Candidate,
  occasion: Occasion,
  policy: Policy,
  first: readonly StrawReason<SireReasonCode | PlaceReasonCode>[],
): RankedStraw {
  const { sire, straw, left, inbreeding, generations } = candidate
  return {
    sire: sire.code,
    straw,
    left,
    inbreeding,
    generations,
    easyCalving: sire.easyCalving === true,
    needsConfirming: needsConfirming(inbreeding, policy),
    reasons: [...first, ...reasonsOf(candidate, occasion, policy)],
  }
}

function reasonsOf(candidate: Candidate, occasion: Occasion, policy: Policy): StrawReason<SireReasonCode>[] {
  const { sire, inbreeding, used, usedInAll } = candidate
  const reasons: StrawReason<SireReasonCode>[] = []
  const percent = Math.round(inbreeding * 10_000) / 100
  if (occasion.maiden) reasons.push(because(sire.easyCalving === true ? 'easy-calving' : 'not-easy-calving'))
  if (needsConfirming(inbreeding, policy)) reasons.push(because('related-12', { percent }))
  else if (related(inbreeding, policy)) reasons.push(because('related-6', { percent }))
  if (parentsUnknown(candidate, occasion)) reasons.push(because('parents-unknown'))
  if (aboveShare(used, usedInAll, policy.sireShare)) {
    const share = Math.round(policy.sireShare * 100)
    reasons.push(because('above-share', { used, services: usedInAll, share }))
  }
  reasons.push(...lateness(sire, occasion, policy))
  return reasons
}

/** Days later or earlier in the block than a calf of the usual gestation, said in the last weeks of AI. */
function lateness(
  sire: Sire,
  { s, lastAiDay, maiden }: Occasion,
  policy: Policy,
): StrawReason<SireReasonCode>[] {
  if (s === undefined || lastAiDay === undefined || s <= lastAiDay - LATE_DAYS) return []
  const days = gestationDays(sire, maiden, policy) - policy.defaultGestation
  if (days === 0) return []
  return [because(days > 0 ? 'later-calves' : 'earlier-calves', { days: Math.abs(days) })]
}
