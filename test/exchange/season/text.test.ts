import fc from 'fast-check'
import { expect, test } from 'vitest'
import { seasonContent } from '../../../source/exchange/season/content.ts'
import { seasonText } from '../../../source/exchange/season/text.ts'
import { anyMorning } from '../../breeding/histories.ts'
import { calving, cow, empty, heat, maiden, pregnant, service } from '../../breeding/support.ts'
import { seasonAt, seasonOf } from './any.ts'

const printed = (...given: Parameters<typeof seasonAt>): string =>
  seasonText(seasonContent(seasonAt(...given), []))

test('any season fits into 80 columns and does nothing to a terminal', () => {
  fc.assert(
    fc.property(anyMorning(6), (morning) => {
      const view = seasonOf(morning)
      const text = seasonText(seasonContent(view, [{ aiWeeks: 1 }, { heatSeen: 0.5, bulls: 2 }]))
      for (const line of text.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80)
      expect(text.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u)
      expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/)
    }),
    { numRuns: 60 },
  )
})

const calved = calving(-70)
const herd = [
  cow(calved, service(2), pregnant(40)),
  cow(calved, service(5), service(26)),
  cow(calved, service(9), empty(42)),
  cow(calved, heat(-4)),
  cow(calving(10)),
  maiden({ born: '2024-08-01' }, service(1, { straw: 'sexed' })),
]

test('the head, a share with its counts, and the unknown', () => {
  const lines = printed(60, herd).split('\n')
  expect(lines.slice(0, 4)).toEqual([
    'Long Acre, Tue 30 Jun 2026',
    'spring block, mating start Fri 1 May 2026',
    'sweep bull day 19 of 21',
    '6 animals meant for breeding at the mating start',
  ])
  expect(lines).toContain('Served in three weeks          4/6   67 %  30-90          90 %')
  expect(lines).toContain('In calf in six weeks           1/6   17 % so far       2  78 %')
})

test('a hostile name of farm, block, sire or animal is shown, not obeyed', () => {
  const evil = '\u001b[2J\u202e'
  const text = printed(
    12,
    [
      cow({ number: evil }, calving(10)),
      cow(calved, service(2, { sire: evil, inseminator: evil }), pregnant(40)),
    ],
    {},
  )
  expect(text).not.toContain('\u001b')
  expect(text).toContain('<001B>[2J<202E>')
})

test('before the mating start the three weeks are so far, and no service is old enough', () => {
  const text = printed(-7, herd)
  expect(text).toContain('Served in three weeks          0/6    0 % so far')
  expect(text).not.toContain('Held, by')
  expect(printed(10, herd)).toContain('No service of this season is 42 days old and checked yet.')
})
