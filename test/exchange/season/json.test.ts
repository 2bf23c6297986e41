import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { seasonJson } from '../../../source/exchange/season/json.ts'
import { anyMorning } from '../../breeding/histories.ts'
import { calving, cow, empty, heat, maiden, pregnant, service } from '../../breeding/support.ts'
import { seasonAt, seasonOf } from './any.ts'

const schema = JSON.parse(
  readFileSync(new URL('../../../docs/schemas/season.schema.json', import.meta.url), 'utf8'),
)
const validate = new Ajv({ strict: true, allErrors: true, validateFormats: false }).compile(schema)
const written = (value: unknown): unknown => JSON.parse(JSON.stringify(value))

test('the season of any herd on any day is what its JSON Schema says', () => {
  fc.assert(
    fc.property(anyMorning(6), (morning) => {
      const view = seasonOf(morning)
      expect([validate(written(seasonJson(view, []))), validate.errors]).toEqual([true, null])
    }),
    { numRuns: 60 },
  )
})

const calved = calving(-70)
const herd = [
  cow(calved, service(2), pregnant(40)),
  cow(calved, service(5, { straw: 'sexed', sire: 'S2', inseminator: 'OB' }), service(26)),
  cow(calved, service(9), empty(42)),
  cow(calved, heat(-4)),
  cow(calving(10)),
  maiden({ born: '2024-08-01' }, service(1, { straw: 'sexed', sire: 'S2' })),
]

test('a figure has its counts, its interval, its target and who set it', () => {
  const { figures, cohort } = seasonJson(seasonAt(60, herd), [])
  expect(cohort).toBe(6)
  // Wilson, 4 of 6: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1; ends by R: prop.test(4, 6, correct = FALSE).
  expect(figures.submission_21_days).toEqual({
    numerator: 4,
    denominator: 6,
    unknown: 0,
    percent: 66.67,
    low: 30,
    high: 90.32,
    target: 90,
    source: 'agriland.ie (Teagasc), achieving your breeding targets for 2021',
  })
  expect(figures.in_calf_six_weeks).toMatchObject({ numerator: 1, denominator: 6, unknown: 2, target: 78 })
})

test('a count ahead has middle and ends that its own distribution gives', () => {
  const { forecast } = seasonJson(seasonAt(20, herd), [])
  if (forecast === null) throw new Error('no forecast')
  for (const { middle, low, high, distribution } of [
    forecast.in_calf_six_weeks,
    forecast.open_at_turn_out,
    forecast.empty_at_end,
    forecast.straws.conventional,
    forecast.heifer_calves,
  ]) {
    const { first, chances } = distribution
    const below = (count: number): number =>
      chances.slice(0, count - first + 1).reduce<number>((sum, chance) => sum + (chance ?? 0), 0)
    expect(below(first + chances.length)).toBeCloseTo(1, 2)
    for (const [count, q] of [
      [low, 0.1],
      [middle, 0.5],
      [high, 0.9],
    ] as const) {
      expect(below(count)).toBeGreaterThanOrEqual(q - 0.001)
      expect(below(count - 1)).toBeLessThan(q + 0.001)
    }
  }
})

test('what if: those worth a look, or those asked for', () => {
  const view = seasonAt(20, herd)
  expect(seasonJson(view).what_if.map(({ change }) => change.ai_weeks)).toContain(-1)
  const [asked, ...others] = seasonJson(view, [{ aiWeeks: -2, bulls: 1 }]).what_if
  expect(others).toEqual([])
  expect(asked?.change).toEqual({ ai_weeks: -2, heat_seen: null, conception: null, bulls: 1 })
})

test('late calvers before day 20, with the last days they can be served', () => {
  const late = [...herd, cow({ number: '90' }, calving(-400), service(-240), pregnant(-200))]
  expect(seasonJson(seasonAt(12, late), []).last_chances).toEqual([
    {
      animal: '5',
      reason: 'calved-late',
      calves: '2026-05-11',
      ready_from: '2026-06-22',
      last_ai: null,
      last: '2026-07-02',
      becomes: 'bull',
      other_block: null,
    },
    {
      animal: '90',
      reason: 'calves-late',
      calves: '2026-06-12',
      ready_from: '2026-07-24',
      last_ai: null,
      last: null,
      becomes: 'cull',
      other_block: null,
    },
  ])
})

test('nothing lies ahead of a season that is over', () => {
  const { forecast, bulls, what_if, assumptions, next_calving_pattern } = seasonJson(seasonAt(160, herd))
  expect([forecast, bulls, what_if, assumptions, next_calving_pattern]).toEqual([null, null, [], [], null])
})

test('earlier seasons stand beside', () => {
  const seasons = [
    { block: 'spring', matingStart: '2025-05-01' },
    { block: 'spring', matingStart: '2026-05-01' },
  ]
  const { earlier } = seasonJson(seasonAt(30, herd, { seasons }), [])
  expect(earlier.map((one) => one.mating_start)).toEqual(['2025-05-01'])
  expect(earlier[0]?.figures.submission_21_days).toBeDefined()
})
