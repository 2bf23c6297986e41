/** Words of the figures: what each counts, and what their groups are called. */
import type { IntervalClass } from '../breeding/cycle.ts'
import type { Grouping } from '../breeding/figures/conception.ts'
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
