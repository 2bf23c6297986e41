/** Words of the season: what each figure means, what the forecast rests on, what becomes of late calvers and empties. */
import type { LastChance, LastChanceReason } from '../breeding/ahead/last-chances.ts'
import type { IntervalClass } from '../breeding/cycle.ts'
import type { ArchiveFact } from '../breeding/facts.ts'
import type { Grouping } from '../breeding/figures/conception.ts'
import type { Assumption, AssumptionCode } from '../breeding/forecast/assumptions.ts'
import type { Change } from '../breeding/forecast/what-if.ts'
import { safeText } from './safe.ts'

/** Every figure that is a share, by the name it has in the JSON output. */
export const figureNames = [
  'submission_21_days',
  'submission_21_days_ready',
  'heats_seen_24_days',
  'conception',
  'non_return_24_days',
  'non_return_56_days',
  'returns_18_24_days',
  'in_calf_six_weeks',
  'in_calf',
  'not_in_calf',
  'calved_by_day_21',
  'calved_by_day_42',
] as const
export type FigureName = (typeof figureNames)[number]

/** Shares of which the unknown are a part of the denominator: so far, and they may still grow by them. */
export const growingFigures: ReadonlySet<FigureName> = new Set([
  'in_calf_six_weeks',
  'in_calf',
  'not_in_calf',
  'calved_by_day_21',
  'calved_by_day_42',
])

/**
 * Where earlier seasons are. Harmless for a terminal.
 *
 * @example archivedWords(archive) // 'Earlier seasons are in herd.archive-2026-05-28.json.'
 */
export const archivedWords = ({ file }: ArchiveFact): string => `Earlier seasons are in ${safeText(file)}.`

/** A label, and a sentence that says what is counted. */
export const figureWords: Readonly<Record<FigureName, { readonly label: string; readonly meaning: string }>> =
  {
    submission_21_days: {
      label: 'Served in three weeks',
      meaning:
        'Served by AI on the first 21 days, of all animals of the block meant for breeding at the mating start.',
    },
    submission_21_days_ready: {
      label: 'the same, of those ready',
      meaning: 'Of those that had calved long enough ago by day 21 to be served; maidens among them.',
    },
    heats_seen_24_days: {
      label: 'Heats seen in 24 days',
      meaning:
        'Seen on heat or served in the first 24 days, of those that were ready and not in calf at the mating start: a little more than one cycle, so that nearly all should be.',
    },
    conception: {
      label: 'Services that held',
      meaning:
        'Found in calf to the service, of the AI services of 42 days or more with a result. A service without a result counts on neither side.',
    },
    non_return_24_days: {
      label: 'Not back by day 24',
      meaning:
        'AI services older than 24 days without a sure heat or a service on days 18-24. Not all of these are in calf.',
    },
    non_return_56_days: {
      label: 'Not back by day 56',
      meaning: 'The same with days 18-56.',
    },
    returns_18_24_days: {
      label: 'Returns after 18-24 days',
      meaning:
        'Of the days between two services of an animal: few of 18-24 days, or many shorter ones, mean mistaken heats.',
    },
    in_calf_six_weeks: {
      label: 'In calf in six weeks',
      meaning:
        'Conceived on the first 42 days and in calf as far as is known, of all animals of the block meant for breeding. What is not known yet never counts as in calf.',
    },
    in_calf: {
      label: 'In calf, any week',
      meaning: 'Conceived on any day of the season, counted the same way.',
    },
    not_in_calf: {
      label: 'Found empty',
      meaning:
        'Found empty after the season. The target of 10 % is one of twelve weeks; nine weeks at 90 % served and 50-60 % holding leave 10-17 %.',
    },
    calved_by_day_21: {
      label: 'Calved in three weeks',
      meaning:
        'Of the calving before this season, from its planned start: late calvers have little time before the mating start.',
    },
    calved_by_day_42: { label: 'Calved in six weeks', meaning: 'The same in six weeks.' },
  }

/** Titles of the tables of services that held. */
export const groupingWords: Readonly<Record<Grouping, string>> = {
  order: 'Held, by service',
  sire: 'Held, by sire',
  straw: 'Held, by kind of straw',
  inseminator: 'Held, by who served',
  parity: 'Held, by calvings before',
  session: 'Held, by milking',
}

/** In place of these tables, as long as none has a result. */
export const tooYoungWords = 'No service of this season is 42 days old and checked yet.'

/**
 * The name of a group of services.
 *
 * @example groupName('parity', '0') // 'none (maidens)'
 */
export function groupName(grouping: Grouping, key: string | undefined): string {
  if (key === undefined) return 'not recorded'
  if (grouping === 'order') return { '1': 'first', '2': 'second', '3': 'third' }[key] ?? `${key}th`
  if (grouping === 'parity')
    return { '0': 'none (maidens)', '1': 'one', '2': 'two', '3': 'three', '4': 'four or more' }[key] ?? key
  return safeText(key)
}

export const intervalNames: Readonly<Record<IntervalClass, string>> = {
  'short-irregular': '2-17 days',
  'short-regular': '18-24 days',
  'long-irregular': '25-35 days',
  'long-regular': '36-48 days',
  extended: 'over 48 days',
}

/** What each class of interval says of the watch. */
export const intervalMeanings: Readonly<Record<IntervalClass, string>> = {
  'short-irregular': 'one of the two heats was none',
  'short-regular': 'one cycle: as it should be',
  'long-irregular': 'a mistaken heat, or an embryo that died',
  'long-regular': 'two cycles: one return was missed',
  extended: 'missed for long, or a pregnancy lost',
}

const percent = (share: number | undefined): string => `${Math.round(100 * (share ?? 0))} %`

const assumptionSentences: Readonly<Record<AssumptionCode, (values: Assumption['values']) => string>> = {
  'conception-own': ({ rate, services }) =>
    `Services hold as they did on this farm: ${percent(rate)} for cows and conventional straws, from the farm’s guess and ${services} services of the past two years. Seasons differ, so no more than 100 services’ worth of certainty is taken from them.`,
  'conception-guessed': ({ rate }) =>
    `Services hold as guessed: ${percent(rate)} for cows and conventional straws. No service of this farm has a result yet.`,
  'heat-seen-own': ({ rate, heats }) =>
    `Of the heats of an open animal ${percent(rate)} are seen, from the farm’s guess and ${heats} heats that were or were not seen again.`,
  'heat-seen-guessed': ({ rate }) =>
    `Of the heats of an open animal ${percent(rate)} are seen: the farm’s guess.`,
  cycle: ({ days, young }) => `Heats come ${days} days apart, ${young} in maidens and first-calvers.`,
  'late-returns': ({ share }) =>
    `Of failed services ${percent(share)} come back late, the embryo having died.`,
  losses: ({ share, by }) =>
    `Of pregnancies known at 30 days ${percent(share)} are lost by day ${by}, few after it.`,
  'first-heats': () => 'Nine in ten cows are cycling about 40 days after calving, one in ten is late.',
  'heats-served': ({ chances, from }) =>
    `Every heat that is seen in the AI weeks is served, but none sooner than ${from} days after a service, and ${chances} times an animal at most.`,
  'straws-last': () => 'Straws of the planned kind do not run out.',
  'bulls-on-hand': ({ bulls, finds, openPerBull }) =>
    `The ${bulls === 1 ? 'one bull' : `${bulls} bulls`} on the farm find ${percent(finds)} of the heats as long as each has ${openPerBull} open animals or fewer.`,
  'bulls-as-needed': ({ finds }) =>
    `There are as many bulls as are needed, and they find ${percent(finds)} of the heats.`,
  'no-bull': () => 'No bull follows the AI weeks.',
  'nobody-comes-or-goes': ({ animals }) =>
    `All ${animals} animals of the block that may be bred stay, and none joins them.`,
  band: ({ holds, of }) =>
    `A range holds at least ${holds} times in ${of}. It takes in chance and what is not known of the farm’s rates, not a wrong loss rate or failed services that stop cycling.`,
}

/**
 * An assumption of the forecast as a sentence.
 *
 * @example assumptionWords({ code: 'cycle', values: { days: 22, young: 21 } }) // 'Heats come 22 days apart, 21 in …'
 */
export const assumptionWords = ({ code, values }: Assumption): string => assumptionSentences[code](values)

/** @example bandWords // 'at least 8 times in 10' */
export const bandWords = 'at least 8 times in 10'

/**
 * A change of the plan in words.
 *
 * @example changeWords({ aiWeeks: -1 }) // 'AI one week shorter'
 */
export function changeWords({ aiWeeks, heatSeen, cowConception, bulls }: Change): string {
  const said: string[] = []
  if (aiWeeks !== undefined && aiWeeks !== 0) {
    const weeks = Math.abs(aiWeeks) === 1 ? 'one week' : `${Math.abs(aiWeeks)} weeks`
    said.push(`AI ${weeks} ${aiWeeks > 0 ? 'longer' : 'shorter'}`)
  }
  if (heatSeen !== undefined) said.push(`${percent(heatSeen)} of heats seen`)
  if (cowConception !== undefined) said.push(`${percent(cowConception)} of services hold`)
  if (bulls !== undefined) said.push(bulls === 0 ? 'no bull' : bulls === 1 ? 'one bull' : `${bulls} bulls`)
  return said.length === 0 ? 'as planned' : said.join(', ')
}

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
