import { expect, test } from 'vitest'
import type { Parents } from '../../source/breeding/kinship/impossible.ts'
import { type Pedigree, readPedigree } from '../../source/breeding/kinship/pedigree.ts'
import { calfInbreeding, inbreedingOf } from '../../source/breeding/kinship/relationship.ts'

/** `A=SxD` for each animal: sire first. */
function pedigree(...matings: readonly string[]): Pedigree {
  const parents = matings.map((mating): [string, Parents] => {
    const [animal = '', sire = '', dam = ''] = mating.split(/[=x]/)
    return [animal, { sire, dam }]
  })
  const outcome = readPedigree(new Map(parents))
  if (!outcome.ok) throw new Error(outcome.problems.map(({ code }) => code).join())
  return outcome.value
}

// Boggess, table of inbreeding by relationship; Royal Veterinary and Agricultural University Denmark, genetics notes;
// University of Nebraska, summary on inbreeding.
test.each([
  ['full sibs', ['M=SxD', 'F=SxD'], 'M', 'F', 0.25],
  ['parent and offspring', ['F=SxD'], 'S', 'F', 0.25],
  ['half sibs', ['M=SxD', 'F=SxE'], 'M', 'F', 0.125],
  ['grandparent and grand-offspring', ['P=SxD', 'F=PxE'], 'S', 'F', 0.125],
  ['first cousins', ['P=SxD', 'Q=SxD', 'M=PxE', 'F=GxQ'], 'M', 'F', 0.0625],
  ['half first cousins', ['P=SxD', 'Q=SxH', 'M=PxE', 'F=GxQ'], 'M', 'F', 0.03125],
  ['sire and great-granddaughter', ['P=SxD', 'Q=GxP', 'F=HxQ'], 'S', 'F', 0.0625],
  ['full sibs, second generation', ['M=SxD', 'F=SxD', 'N=MxF', 'G=MxF'], 'N', 'G', 0.375],
  ['full sibs, third generation', ['M=SxD', 'F=SxD', 'N=MxF', 'G=MxF', 'O=NxG', 'H=NxG'], 'O', 'H', 0.5],
] as const)('inbreeding of the calf: %s', (_, matings, sire, dam, expected) => {
  expect(calfInbreeding(pedigree(...matings), sire)(dam)).toBeCloseTo(expected, 12)
})

// Olson, Practice with the covariance table method (class handout).
test('a practice pedigree', () => {
  const olson = pedigree('R=ZxT', 'A=RxT', 'B=RxT', 'D=AxB', 'S=RxD', 'X=SxD')
  expect(calfInbreeding(olson, 'Z')('X')).toBe(0.15625)
  expect(calfInbreeding(olson, 'Z')('D')).toBe(0.125)
  expect(inbreedingOf(olson, 'X')).toBe(0.53125)
  expect(calfInbreeding(olson, 'X')('S')).toBe(0.609375)
})
