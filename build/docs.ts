/**
 * node build/docs.ts          writes the pages that are made from the program's own tables
 * node build/docs.ts --check  fails where one of them is not as the tables stand now
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { pages } from './docs/pages.ts'
import { below } from './paths.ts'

const check = process.argv.includes('--check')

for (const [path, make] of pages) {
  const file = below(path)
  const made = make()
  if (existsSync(file) && readFileSync(file, 'utf8') === made) continue
  if (check) {
    process.stderr.write(`${path} is not as the tables of the program stand. Run: npm run docs\n`)
    process.exitCode = 1
  } else {
    mkdirSync(dirname(file), { recursive: true })
    writeFileSync(file, made)
    process.stdout.write(`${path}\n`)
  }
}
