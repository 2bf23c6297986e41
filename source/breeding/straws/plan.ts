/** From replacements wanted to straws, along the chain of what is lost on the way. */
import { type Rates, type ServiceClass, serviceClass } from '../chances/rates.ts'
import type { StrawKind } from '../facts.ts'

/** What becomes of a straw, each a share 0-1 of the step before. */
interface LossChain {
  /** Services that hold. */
  readonly conceive: number
  /** Dams in calf that are kept until they calve. */
  readonly damKept: number
  readonly female: number
  readonly weaned: number
  /** Heifers weaned that are served. */
  readonly joined: number
  readonly heiferConceives: number
  readonly heiferCalves: number
  /** Heifers that are still in the herd a month after calving. */
  readonly firstMonth: number
}

/**
 * The chain of the handbook. Source: Australian Dairy Herd Improvement Scheme, How many straws do I need?
 */
export const handbookChain: LossChain = {
  conceive: 0.5,
  damKept: 0.9,
  female: 0.5,
  weaned: 0.95,
  joined: 0.95,
  heiferConceives: 0.9,
  heiferCalves: 0.97,
  firstMonth: 0.97,
}

/**
 * Replacements that one straw brings into the herd.
 *
 * @returns 0-1
 * @example replacementsPerStraw(handbookChain) // 0.171955
 */
export const replacementsPerStraw = (chain: LossChain): number =>
  chain.conceive *
  chain.damKept *
  chain.female *
  chain.weaned *
  chain.joined *
  chain.heiferConceives *
  chain.heiferCalves *
  chain.firstMonth

/**
 * Straws for a number of replacements, rounded up.
 *
 * @param replacements 0 or more, @param perStraw replacements that one straw brings, above 0
 * @example strawsFor(100, replacementsPerStraw(handbookChain)) // 582
 */
export const strawsFor = (replacements: number, perStraw: number): number =>
  Math.ceil(replacements / perStraw)

/**
 * Calves of each sex expected of a number of straws.
 *
 * @param conceive share of services that hold, @param female share of heifers among the calves; 0-1
 * @example calvesOf(56, 0.5, 0.9).heifers // 25.2
 */
export const calvesOf = (
  straws: number,
  conceive: number,
  female: number,
): { readonly heifers: number; readonly bulls: number } => ({
  heifers: straws * conceive * female,
  bulls: straws * conceive * (1 - female),
})

/**
 * The chain of a farm for one kind of straw: its own conception rates and the share of heifers of that kind; the
 * later losses are the handbook's. Beef straws bring no replacements.
 *
 * @example replacementsPerStraw(farmChain(true, 'sexed', defaultRates)) // 0.35
 */
export function farmChain(maiden: boolean, straw: StrawKind, rates: Rates): LossChain {
  const served: ServiceClass = serviceClass(maiden, straw)
  const female = straw === 'beef' ? 0 : straw === 'sexed' ? rates.femaleSexed : rates.femaleOther
  return { ...handbookChain, conceive: rates.conception[served], female }
}
