import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type HerdBook, openBook } from '../../../source/breeding/book.ts'
import { isoDay } from '../../../source/breeding/day.ts'
import type { Fact, NewFact } from '../../../source/breeding/facts.ts'
import { seasonShown, seasonView } from '../../../source/breeding/figures/season-view.ts'
import { morningList } from '../../../source/breeding/morning-list.ts'
import { ratesOfHerd } from '../../../source/breeding/rates-of-herd.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import { stockOn } from '../../../source/breeding/straws/stock.ts'
import { animalJson } from '../../../source/exchange/animal/json.ts'
import { exportTables } from '../../../source/exchange/csv/export.ts'
import { importPlan, type Sheets } from '../../../source/exchange/csv/import/plan.ts'
import { readSheet } from '../../../source/exchange/csv/reading.ts'
import { tableNames } from '../../../source/exchange/csv/tables/names.ts'
import { listJson } from '../../../source/exchange/list/json.ts'
import { seasonJson } from '../../../source/exchange/season/json.ts'
import { checkFacts } from '../../../source/herd/check.ts'
import { newId } from '../../../source/herd/ids.ts'
import { asFacts } from '../../../source/herd/recording.ts'
import { farm, herds } from './support/herds.ts'

const today = isoDay('2026-06-01')
const at = new Date('2026-06-01T05:00:00Z')

function sheetsOf(facts: readonly Fact[]): Sheets {
  const tables = exportTables(openBook(facts), 'x.json')
  if (!tables.ok) throw new Error('not exported')
  return Object.fromEntries(
    tableNames.map((name) => {
      const sheet = readSheet(Buffer.from(tables.value[name]), `${name}.csv`)
      if (!sheet.ok) throw new Error(`${name}.csv is not read`)
      return [name, sheet.value]
    }),
  )
}

function imported(facts: readonly Fact[], sheets: Sheets) {
  const plan = importPlan(facts, sheets, { today, newId })
  if (!plan.ok) throw new Error('not planned')
  return { ...plan.value, after: [...facts, ...asFacts(plan.value.facts, { at })] }
}

const newHerd = () => asFacts([farm as unknown as NewFact], { at })

/** Ids of facts as they are known to a herd; numbers for animals, whose ids are their own herd's. */
function view(book: HerdBook, date: string) {
  const day = isoDay(date)
  const { rates } = ratesOfHerd(book, day)
  const animals = [...book.byNumber.values()].sort((a, b) => (a.number < b.number ? -1 : 1))
  const stock = stockOn(book, day)
  const standings = animals.map((animal) => standingOn(book, animal, day))
  const season = seasonShown(book, day)
  const list = morningList(book, day)
  return {
    figures: season && { ...seasonView(book, standings, season, day).figures, season: undefined },
    list: listJson(list),
    animals: standings.map((standing) => animalJson(book, standing, rates, list.rows)),
    stock: [stock.lots, stock.pools, [...stock.unaccounted]],
  }
}

test('a herd that is exported and imported is the same herd on every date', () => {
  fc.assert(
    fc.property(herds, (facts) => {
      expect(checkFacts(facts).filter(({ severity }) => severity === 'fault')).toEqual([])
      const { after, tables } = imported(newHerd(), sheetsOf(facts))
      expect(tables.flatMap(({ refused }) => refused)).toEqual([])
      expect(checkFacts(after)).toEqual([])
      const before = openBook(facts)
      const book = openBook(after)
      expect(book.policy).toEqual(before.policy)
      expect(book.allSeasons.map(({ factId, ...season }) => season)).toEqual(
        before.allSeasons.map(({ factId, ...season }) => season),
      )
      for (const date of ['2025-05-02', '2025-05-22', '2025-12-30', '2026-06-01'])
        expect(view(book, date)).toEqual(view(before, date))
    }),
    { numRuns: 100 },
  )
})

test('so are its seasons, forecast and all', () => {
  const season = (facts: readonly Fact[]) => {
    const book = openBook(facts)
    const day = isoDay('2025-05-22')
    const standings = [...book.byNumber.values()].map((animal) => standingOn(book, animal, day))
    const shown = seasonShown(book, day)
    return shown && seasonJson(seasonView(book, standings, shown, day))
  }
  fc.assert(
    fc.property(herds, (facts) => {
      expect(season(imported(newHerd(), sheetsOf(facts)).after)).toEqual(season(facts))
    }),
    { numRuns: 25 },
  )
})

test('exporting the imported herd writes the same files', () => {
  fc.assert(
    fc.property(herds, (facts) => {
      const { after } = imported(newHerd(), sheetsOf(facts))
      expect(exportTables(openBook(after), 'x.json')).toEqual(exportTables(openBook(facts), 'x.json'))
    }),
    { numRuns: 100 },
  )
})

test('reading an export back into its own herd adds nothing', () => {
  fc.assert(
    fc.property(herds, (facts) => {
      expect(imported(facts, sheetsOf(facts)).facts).toEqual([])
    }),
    { numRuns: 100 },
  )
})

test('two animals with one number are not exported: no table could tell their facts apart', () => {
  const animal = (about: string): NewFact => ({
    about,
    date: '2026-01-01',
    kind: 'animal',
    number: '412',
    sex: 'F',
  })
  const exported = exportTables(openBook(asFacts([animal('a'), animal('b')], { at })), 'x.json')
  expect(exported.ok ? [] : exported.problems.map(({ code, animal: number }) => [code, number])).toEqual([
    ['export-number-shared', '412'],
  ])
})
