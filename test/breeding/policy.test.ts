import { describe, expect, test } from 'vitest'
import type { PolicyFact } from '../../source/breeding/facts.ts'
import {
  mayStand,
  policyFrom,
  type Setting,
  settingOf,
  settings,
  standardPolicy,
} from '../../source/breeding/policy.ts'
import { on } from './support.ts'

/** Each number with the value that the rules give it, and from where to where a farm may set it. */
const numbers: readonly (readonly [key: Setting['key'], standard: number, from: number, to: number])[] = [
  ['chances', 2, 1, 4],
  ['calvedToServe', 42, 20, 120],
  ['calvedNever', 30, 10, 120],
  ['watchFrom', 18, 14, 21],
  ['watchTo', 24, 21, 30],
  ['shortIntervalFrom', 2, 1, 5],
  ['ultrasoundDays', 30, 25, 60],
  ['ultrasoundMaidenDays', 28, 25, 60],
  ['handDays', 42, 32, 70],
  ['milkOrBloodDays', 30, 24, 60],
  ['milkOrBloodCalvedDays', 60, 30, 100],
  ['unsureRecheckDays', 14, 5, 30],
  ['confirmDays', 60, 45, 120],
  ['finalCheckDays', 42, 28, 84],
  ['overdueDays', 14, 5, 30],
  ['lossIsCalvingDays', 120, 60, 200],
  ['dryOffDays', 60, 30, 120],
  ['dryOffThinDays', 84, 30, 150],
  ['defaultGestation', 282, 260, 300],
  ['cowConception', 0.55, 0.05, 0.95],
  ['maidenConception', 0.65, 0.05, 0.95],
  ['sexedCowFactor', 0.85, 0.3, 1],
  ['sexedMaidenFactor', 0.87, 0.3, 1],
  ['naturalConception', 0.55, 0.05, 0.95],
  ['heatDetection', 0.9, 0.1, 0.99],
  ['lateReturnShare', 0.05, 0, 0.3],
  ['returnMean', 22, 19, 25],
  ['returnMeanYoung', 21, 19, 25],
  ['returnSpread', 3.2, 1, 8],
  ['openPerBull', 30, 5, 60],
  ['openPerYoungBull', 20, 5, 40],
  ['sexedUntil', 20, 0, 60],
  ['sexedCalved', 50, 30, 120],
  ['sexedCondition', 3, 1, 5],
  ['sexedConditionMaiden', 3.25, 1, 5],
  ['replacementsWanted', 0, 0, 5000],
  ['sireShare', 0.15, 0.02, 1],
  ['inbreedingWarn', 0.0625, 0, 0.5],
  ['inbreedingConfirm', 0.125, 0, 0.5],
  ['nitrogenOrder', 25, 5, 60],
  ['nitrogenAlarm', 15, 2, 40],
]
/** What is chosen or answered with yes or no, as a farm finds it. */
const others = {
  servingTime: 'at-next-milking',
  sexedHoursStrict: false,
  checkMethod: 'ultrasound',
  bullsRotate: false,
  useSexed: true,
  beefLastWeek: true,
}

const setting = (key: string): Setting => settingOf(key) as Setting
const stands = (key: string, value: unknown): boolean => mayStand(setting(key), value)

describe('what a farm finds, and how far it may change it', () => {
  test.each(numbers)('%s: %d, from %d to %d', (key, standard, from, to) => {
    expect(standardPolicy[key]).toBe(standard)
    const beside = 0.001
    expect([from - beside, from, standard, to, to + beside].map((value) => stands(key, value))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ])
  })

  test('the others', () => {
    expect(standardPolicy).toMatchObject(others)
  })

  test('no setting is missing here', () => {
    const told = [...numbers.map(([key]) => key), ...Object.keys(others)]
    expect(told.toSorted()).toEqual(settings.map(({ key }) => key).toSorted())
  })
})

test('a number is a number, a choice one of those offered, yes and no are yes and no', () => {
  expect(
    ['2', true, Number.NaN, Number.POSITIVE_INFINITY, undefined].map((value) => stands('chances', value)),
  ).toEqual(Array(5).fill(false))
  expect(['hand', 'milk', 'looking', 1].map((value) => stands('checkMethod', value))).toEqual([
    true,
    true,
    false,
    false,
  ])
  expect([true, false, 'yes', 1].map((value) => stands('useSexed', value))).toEqual([
    true,
    true,
    false,
    false,
  ])
})

test('later changes count, and what is unknown or out of range changes nothing', () => {
  const told = (set: PolicyFact['set']): PolicyFact => ({
    kind: 'policy',
    id: '',
    about: 'herd',
    date: on(0),
    at: '',
    set,
  })
  const changes = [
    told({ calvedToServe: 50, chances: 3 }),
    told({ calvedToServe: 45, handDays: 20, fromTheFuture: 1 }),
  ]
  expect(policyFrom(changes)).toEqual({ ...standardPolicy, calvedToServe: 45, chances: 3 })
})
