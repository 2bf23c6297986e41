import { describe, expect, test } from 'vitest'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import { strawChooser } from '../../../source/breeding/straws/choose.ts'
import { strawCounts } from '../../../source/breeding/straws/counts.ts'
import {
  calvesOf,
  farmChain,
  handbookChain,
  replacementsPerStraw,
  strawsFor,
} from '../../../source/breeding/straws/plan.ts'
import {
  cow,
  type Draft,
  dayOn,
  delivery,
  farm,
  heat,
  herd,
  maiden,
  on,
  policy,
  season,
  service,
  standing,
  tonight,
  unrelated,
} from './herd.ts'

describe('the chain of a farm', () => {
  test('takes its own conception and the share of heifers of the straw', () => {
    const chain = farmChain(true, 'sexed', defaultRates)
    expect(chain.conceive).toBeCloseTo(0.87 * 0.65, 12)
    expect(chain.female).toBe(0.9)
    expect(chain.damKept).toBe(handbookChain.damKept)
    expect(farmChain(false, 'conventional', defaultRates)).toMatchObject({ conceive: 0.55, female: 0.485 })
  })

  test('brings no replacement by a beef straw', () => {
    expect(replacementsPerStraw(farmChain(false, 'beef', defaultRates))).toBe(0)
  })

  test('straws are whole, and none for none', () => {
    expect(strawsFor(0, 0.2)).toBe(0)
    expect(strawsFor(1, 0.3)).toBe(4)
    expect(strawsFor(3, 0.3)).toBe(10)
  })

  test('every calf is a heifer or a bull', () => {
    const { heifers, bulls } = calvesOf(80, 0.55, 0.9)
    expect(heifers + bulls).toBeCloseTo(80 * 0.55, 12)
  })
})

test('what the straws of a day rest on is counted once', () => {
  const book = herd(farm(), season(), cow('1'), delivery(0, 'S1', 'sexed', 2), service('1', 0, 'S1', 'sexed'))
  const counts = strawCounts(book, dayOn(4))
  const [spring] = book.allSeasons
  expect(counts.stock()).toBe(counts.stock())
  expect(counts.use(spring)).toBe(counts.use(spring))
  expect(counts.heifers(spring)).toBe(counts.heifers(spring))
  expect([counts.use(spring).total, counts.use(undefined).total]).toEqual([1, 0])
})

describe('progress towards the heifers wanted', () => {
  const progress = (...drafts: (Draft | Draft[])[]) => {
    const book = herd(farm(), season(), cow('1'), maiden('2'), drafts.flat())
    return strawCounts(book, dayOn(4)).heifers(book.allSeasons[0])
  }
  const perCow = replacementsPerStraw(farmChain(false, 'sexed', defaultRates))
  const perMaiden = replacementsPerStraw(farmChain(true, 'sexed', defaultRates))

  test('each dairy straw of the season counts by its kind and by who was served', () => {
    const made = progress(
      policy({ replacementsWanted: 10 }),
      service('1', 0, 'S1', 'sexed'),
      service('2', 1, 'S1', 'sexed'),
      service('1', 2, 'S3', 'beef'),
      service('1', 3, 'S2', 'conventional'),
      service('1', -40, 'S1', 'sexed'),
      service('1', 5, 'S1', 'sexed'),
      service('1', 3, 'S1', 'sexed', { natural: true }),
    )
    const conventional = replacementsPerStraw(farmChain(false, 'conventional', defaultRates))
    expect(made.straws).toEqual({ sexed: 2, conventional: 1 })
    expect(made.expected).toBeCloseTo(perCow + perMaiden + conventional, 12)
    expect(made.sexedStillNeeded).toBe(Math.ceil((10 - made.expected) / perCow))
  })

  test('the band is what chance leaves open: a tenth below it and a tenth above, by the binomial', () => {
    const thirty = Array.from({ length: 30 }, (_, i) => service('1', i % 5, 'S1', 'sexed'))
    const { expected, band } = progress(policy({ replacementsWanted: 10 }), thirty)
    const atMost = (most: number): number => {
      let chance = (1 - perCow) ** 30
      let sum = chance
      for (let k = 1; k <= most; k += 1) {
        chance *= ((31 - k) / k) * (perCow / (1 - perCow))
        sum += chance
      }
      return sum
    }
    expect(expected).toBeCloseTo(30 * perCow, 12)
    expect(atMost(band.low)).toBeGreaterThanOrEqual(0.1)
    expect(atMost(band.low - 1)).toBeLessThan(0.1)
    expect(atMost(band.high)).toBeGreaterThanOrEqual(0.9)
    expect(atMost(band.high - 1)).toBeLessThan(0.9)
  })

  test('who has calved by the book, or by her record alone, was served as a cow', () => {
    const calvedOn = (s: number): Draft => ({ kind: 'calving', date: on(s), about: '3' })
    const expectedOf = (...her: Draft[]) => progress(her, service('3', 1, 'S1', 'sexed')).expected
    expect(expectedOf(...maiden('3'))).toBeCloseTo(perMaiden, 12)
    expect(expectedOf(...maiden('3', { lactation: undefined }))).toBeCloseTo(perMaiden, 12)
    expect(expectedOf(...maiden('3', { lactation: 1 }))).toBeCloseTo(perCow, 12)
    expect(expectedOf(...maiden('3'), calvedOn(0))).toBeCloseTo(perCow, 12)
    expect(expectedOf(...maiden('3'), calvedOn(1))).toBeCloseTo(perCow, 12)
    expect(expectedOf(...maiden('3'), calvedOn(2))).toBeCloseTo(perMaiden, 12)
    // Nothing is known of an animal that the file does not hold.
    expect(expectedOf()).toBeCloseTo(perCow, 12)
  })

  test('a maiden that calves later was a maiden when she was served', () => {
    const calved: Draft = { kind: 'calving', date: '2026-05-03', about: '2' }
    expect(progress(service('2', 1, 'S1', 'sexed'), calved).expected).toBeCloseTo(perMaiden, 12)
    expect(progress(service('2', 3, 'S1', 'sexed'), calved).expected).toBeCloseTo(perCow, 12)
  })

  test('as many as are wanted are enough, were it one; a straw less is not', () => {
    const used = (count: number) => Array.from({ length: count }, () => service('1', 0, 'S1', 'sexed'))
    expect(progress(policy({ replacementsWanted: 1 }), used(Math.ceil(1 / perCow))).enough).toBe(true)
    const { expected } = progress(used(5))
    expect(progress(policy({ replacementsWanted: expected }), used(5)).enough).toBe(true)
    expect(progress(policy({ replacementsWanted: expected }), used(4)).enough).toBe(false)
  })

  test('no target is never met', () => {
    expect(progress(service('1', 0, 'S1', 'sexed'))).toMatchObject({
      wanted: 0,
      enough: false,
      sexedStillNeeded: 0,
    })
  })

  test('once the straws used should bring the heifers wanted, sexed straws end', () => {
    const rows = (used: number) => {
      const services = Array.from({ length: used }, (_, i) => service('1', i % 4, 'S1', 'sexed'))
      const onHeat = [...cow('3', { sire: 'S90', dam: 'D90' }), heat('3', -17), heat('3', 4)]
      const stock = [delivery(0, 'S1', 'sexed', 50), delivery(0, 'S2', 'conventional', 50)]
      const book = herd(
        farm(),
        season(),
        policy({ replacementsWanted: 2 }),
        cow('1'),
        onHeat,
        stock,
        services,
      )
      return strawChooser(book, dayOn(4), unrelated)(standing(book, '3', 4), tonight)
    }
    const enough = Math.ceil(2 / perCow)
    expect(rows(enough - 1).straw).toEqual({ sire: 'S1', straw: 'sexed' })
    const met = rows(enough)
    expect(met.straw).toEqual({ sire: 'S2', straw: 'conventional' })
    expect(met.proposal.reasons).toEqual([{ code: 'heifers-enough', values: { wanted: 2 } }])
  })
})
