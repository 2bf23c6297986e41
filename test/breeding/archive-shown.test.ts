/** Closing old seasons: nothing that the program says of the day or a later one rests on what went. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { growHerd } from '../../sample-herd/growing/herd.ts'
import { archiveOf, isArchived } from '../../source/breeding/archive.ts'
import { type HerdBook, openBook } from '../../source/breeding/book.ts'
import { type Day, dayIso, isoDay, plusDays } from '../../source/breeding/day.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { seasonView } from '../../source/breeding/figures/season-view.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import { ratesOfHerd } from '../../source/breeding/rates-of-herd.ts'
import { standingOn } from '../../source/breeding/standing.ts'
import { nitrogenLevels } from '../../source/breeding/straws/nitrogen.ts'
import { stockOn } from '../../source/breeding/straws/stock.ts'
import { herdNotices } from '../../source/commands/herd-notices.ts'
import { animalJson } from '../../source/exchange/animal/json.ts'
import { listJson } from '../../source/exchange/list/json.ts'
import { seasonJson } from '../../source/exchange/season/json.ts'
import { archived } from './archived.ts'
import { anyMorning } from './histories.ts'

/** All that is shown of a day, but for facts told one by one and for seasons that were archived. */
function shownOn(book: HerdBook, day: Day, before: Day, seasons: boolean): unknown {
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, day))
  const { rates } = ratesOfHerd(book, day, standings)
  const { lots, pools, notices } = stockOn(book, day)
  const live = book.allSeasons.filter((season) => !isArchived(season, dayIso(before)))
  const list = morningList(book, day)
  return {
    list: listJson(list),
    animals: standings
      .filter(({ inHerd }) => inHerd)
      .map((standing) => ({ ...animalJson(book, standing, rates, list.rows), facts: undefined })),
    straws: { lots, pools, notices },
    nitrogen: nitrogenLevels(book, day),
    notices: herdNotices(book, day),
    seasons: (seasons ? live : []).map((season) => ({
      ...seasonJson(seasonView(book, standings, season, day), []),
      earlier: undefined,
      archive: undefined,
    })),
  }
}

/** Whether what is shown of some days is the same before and after. @returns how many facts went */
function expectTheSame(
  facts: readonly Fact[],
  today: Day,
  days: readonly number[],
  seasons: boolean,
): number {
  const { kept, went, before } = archived(facts, today)
  if (went.length === 0) return 0
  const [whole, rest] = [openBook(facts), openBook(kept)]
  for (const later of days) {
    const day = plusDays(today, later)
    expect(shownOn(rest, day, before, seasons)).toEqual(shownOn(whole, day, before, seasons))
  }
  return went.length
}

/** A herd of four years or more: that many histories of the same animals, each a year after the one before. */
const years = fc
  .array(
    anyMorning(5).map(({ facts }) => facts),
    { minLength: 4, maxLength: 5, size: 'max' },
  )
  .map((each) => {
    const known = new Set<string>()
    return each.flatMap((facts, year) =>
      facts.flatMap((fact): Fact[] => {
        if (fact.kind === 'animal') {
          if (known.has(fact.about)) return []
          known.add(fact.about)
        }
        return [movedOn(fact, year)]
      }),
    )
  })

/** A fact of another year, with an id of its own. */
function movedOn(fact: Fact, year: number): Fact {
  const text = JSON.stringify(fact).replace(
    /"(20\d\d)(-\d\d-\d\d)/g,
    (_, was: string, rest: string) => `"${Number(was) + year}${rest.replace('-02-29', '-02-28')}`,
  )
  const moved = JSON.parse(text) as Fact
  const named = (id: string): string => `${year}-${id}`
  return moved.kind === 'correction'
    ? { ...moved, id: named(moved.id), voids: named(moved.voids) }
    : { ...moved, id: named(moved.id) }
}

describe('what is shown is the same before and after', () => {
  test('of random herds, on every kind of day from the day of the archive on', () => {
    let went = 0
    fc.assert(
      fc.property(years, fc.integer({ min: 0, max: 500 }), (facts, later) => {
        went += expectTheSame(facts, plusDays(isoDay('2029-04-01'), later), [0, 1, 40, 130], true)
      }),
      { numRuns: 25 },
    )
    expect(went).toBeGreaterThan(50)
  })

  test('of the sample herd, on its morning and later', () => {
    const facts = growHerd()
    const morning = isoDay('2026-05-28')
    expect(expectTheSame(facts, morning, [0], true)).toBe(1590)
    expect(expectTheSame(facts, morning, [1, 200], false)).toBe(1590)
    expect(expectTheSame(facts, isoDay('2027-05-10'), [0], false)).toBeGreaterThan(3000)
  })
})

test('nothing is archived twice', () => {
  const { kept } = archived(growHerd(75), isoDay('2027-02-10'))
  expect(archived(kept, isoDay('2027-02-10')).went).toEqual([])
  expect(archiveOf(openBook(kept))?.before).toBe('2024-10-16')
})
