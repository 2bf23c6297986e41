/** The morning list beside the same list in SQL (test/sql), in process. */
import { openBook } from '../source/breeding/book.ts'
import { morningList } from '../source/breeding/morning-list.ts'
import { Twin } from '../test/sql/twin.ts'
import { benchDay, benchHerd } from './herd.ts'
import { type Finding, inTurn, ms, time } from './measure.ts'

/** Facts to rows: ours from the facts, theirs from facts that stand in the tables of a database already. */
export async function listBesideSql(): Promise<Finding> {
  const facts = benchHerd(1000)
  const twin = new Twin(facts)
  let seen = 0
  try {
    const { one, other, ratio } = await inTurn(
      7,
      2,
      () => time(() => (seen += morningList(openBook(facts), benchDay).rows.length)),
      () => time(() => (seen -= twin.rows(benchDay).length)),
    )
    if (seen !== 0) throw new Error('the two lists differ')
    const what = `facts to rows, 1,000 cows, ${facts.length.toLocaleString('en')} facts, beside SQL`
    return { what, value: ms(one), against: `node:sqlite: ${ms(other)}`, ratio }
  } finally {
    twin.close()
  }
}
