import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { daysAheadInSteps } from '../../source/breeding/ahead/ahead.ts'
import { openBook } from '../../source/breeding/book.ts'
import { isoDay } from '../../source/breeding/day.ts'
import { morningList, rowsBySection } from '../../source/breeding/morning-list.ts'
import { finished } from '../../source/breeding/steps.ts'

const { facts } = JSON.parse(
  readFileSync(new URL('../../sample-herd/sample-herd.json', import.meta.url), 'utf8'),
)

test.each(['2025-12-28', '2026-05-28'])(
  'the counts of the days after %s are those of their lists',
  (date) => {
    const book = openBook(facts)
    for (const { day, counts } of finished(daysAheadInSteps(book, isoDay(date), 14))) {
      const rows = [...rowsBySection(morningList(book, day))]
      expect(Object.fromEntries(counts)).toEqual(
        Object.fromEntries(rows.map(([section, ofSection]) => [section, ofSection.length])),
      )
    }
  },
)
