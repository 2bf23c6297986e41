/**
 * The morning list a second time, in SQL: written from the breeding rules and from nothing of source/, so that the
 * two can be held against each other.
 */
import { readFileSync } from 'node:fs'
import { DatabaseSync } from 'node:sqlite'
import type { Day } from '../../source/breeding/day.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import type { Row } from '../../source/breeding/list.ts'
import { sections } from '../../source/breeding/sections.ts'

/** What both say of a row; straws and chances are left to the rules in source. */
export type TwinRow = Pick<
  Row,
  | 'section'
  | 'animal'
  | 'number'
  | 'block'
  | 'reasons'
  | 'since'
  | 'days'
  | 'session'
  | 'warnings'
  | 'also'
  | 'done'
>

const script = (name: string): string => readFileSync(new URL(`${name}.sql`, import.meta.url), 'utf8')
const ofHerd = script('facts')
const ofDay = ['cycles', 'in-calf', 'standing', 'sections'].map(script)
const tablesOfDay = ofDay.flatMap((text) =>
  [...text.matchAll(/^CREATE TABLE ("?\w+"?)/gm)].map(([, name]) => name as string),
)

interface Told {
  readonly section: number
  readonly animal: string
  readonly number: string
  readonly block: string | null
  readonly reasons: string
  readonly since: Row['since'] | null
  readonly days: number | null
  readonly session: Row['session'] | null
  readonly warnings: string
  readonly also: number | null
  readonly done: number
}

/** A herd in a database. */
export class Twin {
  readonly #database = new DatabaseSync(':memory:')

  /** @param facts in the order they were recorded */
  constructor(facts: readonly Fact[]) {
    const database = this.#database
    database.exec(`
      CREATE TABLE fact (seq INTEGER PRIMARY KEY, id TEXT, kind TEXT, about TEXT, date TEXT, time TEXT, body TEXT);
      CREATE TABLE list (today INTEGER);
      INSERT INTO list VALUES (0);
      BEGIN`)
    const insert = database.prepare('INSERT INTO fact VALUES (?, ?, ?, ?, ?, ?, ?)')
    for (const [place, fact] of facts.entries())
      insert.run(place, fact.id, fact.kind, fact.about, fact.date, fact.time ?? null, JSON.stringify(fact))
    database.exec(`COMMIT; ${ofHerd}`)
  }

  /** The rows of a day, in the order of the list; those of the watch by number. */
  rows(today: Day): readonly TwinRow[] {
    const database = this.#database
    for (const table of tablesOfDay) database.exec(`DROP TABLE IF EXISTS ${table}`)
    database.prepare('UPDATE list SET today = ?').run(today)
    for (const text of ofDay) database.exec(text)
    const told = database
      .prepare(
        `SELECT row.* FROM row LEFT JOIN shown ON shown.block = row.block
         ORDER BY section, coalesce(shown.place, 1e9), first, second, CAST(number AS INTEGER), number`,
      )
      .all() as unknown as Told[]
    return told.map(asRow)
  }

  close(): void {
    this.#database.close()
  }
}

const asRow = (told: Told): TwinRow => ({
  section: sections[told.section - 1] as Row['section'],
  animal: told.animal,
  number: told.number,
  block: told.block ?? undefined,
  reasons: told.reasons.split(' ') as unknown as Row['reasons'],
  since: told.since ?? undefined,
  days: told.days ?? undefined,
  session: told.session ?? undefined,
  warnings: (told.warnings === '' ? [] : told.warnings.split(' ')) as unknown as Row['warnings'],
  also: told.also === null ? undefined : sections[told.also - 1],
  done: told.done === 1,
})
