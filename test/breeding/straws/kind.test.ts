import { describe, expect, test } from 'vitest'
import type { PolicyFact } from '../../../source/breeding/facts.ts'
import { policyFrom } from '../../../source/breeding/policy.ts'
import type { Serving } from '../../../source/breeding/session.ts'
import { proposeKind } from '../../../source/breeding/straws/kind.ts'
import { type Occasion, occasionsAhead, occasionToday } from '../../../source/breeding/straws/occasion.ts'
import {
  cow,
  type Draft,
  farm,
  heat,
  herd,
  late,
  maiden,
  on,
  policy,
  season,
  service,
  standing,
  tonight,
} from './herd.ts'

const policyWith = (set: PolicyFact['set'] = {}) =>
  policyFrom([
    { id: 'p', about: 'herd', date: '2026-01-01', at: '2026-01-01T00:00:00Z', kind: 'policy', set },
  ])

/** A first-calver on the fifth day of mating to whom nothing stands in the way of a sexed straw. */
const fit: Occasion = {
  s: 4,
  lastAiDay: 41,
  chancesUsed: 0,
  maiden: false,
  parity: 1,
  calved: 84,
  condition: 3,
  seenCycling: true,
  hardCalving: false,
  lostCalf: false,
  treated: false,
  plan: 'dairy',
  parentsKnown: true,
  serving: tonight,
}
const asMaiden: Partial<Occasion> = { maiden: true, parity: 0, calved: undefined, condition: undefined }
const at = (hours: number | undefined, fromOnset = false): Partial<Occasion> => ({
  serving: { session: 'evening', hours, fromOnset },
})

const proposed = (change: Partial<Occasion>, set: PolicyFact['set'] = {}, heifersEnough = false): string => {
  const occasion = { ...fit, ...change }
  const { kind, reasons } = proposeKind(occasion, {
    policy: policyWith(set),
    heifersEnough: () => heifersEnough,
  })
  return [kind, ...reasons.map(({ code }) => code)].join(' ')
}

describe('one condition at a time', () => {
  test.each<[string, Partial<Occasion>, string]>([
    ['every condition holds', {}, 'sexed sexed-fits'],
    ['a maiden', asMaiden, 'sexed sexed-fits'],
    ['four calvings', { parity: 4 }, 'sexed sexed-fits'],
    ['five calvings', { parity: 5 }, 'conventional calved-often'],
    ['second service', { chancesUsed: 1 }, 'conventional not-first-service'],
    ['the first day', { s: 0 }, 'sexed sexed-fits'],
    ['before it', { s: -1 }, 'conventional outside-sexed-days'],
    ['day 20', { s: 20 }, 'sexed sexed-fits'],
    ['day 21', { s: 21 }, 'conventional outside-sexed-days'],
    ['no season', { s: undefined, lastAiDay: undefined }, 'conventional outside-sexed-days'],
    ['calved 50 days', { calved: 50 }, 'sexed sexed-fits'],
    ['calved 49 days', { calved: 49 }, 'conventional calved-lately'],
    ['calving date unknown', { calved: undefined }, 'conventional calving-unknown'],
    ['no score', { condition: undefined }, 'sexed sexed-fits'],
    ['score 2.75', { condition: 2.75 }, 'conventional thin'],
    ['a maiden of 3', { ...asMaiden, condition: 3 }, 'conventional thin'],
    ['a maiden of 3.25', { ...asMaiden, condition: 3.25 }, 'sexed sexed-fits'],
    ['not seen cycling', { seenCycling: false }, 'conventional not-seen-cycling'],
    ['a maiden not seen cycling', { ...asMaiden, seenCycling: false }, 'conventional not-seen-cycling'],
    ['a hard calving', { hardCalving: true }, 'conventional hard-calving'],
    ['a loss', { lostCalf: true }, 'conventional lost-calf'],
    ['treated', { treated: true }, 'conventional treated'],
    ['beef group', { plan: 'beef' }, 'beef plan-beef'],
    ['21 hours', at(21), 'conventional outside-sexed-hours'],
    ['20 hours', at(20), 'sexed sexed-fits'],
    ['the heat is still to come this evening', at(-2), 'conventional outside-sexed-hours'],
    ['in heat just now', at(0), 'sexed sexed-fits'],
    ['a fixed time, no heat', at(undefined), 'conventional no-heat-hours'],
    ['a day ahead', { serving: undefined }, 'sexed sexed-fits'],
    ['13 hours after an onset', at(13, true), 'sexed sexed-fits'],
    ['14 hours after an onset', at(14, true), 'sexed sexed-fits sexed-hours-best'],
    ['20 hours after an onset', at(20, true), 'sexed sexed-fits sexed-hours-best'],
    ['second last week', { s: 34, chancesUsed: 1 }, 'conventional not-first-service outside-sexed-days'],
    ['last week', { s: 35 }, 'beef last-week-beef'],
    ['last day', { s: 41 }, 'beef last-week-beef'],
    [
      'everything at once',
      { parity: 6, calved: 44, condition: 2.5 },
      'conventional calved-often calved-lately thin',
    ],
  ])('%s', (_, change, expected) => expect(proposed(change)).toBe(expected))
})

describe('what the policy changes', () => {
  test.each<[PolicyFact['set'], Partial<Occasion>, string]>([
    [{ useSexed: false }, {}, 'conventional sexed-off'],
    [{ sexedUntil: 10 }, { s: 11 }, 'conventional outside-sexed-days'],
    [{ sexedCalved: 90 }, {}, 'conventional calved-lately'],
    [{ sexedCondition: 3.25 }, {}, 'conventional thin'],
    [{ sexedConditionMaiden: 3.5 }, { ...asMaiden, condition: 3.25 }, 'conventional thin'],
    [{ beefLastWeek: false }, { s: 41 }, 'conventional outside-sexed-days'],
    [{ sexedHoursStrict: true }, at(13), 'conventional outside-sexed-hours'],
    [{ sexedHoursStrict: true }, at(14), 'sexed sexed-fits'],
    [{ servingTime: 'by-the-hour' }, at(13.9), 'conventional outside-sexed-hours'],
    [{ servingTime: 'by-the-hour' }, at(14), 'sexed sexed-fits'],
    [{ servingTime: 'by-the-hour' }, at(20), 'sexed sexed-fits'],
    [{ servingTime: 'by-the-hour' }, at(20.1), 'conventional outside-sexed-hours'],
  ])('%j', (set, change, expected) => expect(proposed(change, set)).toBe(expected))
})

test('with heifers enough a conventional straw, but first is said what speaks against a sexed one anyway', () => {
  expect(proposed({}, { replacementsWanted: 30 }, true)).toBe('conventional heifers-enough')
  expect(proposed({ condition: 2 }, { replacementsWanted: 30 }, true)).toBe('conventional thin')
})

test('reasons carry the numbers of the rule', () => {
  const setting = { policy: policyWith(), heifersEnough: () => false }
  expect(proposeKind({ ...fit, calved: 44, condition: 2.5, serving: late }, setting).reasons).toEqual([
    { code: 'calved-lately', values: { calved: 44, least: 50 } },
    { code: 'thin', values: { score: 2.5, least: 3 } },
    { code: 'outside-sexed-hours', values: { hours: 21 } },
  ])
  expect(proposeKind({ ...fit, parity: 5, s: 21 }, setting).reasons).toEqual([
    { code: 'calved-often', values: { calvings: 5, most: 4 } },
    { code: 'outside-sexed-days', values: { until: 21 } },
  ])
})

describe('what is known of her', () => {
  const of = (s: number, drafts: Draft[], serving: Serving | undefined = tonight) =>
    occasionToday(standing(herd(farm(), season(), policy({}), drafts), '1', s), serving)

  test('seen cycling: a sure heat before the one she is on', () => {
    expect(of(5, [...cow('1'), heat('1', 4)]).seenCycling).toBe(false)
    expect(of(5, [...cow('1'), heat('1', -17), heat('1', 5)]).seenCycling).toBe(true)
    expect(of(5, [...cow('1'), heat('1', -17, { certainty: 'suspect' }), heat('1', 5)]).seenCycling).toBe(
      false,
    )
    expect(of(5, [...cow('1'), heat('1', -100), heat('1', 5)]).seenCycling).toBe(false)
  })

  test('for maidens and cows calved long ago only since season day -42', () => {
    expect(of(5, [...maiden('1'), heat('1', -43), heat('1', 5)]).seenCycling).toBe(false)
    expect(of(5, [...maiden('1'), heat('1', -42), heat('1', 5)]).seenCycling).toBe(true)
    expect(of(5, [...cow('1', {}, -146), heat('1', -43), heat('1', 5)]).seenCycling).toBe(false)
    expect(of(5, [...cow('1', {}, -145), heat('1', -43), heat('1', 5)]).seenCycling).toBe(true)
  })

  test.each([
    ['ease 4', { ease: 4 }, true],
    ['ease 3', { ease: 3 }, false],
    ['twins', { calves: 2 }, true],
    ['a dead calf', { dead: 1 }, true],
  ])('hard calving: %s', (_, fields, hard) => {
    const calving: Draft = { kind: 'calving', date: '2026-02-10', about: '1', ...fields }
    expect(of(5, [...cow('1', { lactation: 1 }, null), calving]).hardCalving).toBe(hard)
  })

  test('a hard calving a year ago is over', () => {
    const calving: Draft = { kind: 'calving', date: '2025-02-10', about: '1', ease: 5 }
    expect(of(5, [...cow('1', { lactation: 1 }, null), calving, ...cow('1').slice(1)]).hardCalving).toBe(
      false,
    )
  })

  test('a loss counts until she calves again', () => {
    const loss = (date: string): Draft => ({ kind: 'loss', date, about: '1' })
    expect(of(5, [...cow('1'), loss('2026-04-20')]).lostCalf).toBe(true)
    expect(of(5, [...cow('1'), loss('2025-04-20')]).lostCalf).toBe(false)
    expect(of(5, [...cow('1', {}, -80), loss(on(-80))]).lostCalf).toBe(false)
    expect(of(5, [...cow('1', {}, -80), loss(on(-79))]).lostCalf).toBe(true)
    expect(of(5, [...maiden('1'), loss(on(-20))]).lostCalf).toBe(true)
  })

  test('treated since calving, but not for a fixed-time service', () => {
    const examined = (date: string, fields: object): Draft => ({
      kind: 'examined',
      date,
      about: '1',
      ...fields,
    })
    const treated = (date: string, fields: object) => of(5, [...cow('1'), examined(date, fields)]).treated
    expect(treated('2026-03-01', { finding: 'womb not clean', treatment: 'washed out' })).toBe(true)
    expect(treated('2026-03-01', { finding: 'nothing' })).toBe(false)
    expect(treated('2026-01-01', { treatment: 'washed out' })).toBe(false)
    // Cow 1 calved on season day -80; what the vet does today is not known this morning.
    const washed = { treatment: 'washed out' }
    expect([-81, -80, 4, 5].map((s) => treated(on(s), washed))).toEqual([false, true, true, false])
    expect(of(5, [...maiden('1'), examined(on(-100), washed)]).treated).toBe(true)
    expect(treated('2026-04-26', { treatment: 'programme', serveOn: '2026-05-06' })).toBe(false)
  })

  test('days calved, none for a maiden', () => {
    expect(of(5, cow('1', {}, -80)).calved).toBe(85)
    expect(of(5, maiden('1')).calved).toBeUndefined()
  })

  test('both her parents are named, or they are not known', () => {
    expect(of(5, cow('1', { sire: 'S90', dam: 'D90' })).parentsKnown).toBe(true)
    expect(of(5, cow('1', { sire: 'S90' })).parentsKnown).toBe(false)
    expect(of(5, cow('1', { dam: 'D90' })).parentsKnown).toBe(false)
  })

  test('no plan stated means dairy', () => {
    expect(of(5, cow('1')).plan).toBe('dairy')
    expect(of(5, cow('1', { plan: 'beef' })).plan).toBe('beef')
  })

  test('the service that uses her first chance makes the next one the second', () => {
    const served = [...cow('1'), heat('1', -20), service('1', 1, 'S1', 'sexed')]
    expect(of(1, served).chancesUsed).toBe(0)
    expect(of(22, [...served, heat('1', 22)]).chancesUsed).toBe(1)
  })
})

describe('on days ahead', () => {
  const ahead = (drafts: Draft[]) => occasionsAhead(standing(herd(farm(), season(), drafts), '1', 0))

  test('days calved grow with the day', () => {
    expect(ahead(cow('1', {}, -40))(0, 9)).toMatchObject({ s: 9, calved: 49, parity: 1, serving: undefined })
  })

  test('neither a maiden nor one without a season has days calved', () => {
    expect(ahead(maiden('1'))(0, 9).calved).toBeUndefined()
    expect(ahead(cow('1', { block: 'other' }))(0, 9).calved).toBeUndefined()
  })

  test('what is known of her last calving holds until she calves again, and then nothing is', () => {
    const hard: Draft[] = [
      ...cow('1', { lactation: 1 }, null),
      { kind: 'calving', date: on(-400), about: '1', ease: 5 },
      { kind: 'loss', date: on(-330), about: '1' },
      { kind: 'examined', date: on(-320), about: '1', treatment: 'washed out' },
      { kind: 'score', date: on(-10), about: '1', condition: 2.5 },
    ]
    const held: Draft[] = [
      service('1', -265, 'S1', 'conventional'),
      { kind: 'check', date: on(-200), about: '1', method: 'ultrasound', result: 'pregnant' },
    ]
    const known = { hardCalving: true, lostCalf: true, treated: true, condition: 2.5, parity: 2 }
    expect(ahead(hard)(0, 20)).toMatchObject(known)
    const fresh = { hardCalving: false, lostCalf: false, treated: false, condition: undefined, parity: 3 }
    expect(ahead([...hard, ...held])(0, 20)).toMatchObject(fresh)
  })

  test('one in calf calves on her due date, and then counts a calving more', () => {
    const inCalf = [
      ...cow('1', {}, -400),
      service('1', -265, 'S1', 'conventional'),
      { kind: 'check' as const, date: '2025-10-10', about: '1', method: 'ultrasound', result: 'pregnant' },
    ]
    // Served 265 days before the mating start, 282 days of gestation: due on season day 17.
    expect(ahead(inCalf)(0, 20)).toMatchObject({ calved: 3, parity: 2, maiden: false })
  })
})
