import { expect, test } from 'vitest'
import { standardPolicy } from '../../../source/breeding/policy.ts'
import { occasionToday } from '../../../source/breeding/straws/occasion.ts'
import { bestFirst, type Candidate, rankedStraw } from '../../../source/breeding/straws/rank.ts'
import { cow, farm, herd, season, standing, tonight } from './herd.ts'

const her = standing(herd(farm(), season(), cow('1', { sire: 'S90', dam: 'D90' })), '1', 4)
const occasion = occasionToday(her, tonight)

const candidate = (code: string, fields: Partial<Candidate> = {}): Candidate => ({
  sire: { code, name: undefined, easyCalving: undefined, breed: undefined, gestationDays: undefined },
  straw: 'sexed',
  left: 5,
  used: 0,
  usedInAll: 0,
  inbreeding: 0,
  generations: 2,
  ...fields,
})

test('where nothing else tells them apart sires stand by name, whatever order they come in', () => {
  const candidates = ['S3', 'S1', 'S20', 'S2'].map((code) => candidate(code))
  const ordered = bestFirst(candidates, occasion, standardPolicy).map(({ sire }) => sire.code)
  expect(ordered).toEqual(['S1', 'S2', 'S20', 'S3'])
})

test('what speaks for and against a sire for a maiden is whether his calves come easily', () => {
  const young = { ...occasion, maiden: true }
  const reasons = (easyCalving: boolean | undefined) => {
    const one = candidate('S1')
    const { reasons } = rankedStraw({ ...one, sire: { ...one.sire, easyCalving } }, young, standardPolicy, [])
    return reasons.map(({ code }) => code)
  }
  expect([true, false, undefined].map(reasons)).toEqual([
    ['easy-calving'],
    ['not-easy-calving'],
    ['not-easy-calving'],
  ])
})

test.each([
  [276, 'earlier-calves', 6],
  [281, 'earlier-calves', 1],
  [282, undefined, undefined],
  [283, 'later-calves', 1],
  [288, 'later-calves', 6],
])('a calf carried %d days, of the usual 282, is said to come %s: %s', (gestationDays, code, days) => {
  const one = candidate('S1')
  const reasonsOn = (s: number | undefined, lastAiDay: number | undefined = 41) =>
    rankedStraw(
      { ...one, sire: { ...one.sire, gestationDays } },
      { ...occasion, s, lastAiDay },
      standardPolicy,
      [],
    ).reasons.map((reason) => [reason.code, reason.values.days])
  const said = code === undefined ? [] : [[code, days]]
  // Said in the last three weeks of AI, days 21-41, and never without a season.
  expect([reasonsOn(20), reasonsOn(21), reasonsOn(41)]).toEqual([[], said, said])
  expect(reasonsOn(undefined)).toEqual([])
})

test('inbreeding is said in hundredths of a percent, the share of use in whole percent', () => {
  const reasons = (fields: Partial<Candidate>) =>
    rankedStraw(candidate('S1', fields), occasion, standardPolicy, []).reasons
  expect(reasons({ inbreeding: 0.0703125 })).toEqual([{ code: 'related-6', values: { percent: 7.03 } }])
  expect(reasons({ inbreeding: 0.140625 })).toEqual([{ code: 'related-12', values: { percent: 14.06 } }])
  expect(reasons({ used: 9, usedInAll: 50 })).toEqual([
    { code: 'above-share', values: { used: 9, services: 50, share: 15 } },
  ])
})
