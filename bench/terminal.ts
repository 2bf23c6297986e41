/** A program in a pseudo-terminal, made with `script` of util-linux. */
import { spawn, spawnSync } from 'node:child_process'
import { stripVTControlCharacters } from 'node:util'
import headless from '@xterm/headless'

const columns = 120
const rows = 40
/** The screen counts as settled when something stands on it and nothing was drawn for so long, ms. */
const quiet = 600
/** A program that draws nothing for so long is given up, ms. */
const patience = 20_000

interface Chunk {
  readonly at: number
  readonly bytes: Buffer
}

export const hasTerminal = (): boolean =>
  spawnSync('script', ['--version']).stdout?.includes('util-linux') ?? false

/** A word of a command line, for the shell. */
const quoted = (word: string): string => `'${word.replaceAll("'", `'\\''`)}'`

/** Runs a program until its screen is settled, then leaves it with Ctrl+C. */
function drawn(words: readonly string[]): Promise<Chunk[]> {
  const command = `stty cols ${columns} rows ${rows}; exec ${words.map(quoted).join(' ')}`
  return new Promise((resolve, reject) => {
    const chunks: Chunk[] = []
    const start = performance.now()
    const child = spawn('script', ['-qfec', command, '/dev/null'], {
      stdio: ['pipe', 'pipe', 'inherit'],
      env: { ...process.env, TERM: 'xterm-256color' },
    })
    let visible = false
    let leaving: NodeJS.Timeout | undefined
    const leave = (): void => {
      child.stdin.write('\x03')
      leaving = setTimeout(() => child.kill(), 2000)
    }
    let waiting = setTimeout(leave, patience)
    child.stdout.on('data', (bytes: Buffer) => {
      if (leaving !== undefined) return
      chunks.push({ at: performance.now() - start, bytes })
      if (!visible && !/\S/.test(stripVTControlCharacters(bytes.toString()))) return
      visible = true
      clearTimeout(waiting)
      waiting = setTimeout(leave, quiet)
    })
    child.on('error', reject)
    child.on('close', () => {
      clearTimeout(waiting)
      clearTimeout(leaving)
      resolve(chunks)
    })
  })
}

/** What a screen shows after some output, line by line. */
async function screenAfter(chunks: readonly Chunk[]): Promise<string[]> {
  const terminal = new headless.Terminal({ cols: columns, rows, allowProposedApi: true })
  for (const { bytes } of chunks) await new Promise<void>((done) => terminal.write(bytes, done))
  const lines = Array.from(
    { length: rows },
    (_, row) => terminal.buffer.active.getLine(row)?.translateToString(true) ?? '',
  )
  terminal.dispose()
  return lines
}

/**
 * Milliseconds from the start of a program to its first full frame: the first moment at which the screen is as it
 * will stay.
 *
 * @param words the program and its words
 * @returns the time and the lines of the screen; lines are all empty where nothing was drawn
 */
export async function firstFrame(words: readonly string[]): Promise<{ at: number; lines: string[] }> {
  const chunks = await drawn(words)
  const settled = await screenAfter(chunks)
  let last = chunks.length
  while (last > 1 && sameLines(await screenAfter(chunks.slice(0, last - 1)), settled)) last -= 1
  return { at: chunks[last - 1]?.at ?? Number.NaN, lines: settled }
}

const sameLines = (one: readonly string[], other: readonly string[]): boolean =>
  one.join('\n') === other.join('\n')
