/** Which kind of straw is proposed: every condition a small test with a code for the case that it fails. */
import type { StrawKind } from '../facts.ts'
import type { Policy } from '../policy.ts'
import type { Occasion } from './occasion.ts'
import { because, type KindReasonCode, type StrawReason } from './reason.ts'
import { sexedHoursBest, sexedHoursFit } from './sexed-hours.ts'

export interface KindProposal {
  readonly kind: StrawKind
  /** Why: for a conventional straw everything that speaks against a sexed one, first things first. */
  readonly reasons: readonly StrawReason<KindReasonCode>[]
}

/** What the conditions ask besides the occasion. `heifersEnough` is asked last, and only when the rest fits. */
interface KindSetting {
  readonly policy: Policy
  readonly heifersEnough: () => boolean
}

/** After this many calvings no sexed straw. */
const LAST_CALVING = 4
/** The last week of AI. */
const LAST_WEEK = 7

interface Condition {
  /** Said where the test fails. */
  readonly code: KindReasonCode
  readonly holds: (occasion: Occasion, policy: Policy) => boolean
  readonly values?: (occasion: Occasion, policy: Policy) => StrawReason['values']
}

const conditionWanted = ({ maiden }: Occasion, policy: Policy): number =>
  maiden ? policy.sexedConditionMaiden : policy.sexedCondition

/**
 * What must hold for a sexed straw, in the order in which it is said. A cow without a calving date has not calved
 * long enough ago; an animal without a score passes that test.
 * Source: agriland.ie, Moorepark sexed semen, 2019; Teagasc, Breeding management, 2021.
 */
const sexedConditions: readonly Condition[] = [
  { code: 'sexed-off', holds: (_, policy) => policy.useSexed },
  {
    code: 'calved-often',
    holds: ({ parity }) => parity <= LAST_CALVING,
    values: ({ parity }) => ({ calvings: parity, most: LAST_CALVING }),
  },
  { code: 'not-first-service', holds: ({ chancesUsed }) => chancesUsed === 0 },
  {
    code: 'outside-sexed-days',
    holds: ({ s }, policy) => s !== undefined && s >= 0 && s <= policy.sexedUntil,
    values: (_, policy) => ({ until: policy.sexedUntil + 1 }),
  },
  { code: 'calving-unknown', holds: ({ maiden, calved }) => maiden || calved !== undefined },
  {
    code: 'calved-lately',
    holds: ({ maiden, calved }, policy) => maiden || calved === undefined || calved >= policy.sexedCalved,
    values: ({ calved }, policy) => ({ calved: calved ?? 0, least: policy.sexedCalved }),
  },
  {
    code: 'thin',
    holds: (occasion, policy) =>
      occasion.condition === undefined || occasion.condition >= conditionWanted(occasion, policy),
    values: (occasion, policy) => ({
      score: occasion.condition ?? 0,
      least: conditionWanted(occasion, policy),
    }),
  },
  { code: 'not-seen-cycling', holds: ({ seenCycling }) => seenCycling },
  { code: 'hard-calving', holds: (occasion) => !occasion.hardCalving },
  { code: 'lost-calf', holds: ({ lostCalf }) => !lostCalf },
  { code: 'treated', holds: ({ treated }) => !treated },
  { code: 'no-heat-hours', holds: ({ serving }) => serving === undefined || serving.hours !== undefined },
  {
    code: 'outside-sexed-hours',
    holds: ({ serving }, policy) => serving?.hours === undefined || sexedHoursFit(serving, policy),
    values: ({ serving }) => ({ hours: Math.round(serving?.hours ?? 0) }),
  },
]

/** Why a straw should be beef, where it should. */
function whyBeef(occasion: Occasion, policy: Policy): KindReasonCode | undefined {
  if (policy.beefLastWeek && isLastWeek(occasion)) return 'last-week-beef'
  return occasion.plan === 'beef' ? 'plan-beef' : undefined
}

/**
 * The kind of straw for a service without its reasons: for the thousands of services that a forecast looks at.
 *
 * @example kindFor(firstServiceOfAMaiden, setting) // 'sexed'
 */
export function kindFor(occasion: Occasion, { policy, heifersEnough }: KindSetting): StrawKind {
  if (whyBeef(occasion, policy) !== undefined) return 'beef'
  const fits = sexedConditions.every((condition) => condition.holds(occasion, policy))
  return fits && !heifersEnough() ? 'sexed' : 'conventional'
}

/**
 * The kind of straw for a service. All beef in the last week of AI; beef for the beef group; sexed where every
 * condition holds and heifers are still wanted; else conventional dairy.
 *
 * @example proposeKind(firstServiceOfAMaiden, setting).kind // 'sexed'
 */
export function proposeKind(occasion: Occasion, { policy, heifersEnough }: KindSetting): KindProposal {
  const beef = whyBeef(occasion, policy)
  if (beef !== undefined) return { kind: 'beef', reasons: [because(beef)] }
  const against = sexedConditions
    .filter((condition) => !condition.holds(occasion, policy))
    .map(({ code, values }) => because(code, values?.(occasion, policy)))
  if (against.length > 0) return { kind: 'conventional', reasons: against }
  if (heifersEnough())
    return {
      kind: 'conventional',
      reasons: [because('heifers-enough', { wanted: policy.replacementsWanted })],
    }
  const best = occasion.serving !== undefined && sexedHoursBest(occasion.serving)
  return {
    kind: 'sexed',
    reasons: [because('sexed-fits'), ...(best ? [because('sexed-hours-best' as const)] : [])],
  }
}

const isLastWeek = ({ s, lastAiDay }: Occasion): boolean =>
  s !== undefined && lastAiDay !== undefined && s > lastAiDay - LAST_WEEK && s <= lastAiDay
