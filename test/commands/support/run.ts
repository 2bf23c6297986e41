/** Runs the program as a user does: the bundle where the whole suite runs, else the source. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { onTestFinished } from 'vitest'
import { HERD } from '../../../source/breeding/facts.ts'
import type { Shell } from '../../../source/commands/command.ts'
import { runWords } from '../../../source/commands/run.ts'
import { createHerdFile } from '../../../source/herd/create.ts'
import { sentence } from '../../../source/words/index.ts'

export const entry =
  process.env.DAWNLIST_PROGRAM ?? fileURLToPath(new URL('../../../source/entry.ts', import.meta.url))

/** Each run starts a program of its own, which takes seconds where the machine is busy. */

export interface Ended {
  readonly status: number | null
  /** Standard output. */
  readonly out: string
  /** Standard error. */
  readonly err: string
}

/** A folder for one test, removed after it. */
export class Folder {
  readonly path = mkdtempSync(join(tmpdir(), 'dawnlist-'))

  constructor() {
    onTestFinished(() => rmSync(this.path, { recursive: true, force: true }))
  }

  /** Path of a file in the folder; written first where a content is given. */
  file(name: string, content?: string | Uint8Array): string {
    const path = join(this.path, name)
    if (content !== undefined) writeFileSync(path, content)
    return path
  }

  /** Runs `dawnlist` with words in this folder. */
  run(...words: string[]): Ended {
    return this.runAs({}, ...words)
  }

  /** The same with further settings of the process: another user, other variables, what comes by standard input. */
  runAs(settings: { uid?: number; env?: Record<string, string>; input?: string }, ...words: string[]): Ended {
    const { uid, env, input } = settings
    const ended = spawnSync(process.execPath, [entry, ...words], {
      cwd: this.path,
      encoding: 'utf8',
      stdio: [input === undefined ? 'ignore' : 'pipe', 'pipe', 'pipe'],
      ...(input === undefined ? {} : { input }),
      env: { ...process.env, NO_COLOR: '1', ...env },
      ...(uid === undefined ? {} : { uid, gid: uid }),
    })
    return { status: ended.status, out: ended.stdout, err: ended.stderr }
  }

  /** A new herd in `herd.json`. @returns its path */
  async herd(name = 'herd.json'): Promise<string> {
    const path = this.file(name)
    const farm = { about: HERD, date: '2026-01-01', kind: 'farm', name: 'Long Acre' } as const
    const made = await createHerdFile(path, [
      { ...farm, zone: 'Europe/Dublin', milkings: ['05:30', '15:30'] },
    ])
    if (!made.ok) throw new Error(made.problems.map(({ code }) => code).join())
    return path
  }

  /** The same with these tables read into it. */
  async herdOf(tables: Readonly<Record<string, string>>): Promise<void> {
    await this.herd()
    const words = Object.entries(tables).flatMap(([name, text]) => {
      this.file(`${name}.csv`, text)
      return [`--${name}`, `${name}.csv`]
    })
    const { status, err } = this.run('import', 'herd.json', ...words, '--write')
    if (status !== 0) throw new Error(err)
  }
}

/** Runs `dawnlist` within this process, for what needs no file and no folder. */
export const call = (...words: string[]): Promise<Ended> => callWith({}, ...words)

/** The same in another shell: one with a place for what passes. */
export async function callWith(shell: Partial<Shell>, ...words: string[]): Promise<Ended> {
  let out = ''
  let err = ''
  const status = await runWords(words, {
    print: (text) => {
      out += text
    },
    say: (message) => {
      err += `${message}\n`
    },
    tell: (problems) => {
      for (const problem of problems) err += `${sentence(problem)}\n`
    },
    env: {},
    interactive: false,
    ...shell,
  })
  return { status, out, err }
}
