import { describe, expect, test } from 'vitest'
import { standardPolicy } from '../../source/breeding/policy.ts'
import { reasonsOf, sections, warnings } from '../../source/breeding/sections.ts'
import {
  phaseWords,
  reasonWords,
  sectionNames,
  sessionNames,
  sinceNames,
  warningWords,
} from '../../source/words/list.ts'

const sorted = (codes: Iterable<string>): string[] => [...new Set(codes)].sort()

describe('every code of the list has words, and no word is left over', () => {
  test('sections', () => {
    expect(sorted(Object.keys(sectionNames))).toEqual(sorted(sections))
    expect(sorted(Object.keys(reasonsOf))).toEqual(sorted(sections))
  })

  test('reasons', () => {
    expect(sorted(Object.keys(reasonWords))).toEqual(sorted(Object.values(reasonsOf).flat()))
  })

  test('warnings', () => {
    expect(sorted(Object.keys(warningWords))).toEqual(sorted(warnings))
  })

  test('sessions, and what days count from', () => {
    expect(sorted(Object.keys(sessionNames))).toEqual(['evening', 'morning', 'next-evening', 'next-morning'])
    expect(sorted(Object.keys(sinceNames))).toEqual(['calving', 'heat', 'loss', 'service'])
  })
})

describe('each says something of its own', () => {
  const phrases = [...Object.values(reasonWords), ...Object.values(warningWords)]

  test('phrases fit a row', () => {
    for (const { phrase } of phrases) {
      expect(phrase.length).toBeGreaterThan(3)
      expect(phrase.length).toBeLessThanOrEqual(32)
    }
    const reasons = Object.values(reasonWords).map(({ phrase }) => phrase)
    expect(new Set(reasons).size).toBe(reasons.length)
    const warned = Object.values(warningWords).map(({ phrase }) => phrase)
    expect(new Set(warned).size).toBe(warned.length)
  })

  test('sentences are whole, and no two are alike', () => {
    const sentences = phrases.map(({ sentence }) => sentence(standardPolicy))
    for (const sentence of sentences) {
      expect(sentence).toMatch(/^[A-Z].*[.]$/)
      expect(sentence).not.toMatch(/undefined|NaN|\{|\}/)
    }
    expect(new Set(sentences).size).toBe(sentences.length)
  })

  test('sentences say the farm’s own numbers', () => {
    const policy = {
      ...standardPolicy,
      calvedToServe: 45,
      calvedNever: 33,
      watchFrom: 17,
      watchTo: 25,
      chances: 3,
    }
    expect(reasonWords['calved-30-41'].sentence(policy)).toContain('33-44')
    expect(reasonWords['since-service'].sentence(policy)).toContain('17-25')
    expect(reasonWords['short-interval'].sentence(policy)).toContain('2-16')
    expect(reasonWords.chances.sentence(policy)).toContain('3 chances')
  })
})

test.each([
  ['before', -35, '35 days to the mating start'],
  ['before', -1, '1 day to the mating start'],
  ['ai', 0, 'AI day 1 of 42'],
  ['ai', 41, 'AI day 42 of 42'],
  ['bull', 42, 'sweep bull day 1 of 21'],
  ['bull', 62, 'sweep bull day 21 of 21'],
  ['closing', 63, 'closing weeks, day 1 of 84'],
  ['closing', 146, 'closing weeks, day 84 of 84'],
  ['closed', 147, 'closed'],
  ['closed', -36, 'opens in 1 day'],
  ['closed', -37, 'opens in 2 days'],
] as const)('%s, s %i: %s', (phase, s, said) => {
  expect(phaseWords(phase, s, 41, 62)).toBe(said)
})
