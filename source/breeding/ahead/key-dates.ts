/** The dates of a season that people plan by. */
import type { HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import { CLOSING_DAYS, dayOfSeason, PRE_MATING, type Season } from '../season.ts'
import type { Standing } from '../standing.ts'
import { SIRES_FROM, SIRES_TO } from './scanning-days.ts'

const keyDateCodes = [
  'pre-mating-start',
  'bull-soundness-check',
  'mating-start',
  'bull-on-farm',
  'ai-end',
  'bull-in',
  'bull-out',
  'scanning-visit',
  'scan-tells-sires-from',
  'scan-tells-sires-to',
  'final-check-from',
  'season-end',
  'first-due',
  'dry-off-group',
] as const
export type KeyDateCode = (typeof keyDateCodes)[number]

export interface KeyDate {
  readonly day: Day
  readonly code: KeyDateCode
  readonly block: string
  /** Animals concerned, where the date is one of animals. */
  readonly count: number | undefined
}

/** Soundness check and feet 60 days before turn-out; on the farm 10 days before. */
export const SOUNDNESS_BEFORE = 60
export const ON_FARM_BEFORE = 10

/**
 * The key dates of one season.
 * Source: SRUC, Stock bulls pre-breeding checks; Irish Farmers Journal, keeping stock bulls in working order; Managing
 * your working bulls, 2019 (NZ levy body); Clutha Vets, Getting the most from pregnancy testing.
 *
 * @param finalCheckDays days after the bull is out
 * @returns by date
 * @example seasonDates(season, 42).find((date) => date.code === 'bull-in')?.day
 */
export function seasonDates(season: Season, finalCheckDays: number): readonly KeyDate[] {
  const bullIn = season.aiEnd + 1
  const withBull = season.bullEnd > season.aiEnd
  const dates: (readonly [KeyDateCode, number])[] = [
    ['pre-mating-start', PRE_MATING],
    ['mating-start', 0],
    ['ai-end', season.aiEnd],
    ['scan-tells-sires-from', season.aiEnd + SIRES_FROM],
    ['scan-tells-sires-to', SIRES_TO],
    ['final-check-from', season.bullEnd + finalCheckDays],
    ['season-end', season.bullEnd + CLOSING_DAYS],
  ]
  if (withBull) {
    dates.push(
      ['bull-soundness-check', bullIn - SOUNDNESS_BEFORE],
      ['bull-on-farm', bullIn - ON_FARM_BEFORE],
      ['bull-in', bullIn],
      ['bull-out', season.bullEnd + 1],
    )
  }
  return [
    ...dates.map(([code, s]) => ({
      code,
      day: dayOfSeason(season, s),
      block: season.block,
      count: undefined,
    })),
    ...season.scanDays.map((day) => ({
      code: 'scanning-visit' as const,
      day,
      block: season.block,
      count: undefined,
    })),
  ].sort((a, b) => a.day - b.day)
}

/**
 * The key dates of a herd within a span of days: those of every season, the first due date of each block and the
 * weeks' groups to dry off.
 *
 * @param standings of the animals on the day that is today
 * @param from @param to both included
 */
export function keyDates(
  book: HerdBook,
  standings: readonly Standing[],
  from: Day,
  to: Day,
): readonly KeyDate[] {
  const dates = book.allSeasons.flatMap((season) => seasonDates(season, book.policy.finalCheckDays))
  for (const [block, group] of Map.groupBy(standings.filter(carries), (standing) => standing.block ?? '')) {
    const dues = group.map((standing) => standing.due as Day).sort((a, b) => a - b)
    if (dues[0] !== undefined) dates.push({ code: 'first-due', day: dues[0], block, count: dues.length })
    const weeks = Map.groupBy(
      group.flatMap((standing) => standing.dryOff ?? []),
      (day) => (day - ((day + 3) % 7)) as Day,
    )
    for (const [monday, days] of weeks) {
      dates.push({ code: 'dry-off-group', day: monday, block, count: days.length })
    }
  }
  return dates.filter((date) => date.day >= from && date.day <= to).sort((a, b) => a.day - b.day)
}

const carries = (standing: Standing): boolean => standing.inHerd && standing.due !== undefined
