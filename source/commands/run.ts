/** Finds the command that was typed and runs it. Without one the program opens the file that was named. */
import { existsSync } from 'node:fs'
import { fault } from '../breeding/problem.ts'
import type { Command, Shell } from './command.ts'
import { helpOf, overview } from './help-text.ts'
import { parse } from './parse.ts'
import { commandNamed, commands } from './table.ts'

/** Words that stand for a command, as most programs know them. */
const usual: Readonly<Record<string, string>> = { '--version': 'version', '--help': 'help', '-h': 'help' }

/**
 * Runs the command that the words name.
 *
 * @param words what was typed after `dawnlist`
 * @returns the exit status: 0 done, 1 a problem in data or file, 2 wrong usage
 */
export async function runWords(words: readonly string[], shell: Shell): Promise<number> {
  const [first = '', ...rest] = words
  const command = commandNamed(usual[first] ?? first)
  if (command !== undefined) return runCommand(command, rest, shell)
  const open = commandNamed('open')
  if (open !== undefined && (first === '' || mayBeFile(first))) return runCommand(open, words, shell)
  if (first === '') {
    shell.print(overview(commands))
    return 0
  }
  shell.tell([fault('command-unknown', '', { command: first })])
  return 2
}

/** A word that is no command is a herd file where it is there, or looks like a path. */
const mayBeFile = (word: string): boolean => /[./\\]/.test(word) || existsSync(word)

async function runCommand(command: Command, words: readonly string[], shell: Shell): Promise<number> {
  const given = parse(command, words)
  if (!given.ok) {
    shell.tell(given.problems)
    return 2
  }
  if (given.value.switches.has('help')) {
    shell.print(helpOf(command))
    return 0
  }
  const { run } = await command.load()
  return run(given.value, shell, commands)
}
