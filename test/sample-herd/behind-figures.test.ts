import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import { isoDay } from '../../source/breeding/day.ts'
import { countedIn, figuresOf } from '../../source/breeding/figures/season-figures.ts'
import { standingOn } from '../../source/breeding/standing.ts'
import { asManyBehind } from '../breeding/figures/as-many-behind.ts'

const { facts } = JSON.parse(
  readFileSync(new URL('../../sample-herd/sample-herd.json', import.meta.url), 'utf8'),
)
const book = openBook(facts)

/** Days from before a mating start to after the season, in both blocks. */
const days = [
  '2025-04-20',
  '2025-05-21',
  '2025-06-12',
  '2025-07-30',
  '2025-09-25',
  '2026-01-15',
  '2026-05-28',
]

test.each(days)('as many animals stand behind each figure of %s as it counts', (date) => {
  const day = isoDay(date)
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, day))
  let seen = 0
  for (const season of book.allSeasons) {
    if (season.matingStart > day + 35) continue
    const counted = countedIn(book, standings, season, day)
    seen += asManyBehind({ counted, figures: figuresOf(counted, book, season, day), book, season })
  }
  expect(seen).toBeGreaterThan(500)
})
