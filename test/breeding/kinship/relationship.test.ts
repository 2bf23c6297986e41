import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Parents } from '../../../source/breeding/kinship/impossible.ts'
import { type Pedigree, readPedigree } from '../../../source/breeding/kinship/pedigree.ts'
import {
  calfInbreeding,
  inbreedingOf,
  relationshipTo,
} from '../../../source/breeding/kinship/relationship.ts'
import { asNumber, dropGenes, randomPedigree, recursive, table } from './other-ways.ts'

function read(parents: ReadonlyMap<string, Parents>): Pedigree {
  const outcome = readPedigree(parents)
  if (!outcome.ok) throw new Error(`refused: ${outcome.problems.map(({ code }) => code).join()}`)
  return outcome.value
}

/** A seeded stream of numbers, made by fast-check's own generator through one integer. */
const stream = (seed: number): (() => number) => {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 4294967296
  }
}

test('agrees with the whole table and with exact fractions on random pedigrees', () => {
  fc.assert(
    fc.property(
      fc.nat(),
      fc.integer({ min: 2, max: 50 }),
      fc.integer({ min: 2, max: 8 }),
      (seed, size, founders) => {
        const parents = randomPedigree(stream(seed), size, founders)
        const pedigree = read(parents)
        const byTable = table(parents)
        const exact = recursive(parents)
        const ids = [...parents.keys()]
        let worst = 0
        for (const [i, a] of ids.entries()) {
          const relationship = relationshipTo(pedigree, a)
          for (const [j, b] of ids.entries()) {
            const offTable = Math.abs(relationship(b) - (byTable[i]?.[j] ?? Number.NaN))
            worst = Math.max(worst, offTable, Math.abs(relationship(b) - 2 * asNumber(exact(a, b))))
          }
          const { sire, dam } = parents.get(a) ?? {}
          const inbred = sire === undefined || dam === undefined ? 0 : asNumber(exact(sire, dam))
          worst = Math.max(worst, Math.abs(inbreedingOf(pedigree, a) - inbred))
        }
        expect(worst).toBeLessThan(1e-12)
      },
    ),
    { numRuns: 60 },
  )
})

test('the order of the pedigree does not matter', () => {
  fc.assert(
    fc.property(fc.nat(), (seed) => {
      const parents = randomPedigree(stream(seed), 40, 5)
      const [here, turned] = [read(parents), read(new Map([...parents].reverse()))]
      for (const a of ['0', '17', '39']) {
        const [one, other] = [relationshipTo(here, a), relationshipTo(turned, a)]
        const apart = [...parents.keys()].map((b) => Math.abs(one(b) - other(b)))
        expect(Math.max(...apart)).toBeLessThan(1e-12)
      }
    }),
    { numRuns: 20 },
  )
})

test('agrees with genes dropped through the pedigree, within four standard errors', () => {
  const random = stream(20260528)
  for (let round = 0; round < 3; round += 1) {
    const parents = randomPedigree(random, 30, 4)
    const pedigree = read(parents)
    const pairs = Array.from({ length: 40 }, () =>
      [Math.floor(random() * 30), Math.floor(random() * 30)].map(String),
    )
    const hits = pairs.map(() => 0)
    const drops = 20_000
    for (let drop = 0; drop < drops; drop += 1) {
      const genes = dropGenes(parents, random)
      for (const [i, [a = '', b = '']] of pairs.entries()) {
        const [one, other] = [genes.get(a)?.[random() < 0.5 ? 0 : 1], genes.get(b)?.[random() < 0.5 ? 0 : 1]]
        if (one === other) hits[i] = (hits[i] ?? 0) + 1
      }
    }
    for (const [i, [a = '', b = '']] of pairs.entries()) {
      const kinship = relationshipTo(pedigree, a)(b) / 2
      const error = Math.sqrt((kinship * (1 - kinship)) / drops)
      expect(Math.abs((hits[i] ?? 0) / drops - kinship), `${a} and ${b}`).toBeLessThanOrEqual(
        4 * error + 1e-12,
      )
    }
  }
})

test('parents that are no keys of their own are founders, and may be shared', () => {
  const pedigree = read(
    new Map([
      ['a', { sire: 'S', dam: 'x' }],
      ['b', { sire: 'S', dam: 'y' }],
    ]),
  )
  expect(relationshipTo(pedigree, 'a')('b')).toBe(0.25)
  expect(calfInbreeding(pedigree, 'S')('a')).toBe(0.25)
  expect(calfInbreeding(pedigree, 'S')('x')).toBe(0)
})

test('animals that the pedigree does not hold are unrelated', () => {
  const pedigree = read(new Map([['a', {}]]))
  expect(relationshipTo(pedigree, 'stranger')('a')).toBe(0)
  expect(relationshipTo(pedigree, 'a')('stranger')).toBe(0)
  expect(relationshipTo(pedigree, 'stranger')('stranger')).toBe(1)
  expect(inbreedingOf(pedigree, 'stranger')).toBe(0)
})
