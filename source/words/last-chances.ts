/** What becomes of late calvers and empties, in words. */
import type { LastChance, LastChanceReason } from '../breeding/ahead/last-chances.ts'
import { safeText } from './safe.ts'

/** Why she is among them. */
export const lastChanceReasons: Readonly<Record<LastChanceReason, string>> = {
  'calves-late': 'due',
  'calved-late': 'calved',
  empty: 'found empty',
}

/**
 * What becomes of a late calver or an empty.
 *
 * @param day puts a day into words
 * @example becomesWords(chance, shortDate) // 'by AI to Thu 11 Jun, then the bull to Thu 2 Jul'
 */
export function becomesWords(
  { becomes, lastAi, last, otherBlock }: LastChance,
  day: (of: NonNullable<LastChance['last']>) => string,
): string {
  if (becomes === 'ai' && lastAi !== undefined && last !== undefined)
    return lastAi === last
      ? `by AI to ${day(lastAi)}`
      : `by AI to ${day(lastAi)}, by the bull to ${day(last)}`
  if (becomes === 'bull' && last !== undefined) return `by the bull only, to ${day(last)}`
  if (otherBlock === undefined) return 'no other block is planned: cull'
  return `${safeText(otherBlock.block)} block from ${day(otherBlock.matingStart)}, or cull`
}
