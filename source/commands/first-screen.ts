/** The first screen, where no herd was named and none was opened before. */
import { existsSync } from 'node:fs'
import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { dirname, join, resolve } from 'node:path'
import type { Fact, NewFact } from '../breeding/facts.ts'
import type { Problem } from '../breeding/problem.ts'
import { createHerdFile } from '../herd/create.ts'
import { asFacts } from '../herd/recording.ts'
import { thisComputer } from '../herd/store/environment.ts'
import { tableFields } from '../morning/forms/new-herd.ts'
import type { Wish } from '../morning/welcome.ts'
import { sentence } from '../words/index.ts'
import type { Shell } from './command.ts'
import { dataFolder } from './folders.ts'
import { tablesReport } from './import-report.ts'
import { planOf, readSheets } from './import-sheets.ts'
import { nowOn } from './today.ts'

const rememberedIn = (shell: Shell): string =>
  join(dataFolder(shell.env, process.platform), 'last-opened.txt')

/** The herd file that was opened last, where one was. */
export async function lastOpened(shell: Shell): Promise<string | undefined> {
  try {
    const path = (await readFile(rememberedIn(shell), 'utf8')).trim()
    return path === '' ? undefined : path
  } catch {
    // Nothing is remembered, or it cannot be read: the first screen asks.
    return undefined
  }
}

/** Remembers a herd file for the next time that none is named. A computer that will not keep it is no trouble. */
export async function remember(file: string, shell: Shell): Promise<void> {
  const path = rememberedIn(shell)
  try {
    await mkdir(dirname(path), { recursive: true })
    await writeFile(path, `${resolve(file)}\n`)
  } catch {
    // Then the file is named again next time.
  }
}

/** Asks what to begin with. @returns the file to open, the sample herd, or how the user left */
export async function firstScreen(shell: Shell, ascii: boolean) {
  const { asciiOnly, openFirstScreen, themeFor, wantsColours } = await import('../screens/index.ts')
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone
  return openFirstScreen({
    now: nowOn(zone),
    zone,
    tables: tablesHere(process.cwd()),
    theme: themeFor({ colours: wantsColours(shell.env), ascii: ascii || asciiOnly(shell.env) }),
    deeds: deeds(),
    stdin: process.stdin,
    stdout: process.stdout,
    platform: process.platform,
  })
}

/** Tables of the usual names that lie in the folder, for the form to begin with. */
const tablesHere = (folder: string): Record<string, string> =>
  Object.fromEntries(
    tableFields
      .filter((table) => existsSync(join(folder, `${table}.csv`)))
      .map((table) => [`table-${table}`, `${table}.csv`]),
  )

function deeds() {
  let agreed: { file: string; facts: readonly NewFact[] } | undefined
  const make = async (file: string, facts: readonly NewFact[]) => {
    const created = await createHerdFile(file, facts)
    return created.ok ? ({ is: 'open', file } as const) : wrong(created.problems)
  }
  return {
    begin: async ({ farm, values, tables }: Wish & { is: 'herd' }) => {
      const file = (values['herd-file'] ?? '').trim()
      if (!tables) return make(file, [farm])
      const sheets = await readSheets(pathsOf(values))
      if (!sheets.ok) return wrong(sheets.problems)
      const facts: Fact[] = asFacts([farm], { at: thisComputer.now() })
      const plan = planOf(facts, sheets.value)
      if (!plan.ok) return wrong(plan.problems)
      agreed = { file, facts: [farm, ...plan.value.facts] }
      return { is: 'report', lines: tablesReport(plan.value) } as const
    },
    record: async () =>
      agreed === undefined ? ({ is: 'wrong', sentences: [] } as const) : make(agreed.file, agreed.facts),
  }
}

const wrong = (problems: readonly Problem[]) => ({ is: 'wrong', sentences: problems.map(sentence) }) as const

const pathsOf = (values: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(
    Object.entries(values)
      .filter(([name, value]) => name.startsWith('table-') && value.trim() !== '')
      .map(([name, value]) => [name.slice('table-'.length), value.trim()]),
  )
