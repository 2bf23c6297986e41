/**
 * npm run release -- 1.0.1          tells what a release would do, and whether it may be made
 * npm run release -- 1.0.1 --write  sets the version, makes the pages anew, commits and tags
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { run } from './package/nodes.ts'
import { below } from './paths.ts'
import { obstacles, withVersion } from './release/rules.ts'

const [version = '', ...words] = process.argv.slice(2)
const write = words.includes('--write')
const say = (line: string): void => void process.stdout.write(`${line}\n`)
const text = (name: string): string => readFileSync(below(name), 'utf8')
const git = (...rest: string[]): string => run(['git', ...rest], below()).out.trim()

/** Runs a step and stops the release where it fails. */
function must(words: readonly string[]): void {
  say(`- ${words.join(' ')}`)
  const { status, out, err } = run(words, below())
  if (status === 0) return
  say(`${out}${err}`)
  throw new Error(`${words.join(' ')} ended with status ${status}: nothing was tagged.`)
}

const found = obstacles({
  version,
  changes: text('CHANGELOG.md'),
  status: git('status', '--porcelain'),
  branch: git('branch', '--show-current'),
  tags: git('tag').split('\n'),
})

for (const sentence of found) say(sentence)
if (found.length > 0) process.exitCode = 1
else {
  must(['npm', 'test'])
  must(['npm', 'run', 'check:package'])
  if (write) {
    for (const name of ['package.json', 'package-lock.json'])
      writeFileSync(below(name), withVersion(text(name), version))
    must(['npm', 'run', 'docs'])
    must(['git', 'add', '--all'])
    if (git('status', '--porcelain') !== '') must(['git', 'commit', '--message', `Release ${version}`])
    must(['git', 'tag', '--annotate', `v${version}`, '--message', `dawnlist ${version}`])
    say(`dawnlist ${version} is tagged. Push the tag, and pack: npm pack`)
  } else say(`Nothing stands against ${version}. With --write it is set, committed and tagged v${version}.`)
}
