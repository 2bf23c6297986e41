/** Words of the animals that are probably empty, and of those with little time left. */
import type { LastChance, TimeLeft } from '../../../breeding/ahead/last-chances.ts'
import type { Day } from '../../../breeding/day.ts'
import type { EmptyReason } from '../../../breeding/figures/probably-empty.ts'
import { counted } from '../../../words/counted.ts'
import { lastChanceReasons } from '../../../words/last-chances.ts'
import { safeText } from '../../../words/safe.ts'

export const emptyWords: Readonly<Record<EmptyReason, string>> = {
  'checked-empty': 'Checked empty, not served since',
  'came-back': 'Came back, not served again',
  doubtful: 'Unsure at the check, or doubtful by her days',
  'not-served': 'Not served',
  'with-bull': 'Not in calf by AI, with the bull',
}

type InWords = (day: Day) => string

/**
 * Until when an animal can still be served in this block, else where she can be.
 *
 * @param day puts a day into words
 * @example timeLeftWords({ lastAi, last }, dayAndMonth) // 'AI to 11 Jun, bull to 2 Jul'
 */
export function timeLeftWords({ lastAi, last }: TimeLeft, day: InWords): string {
  if (lastAi === undefined) return last === undefined ? '' : `bull to ${day(last)}`
  return last === undefined || lastAi === last
    ? `AI to ${day(lastAi)}`
    : `AI to ${day(lastAi)}, bull to ${day(last)}`
}

/**
 * What a late calver or an empty can still come to, and why she is on the list.
 *
 * @example lastChanceWords(one, dayAndMonth) // 'bull to 2 Jul; due 20 May, ready 1 Jul'
 */
export function lastChanceWords(one: LastChance, day: InWords): string {
  const { reason, calves, readyFrom, last, otherBlock, standing } = one
  const found = standing.lastCheck?.day
  const when = calves ?? (reason === 'empty' ? found : undefined)
  const why = `${lastChanceReasons[reason]}${when === undefined ? '' : ` ${day(when)}`}`
  if (last !== undefined)
    return `${timeLeftWords(one, day)}; ${why}${readyFrom === undefined ? '' : `, ready ${day(readyFrom)}`}`
  return otherBlock === undefined
    ? `no more here, no other block: cull; ${why}`
    : `${safeText(otherBlock.block)} from ${day(otherBlock.matingStart)}, or cull; ${why}`
}

export const emptiesWords = {
  noEmpties: 'Nobody is more likely empty than in calf.',
  chance: (chance: number): string => `${Math.round(100 * chance)} in 100 in calf`,
  lastChances: 'Little or no time left in this block',
  servedTo: (date: string): string => `to ${date}`,
  toDecide: (animals: number, decided: number): string =>
    `${counted(animals, 'animal')}${decided === 0 ? '' : `, ${decided} decided`}`,
  decided: (what: string, date: string): string => `${what}, ${date}`,
} as const
