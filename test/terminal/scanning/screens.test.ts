import { afterEach, expect, test } from 'vitest'
import { golden } from '../support/golden.ts'
import { scan, tally, visit } from '../support/scanning.ts'
import { closeAll, type Screen, type Settings } from '../support/screen.ts'
import { visitHerd } from '../support/visit.ts'

afterEach(closeAll)

const sizes = [
  [80, 24],
  [120, 40],
  [60, 20],
] as const

/** A visit under way: results, one to settle, a doubt on the line. */
async function underWay(settings: Settings): Promise<Screen> {
  const screen = await visit(visitHerd(), settings)
  await screen.send('412p34t\r413e\r4122u\r')
  await screen.send('416e')
  await screen.quiet()
  return screen
}

for (const [columns, rows] of sizes) {
  test(`the visit at ${columns}x${rows}, in colour, without colours and in ASCII`, async () => {
    const screen = await underWay({ columns, rows })
    await expect(golden(screen)).toMatchFileSnapshot(`../golden/scanning-${columns}x${rows}.txt`)
    const plain = await underWay({ columns, rows, colours: false })
    expect(plain.lines).toEqual(screen.lines)
    for (let row = 0; row < rows; row += 1)
      for (let column = 0; column < columns; column += 1) expect(plain.cell(column, row).colour).toBe(-1)
    const ascii = await underWay({ columns, rows, ascii: true })
    expect(ascii.text).toMatch(/^[\x20-\x7e\n]*$/)
    await expect(golden(ascii)).toMatchFileSnapshot(`../golden/scanning-${columns}x${rows}-ascii.txt`)
  })

  test(`the visit as it opens, and its question, at ${columns}x${rows}`, async () => {
    const screen = await visit(visitHerd(), { columns, rows })
    await screen.quiet()
    await expect(golden(screen)).toMatchFileSnapshot(`../golden/scanning-open-${columns}x${rows}.txt`)
    await scan(screen, '416', 'scan-empty')
    await expect(golden(screen)).toMatchFileSnapshot(`../golden/scanning-asks-${columns}x${rows}.txt`)
  })
}

test('on the smallest screen the line being typed and the tally stay in sight', async () => {
  const screen = await underWay({ columns: 60, rows: 16 })
  expect(screen.line('► Number')).toContain('416')
  expect(tally(screen)).toEqual([1, 1, 0, 1])
  await screen.press('scan-enter')
  expect(screen.text).toContain('Record empty all the same?')
  expect(screen.line('► Number')).toContain('416')
})
