/**
 * Every number of the breeding rules that a farm can change, in one place: default, unit, range and source.
 * A policy fact in the herd file changes single settings; the rest keep their default.
 */
import type { CheckMethod, PolicyFact } from './facts.ts'

/** `at-next-milking`: the farm drafts at the parlour exit and serves there. `by-the-hour`: hours after the heat count. */
export type ServingTime = 'at-next-milking' | 'by-the-hour'

export interface Policy {
  readonly servingTime: ServingTime
  readonly sexedHoursStrict: boolean
  readonly checkMethod: CheckMethod
  readonly chances: number
  readonly calvedToServe: number
  readonly calvedNever: number
  readonly watchFrom: number
  readonly watchTo: number
  readonly shortIntervalFrom: number
  readonly ultrasoundDays: number
  readonly ultrasoundMaidenDays: number
  readonly handDays: number
  readonly milkOrBloodDays: number
  readonly milkOrBloodCalvedDays: number
  readonly unsureRecheckDays: number
  readonly confirmDays: number
  readonly finalCheckDays: number
  readonly overdueDays: number
  readonly lossIsCalvingDays: number
  readonly dryOffDays: number
  readonly dryOffThinDays: number
  readonly defaultGestation: number
  readonly cowConception: number
  readonly maidenConception: number
  readonly sexedCowFactor: number
  readonly sexedMaidenFactor: number
  readonly naturalConception: number
  readonly heatDetection: number
  readonly lateReturnShare: number
  readonly returnMean: number
  readonly returnMeanYoung: number
  readonly returnSpread: number
  readonly openPerBull: number
  readonly openPerYoungBull: number
  readonly bullsRotate: boolean
  readonly useSexed: boolean
  readonly sexedUntil: number
  readonly sexedCalved: number
  readonly sexedCondition: number
  readonly sexedConditionMaiden: number
  readonly beefLastWeek: boolean
  readonly replacementsWanted: number
  readonly sireShare: number
  readonly inbreedingWarn: number
  readonly inbreedingConfirm: number
  readonly nitrogenOrder: number
  readonly nitrogenAlarm: number
}

/** What a setting is: a number within a range, a choice, or yes and no. */
export type Setting<K extends keyof Policy = keyof Policy> = {
  readonly key: K
  readonly standard: Policy[K]
  readonly unit: 'days' | 'share' | 'straws' | 'animals' | 'count' | 'score' | 'cm' | 'choice' | 'yes-no'
  readonly min?: number
  readonly max?: number
  readonly choices?: readonly string[]
  /** Author or publisher, title, year; or that it is common practice. */
  readonly source: string
}

const practice = 'common practice, no source'
const number = <K extends keyof Policy>(
  key: K,
  standard: Policy[K],
  unit: Setting['unit'],
  min: number,
  max: number,
  source: string,
): Setting<K> => ({ key, standard, unit, min, max, source })

const vishwanath = 'Vishwanath et al. 2004, Proc NZ Soc Anim Prod 64:140-142'
const maicas = 'Maicas et al. 2019, J Dairy Sci 102:10530-10542'
const remnant = 'Remnant 2019, Measuring dairy herd heat detection (University of Nottingham)'
const ultrasound = 'Early pregnancy diagnosis by transrectal ultrasonography in dairy cattle'
const milkTest = 'Sterry, Timing of milk-based PAG tests'
const bullCare = 'Managing your working bulls, 2019 (NZ levy body)'
const inbreedingTable = 'Boggess, table of inbreeding by relationship'

/** Every setting, in the order it is shown. */
export const settings: readonly Setting[] = [
  {
    key: 'servingTime',
    standard: 'at-next-milking',
    unit: 'choice',
    choices: ['at-next-milking', 'by-the-hour'],
    source: vishwanath,
  },
  {
    key: 'sexedHoursStrict',
    standard: false,
    unit: 'yes-no',
    source: 'agriland.co.uk, Sexed semen: what time is optimal',
  },
  {
    key: 'checkMethod',
    standard: 'ultrasound',
    unit: 'choice',
    choices: ['ultrasound', 'hand', 'milk', 'blood'],
    source: ultrasound,
  },
  number('chances', 2, 'count', 1, 4, practice),
  number('calvedToServe', 42, 'days', 20, 120, practice),
  number('calvedNever', 30, 'days', 10, 120, practice),
  number('watchFrom', 18, 'days', 14, 21, remnant),
  number('watchTo', 24, 'days', 21, 30, remnant),
  number('shortIntervalFrom', 2, 'days', 1, 5, remnant),
  number('ultrasoundDays', 30, 'days', 25, 60, ultrasound),
  number('ultrasoundMaidenDays', 28, 'days', 25, 60, ultrasound),
  number('handDays', 42, 'days', 32, 70, 'extension column, 2021'),
  number('milkOrBloodDays', 30, 'days', 24, 60, milkTest),
  number('milkOrBloodCalvedDays', 60, 'days', 30, 100, milkTest),
  number('unsureRecheckDays', 14, 'days', 5, 30, practice),
  number('confirmDays', 60, 'days', 45, 120, 'JDS Communications 4:144-148, 2023'),
  number('finalCheckDays', 42, 'days', 28, 84, 'DairyNZ, Pregnancy testing'),
  number('overdueDays', 14, 'days', 5, 30, practice),
  number('lossIsCalvingDays', 120, 'days', 60, 200, practice),
  number('dryOffDays', 60, 'days', 30, 120, practice),
  number('dryOffThinDays', 84, 'days', 30, 150, practice),
  number('defaultGestation', 282, 'days', 260, 300, 'Norman et al. 2009, J Dairy Sci 92:2259-2269'),
  number('cowConception', 0.55, 'share', 0.05, 0.95, practice),
  number('maidenConception', 0.65, 'share', 0.05, 0.95, practice),
  number('sexedCowFactor', 0.85, 'share', 0.3, 1, maicas),
  number('sexedMaidenFactor', 0.87, 'share', 0.3, 1, maicas),
  number('naturalConception', 0.55, 'share', 0.05, 0.95, practice),
  number('heatDetection', 0.9, 'share', 0.1, 0.99, 'Nation et al. 2003, Aust Vet J 81:63-65'),
  number('lateReturnShare', 0.05, 'share', 0, 0.3, 'fitted to Nation et al. 2003 and Remnant et al. 2015'),
  number('returnMean', 22, 'days', 19, 25, 'Remnant et al. 2015, J Dairy Sci 98:889-897'),
  number('returnMeanYoung', 21, 'days', 19, 25, 'Remnant et al. 2015, J Dairy Sci 98:889-897'),
  number(
    'returnSpread',
    3.2,
    'days',
    1,
    8,
    'Survey of reproductive performance in dairy herds (Animal Science)',
  ),
  number('openPerBull', 30, 'animals', 5, 60, bullCare),
  number('openPerYoungBull', 20, 'animals', 5, 40, 'agriland.ie (Teagasc), young bulls'),
  {
    key: 'bullsRotate',
    standard: false,
    unit: 'yes-no',
    source: 'NZ veterinary practice, Bull power planning',
  },
  { key: 'useSexed', standard: true, unit: 'yes-no', source: 'Teagasc, Breeding management, 2021' },
  number('sexedUntil', 20, 'days', 0, 60, 'agriland.ie, Moorepark sexed semen, 2019'),
  number('sexedCalved', 50, 'days', 30, 120, 'agriland.ie, Moorepark sexed semen, 2019'),
  number('sexedCondition', 3, 'score', 1, 5, 'agriland.ie, Moorepark sexed semen, 2019'),
  number('sexedConditionMaiden', 3.25, 'score', 1, 5, 'agriland.ie, Moorepark sexed semen, 2019'),
  { key: 'beefLastWeek', standard: true, unit: 'yes-no', source: practice },
  number('replacementsWanted', 0, 'animals', 0, 5000, practice),
  number('sireShare', 0.15, 'share', 0.02, 1, 'Teagasc, Plan to use teams of bulls equally, 2022'),
  number('inbreedingWarn', 0.0625, 'share', 0, 0.5, inbreedingTable),
  number('inbreedingConfirm', 0.125, 'share', 0, 0.5, inbreedingTable),
  number('nitrogenOrder', 25, 'cm', 5, 60, 'Dalton, University of Idaho'),
  number('nitrogenAlarm', 15, 'cm', 2, 40, 'S. Johnson, Kansas State University, 2022'),
]

const byKey = new Map<string, Setting>(settings.map((setting) => [setting.key, setting]))

/** The setting of that name, or undefined. */
export const settingOf = (key: string): Setting | undefined => byKey.get(key)

/** The policy of a farm that has changed nothing. */
export const standardPolicy: Policy = Object.freeze(
  Object.fromEntries(settings.map((setting) => [setting.key, setting.standard])),
) as unknown as Policy

/**
 * Whether a value may stand in a setting.
 *
 * @example mayStand(settingOf('calvedToServe'), 500) // false: the range is 20-120 days
 */
export function mayStand(setting: Setting, value: unknown): boolean {
  if (setting.unit === 'yes-no') return typeof value === 'boolean'
  if (setting.unit === 'choice') return typeof value === 'string' && (setting.choices ?? []).includes(value)
  return (
    typeof value === 'number' &&
    Number.isFinite(value) &&
    value >= (setting.min ?? Number.NEGATIVE_INFINITY) &&
    value <= (setting.max ?? Number.POSITIVE_INFINITY)
  )
}

/**
 * The policy that a list of policy facts makes, in their order; unknown settings and values out of range are
 * left out (the schema reports them).
 */
export function policyFrom(facts: readonly PolicyFact[]): Policy {
  const changed: Record<string, string | number | boolean> = {}
  for (const fact of facts) {
    for (const [key, value] of Object.entries(fact.set)) {
      const setting = settingOf(key)
      if (setting !== undefined && mayStand(setting, value)) changed[key] = value
    }
  }
  return { ...standardPolicy, ...changed }
}
