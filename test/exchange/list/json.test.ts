import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import { morningList } from '../../../source/breeding/morning-list.ts'
import { listJson } from '../../../source/exchange/list/json.ts'
import { anyMorning } from '../../breeding/histories.ts'
import { calving, cow, dayAt, listAt, maiden, service } from '../../breeding/support.ts'

const schema = JSON.parse(
  readFileSync(new URL('../../../docs/schemas/list.schema.json', import.meta.url), 'utf8'),
)
const validate = new Ajv({ strict: true, allErrors: true, validateFormats: false }).compile(schema)

test('the list of any herd on any day is what its JSON Schema says', () => {
  fc.assert(
    fc.property(anyMorning(), ({ facts, s }) => {
      const written = JSON.parse(JSON.stringify(listJson(morningList(openBook(facts), dayAt(s)))))
      expect([validate(written), validate.errors]).toEqual([true, null])
    }),
    { numRuns: 300 },
  )
})

test('every key is there, null where there is nothing', () => {
  const [row] = listJson(listAt(-10, maiden())).rows
  expect(row).toEqual({
    section: 'no-heat-seen',
    animal: '1',
    block: 'spring',
    days: null,
    since: null,
    chance: null,
    session: null,
    straw: null,
    reasons: ['cycling-not-seen'],
    warnings: [],
    also: null,
    done: false,
  })
})

test('blocks with phase, day and the last day of the phase; chances to four decimals', () => {
  const list = listJson(listAt(21, cow(calving(-60), service(0))))
  expect(list.blocks).toEqual([
    { block: 'spring', phase: 'ai', day: 21, mating_start: '2026-05-01', closes: '2026-06-11' },
  ])
  expect(list.rows.map((row) => [row.animal, row.since, row.days, row.chance])).toEqual([
    ['1', 'service', 21, 0.0519],
  ])
  expect(list.date).toBe('2026-05-22')
})
