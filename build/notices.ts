import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Plugin } from 'rolldown'

/** Licences that have been looked at: they ask for the notice to travel with the program, and for no more. */
const accepted = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'Apache-2.0', 'Unlicense']

interface BundledPackage {
  readonly name: string
  readonly version: string
  readonly license: string
  readonly author?: string | { readonly name: string }
}

const mitText = readFileSync(new URL('../LICENSE', import.meta.url), 'utf8')

/** The MIT licence in another author's name, for a package that names the licence and leaves out its text. */
const mitFor = (author: string): string => mitText.replace(/Copyright .*/, `Copyright (c) ${author}`)

function noticeOf(folder: string): string {
  const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as BundledPackage
  if (!accepted.includes(about.license))
    throw new Error(`${about.name}: the licence "${about.license}" has not been looked at`)
  const file = readdirSync(folder).find((name) => /^licen[cs]e/i.test(name))
  const author =
    typeof about.author === 'object' ? about.author.name : (about.author ?? `the authors of ${about.name}`)
  if (file === undefined && about.license !== 'MIT') throw new Error(`${about.name}: no licence text`)
  const text = file === undefined ? mitFor(author) : readFileSync(join(folder, file), 'utf8')
  return `${about.name} ${about.version} (${about.license})\n\n${text.trim()}\n`
}

/**
 * Writes third-party-notices.txt beside the bundle: name, version and licence text of every package with a module in it.
 * Minifying drops the notices that stand in the code, and the licences ask for them to be kept.
 */
export const notices: Plugin = {
  name: 'third-party-notices',
  generateBundle(_options, bundle) {
    const folders = new Set<string>()
    for (const output of Object.values(bundle)) {
      if (output.type !== 'chunk') continue
      for (const id of output.moduleIds) {
        const folder = /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/.exec(id.replace(/^\0/, ''))?.[0]
        if (folder !== undefined) folders.add(folder)
      }
    }
    const rule = `\n${'-'.repeat(80)}\n\n`
    const source = ['dawnlist carries these packages.\n', ...new Set([...folders].map(noticeOf).sort())].join(
      rule,
    )
    this.emitFile({ type: 'asset', fileName: 'third-party-notices.txt', source })
  },
}
