import { spawnSync } from 'node:child_process'
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { below } from '../../build/paths.ts'

let top = ''

beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'dawnlist launcher '))
  copyFileSync(below('dawnlist'), join(top, 'dawnlist'))
})

afterEach(() => rmSync(top, { recursive: true, force: true }))

const launch = (launcher: string, ...words: string[]) =>
  spawnSync('sh', [launcher, ...words], { encoding: 'utf8', cwd: tmpdir() })

const writeProgram = (): void => {
  mkdirSync(join(top, 'dist'))
  writeFileSync(
    join(top, 'dist', 'dawnlist.js'),
    'console.log(JSON.stringify(process.argv.slice(2)))\nprocess.exitCode = 3\n',
  )
}

/** The launcher for Windows is a batch file of its own. */
const shell = test.skipIf(process.platform === 'win32')

shell('passes on words and status, whatever is in them', () => {
  writeProgram()
  const { stdout, status } = launch(join(top, 'dawnlist'), 'list', 'my herd.json', '$HOME', '')
  expect(JSON.parse(stdout)).toEqual(['list', 'my herd.json', '$HOME', ''])
  expect(status).toBe(3)
})

shell('works through a link in another folder', () => {
  writeProgram()
  const link = join(top, 'link')
  symlinkSync(join(top, 'dawnlist'), link)
  expect(launch(link, 'version').stdout).toBe('["version"]\n')
})

shell('says what to do where nothing is installed', () => {
  expect(launch(join(top, 'dawnlist'))).toMatchObject({
    status: 1,
    stdout: '',
    stderr: 'dawnlist is not installed yet; run this first: npm install\n',
  })
})

shell('builds where nothing is built, and says so once on standard error', () => {
  mkdirSync(join(top, 'node_modules'))
  mkdirSync(join(top, 'build'))
  writeFileSync(
    join(top, 'build', 'build.ts'),
    `import { mkdirSync, writeFileSync } from 'node:fs'
mkdirSync('${top}/dist')
writeFileSync('${top}/dist/dawnlist.js', 'console.log("started")')
console.log('built')
`,
  )
  writeFileSync(join(top, 'package.json'), '{"type":"module"}')
  expect(launch(join(top, 'dawnlist'))).toMatchObject({
    status: 0,
    stdout: 'started\n',
    stderr: 'Building dawnlist, which is needed once.\nbuilt\n',
  })
})
