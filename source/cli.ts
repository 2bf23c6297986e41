import program from '../package.json' with { type: 'json' }

/** Runs the program with the words after its name and returns the exit status. */
export async function main(words: readonly string[]): Promise<number> {
  if (words[0] !== '--version') return 2
  process.stdout.write(`${program.version}\n`)
  return 0
}
