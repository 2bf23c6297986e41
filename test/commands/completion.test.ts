import { spawnSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { shells } from '../../source/commands/completion/shells.ts'
import { commands } from '../../source/commands/table.ts'
import { call, Folder } from './support/run.ts'

const has = (shell: string): boolean => spawnSync(shell, ['-c', 'exit 0']).status === 0

/** What the real bash would offer for the last of some words, in a folder that holds two files. */
async function offeredByBash(...words: string[]): Promise<string[]> {
  const folder = new Folder()
  writeFileSync(folder.file('herd.json'), '')
  writeFileSync(folder.file('old herd.json'), '')
  const script = folder.file('.completion', (await call('completion', 'bash')).out)
  const typed = ['dawnlist', ...words].map((word) => `'${word}'`).join(' ')
  const ask = `source '${script}'; COMP_WORDS=(${typed}); COMP_CWORD=${words.length}; _dawnlist; printf '%s\\n' "\${COMPREPLY[@]}"`
  const { stdout, stderr } = spawnSync('bash', ['--norc', '-c', ask], { cwd: folder.path, encoding: 'utf8' })
  expect(stderr).toBe('')
  return stdout.split('\n').filter((line) => line !== '')
}

describe.skipIf(!has('bash'))('bash, where it is installed, offers', () => {
  test('every command, and files', async () => {
    const offered = await offeredByBash('')
    for (const { name } of commands) expect(offered).toContain(name)
    expect(offered).toContain('old herd.json')
    expect(await offeredByBash('he')).toEqual(['herd.json', 'help'])
  })

  test('every option of a command', async () => {
    for (const { name, options } of commands)
      expect(await offeredByBash(name, '-')).toEqual([
        ...options.flatMap((option) => [
          `--${option.name}`,
          ...(option.short === undefined ? [] : [`-${option.short}`]),
        ]),
        '-h',
        '--help',
      ])
  })

  test('the words that a value or an argument may be, and leaves files to the shell', async () => {
    expect(await offeredByBash('import', 'herd.json', '--dates', '')).toEqual(['day-first', 'month-first'])
    expect(await offeredByBash('draft', 'herd.json', '--session', 'e')).toEqual(['evening'])
    expect(await offeredByBash('completion', '')).toEqual([...shells])
    expect(await offeredByBash('help', 'imp')).toEqual(['import'])
    expect(await offeredByBash('list', '')).toEqual([])
    expect(await offeredByBash('import', 'herd.json', '--animals', '')).toEqual([])
  })
})

for (const shell of shells)
  test.skipIf(!has(shell))(
    `${shell}, where it is installed, reads its script without a complaint`,
    async () => {
      const script = new Folder().file('script', (await call('completion', shell)).out)
      const { status, stderr } = spawnSync(shell, ['-n', script], { encoding: 'utf8' })
      expect([status, stderr]).toEqual([0, ''])
    },
  )

test('each script knows every command and option', async () => {
  for (const shell of shells) {
    const { status, out } = await call('completion', shell)
    expect(status).toBe(0)
    for (const { name, options } of commands)
      for (const word of [name, ...options.map((option) => option.name)]) expect(out).toContain(word)
  }
})

test('another shell is wrong usage', async () => {
  expect(await call('completion', 'tcsh')).toEqual({
    status: 2,
    out: '',
    err: 'completion knows no shell "tcsh". There are: bash, zsh, fish.\n',
  })
})
