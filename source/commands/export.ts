/** `dawnlist export`: writes a herd as tables, or its key dates as a calendar. */
import { archiveOf } from '../breeding/archive.ts'
import { openBook } from '../breeding/book.ts'
import { type Day, plusDays } from '../breeding/day.ts'
import { fault, notice, type Outcome, type Problem } from '../breeding/problem.ts'
import { standingOn } from '../breeding/standing.ts'
import { adeExport, collectionText } from '../exchange/ade/write.ts'
import { calendarEvents } from '../exchange/calendar/events.ts'
import { calendarText } from '../exchange/calendar/ics.ts'
import { exportTables } from '../exchange/csv/export.ts'
import { tableNames } from '../exchange/csv/tables/names.ts'
import { harmlessJson } from '../herd/escape.ts'
import { openHerdFile } from '../herd/open.ts'
import type { HerdStore } from '../herd/store.ts'
import { safeText } from '../words/safe.ts'
import type { Given, Run, Shell } from './command.ts'
import { statusOf } from './open-book.ts'
import { dayAskedFor } from './today.ts'
import { type NamedFile, writeFiles } from './write-files.ts'

/** Days back and ahead that the calendar tells of. */
const BACK = 35
const AHEAD = 550

export const run: Run = async (given, shell) => {
  if (given.switches.has('ade') && given.switches.has('ics')) {
    shell.tell([fault('export-one', '')])
    return 2
  }
  const opened = await openHerdFile(given.args.FILE ?? '')
  const day = opened.ok ? dayAskedFor(given.options.date, openBook(opened.value.facts).farm.zone) : opened
  if (!day.ok) {
    shell.tell(day.problems)
    return statusOf(day.problems)
  }
  const files = opened.ok ? filesOf(opened.value, day.value, given, shell) : opened
  const written = files.ok
    ? await writeFiles(given.options.to ?? '', files.value, given.switches.has('replace'))
    : files
  if (!written.ok) {
    shell.tell(written.problems)
    return 1
  }
  for (const path of written.value) shell.print(`${safeText(path)}\n`)
  if (opened.ok && !given.switches.has('ics')) shell.tell(archivedFrom(opened.value))
  return 0
}

/** A notice where not all that was ever recorded is in the herd any more. */
function archivedFrom(herd: HerdStore): Problem[] {
  const archive = archiveOf(openBook(herd.facts))
  return archive === undefined
    ? []
    : [notice('export-archived', '', { before: archive.before, archive: archive.file })]
}

function filesOf(herd: HerdStore, day: Day, { switches }: Given, shell: Shell): Outcome<NamedFile[]> {
  if (switches.has('ade')) return { ok: true, value: adeOf(herd, day, shell) }
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

/** Events of the ICAR ADE standard, a file a kind; what it cannot carry is said. */
function adeOf({ facts, herdId }: HerdStore, day: Day, shell: Shell): NamedFile[] {
  const { collections, leftOut } = adeExport(facts, openBook(facts), herdId, day)
  if (leftOut.size > 0) {
    const counts = [...leftOut].map(([kind, count]) => `${kind} ${count}`).sort()
    shell.say(`Not carried by the standard, and not written: ${counts.join(', ')}.`)
  }
  return collections.map((collection) => [collection.file, collectionText(collection, harmlessJson)])
}
