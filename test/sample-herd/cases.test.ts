import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { careCases } from '../../sample-herd/hand-made/care.ts'
import { CASES_DAY } from '../../sample-herd/hand-made/case.ts'
import { allCases, caseFacts } from '../../sample-herd/hand-made/herd.ts'
import { workCases } from '../../sample-herd/hand-made/work.ts'
import { herdBytes } from '../../sample-herd/herd-bytes.ts'
import { openBook } from '../../source/breeding/book.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import { reasonsOf, sections, warnings } from '../../source/breeding/sections.ts'
import { checkFacts } from '../../source/herd/check.ts'

const facts = caseFacts()
const list = morningList(openBook(facts), CASES_DAY)

test('cases.json holds what the script writes', async () => {
  const written = readFileSync(new URL('../../sample-herd/cases.json', import.meta.url))
  expect(written.equals(await herdBytes(facts, 'casebook'))).toBe(true)
})

test('the schema has nothing against the cases', () => {
  expect(checkFacts(facts)).toEqual([])
})

test('the list of the day shows every reason of every section', () => {
  const shown = new Set(list.rows.flatMap((row) => row.reasons.map((reason) => `${row.section} ${reason}`)))
  const all = sections.flatMap((section) => reasonsOf[section].map((reason) => `${section} ${reason}`))
  expect(all.filter((code) => !shown.has(code))).toEqual([])
})

for (const code of warnings) {
  const made = allCases.some((one) => one.shows === code)
  test.skipIf(!made)(
    `the list of the day shows the warning ${code}${made ? '' : ', which has no case here yet'}`,
    () => {
      expect(list.rows.flatMap((row) => row.warnings)).toContain(code)
    },
  )
}

test.each(allCases.map((one) => [one.number, one.name, one] as const))('%s, %s', (number, _name, one) => {
  const row = list.rows.find((found) => found.number === number)
  const codes: readonly string[] = [...(row?.reasons ?? []), ...(row?.warnings ?? [])]
  expect(codes).toContain(one.shows)
})

test('an animal stands there for the reason of her case before any other', () => {
  const others = [...careCases, ...workCases].filter((one) => {
    const row = list.rows.find((found) => found.number === one.number)
    return row?.reasons[0] !== one.shows
  })
  expect(others.map((one) => one.number)).toEqual([])
})
