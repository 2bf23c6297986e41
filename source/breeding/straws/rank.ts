/** The straws of one kind ranked for an animal. */
import type { StrawKind } from '../facts.ts'
import { gestationDays } from '../gestation.ts'
import type { Policy } from '../policy.ts'
import type { Sire } from '../sire.ts'
import type { Occasion } from './occasion.ts'
import { because, type SireReasonCode, type StrawReason } from './reason.ts'
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
  readonly reasons: readonly StrawReason<SireReasonCode>[]
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
 * The straws of one kind, best first: none that must be confirmed before one that need not, for a maiden easy-calving
 * sires first, none related before a related one, none above his share of the season's services before one that is;
 * then the lowest inbreeding, then the least used, then the name.
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
  const blocked = (one: Candidate): number => Number(needsConfirming(one.inbreeding, policy))
  const hard = (one: Candidate): number => Number(occasion.maiden && one.sire.easyCalving !== true)
  const close = (one: Candidate): number => Number(related(one.inbreeding, policy))
  const above = (one: Candidate): number => Number(aboveShare(one.used, one.usedInAll, policy.sireShare))
  return candidates.toSorted(
    (a, b) =>
      blocked(a) - blocked(b) ||
      hard(a) - hard(b) ||
      close(a) - close(b) ||
      above(a) - above(b) ||
      a.inbreeding - b.inbreeding ||
      a.used - b.used ||
      (a.sire.code < b.sire.code ? -1 : 1),
  )
}

/**
 * A straw with what speaks for and against it.
 *
 * @param first what is said before the rest
 * @example rankedStraw(candidate, occasion, policy, 'proposed-kind').reasons.length // 2
 */
export function rankedStraw(
  candidate: Candidate,
  occasion: Occasion,
  policy: Policy,
  first: SireReasonCode,
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
    reasons: [because(first), ...reasonsOf(candidate, occasion, policy)],
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
