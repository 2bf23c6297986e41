/** The tables of a calibration: bands by morning and count, chances by morning. */
import { type Count, counts } from './counts.ts'
import { Bands, Brier } from './score.ts'
import { AI_END } from './season.ts'

/** Season days on whose mornings the forecasts are made. */
export const mornings = [21, 35, 42] as const
export type Morning = (typeof mornings)[number]

const ways = ['known', 'learned'] as const
export type Way = (typeof ways)[number]

/** Who says how likely she is in calf: the program, the herd's rate for all, or that rate until day 24 and then certain. */
const rules = ['program', 'flat', 'day 24'] as const
type Rule = (typeof rules)[number]

/** The last week of AI takes beef straws, and after it there are none. */
const hasStraws = (morning: Morning): boolean => morning <= AI_END - 7

const row = (cells: readonly (string | number)[]): string => `| ${cells.join(' | ')} |\n`
const ruled = (cells: readonly string[]): string => row(cells) + row(cells.map(() => '---'))

export class Tables {
  readonly #bands = new Map<string, Bands>()
  readonly #brier = new Map<string, Brier>()

  bandsOf(morning: Morning, count: Count, way: Way): Bands {
    return kept(this.#bands, `${morning} ${count} ${way}`, () => new Bands())
  }

  /** What each rule said of an animal, and whether she was in calf. */
  addChances(morning: Morning, way: Way, said: Readonly<Record<Rule, number>>, inCalf: boolean): void {
    for (const rule of rules) this.#brierOf(morning, way, rule).add(said[rule], inCalf)
  }

  #brierOf(morning: Morning, way: Way, rule: Rule): Brier {
    return kept(this.#brier, `${morning} ${way} ${rule}`, () => new Brier())
  }

  /** Both tables, in Markdown. */
  get text(): string {
    return `${this.#bandsText()}\n${this.#brierText()}`
  }

  #bandsText(): string {
    const rows = mornings.flatMap((morning) =>
      counts
        .filter((count) => count !== 'conventional straws' || hasStraws(morning))
        .flatMap((count) =>
          ways.map((way) => {
            const { within, below, above, bias, width } = this.bandsOf(morning, count, way).summary
            const cells = [`${within.toFixed(1)} %`, below.toFixed(1), above.toFixed(1), bias.toFixed(1)]
            return row([morning, count, way, ...cells, width.toFixed(1)])
          }),
        ),
    )
    const heads = ['Morning', 'Count', 'Rates', 'Band held', 'Below', 'Above', 'Came less middle', 'Width']
    return ruled(heads) + rows.join('')
  }

  #brierText(): string {
    const rows = mornings.flatMap((morning) =>
      ways.map((way) => {
        const scores = rules.map((rule) => this.#brierOf(morning, way, rule))
        return row([morning, way, scores[0]?.count ?? 0, ...scores.map(({ score }) => score.toFixed(4))])
      }),
    )
    return ruled(['Morning', 'Rates', 'Animals', ...rules]) + rows.join('')
  }
}

function kept<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  const found = map.get(key) ?? make()
  map.set(key, found)
  return found
}
