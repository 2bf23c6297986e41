import { describe, expect, test } from 'vitest'
import type { NewFact } from '../../../../source/breeding/facts.ts'
import { counts, cow, herd, imported, refusals } from '../support/herd.ts'

describe('refused, with line, column and reason', () => {
  const facts = herd(cow('1', { born: '2022-02-01' }), { ...cow('9'), sex: 'M' } as NewFact)
  const head = 'number,date,fact,how,method,result,ease,calves,dead,calf_sex,condition,until,note,id\n'

  test.each([
    ['an unknown animal', '7,2026-05-01,heat', 'fact-animal-unknown facts.csv:2 number'],
    ['30 February', '1,2026-02-30,heat', 'cell-date facts.csv:2 date'],
    ['a date in another form', '1,01/05/2026,heat', 'cell-date-form facts.csv:2 date'],
    ['a date of two figures for the year', '1,01/05/26,heat', 'cell-date facts.csv:2 date'],
    ['no date', '1,,heat', 'cell-missing facts.csv:2 date'],
    ['no number', ',2026-05-01,heat', 'cell-missing facts.csv:2 number'],
    ['an unknown fact', '1,2026-05-01,foaling', 'cell-choice facts.csv:2 fact'],
    ['a day to come', '1,2026-06-02,heat', 'date-future facts.csv:2'],
    ['a day before her birth', '1,2021-05-01,heat', 'date-before-birth facts.csv:2'],
    ['the heat of a bull', '9,2026-05-01,heat', 'animal-male facts.csv:2'],
    ['a check without a result', '1,2026-05-01,check,,hand', 'cell-needed facts.csv:2 result'],
    ['a column of another fact', '1,2026-05-01,heat,,hand', 'column-not-for-fact facts.csv:2 method'],
    ['an ease of 9', '1,2026-05-01,calving,,,,9', 'cell-whole facts.csv:2 ease'],
    ['more dead than born', '1,2026-05-01,calving,,,,,1,2', 'calving-dead facts.csv:2 dead'],
    ['sexes of two for one born', '1,2026-05-01,calving,,,,,,,FM', 'calving-sexes facts.csv:2 calf_sex'],
    ['a score between the quarters', '1,2026-05-01,score,,,,,,,,3.1', 'cell-steps facts.csv:2 condition'],
    ['a hold that ends before it begins', '1,2026-05-01,hold,,,,,,,,,2026-04-01', 'date-order facts.csv:2'],
    ['a cell too many', `1,2026-05-01,note${','.repeat(10)}lame,,left hind`, 'row-long facts.csv:2'],
    ['an id that is none', '1,2026-05-01,heat,,,,,,,,,,,a b', 'id-form facts.csv:2 id'],
    ['the id of something else', '1,2026-05-01,heat,,,,,,,,,,,k1', 'id-taken facts.csv:2 id'],
    ['the header once more', head.trim(), 'row-header facts.csv:2'],
    [
      'a text without end',
      `1,2026-05-01,note${','.repeat(10)}${'x'.repeat(10_001)}`,
      'cell-long facts.csv:2 note',
    ],
  ])('%s', (_what, row, refusal) => {
    const result = imported(facts, { facts: `${head}${row}\n1,2026-05-03,heat\n` })
    expect(refusals(result)).toEqual([refusal])
    expect(counts(result).facts).toEqual([1, 0, 0, 1])
    expect(result.facts).toHaveLength(1)
  })

  test('two rows that cannot both be right are both refused, each naming the other', () => {
    const result = imported(facts, {
      facts: `number,date,fact,ease\n1,2026-05-01,calving,1\n1,2026-05-01,calving,3\n`,
    })
    expect(refusals(result)).toEqual(['row-contradicts facts.csv:2', 'row-contradicts facts.csv:3'])
    expect(result.tables[0]?.refused.map(({ values }) => values?.other)).toEqual([
      'facts.csv:3',
      'facts.csv:2',
    ])
  })

  test('an animal that is there twice in the file, and the facts of one whose row was refused', () => {
    const result = imported(facts, {
      animals: 'number,breed,born\n3,HF,\n3,Jersey,\n4,HF,2022-02-30\n5,HF,2026-07-01\n6,,\n',
      facts:
        'number,date,fact\n3,2026-05-01,heat\n4,2026-05-01,heat\n5,2026-05-01,heat\n6,2026-05-01,heat\n1,2026-05-01,heat\n',
    })
    expect(refusals(result)).toEqual([
      'row-twice animals.csv:2',
      'row-twice animals.csv:3',
      'cell-date animals.csv:4 born',
      'date-future animals.csv:5 born',
      'fact-animal-refused facts.csv:2 number',
      'fact-animal-refused facts.csv:3 number',
      'fact-animal-refused facts.csv:4 number',
    ])
    expect(counts(result)).toEqual({ animals: [1, 0, 0, 4], facts: [2, 0, 0, 3] })
  })

  test('an animal that is its own dam, and an international ID of two', () => {
    const result = imported(facts, { animals: 'number,dam,international_id\n3,3,\n4,,I1\n5,,I1\n' })
    expect(refusals(result)).toEqual([
      'animal-own-parent animals.csv:2 dam',
      'animal-id-shared animals.csv:3 international_id',
      'animal-id-shared animals.csv:4 international_id',
    ])
  })

  test('stock: a delivery without straws, a depth without a number, a day to come', () => {
    const rows =
      '2026-05-01,delivery,,,,\n2026-05-01,nitrogen,,,,\n2026-05-01,nitrogen,S17,,,20\n2027-05-01,nitrogen,,,,20\n'
    expect(refusals(imported(facts, { stock: `date,what,sire,kind,count,depth_cm\n${rows}` }))).toEqual([
      'cell-needed stock.csv:2 sire',
      'cell-needed stock.csv:3 depth_cm',
      'column-not-for-fact stock.csv:4 sire',
      'date-future stock.csv:5 date',
    ])
  })

  test('policy: no such setting, and a value out of range', () => {
    expect(refusals(imported(facts, { policy: 'key,value\nluck,7\ncalvedToServe,500\n' }))).toEqual([
      'setting-unknown policy.csv:2 key',
      'setting-value policy.csv:3 value',
    ])
  })
})
