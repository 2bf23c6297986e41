import { describe, expect, test } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import type { NewFact } from '../../../source/breeding/facts.ts'
import { counts, cow, herd } from '../csv/support/herd.ts'
import { imported } from './support/files.ts'

import { envelope, heat, read } from './support/others.ts'

describe('the same event again', () => {
  test('the same id replaces, the latest change counts', () => {
    const once = read(heat)
    const suspect = {
      ...heat,
      certainty: 'Suspect',
      meta: { ...heat.meta, modified: '2026-05-02T06:00:00Z' },
    }
    const later = imported(once.after, { 'a.json': [suspect, heat] })
    expect(counts(later)).toEqual({ animals: [0, 0, 0, 0], facts: [0, 0, 1, 0] })
    expect(
      openBook(later.after)
        .animals.get('412')
        ?.happenings.map(({ fact }) => (fact.kind === 'heat' ? fact.certainty : '')),
    ).toEqual(['suspect'])
    expect(imported(later.after, { 'a.json': [suspect, heat] }).facts).toEqual([])
  })

  test('an older file does not undo what was corrected since', () => {
    const once = read(heat)
    const suspect = {
      ...heat,
      certainty: 'Suspect',
      meta: { ...heat.meta, modified: '2026-05-02T06:00:00Z' },
    }
    const later = imported(once.after, { 'a.json': [suspect] })
    const stale = imported(later.after, { 'a.json': [{ ...heat, certainty: 'InHeat' }] })
    expect(stale.facts).toEqual([])
    expect(stale.tables[1]?.notices.map(({ code }) => code)).toEqual(['row-corrected-since'])
  })

  test('what is deleted there is taken back here, once', () => {
    const once = read(heat)
    const gone = { 'a.json': [{ ...heat, meta: { ...heat.meta, isDeleted: true } }] }
    const later = imported(once.after, gone)
    expect(later.facts).toMatchObject([
      { kind: 'correction', date: '2026-05-01', voids: once.after.at(-1)?.id },
    ])
    expect(openBook(later.after).animals.get('412')?.happenings).toEqual([])
    expect(imported(later.after, gone).facts).toEqual([])
    expect(read({ ...heat, meta: { ...heat.meta, isDeleted: true } }).facts).toEqual([])
  })

  test('a time with the bull whose end is no longer told goes on', () => {
    const run = { ...heat, resourceType: 'ReproInseminationEvent', inseminationType: 'RunWithBull' }
    const once = read({ ...run, eventEndDateTime: '2026-05-20T00:00:00Z' })
    const later = imported(once.after, { 'a.json': [run] })
    expect(
      openBook(later.after)
        .animals.get('412')
        ?.happenings.map(({ fact }) => fact.kind),
    ).toEqual(['with-bull'])
    expect(imported(later.after, { 'a.json': [run] }).facts).toEqual([])
  })

  test('a heat that was recorded by hand before is known', () => {
    const facts = herd(cow('412'), { ...envelope, kind: 'heat', how: 'paint', certainty: 'sure' } as NewFact)
    expect(counts(imported(facts, { 'a.json': [heat] }))).toMatchObject({ facts: [0, 1, 0, 0] })
  })
})
