/** A few runs of the bundled program in a real terminal: what a model of one cannot show. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { rolldown } from 'rolldown'
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest'
import { saveHerd } from '../../bench/herd-file.ts'
import { inputOptions, outputOptions } from '../../build/bundle.ts'
import { below } from '../../build/paths.ts'
import { herd } from './support/herd.ts'
import { hasTmux, Tmux } from './support/tmux.ts'

const folder = mkdtempSync(join(tmpdir(), 'dawnlist-pty-'))
const file = join(folder, 'herd.json')
const terminal = hasTmux()
let tmux: Tmux | undefined

beforeAll(async () => {
  if (!terminal) return
  const build = await rolldown({ ...inputOptions, input: below('source/entry.ts') })
  await build.write({ ...outputOptions, dir: join(folder, 'program') })
  await build.close()
  writeFileSync(join(folder, 'program', 'package.json'), '{"type":"module"}\n')
}, 60_000)

beforeEach(async (context) => {
  context.skip(!terminal, 'this needs tmux')
  await saveHerd(file, herd())
})
afterEach(() => tmux?.close())
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const command = (words = ''): string =>
  `${process.execPath} ${join(folder, 'program', 'dawnlist.js')} ${file} --by MK ${words}`

/** The program in a shell, past its first slip. */
async function start(
  columns = 80,
  rows = 24,
  environment: Readonly<Record<string, string>> = {},
): Promise<Tmux> {
  const one = new Tmux(columns, rows, { LANG: 'C.UTF-8', ...environment })
  tmux = one
  await one.shell()
  one.line(`${command()}; echo "status $?"`)
  await one.until('Before you start')
  one.keys('Enter')
  await one.until('? help')
  return one
}

test('q leaves with status 0, and what stood on the terminal before is there again', async () => {
  const one = await start()
  expect(one.alternate).toBe(true)
  one.type('q')
  const after = await one.until('status 0')
  expect(one.alternate).toBe(false)
  expect(after).toContain('shell>')
  expect(after).not.toContain('Hazel Bank')
})

test('Ctrl+C leaves with status 130; the terminal reads lines and shows what is typed', async () => {
  const one = await start()
  one.keys('C-c')
  await one.until('status 130')
  one.line('echo again')
  await one.until(/\nagain\n/)
})

test('what is typed while the program starts does not disturb the first frame', async () => {
  const one = new Tmux(80, 24, { LANG: 'C.UTF-8' })
  tmux = one
  await one.shell()
  one.line(command())
  one.type('905')
  const first = await one.until('Before you start')
  expect(first.split('\n')[0]).toContain('Hazel Bank')
})

test('what is recorded is in the file when the program has been left', async () => {
  const one = await start()
  one.type('905h')
  await one.until('905: heat seen')
  await one.until('all saved')
  one.type('q')
  await one.until('status 0')
  const last = readFileSync(file, 'utf8').trim().split('\n').at(-2) ?? ''
  expect(last).toContain('"kind":"heat"')
  expect(last).toContain('"by":"MK"')
})

test('keys typed in one go right before q are all saved', async () => {
  const one = await start()
  one.type('905h412h101hq')
  await one.until('status 0')
  expect(
    readFileSync(file, 'utf8').match(/"how":"standing","certainty":"sure"/g)?.length,
  ).toBeGreaterThanOrEqual(3)
})

test('a resize draws the whole screen anew', async () => {
  const one = await start()
  one.resize(120, 40)
  const wide = await one.until(/q leave/)
  expect(wide.split('\n')[0]).toMatch(/^ Hazel Bank.*MK$/)
  one.resize(62, 18)
  await one.until(/^ Hazel Bank/)
  one.resize(40, 10)
  await one.until('dawnlist needs 60 x 16')
  one.resize(80, 24)
  const again = await one.until('? help')
  expect(again.split('\n').filter((line) => line.includes('Hazel Bank'))).toHaveLength(1)
})

test('Ctrl+Z gives the shell back, fg brings the screen back', async () => {
  const one = await start()
  one.type('905')
  await one.until('Number 905')
  one.keys('C-z')
  await one.until(/[Ss]topped/)
  expect(one.alternate).toBe(false)
  one.line('echo between')
  await one.until(/\nbetween\n/)
  one.line('fg')
  expect(await one.until('Number 905')).not.toContain('cannot be suspended')
  expect(one.alternate).toBe(true)
  one.type('h')
  await one.until('905: heat seen')
})

test('killed, it gives the terminal back', async () => {
  const one = new Tmux(80, 24, { LANG: 'C.UTF-8' })
  tmux = one
  await one.shell()
  const pidFile = join(folder, 'pid')
  one.line(`sh -c 'echo $$ > ${pidFile}; exec ${command()}'; echo "status $?"`)
  await one.until('Before you start')
  process.kill(Number(readFileSync(pidFile, 'utf8')), 'SIGTERM')
  await one.until('status 143')
  expect(one.alternate).toBe(false)
  one.line('echo again')
  await one.until(/\nagain\n/)
})

test('without a terminal the list is printed and the program leaves', async () => {
  const one = new Tmux(80, 24, { LANG: 'C.UTF-8' })
  tmux = one
  await one.shell()
  one.line(`${command()} | cat; echo done`)
  const printed = await one.until(/\ndone\n/)
  expect(one.alternate).toBe(false)
  expect(printed).toMatch(/\[ \] +81 {2}Moss/)
})

test('TERM=dumb prints the list as well', async () => {
  const one = new Tmux(80, 24, { LANG: 'C.UTF-8' })
  tmux = one
  await one.shell()
  one.line(`TERM=dumb ${command()}; echo done`)
  await one.until(/\ndone\n/)
  expect(one.alternate).toBe(false)
})

test('a CI variable does not silence the screen, NO_COLOR takes the colours', async () => {
  const one = await start(80, 24, { CI: 'true', NO_COLOR: '1' })
  expect(one.alternate).toBe(true)
})
