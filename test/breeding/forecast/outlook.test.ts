import { expect, test } from 'vitest'
import { strawOn, tooSoon } from '../../../source/breeding/forecast/outlook.ts'
import { cow, seasonOn } from './cow.ts'

test('a heat is served again from 18 days after a service on; the bull serves any from his first day on', () => {
  const season = { ...seasonOn(0), returnsFrom: 18 }
  expect([0, 24, 25, 40, 41, 42, 60].map((day) => tooSoon(season, day))).toEqual([18, 18, 17, 2, 1, 0, 0])
})

test('the kind of straw by service and day; the last of each list holds on', () => {
  const animal = {
    ...cow,
    straws: [['sexed', 'conventional'] as const, ['beef', 'conventional', 'beef'] as const],
  }
  const kinds = (used: number): readonly string[] => [0, 1, 2, 40].map((day) => strawOn(animal, used, day))
  expect(kinds(0)).toEqual(['sexed', 'conventional', 'conventional', 'conventional'])
  expect(kinds(1)).toEqual(['beef', 'conventional', 'beef', 'beef'])
  expect(kinds(2)).toEqual(kinds(1))
})
