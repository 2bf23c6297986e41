import { describe, expect, test } from 'vitest'
import type { NewFact } from '../../../../source/breeding/facts.ts'
import { counts, cow, herd, imported, refusals, season } from '../support/herd.ts'

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
    const facts = herd(season)
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
