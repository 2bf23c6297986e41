/** The straws of the sample herd's mornings: the ranking of an animal's own page explains what the list proposes. */
import { expect, test } from 'vitest'
import { growHerd } from '../../sample-herd/growing/herd.ts'
import { openBook } from '../../source/breeding/book.ts'
import { isoDay } from '../../source/breeding/day.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import { standingOn } from '../../source/breeding/standing.ts'
import { strawsOnList } from '../../source/breeding/straws-on-list.ts'

const book = openBook(growHerd())

test.each(['2026-05-01', '2026-05-19', '2026-05-28'])(
  '%s: what is proposed comes first on her page, with the reason of its place',
  (date) => {
    const { rows } = morningList(book, isoDay(date))
    const proposed = rows.filter((row) => row.straw !== undefined && !row.done)
    expect(proposed.length).toBeGreaterThan(0)
    for (const row of proposed) {
      const animal = book.animals.get(row.animal)
      if (animal === undefined) throw new Error(row.number)
      const { ranked } = strawsOnList(book, rows, standingOn(book, animal, isoDay(date)))
      expect({ number: row.number, straw: [ranked[0]?.sire, ranked[0]?.straw] }).toEqual({
        number: row.number,
        straw: [row.straw?.sire, row.straw?.straw],
      })
      for (const { reasons } of ranked)
        expect(reasons.filter(({ code }) => code.startsWith('placed'))).toHaveLength(1)
    }
  },
)

test('the demo morning spreads its straws over the team: none more than 15 % of the season', () => {
  const { rows } = morningList(book, isoDay('2026-05-28'))
  const proposed = rows.flatMap((row) => (row.straw === undefined || row.done ? [] : [row.straw]))
  const season = book.services.filter(
    ({ date, natural }) => natural !== true && date >= '2026-04-01' && date <= '2026-05-28',
  )
  const all = season.length + proposed.length
  for (const sire of new Set(proposed.map((straw) => straw.sire))) {
    const used = [...season, ...proposed].filter((one) => one.sire === sire).length
    expect(used / all).toBeLessThanOrEqual(0.15)
  }
})
