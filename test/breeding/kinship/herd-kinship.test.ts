import { expect, test } from 'vitest'
import { type AnimalRecord, type HerdBook, openBook } from '../../../source/breeding/book.ts'
import type { AnimalRecordFact } from '../../../source/breeding/facts.ts'
import { herdPedigree, kinshipOf } from '../../../source/breeding/kinship/herd-kinship.ts'

type Line = { sire?: string; dam?: string; sex?: 'F' | 'M'; internationalId?: string }

const bookOf = (animals: Readonly<Record<string, Line>>): HerdBook =>
  openBook(
    Object.entries(animals).map(
      ([number, line]): AnimalRecordFact => ({
        id: `fact ${number}`,
        about: `id ${number}`,
        kind: 'animal',
        date: '2026-01-01',
        at: '2026-01-01T06:00:00.000Z',
        number,
        sex: 'F',
        ...line,
      }),
    ),
  )
const animal = (book: HerdBook, number: string): AnimalRecord => {
  const found = book.byNumber.get(number)
  if (found === undefined) throw new Error(`no ${number}`)
  return found
}

test('daughters of a sire outside the file, and his straws', () => {
  const book = bookOf({ 1: { sire: 'S1', dam: '9' }, 2: { sire: 'S1' } })
  const kinship = kinshipOf(book)
  expect(kinship(animal(book, '1'), 'S1')).toEqual({ inbreeding: 0.25, generations: 1 })
  expect(kinship(animal(book, '2'), 'S2')).toEqual({ inbreeding: 0, generations: 1 })
})

test('a sire in the file is the same by number and by international ID', () => {
  const book = bookOf({
    7: { sex: 'M', internationalId: 'HOLXXXM000000000007', dam: '5' },
    1: { sire: 'HOLXXXM000000000007', dam: '5' },
    5: { sire: 'S3', dam: '4' },
  })
  const kinship = kinshipOf(book)
  expect(kinship(animal(book, '1'), '7').inbreeding).toBe(0.375)
  expect(kinship(animal(book, '1'), 'HOLXXXM000000000007')).toEqual(kinship(animal(book, '1'), '7'))
  expect(kinship(animal(book, '5'), '7').inbreeding).toBe(0.25)
})

test('a loop is named by numbers and left out; the rest of the herd keeps its figures', () => {
  const book = bookOf({
    1: { dam: '2' },
    2: { dam: '3' },
    3: { dam: '1' },
    8: { sire: 'S1' },
    9: { sire: '8', dam: '8' },
  })
  const { problems } = herdPedigree(book)
  expect(problems.map(({ code, severity, animal, values }) => ({ code, severity, animal, values }))).toEqual([
    { code: 'pedigree-loop', severity: 'notice', animal: '1', values: { animals: '1, 2, 3' } },
    { code: 'pedigree-same-parents', severity: 'notice', animal: '9', values: { parent: '8' } },
  ])
  expect(kinshipOf(book)(animal(book, '8'), 'S1').inbreeding).toBe(0.25)
  expect(kinshipOf(book)(animal(book, '1'), 'S1').inbreeding).toBe(0)
})

test('two loops are named, and an animal in both of them once', () => {
  const named = (animals: Readonly<Record<string, Line>>) =>
    herdPedigree(bookOf(animals)).problems.map(({ code, animal }) => `${code} ${animal}`)
  expect(named({ 1: { dam: '2' }, 2: { dam: '1' }, 3: { dam: '4' }, 4: { dam: '3' } })).toEqual([
    'pedigree-loop 1',
    'pedigree-loop 3',
  ])
  expect(named({ 1: { sire: '3', dam: '2' }, 2: { dam: '1' }, 3: { sex: 'M', dam: '1' } })).toEqual([
    'pedigree-loop 1',
  ])
})

test('a pedigree is read once for a book', () => {
  const book = bookOf({ 1: { sire: 'S1' } })
  expect(herdPedigree(book)).toBe(herdPedigree(book))
})

test('one animal as sire of many and dam of many: named once, and all of it left out', () => {
  const book = bookOf({
    1: { sire: 'X' },
    2: { sire: 'X' },
    3: { dam: 'X' },
    4: { dam: 'X' },
    5: { dam: 'X' },
  })
  const { problems } = herdPedigree(book)
  expect(problems[0]).toMatchObject({
    code: 'pedigree-both-roles',
    animal: 'X',
    values: { sireOf: '1', damOf: '3' },
  })
  expect(problems).toHaveLength(1)
  for (const number of ['1', '2', '3', '4', '5'])
    expect(kinshipOf(book)(animal(book, number), 'X').inbreeding).toBe(0)
})
