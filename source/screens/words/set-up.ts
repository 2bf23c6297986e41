/** Words of setting up: parts, entries, and what each setting of the policy means. */

import type { Policy, Setting } from '../../breeding/policy.ts'
import type { SetUpPart } from '../../morning/place.ts'
import { capital } from '../../words/capital.ts'
import { counted } from '../../words/counted.ts'

export const setUpWords = {
  parts: { farm: 'Farm', seasons: 'Seasons', policy: 'Policy', animals: 'Animals' },
  none: {
    farm: 'Nothing here.',
    seasons: 'No season yet. A adds the first: give the mating start, or the day calving should begin.',
    policy: 'Nothing here.',
    animals: 'No animal yet. A adds one; many are read from a CSV file with dawnlist import.',
  } satisfies Record<SetUpPart, string>,
  milked: (milkings: readonly string[]): string => `milked at ${milkings.join(' and ')}`,
  season: (start: string, aiWeeks: number, bullWeeks: number): string =>
    `from ${start}, ${aiWeeks} + ${bullWeeks} weeks`,
  calvingFrom: (day: string): string => `calving from ${day}`,
  visits: (count: number): string => counted(count, 'visit'),
  changed: 'yours',
  male: 'male',
  born: (day: string): string => `born ${day}`,
  block: (block: string): string => `${block} block`,
  ready: 'ready',
  aiUntil: (day: string): string => `AI until ${day}.`,
  bullFromTo: (from: string, to: string): string => `The bull from ${from} to ${to}.`,
  noBull: 'No bull weeks.',
  calvesFrom: (day: string): string => `Calves from about ${day} on.`,
  noVisits: 'No scanning visit is planned.',
  visitsOn: (days: readonly string[]): string => `Scanning ${days.join(', ')}.`,
  add: { farm: '', seasons: 'add a season', policy: '', animals: 'add an animal' } satisfies Record<
    SetUpPart,
    string
  >,
  strike: { farm: '', seasons: 'strike out', policy: 'default', animals: '' } satisfies Record<
    SetUpPart,
    string
  >,
  percentWord: 'percent',
  standard: (value: string): string => `Without your own: ${value}.`,
  isStandard: 'This is what it is without your own.',
  source: (source: string): string => `Source: ${source}.`,
} as const

/** A value as it is read: shares in percent. */
export function valueWords(value: string | number | boolean, unit: Setting['unit']): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'string') return choiceWords[value] ?? value
  switch (unit) {
    case 'share':
      return `${Number((value * 100).toFixed(2))} %`
    case 'days':
      return `${value} days`
    case 'cm':
      return `${value} cm`
    default:
      return String(value)
  }
}

const choiceWords: Readonly<Record<string, string>> = {
  'at-next-milking': 'at the next milking',
  'by-the-hour': 'by the hour',
}

/** What a setting may be, as a sentence without its end; empty for yes or no. */
export function rangeWords({ min, max, choices, unit }: Setting): string {
  if (choices !== undefined)
    return capital(choices.map((choice) => choiceWords[choice] ?? choice).join(', or '))
  if (min === undefined || max === undefined) return ''
  const least = Number((unit === 'share' ? min * 100 : min).toFixed(2))
  return `From ${least} to ${valueWords(max, unit)}`
}

/** Beside the field of a setting: its unit. */
export const unitWords = (unit: Setting['unit']): string =>
  unit === 'share' ? setUpWords.percentWord : unit === 'days' || unit === 'cm' ? unit : ''

interface SettingWords {
  readonly name: string
  readonly meaning: string
}

export const settingWords: Readonly<Record<keyof Policy, SettingWords>> = {
  servingTime: {
    name: 'When a heat is served',
    meaning: 'At the next milking after it was seen, or so many hours after it began.',
  },
  sexedHoursStrict: {
    name: 'Sexed straws by strict hours',
    meaning: 'Sexed straws only 14 to 20 hours after the heat, wherever it is served.',
  },
  checkMethod: {
    name: 'Usual pregnancy check',
    meaning: 'The method that the list waits for, and that a check begins with.',
  },
  chances: { name: 'Chances by AI', meaning: 'Heats served by AI that an animal gets in a season.' },
  calvedToServe: { name: 'Served from, days calved', meaning: 'From this day after calving she is served.' },
  calvedNever: { name: 'Never served before', meaning: 'Calved for less than this, she is not served.' },
  watchFrom: {
    name: 'Repeat-heat watch from',
    meaning: 'First day after a service or heat on which the next heat is watched for.',
  },
  watchTo: { name: 'Repeat-heat watch to', meaning: 'Last day of the watch.' },
  shortIntervalFrom: {
    name: 'Short interval from',
    meaning: 'A heat so many days after a service is no longer the same heat.',
  },
  ultrasoundDays: {
    name: 'Ultrasound counts from',
    meaning: 'Days after a service from which an ultrasound check of it counts.',
  },
  ultrasoundMaidenDays: { name: 'Ultrasound of maidens from', meaning: 'The same for maidens.' },
  handDays: {
    name: 'By hand counts from',
    meaning: 'Days after a service from which a check by hand counts.',
  },
  milkOrBloodDays: {
    name: 'Milk or blood counts from',
    meaning: 'Days after a service from which a milk or blood test counts.',
  },
  milkOrBloodCalvedDays: {
    name: 'Milk or blood after calving',
    meaning: 'Days after calving or a loss before a milk or blood test can be trusted.',
  },
  unsureRecheckDays: { name: 'Unsure is checked again after', meaning: 'Days after an unsure result.' },
  confirmDays: {
    name: 'Confirmed from',
    meaning: 'Days in calf from which a second check is worth its money: most losses are before.',
  },
  finalCheckDays: {
    name: 'Final check after the bull',
    meaning: 'Days after the bull went out from which the last check finds the empty ones.',
  },
  overdueDays: {
    name: 'Overdue after',
    meaning: 'Days past the due date after which a calving was not recorded, or lost.',
  },
  lossIsCalvingDays: {
    name: 'A loss counts as calving from',
    meaning: 'Days of pregnancy from which a loss starts the wait anew, as a calving does.',
  },
  dryOffDays: { name: 'Dry off before due', meaning: 'Days before the due date.' },
  dryOffThinDays: {
    name: 'Dry off thin or first',
    meaning: 'Days before the due date in the first lactation, or when she is thin.',
  },
  defaultGestation: {
    name: 'Gestation, sire unknown',
    meaning: 'Days of gestation where neither the sire nor his breed says more.',
  },
  cowConception: {
    name: 'A service holds, cows',
    meaning: 'Guess before your own results speak: conventional straw, cows.',
  },
  maidenConception: {
    name: 'A service holds, maidens',
    meaning: 'Guess before your own results speak: conventional straw, maidens.',
  },
  sexedCowFactor: {
    name: 'Sexed beside conventional, cows',
    meaning: 'A sexed straw holds this share as often.',
  },
  sexedMaidenFactor: {
    name: 'Sexed beside conventional, maidens',
    meaning: 'A sexed straw holds this share as often.',
  },
  naturalConception: { name: 'A service holds, bull', meaning: 'Guess for a bull’s service.' },
  heatDetection: { name: 'Heats that are seen', meaning: 'Chance that a heat on a watched day is seen.' },
  lateReturnShare: {
    name: 'Late returns',
    meaning: 'Share of failed services whose embryo dies late, so that she comes back late.',
  },
  returnMean: { name: 'Days between heats, cows', meaning: 'Mean days of a cycle.' },
  returnMeanYoung: {
    name: 'Days between heats, young',
    meaning: 'Mean days of a cycle of maidens and first-calvers.',
  },
  returnSpread: { name: 'Spread of the cycle', meaning: 'Standard deviation of the days between heats.' },
  openPerBull: { name: 'Open cows a bull', meaning: 'How many open animals one grown bull can manage.' },
  openPerYoungBull: { name: 'Open cows a young bull', meaning: 'The same for a bull under two years.' },
  bullsRotate: {
    name: 'Half of the bulls rest',
    meaning: 'Two teams that take turns: twice as many are needed.',
  },
  useSexed: { name: 'Sexed straws used', meaning: 'Whether sexed straws are proposed at all.' },
  sexedUntil: {
    name: 'Sexed until season day',
    meaning: 'Last season day on which a sexed straw is proposed.',
  },
  sexedCalved: {
    name: 'Sexed from, days calved',
    meaning: 'Calved for less than this, she gets no sexed straw.',
  },
  sexedCondition: {
    name: 'Sexed from condition, cows',
    meaning: 'Body condition below which a cow gets no sexed straw.',
  },
  sexedConditionMaiden: {
    name: 'Sexed from condition, maidens',
    meaning: 'Body condition below which a maiden gets no sexed straw.',
  },
  beefLastWeek: { name: 'Beef in the last AI week', meaning: 'All straws of the last AI week are beef.' },
  replacementsWanted: {
    name: 'Heifers wanted',
    meaning: 'Heifers to join the herd from this season; 0 sets no target.',
  },
  sireShare: {
    name: 'Share of one sire',
    meaning: 'No sire serves a larger share of the season unless told.',
  },
  inbreedingWarn: {
    name: 'Warn of inbreeding above',
    meaning: 'Inbreeding of the calf above which the sire is shown as related.',
  },
  inbreedingConfirm: {
    name: 'Inbreeding to confirm from',
    meaning: 'Inbreeding of the calf from which the sire is never proposed.',
  },
  nitrogenOrder: { name: 'Order nitrogen at', meaning: 'Depth of liquid nitrogen at which to order.' },
  nitrogenAlarm: { name: 'Nitrogen alarm at', meaning: 'Depth below which the straws are in danger.' },
}
