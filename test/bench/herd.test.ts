import { expect, test } from 'vitest'
import { benchDay, benchHerd, factsPerAnimal } from '../../bench/herd.ts'
import { openBook } from '../../source/breeding/book.ts'
import { plusDays } from '../../source/breeding/day.ts'
import { HERD } from '../../source/breeding/facts.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import { checkFacts } from '../../source/herd/check.ts'

test('the measuring herd is sound, of the size it says, and gives a full list', () => {
  const facts = benchHerd(300)
  expect(checkFacts(facts)).toEqual([])
  const ofAnimals = facts.filter((fact) => fact.about !== HERD)
  expect(ofAnimals.length).toBe(300 * factsPerAnimal)
  const list = morningList(openBook(facts), benchDay)
  expect(list.blocks[0]).toMatchObject({ block: 'spring', phase: 'ai' })
  expect(list.rows.length).toBeGreaterThan(40)
})

test('made for another morning it gives the same rows', () => {
  const rowsOn = (days: number) => {
    const day = plusDays(benchDay, days)
    return morningList(openBook(benchHerd(100, day)), day).rows.map(
      ({ number, section }) => `${number} ${section}`,
    )
  }
  expect(rowsOn(181)).toEqual(rowsOn(0))
})
