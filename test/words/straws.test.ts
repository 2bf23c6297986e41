import { describe, expect, test } from 'vitest'
import { notice } from '../../source/breeding/problem.ts'
import {
  insteadReasons,
  kindReasons,
  placeReasons,
  sireReasons,
} from '../../source/breeding/straws/reason.ts'
import { thawingCard } from '../../source/breeding/straws/thawing.ts'
import { sentence } from '../../source/words/index.ts'
import {
  nitrogenCautions,
  strawReason,
  strawReasonWords,
  strawSentences,
  thawingLine,
  thawingWords,
} from '../../source/words/straws.ts'

describe('reasons', () => {
  test('every code has a sentence, and no sentence is without a code', () => {
    expect(Object.keys(strawReasonWords).sort()).toEqual(
      [...kindReasons, ...insteadReasons, ...sireReasons, ...placeReasons].sort(),
    )
  })

  test('the numbers of the rule stand in the sentence', () => {
    expect(strawReason({ code: 'calved-lately', values: { calved: 44, least: 50 } })).toBe(
      'No sexed straw: she calved 44 days ago, fewer than 50.',
    )
  })
})

describe('the thawing card', () => {
  const said = (...card: Parameters<typeof thawingCard>): string =>
    thawingWords(thawingCard(...card)).join(' ')

  test('has the numbers of the straw', () => {
    const words = said('conventional', 0.25)
    for (const part of [
      '35-37 °C',
      '30 seconds',
      'within 8 minutes',
      '10 at the very most',
      'one straw',
      '8 seconds',
    ])
      expect(words).toContain(part)
    expect(words).not.toContain('45')
    expect(said('conventional', 0.5)).toContain('45 seconds')
  })

  test('says on one line of a form what the card says', () => {
    for (const volume of [0.25, 0.5, undefined, 0.3]) {
      const line = thawingLine(thawingCard('sexed', volume))
      expect(line.length).toBeLessThanOrEqual(76)
      expect(line).toMatch(/^Supplier’s card, else 35-37 °C, .*; in the cow within 8 min\.$/)
    }
    expect(thawingLine(thawingCard('sexed', 0.25))).toContain('30 s (0.25 ml)')
    expect(thawingLine(thawingCard('beef', 0.5))).toContain('45 s (0.5 ml)')
  })

  test('gives both times where the volume is not known, and none where the source has none', () => {
    expect(said('beef', undefined)).toMatch(/30 seconds.*0\.25 ml, 45.*0\.5 ml/)
    expect(said('beef', 0.3)).toContain('as long as the supplier says for 0.3 ml')
  })

  test('the supplier’s card wins, and a sexed straw has its hours', () => {
    expect(thawingWords(thawingCard('sexed', 0.25))[0]).toMatch(/supplier/)
    expect(said('sexed', 0.25)).toContain('14-20')
  })
})

test('the flask: burns, air, and a place with moving air', () => {
  const words = nitrogenCautions.join(' ')
  for (const part of ['-196', 'eye', 'gloves', 'air', 'closed vehicle']) expect(words).toContain(part)
})

test('what is odd about the stock says what to do', () => {
  const values = { date: '2026-05-02', sire: 'S1', straw: 'sexed', count: 2 }
  for (const code of Object.keys(strawSentences))
    expect(sentence(notice(code, '', values))).toMatch(/2 May 2026 .*(Count the flask|Correct it)\.$/)
})
