/** What no chooser may ever do, whatever the herd. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import type { Kinship } from '../../../source/breeding/kinship/herd-kinship.ts'
import type { Serving } from '../../../source/breeding/session.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import { allotStraws, strawChooser, strawRanking } from '../../../source/breeding/straws/choose.ts'
import { stockOn } from '../../../source/breeding/straws/stock.ts'
import {
  cow,
  type Draft,
  dayOn,
  delivery,
  facts,
  farm,
  heat,
  maiden,
  policy,
  season,
  service,
  stockTake,
} from './herd.ts'

const sires = ['S1', 'S2', 'S3', 'S4']
const kinds = ['sexed', 'conventional', 'beef']
const numbers = ['1', '2', '3', '4', '5', '6']

const animal = fc.record({
  young: fc.boolean(),
  calved: fc.integer({ min: -160, max: -30 }),
  plan: fc.constantFrom('dairy', 'beef', undefined),
  seen: fc.boolean(),
  condition: fc.constantFrom(undefined, 2.5, 3, 3.25),
})
const lot = fc.record({
  sire: fc.constantFrom(...sires),
  straw: fc.constantFrom(...kinds),
  count: fc.integer({ min: 1, max: 4 }),
  counted: fc.boolean(),
})
const used = fc.record({
  by: fc.constantFrom(...numbers),
  s: fc.integer({ min: -30, max: 40 }),
  sire: fc.constantFrom(...sires),
  straw: fc.constantFrom(...kinds),
})
const servings = fc.record({
  session: fc.constantFrom('morning', 'evening', 'next-morning'),
  hours: fc.option(fc.double({ min: -3, max: 30, noNaN: true }), { nil: undefined }),
  fromOnset: fc.boolean(),
}) as fc.Arbitrary<Serving>

const scene = fc
  .record({
    animals: fc.array(animal, { minLength: 6, maxLength: 6 }),
    stock: fc.array(lot, { maxLength: 8 }),
    uses: fc.array(used, { maxLength: 12 }),
    today: fc.integer({ min: 0, max: 41 }),
    serving: servings,
    strict: fc.boolean(),
    easy: fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }),
    byTheHour: fc.boolean(),
    inbreeding: fc.array(fc.constantFrom(0, 0.03125, 0.0625, 0.09, 0.125, 0.25), {
      minLength: 24,
      maxLength: 24,
    }),
  })
  .chain((made) => {
    const { animals, stock, uses, today, strict, byTheHour, easy } = made
    const herd: Draft[] = animals.flatMap(({ young, calved, plan, seen, condition }, i) => {
      const number = numbers[i] as string
      const fields = plan === undefined ? {} : { plan }
      const score: Draft[] =
        condition === undefined ? [] : [{ kind: 'score', date: '2026-04-30', about: number, condition }]
      const before = seen ? [heat(number, today - 21)] : []
      return [
        ...(young ? maiden(number, fields) : cow(number, fields, calved)),
        ...score,
        ...before,
        heat(number, today),
      ]
    })
    const lots = stock.map(({ sire, straw, count, counted }, i) =>
      counted
        ? stockTake(-60, sire, straw, count, { easyCalving: easy[sires.indexOf(sire)], batch: `B${i}` })
        : delivery(-60, sire, straw, count, { batch: `B${i}` }),
    )
    const set = { sexedHoursStrict: strict, servingTime: byTheHour ? 'by-the-hour' : 'at-next-milking' }
    const all = facts(
      farm(),
      season(),
      policy(set),
      herd,
      lots,
      uses.map(({ by, s, sire, straw }) => service(by, s, sire, straw)),
    )
    return fc.record({
      made: fc.constant(made),
      all: fc.constant(all),
      mixed: fc.shuffledSubarray(all, { minLength: all.length }),
    })
  })

const kinshipOf =
  (inbreeding: readonly number[]): Kinship =>
  (dam, sire) => ({
    inbreeding: inbreeding[Number(dam.number) * 4 - 4 + sires.indexOf(sire)] ?? 0,
    generations: 2,
  })

test('no forbidden sire, no sexed straw outside its hours, no straw that is not there', () => {
  let proposed = 0
  fc.assert(
    fc.property(scene, ({ made, all }) => {
      const { serving, today, strict, byTheHour, inbreeding } = made
      const book = openBook(all)
      const kinship = kinshipOf(inbreeding)
      const choose = strawChooser(book, dayOn(today), kinship)
      const stock = stockOn(book, dayOn(today))
      for (const one of book.animals.values()) {
        const standing = standingOn(book, one, dayOn(today))
        const { straw, warnings, chosen, proposal } = choose(standing, serving)
        expect(warnings.includes('no-straw')).toBe(straw === undefined)
        if (straw === undefined || chosen === undefined) continue
        proposed += 1
        expect(stock.left(straw.sire, straw.straw)).toBeGreaterThan(0)
        const calf = kinship(one, straw.sire).inbreeding
        expect(calf).toBeLessThan(0.125)
        expect(warnings.includes('related-6')).toBe(calf > 0.0625)
        if (straw.straw === 'sexed') {
          expect(proposal.kind).toBe('sexed')
          const earliest = strict || byTheHour ? 14 : 0
          expect(serving.hours).toBeGreaterThanOrEqual(earliest)
          expect(serving.hours).toBeLessThanOrEqual(20)
          expect(today).toBeLessThanOrEqual(20)
          expect(standing.chancesUsed).toBe(0)
        }
        if (standing.maiden && !warnings.includes('not-easy-calving')) expect(chosen.easyCalving).toBe(true)
        if (
          today >= 35 &&
          !warnings.includes('straw-out') &&
          !warnings.includes('related-12') &&
          !standing.maiden
        )
          expect(straw.straw).toBe('beef')
      }
    }),
    { numRuns: 300 },
  )
  expect(proposed).toBeGreaterThan(300)
})

test('the order of the file changes nothing', () => {
  fc.assert(
    fc.property(scene, ({ made, all, mixed }) => {
      const answers = (file: typeof all) => {
        const book = openBook(file)
        const today = dayOn(made.today)
        const kinship = kinshipOf(made.inbreeding)
        const rank = strawRanking(book, today, kinship)
        const rows = numbers.map((number) => {
          const one = book.byNumber.get(number)
          if (one === undefined) throw new RangeError(number)
          return { standing: standingOn(book, one, today), serving: made.serving }
        })
        return {
          allotted: allotStraws(book, today, rows, kinship),
          ranked: rows.map(({ standing }) => rank(standing, made.serving)),
        }
      }
      expect(answers(mixed)).toEqual(answers(all))
    }),
    { numRuns: 200 },
  )
})

test('a whole list never promises more straws than there are', () => {
  fc.assert(
    fc.property(scene, ({ made, all }) => {
      const book = openBook(all)
      const today = dayOn(made.today)
      const rows = [...book.animals.values()].map((one) => ({
        standing: standingOn(book, one, today),
        serving: made.serving,
      }))
      const promised = allotStraws(book, today, rows, kinshipOf(made.inbreeding)).flatMap(
        ({ straw }) => straw ?? [],
      )
      const stock = stockOn(book, today)
      for (const { sire, straw } of promised) {
        const same = promised.filter((one) => one.sire === sire && one.straw === straw)
        expect(same.length).toBeLessThanOrEqual(stock.left(sire, straw))
      }
    }),
    { numRuns: 200 },
  )
})
