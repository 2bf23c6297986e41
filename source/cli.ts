/** Joins the commands to the real terminal. */
import { fault } from './breeding/problem.ts'
import type { Shell } from './commands/command.ts'
import { runWords } from './commands/run.ts'
import { sentence } from './words/index.ts'

/**
 * Runs the program.
 *
 * @param words what was typed after `dawnlist`
 * @returns the exit status
 */
export async function main(words: readonly string[]): Promise<number> {
  for (const stream of [process.stdout, process.stderr]) stream.on('error', leaveWhenNobodyReads)
  const shell: Shell = {
    print: (text) => void process.stdout.write(text),
    say: (message) => void process.stderr.write(`${message}\n`),
    tell: (problems) => {
      for (const problem of problems) process.stderr.write(`${sentence(problem)}\n`)
    },
    ...(process.stderr.isTTY && process.env.TERM !== 'dumb' ? { passing } : {}),
    env: process.env,
    interactive: process.stdin.isTTY === true && process.stdout.isTTY === true && process.env.TERM !== 'dumb',
  }
  try {
    return await runWords(words, shell)
  } catch (error) {
    shell.tell([fault('program-failed', '')])
    shell.say(error instanceof Error ? (error.stack ?? error.message) : String(error))
    return 1
  }
}

/** Writes over the line that stands there; cut to the width, since a line that wraps would stay. */
function passing(text: string): void {
  const cells = Math.max(1, (process.stderr.columns ?? 80) - 1)
  process.stderr.write(`\r\u001b[K${text.slice(0, cells)}`)
}

/** `dawnlist list | head` closes the pipe early: that is no fault. */
function leaveWhenNobodyReads(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EPIPE') throw error
  process.exit(0)
}
