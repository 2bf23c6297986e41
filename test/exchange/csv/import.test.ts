import { describe, expect, test } from 'vitest'
import type { NewFact } from '../../../source/breeding/facts.ts'
import { counts, cow, herd, imported, refusals } from './support/herd.ts'

const heat = (about: string, date: string, more: Partial<NewFact> = {}): NewFact =>
  ({ about, date, kind: 'heat', how: 'paint', certainty: 'sure', ...more }) as NewFact

describe('known, changed, new', () => {
  test('a row is known when a live fact has the same value in every column given', () => {
    const facts = herd(cow('1'), heat('1', '2026-05-01', { time: '06:10' } as Partial<NewFact>))
    const rows = ['1,2026-05-01,,heat,', '1,2026-05-01,06:10,heat,paint', '1,2026-05-01,06:10,heat,']
    for (const row of rows)
      expect(counts(imported(facts, { facts: `number,date,time,fact,how\n${row}\n` }))).toEqual({
        facts: [0, 1, 0, 0],
      })
  })

  test('n equal rows need n equal facts', () => {
    const facts = herd(cow('1'), heat('1', '2026-05-01'))
    const rows = '1,2026-05-01,heat,paint\n'.repeat(3)
    expect(counts(imported(facts, { facts: `number,date,fact,how\n${rows}` }))).toEqual({
      facts: [2, 1, 0, 0],
    })
  })

  test('a row that says little leaves the fact that only another row fits', () => {
    const facts = herd(
      cow('1'),
      heat('1', '2026-05-01'),
      heat('1', '2026-05-01', { how: 'standing' } as Partial<NewFact>),
    )
    const rows = '1,2026-05-01,heat,\n1,2026-05-01,heat,paint\n'
    expect(counts(imported(facts, { facts: `number,date,fact,how\n${rows}` }))).toEqual({
      facts: [0, 2, 0, 0],
    })
  })

  test.each([
    ['heat', 'how', 'standing'],
    ['service', 'sire', 'B4'],
    ['bar', 'reason', 'lame'],
    ['note', 'note', 'other'],
    ['hold', 'until', '2026-05-20'],
    ['with-bull', 'bull', 'B4'],
  ])('another value of %s is new', (fact, column, value) => {
    const before = {
      heat: { how: 'paint', certainty: 'sure' },
      service: { sire: 'S17' },
      note: { note: 'one' },
    }
    const facts = herd(cow('1'), {
      about: '1',
      date: '2026-05-01',
      kind: fact,
      ...before[fact as 'heat'],
    } as unknown as NewFact)
    const file = { facts: `number,date,fact,${column}\n1,2026-05-01,${fact},${value}\n` }
    expect(counts(imported(facts, file))).toEqual({ facts: [1, 0, 0, 0] })
  })

  test.each([
    ['calving', { ease: 1 }, 'ease', '3', '1'],
    ['check', { method: 'hand', result: 'unsure' }, 'result', 'pregnant', 'unsure'],
    ['score', { condition: 3 }, 'condition', '3.25', '3'],
    ['block', { block: 'spring' }, 'block', 'autumn', 'spring'],
    ['left', { reason: 'sold' }, 'reason', 'died', 'sold'],
    ['examined', { finding: 'cyst' }, 'finding', 'none', 'cyst'],
    ['loss', {}, 'time', '06:00', ''],
    ['dry', {}, 'time', '06:00', ''],
    ['looked', {}, 'time', '06:00', ''],
    ['to-bull', {}, 'time', '06:00', ''],
  ])(
    '%s happens once a day: another value is changed and recorded as a correction',
    (kind, fields, column, value, before) => {
      const facts = herd(cow('1'), { about: '1', date: '2026-05-01', kind, ...fields } as unknown as NewFact)
      const result = imported(facts, { facts: `number,date,fact,${column}\n1,2026-05-01,${kind},${value}\n` })
      expect(counts(result)).toEqual({ facts: [0, 0, 1, 0] })
      expect(result.tables[0]?.changed).toEqual([
        { path: 'facts.csv:2', name: '1', differences: [{ column, before, after: value }] },
      ])
      const [replacement, correction] = result.facts
      expect(replacement).toMatchObject({ about: '1', date: '2026-05-01', kind })
      expect(correction).toEqual({
        about: '1',
        date: '2026-05-01',
        kind: 'correction',
        voids: 'k2',
        with: replacement?.id,
      })
    },
  )

  test('what a changed row does not say stays as it was', () => {
    const facts = herd(cow('1'), {
      about: '1',
      date: '2026-05-01',
      kind: 'calving',
      ease: 1,
      calves: 2,
      calfSex: 'FM',
    })
    const result = imported(facts, { facts: 'number,date,fact,ease\n1,2026-05-01,calving,4\n' })
    expect(result.facts[0]).toMatchObject({ ease: 4, calves: 2, calfSex: 'FM' })
  })

  test('the id decides: it finds the fact on another date, and what was corrected since', () => {
    const facts = herd(cow('1'), heat('1', '2026-05-01'))
    const moved = { facts: 'number,date,fact,how,id\n1,2026-05-02,heat,paint,k2\n' }
    const once = imported(facts, moved)
    expect(once.tables[0]?.changed[0]?.differences).toEqual([
      { column: 'date', before: '2026-05-01', after: '2026-05-02' },
    ])
    expect(counts(imported(once.after, moved))).toEqual({ facts: [0, 1, 0, 0] })
  })

  test('an id that was taken back is known, and said so', () => {
    const facts = herd(cow('1'), heat('1', '2026-05-01'), {
      about: '1',
      date: '2026-05-01',
      kind: 'correction',
      voids: 'k2',
    })
    const result = imported(facts, { facts: 'number,date,fact,how,id\n1,2026-05-01,heat,paint,k2\n' })
    expect(counts(result)).toEqual({ facts: [0, 1, 0, 0] })
    expect(result.tables[0]?.notices.map(({ code }) => code)).toEqual(['row-taken-back'])
  })

  test('one id twice is one row where both say the same, else both are refused', () => {
    const head = 'number,date,fact,how,id\n'
    const row = (how: string) => `1,2026-05-01,heat,${how},x1\n`
    expect(counts(imported(herd(cow('1')), { facts: head + row('paint') + row('paint') }))).toEqual({
      facts: [1, 1, 0, 0],
    })
    const differing = imported(herd(cow('1')), { facts: head + row('paint') + row('mucus') })
    expect(refusals(differing)).toEqual(['row-id-twice facts.csv:2 id', 'row-id-twice facts.csv:3 id'])
  })

  test('a row without an id is the same calving as one with it, whether that is on record or not', () => {
    const file = { facts: 'number,date,fact,ease,id\n1,2026-05-01,calving,2,x1\n1,2026-05-01,calving,2,\n' }
    const once = imported(herd(cow('1')), file)
    expect(counts(once)).toEqual({ facts: [1, 1, 0, 0] })
    expect(counts(imported(once.after, file))).toEqual({ facts: [0, 2, 0, 0] })
  })

  test('a row that tells what a fact said before it was corrected does not undo the correction', () => {
    const facts = herd(cow('1'), { about: '1', date: '2026-05-01', kind: 'calving', ease: 1 })
    const row = (ease: number) => ({ facts: `number,date,fact,ease,id\n1,2026-05-01,calving,${ease},k2\n` })
    const corrected = imported(facts, row(3)).after
    const stale = imported(corrected, row(1))
    expect(stale.facts).toEqual([])
    expect(stale.tables[0]?.notices.map(({ code }) => code)).toEqual(['row-corrected-since'])
    expect(counts(imported(corrected, row(4)))).toEqual({ facts: [0, 0, 1, 0] })
  })

  test('a heat that says nothing more is sure, and seen some other way', () => {
    const result = imported(herd(cow('1')), { facts: 'number,date,fact\n1,2026-05-01,heat\n' })
    expect(result.facts).toEqual([
      { about: '1', date: '2026-05-01', kind: 'heat', how: 'other', certainty: 'sure' },
    ])
  })

  test('animals: the number is the id of a new one, and a changed one keeps what the row does not say', () => {
    const facts = herd(cow('1', { name: 'Bess', breed: 'HF' }))
    const result = imported(facts, { animals: 'number,breed,block\n1,Jersey,spring\n2,HF,\n' })
    expect(counts(result)).toEqual({ animals: [1, 0, 1, 0] })
    const record = { date: '2026-06-01', kind: 'animal', sex: 'F' }
    expect(result.facts).toEqual([
      { about: '1', ...record, number: '1', name: 'Bess', breed: 'Jersey', block: 'spring' },
      { about: '2', ...record, number: '2', breed: 'HF' },
    ])
    expect(result.tables[0]?.changed[0]?.differences).toEqual([
      { column: 'breed', before: 'HF', after: 'Jersey' },
      { column: 'block', before: '', after: 'spring' },
    ])
  })

  test('a number that is the id of another animal, or no id at all, gets a random id', () => {
    const facts = herd({ ...cow('9'), about: '2' } as NewFact)
    const result = imported(facts, { animals: 'number\n2\nherd\na b\n' })
    for (const { about } of result.facts) expect(about).toMatch(/^n\d+-\d+$/)
  })

  test('seasons: another length is a change of the same season, another start is another season', () => {
    const facts = herd({
      about: 'herd',
      date: '2026-01-01',
      kind: 'season',
      block: 'spring',
      matingStart: '2026-05-01',
      aiWeeks: 6,
      bullWeeks: 3,
    })
    const head = 'block,mating_start,ai_weeks,bull_weeks\n'
    expect(counts(imported(facts, { seasons: `${head}spring,2026-05-01,6,3\n` }))).toEqual({
      seasons: [0, 1, 0, 0],
    })
    expect(counts(imported(facts, { seasons: `${head}spring,2026-05-01,7,3\n` }))).toEqual({
      seasons: [0, 0, 1, 0],
    })
    expect(counts(imported(facts, { seasons: `${head}spring,2026-05-08,6,3\n` }))).toEqual({
      seasons: [1, 0, 0, 0],
    })
  })

  test('straws: counted once a day a lot; without a date it is known by any count, else a count of today', () => {
    const facts = herd({
      about: 'herd',
      date: '2026-05-01',
      kind: 'stock-take',
      sire: 'S17',
      straw: 'sexed',
      flask: '1',
      count: 20,
    })
    const head = 'date,sire,kind,flask,count\n'
    expect(counts(imported(facts, { straws: `${head},S17,sexed,,20\n` }))).toEqual({ straws: [0, 1, 0, 0] })
    expect(counts(imported(facts, { straws: `${head}2026-05-01,S17,sexed,1,18\n` }))).toEqual({
      straws: [0, 0, 1, 0],
    })
    expect(counts(imported(facts, { straws: `${head}2026-05-01,S17,sexed,2,18\n` }))).toEqual({
      straws: [1, 0, 0, 0],
    })
    const now = imported(facts, { straws: `${head},S17,sexed,1,18\n` })
    expect(now.facts).toEqual([
      {
        about: 'herd',
        date: '2026-06-01',
        kind: 'stock-take',
        sire: 'S17',
        straw: 'sexed',
        flask: '1',
        count: 18,
      },
    ])
  })

  test('stock: each row is an event', () => {
    const facts = herd({
      about: 'herd',
      date: '2026-05-01',
      kind: 'delivery',
      sire: 'S17',
      straw: 'sexed',
      count: 20,
    })
    const rows =
      'date,what,sire,kind,count,depth_cm\n2026-05-01,delivery,S17,sexed,20,\n2026-05-01,delivery,S17,sexed,25,\n2026-05-01,nitrogen,,,,"22,5"\n'
    const result = imported(facts, { stock: rows })
    expect(counts(result)).toEqual({ stock: [2, 1, 0, 0] })
    expect(result.facts.map((fact) => (fact.kind === 'nitrogen' ? fact.depthCm : fact.kind))).toEqual([
      'delivery',
      22.5,
    ])
  })

  test('policy: only settings that differ are recorded', () => {
    const result = imported(herd(), { policy: 'key,value\nchances,2\nheatDetection,"0,80"\nuseSexed,No\n' })
    expect(counts(result)).toEqual({ policy: [0, 1, 2, 0] })
    expect(result.facts.map((fact) => (fact.kind === 'policy' ? fact.set : {}))).toEqual([
      { heatDetection: 0.8 },
      { useSexed: false },
    ])
  })
})

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

describe('whole files', () => {
  test.each([
    ['a column is missing', 'number,date\n1,2026-05-01\n', ['csv-column-missing facts.csv:1 fact']],
    [
      'a column is there twice',
      'number,date,fact,Date\n1,2026-05-01,heat,\n',
      ['csv-column-twice facts.csv:1 date'],
    ],
    [
      'a quote never closes',
      'number,date,fact\n1,2026-05-01,heat\n"1,2026-05-02,heat\n',
      ['csv-quote-open facts.csv:3'],
    ],
    ['it is empty', '', ['csv-empty facts.csv']],
  ])('%s: nothing of any table is recorded', (_what, text, problems) => {
    const result = imported(herd(cow('1')), { facts: text, animals: 'number\n2\n' })
    expect(refusals(result)).toEqual(problems)
    expect(result.facts).toEqual([])
  })

  test('unknown columns are named and left out, other spellings are read and shown, order is free', () => {
    const result = imported(herd(cow('1')), {
      facts: 'Fact;Foetal Age;NUMBER;weather;date;Method;result\ncheck;35;1;fine;2026-05-01;hand;pregnant\n',
    })
    expect(result.facts).toEqual([
      { about: '1', date: '2026-05-01', kind: 'check', method: 'hand', result: 'pregnant', foetalAge: 35 },
    ])
    expect(
      result.tables[0]?.notices.map(({ code, values }) => [code, values?.found ?? values?.column]),
    ).toEqual([
      ['column-matched', 'Foetal Age'],
      ['column-unknown', 'weather'],
    ])
  })

  test('dates in another form are offered with what they would mean, and read only as said', () => {
    const file = { facts: 'number,date,fact\n1,01/05/2026,heat\n1,28/05/2026,heat\n' }
    expect(imported(herd(cow('1')), file).tables[0]?.notices[0]?.values).toEqual({
      count: 2,
      'day-first fits': 2,
      'day-first value': '01/05/2026',
      'day-first date': '2026-05-01',
      'month-first fits': 1,
      'month-first value': '01/05/2026',
      'month-first date': '2026-01-05',
    })
    const dates = (form: 'day-first' | 'month-first') =>
      imported(herd(cow('1')), file, form).facts.map(({ date }) => date)
    expect(dates('day-first')).toEqual(['2026-05-01', '2026-05-28'])
    expect(dates('month-first')).toEqual(['2026-01-05'])
  })
})
