/** Facts to the rows of a morning, in process. */
import { openBook } from '../source/breeding/book.ts'
import type { Fact } from '../source/breeding/facts.ts'
import { morningList } from '../source/breeding/morning-list.ts'
import { benchDay, benchHerd } from './herd.ts'
import { type Finding, inTurn, median, ms, time } from './measure.ts'

const rows = (facts: readonly Fact[]): number => morningList(openBook(facts), benchDay).rows.length

/** Facts to rows beside the JSON.parse of the same facts, both warm. */
export async function rowsBesideParsing(): Promise<Finding> {
  const facts = benchHerd(1000)
  const text = JSON.stringify(facts)
  let seen = 0
  const { one, other, ratio } = await inTurn(
    51,
    20,
    () => time(() => (seen += rows(facts))),
    () => time(() => (seen += (JSON.parse(text) as Fact[]).length)),
  )
  if (seen === 0) throw new Error('nothing was measured')
  const what = `facts to rows, 1,000 cows, ${facts.length.toLocaleString('en')} facts, in process`
  return { what, value: ms(one), against: `JSON.parse: ${ms(other)}`, ratio, bar: 2 }
}

/** How the list grows with the herd: time a cow at 100,000 cows beside that at 1,000. */
export async function rowsOfLargeHerds(): Promise<Finding[]> {
  const perCow: number[] = []
  const findings: Finding[] = []
  for (const [cows, times] of [
    [1000, 21],
    [10_000, 7],
    [100_000, 3],
  ] as const) {
    const facts = benchHerd(cows)
    const taken: number[] = []
    for (let round = 0; round < times; round += 1) taken.push(await time(() => rows(facts)))
    perCow.push(median(taken) / cows)
    const ratio = (perCow.at(-1) ?? 0) / (perCow[0] ?? 1)
    findings.push({
      what: `facts to rows, ${cows.toLocaleString('en')} cows`,
      value: ms(median(taken)),
      against: 'a cow, beside 1,000 cows',
      ratio,
    })
  }
  return findings
}
