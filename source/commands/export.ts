/** `dawnlist export`: writes a herd as tables. */
import { openBook } from '../breeding/book.ts'
import { exportTables } from '../exchange/csv/export.ts'
import { tableNames } from '../exchange/csv/tables/index.ts'
import { openHerdFile } from '../herd/open.ts'
import { safeText } from '../words/safe.ts'
import type { Run } from './command.ts'
import { writeFiles } from './write-files.ts'

export const run: Run = async (given, shell) => {
  const { args, options, switches } = given
  const opened = await openHerdFile(args.FILE ?? '')
  if (!opened.ok) {
    shell.tell(opened.problems)
    return 1
  }
  const tables = exportTables(openBook(opened.value.facts), opened.value.path)
  if (!tables.ok) {
    shell.tell(tables.problems)
    return 1
  }
  const files = tableNames.map((table) => [`${table}.csv`, tables.value[table]] as const)
  const written = await writeFiles(options.to ?? '', files, switches.has('replace'))
  if (!written.ok) {
    shell.tell(written.problems)
    return 1
  }
  for (const path of written.value) shell.print(`${safeText(path)}\n`)
  return 0
}
