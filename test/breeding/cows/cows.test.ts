/**
 * The behaviour of the morning list as a herdsperson reads it: each cow, what happened to her, and where she stands
 * on every morning of her season. The lines are written from the breeding rules, by thought.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkFacts } from '../../../source/herd/check.ts'
import { factsOf } from './facts.ts'
import { parseGroup } from './parse.ts'
import { seasonOf } from './season-of.ts'

const folder = new URL('./', import.meta.url)
const groups = readdirSync(folder)
  .filter((name) => name.endsWith('.txt'))
  .map((name) => [name, parseGroup(readFileSync(new URL(name, folder), 'utf8'))] as const)

test('there are forty cows and more, each with a title of her own', () => {
  const titles = groups.flatMap(([, group]) => group.cows.map((cow) => cow.title))
  expect(titles.length).toBeGreaterThanOrEqual(40)
  expect(new Set(titles).size).toBe(titles.length)
})

describe.each(groups)('%s', (_name, group) => {
  test.each(group.cows.map((cow) => [cow.title, cow] as const))('%s', (_title, cow) => {
    const facts = factsOf(group, cow)
    expect(checkFacts(facts)).toEqual([])
    expect(seasonOf(facts, cow.from, cow.to)).toEqual(cow.expected)
  })
})
