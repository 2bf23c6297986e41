/** `dawnlist export`: writes a herd as tables, or its key dates as a calendar. */
import { openBook } from '../breeding/book.ts'
import { type Day, plusDays } from '../breeding/day.ts'
import type { Outcome } from '../breeding/problem.ts'
import { standingOn } from '../breeding/standing.ts'
import { calendarEvents } from '../exchange/calendar/events.ts'
import { calendarText } from '../exchange/calendar/ics.ts'
import { exportTables } from '../exchange/csv/export.ts'
import { tableNames } from '../exchange/csv/tables/index.ts'
import { openHerdFile } from '../herd/open.ts'
import type { HerdStore } from '../herd/store.ts'
import { safeText } from '../words/safe.ts'
import type { Given, Run } from './command.ts'
import { statusOf } from './open-book.ts'
import { dayAskedFor } from './today.ts'
import { type NamedFile, writeFiles } from './write-files.ts'

/** Days back and ahead that the calendar tells of. */
const BACK = 35
const AHEAD = 550

export const run: Run = async (given, shell) => {
  const opened = await openHerdFile(given.args.FILE ?? '')
  const day = opened.ok ? dayAskedFor(given.options.date, openBook(opened.value.facts).farm.zone) : opened
  if (!day.ok) {
    shell.tell(day.problems)
    return statusOf(day.problems)
  }
  const files = opened.ok ? filesOf(opened.value, day.value, given) : opened
  const written = files.ok
    ? await writeFiles(given.options.to ?? '', files.value, given.switches.has('replace'))
    : files
  if (!written.ok) {
    shell.tell(written.problems)
    return 1
  }
  for (const path of written.value) shell.print(`${safeText(path)}\n`)
  return 0
}

function filesOf(herd: HerdStore, day: Day, { switches }: Given): Outcome<NamedFile[]> {
  if (switches.has('ics')) return { ok: true, value: [['key-dates.ics', calendarOf(herd, day)]] }
  const tables = exportTables(openBook(herd.facts), herd.path)
  return tables.ok
    ? { ok: true, value: tableNames.map((table) => [`${table}.csv`, tables.value[table]]) }
    : tables
}

function calendarOf({ facts, herdId, revision }: HerdStore, day: Day): string {
  const book = openBook(facts)
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, day))
  const events = calendarEvents(book, standings, plusDays(day, -BACK), plusDays(day, AHEAD), herdId)
  const changed =
    facts
      .map(({ at }) => at)
      .sort()
      .at(-1) ?? '1970-01-01T00:00:00.000Z'
  return calendarText(events, { farm: book.farm.name, revision, changed })
}
