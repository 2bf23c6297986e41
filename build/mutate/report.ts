import type { Mutant } from './mutants.ts'

export interface Tried extends Mutant {
  readonly source: string
  readonly outcome: 'killed' | 'survived' | 'equivalent'
  /** How many test files came by it. */
  readonly tests?: number
  readonly why?: string
}

const percent = (part: number, whole: number): string =>
  whole === 0 ? '-' : `${Math.round((100 * part) / whole)} %`

/** The table of the files, then each survivor with its line and its change. */
export function report(sources: readonly string[], all: number, tried: readonly Tried[]): string {
  const count = (of: readonly Tried[], outcome: Tried['outcome']): number =>
    of.filter((one) => one.outcome === outcome).length
  const row = (name: string, of: readonly Tried[]): string => {
    const [killed, survived, same] = [count(of, 'killed'), count(of, 'survived'), count(of, 'equivalent')]
    return `| ${name} | ${of.length} | ${killed} | ${survived} | ${same} | ${percent(killed, killed + survived)} |\n`
  }
  const lines = [
    `\n${tried.length} of ${all} mutants tried\n\n`,
    '| File | Mutants | Killed | Survived | Equivalent | Score |\n| --- | --- | --- | --- | --- | --- |\n',
    ...sources.map((source) =>
      row(
        source,
        tried.filter((one) => one.source === source),
      ),
    ),
    row('all', tried),
    '\n',
  ]
  const survivors = tried.filter(({ outcome }) => outcome === 'survived')
  return lines.concat(survivors.toSorted(byPlace).map(survivor)).join('')
}

/** A line for a change that no test noticed. */
export function survivor({ source, line, at, becomes, tests, isStatement }: Tried): string {
  const where = `${source}:${line}${tests === 0 ? ' (no test comes by)' : ''}`
  return `${where}: ${at} -> ${isStatement ? 'left out' : becomes.replaceAll(/\s+/g, ' ')}\n`
}

const byPlace = (a: Tried, b: Tried): number =>
  a.source < b.source ? -1 : a.source > b.source ? 1 : a.from - b.from
