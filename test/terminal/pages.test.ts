import { afterEach, expect, test } from 'vitest'
import { golden } from './support/golden.ts'
import { checked, cow, frame, heat, herd, now, served } from './support/herd.ts'
import { closeAll, openOn } from './support/screen.ts'

afterEach(closeAll)

for (const [columns, rows] of [
  [80, 24],
  [120, 40],
  [60, 20],
] as const) {
  test(`the page of an animal at ${columns}x${rows}`, async () => {
    const screen = await openOn(herd(), { now, by: 'MK', columns, rows })
    await screen.send('101\r')
    await expect(golden(screen)).toMatchFileSnapshot(`golden/animal-${columns}x${rows}.txt`)
  })
}

test('the page of an animal in calf says when she is due and when to dry her off', async () => {
  const screen = await openOn(herd(), { now, by: 'MK' })
  await screen.send('90\r')
  expect(screen.text).toMatch(/In calf for 50 days/)
  expect(screen.text).toMatch(/Due \w{3} \d+ \w{3} 2027 \(19 in 20: .*dry off/)
  expect(screen.text).toContain('in calf by ultrasound')
})

test('from one animal to the next by number, and back to the list', async () => {
  const screen = await openOn(herd(), { now, by: 'MK' })
  await screen.send('90\r')
  await screen.send('52\r')
  expect(screen.text).toContain(' 52  Fern')
  await screen.press('back')
  expect(screen.text).toContain('── Take care')
})

test('everything can be recorded on her page', async () => {
  const screen = await openOn(herd(), { now, by: 'MK' })
  await screen.send('905\r')
  await screen.press('usual')
  expect(screen.text).toContain('905 has no row on the list: choose what to record.')
  await screen.press('heat-now')
  expect(screen.text).toContain('905: heat seen (standing), 05:15.')
})

test('a long record is seen through a window, the pointer on one fact', async () => {
  const many = Array.from({ length: 40 }, (_, index) => heat(21 * (index + 1)))
  const screen = await openOn([...frame(), ...cow('7', 'Old', 1200, many)], { now, by: 'MK' })
  await screen.send('7\r')
  await screen.press('last')
  expect(screen.lines.filter((line) => line.startsWith('► '))).toHaveLength(1)
  expect(screen.line('► ')).toContain('calved')
  await screen.press('first')
  expect(screen.line('► ')).toContain('heat seen')
})

test('the help explains every key of the screen below it, and can be read to its end', async () => {
  const screen = await openOn(herd(), { now, by: 'MK', columns: 60, rows: 16 })
  await screen.press('help')
  let read = ''
  for (let i = 0; i < 12; i += 1) {
    read += `${screen.text}\n`
    await screen.press('page-down')
  }
  for (const words of [
    'Recording',
    'Moving about',
    'Other days',
    'The program',
    'Takes back the last thing',
    'local law',
  ])
    expect(read).toContain(words)
  await screen.press('back')
  expect(screen.text).toContain('── Take care')
})

// The model of the terminal knows the widths of Unicode 6 only; emoji are measured in test/screens/width.test.ts.
test('names that would harm a terminal are shown by their codes, and columns stay in line', async () => {
  const bad = [
    '\u001b[31mred',
    'a\u202eb',
    'zero\u200bwidth',
    '牛牛牛牛牛牛牛',
    'é\u0301\u0301'.normalize('NFD'),
    'tab\there',
  ]
  const facts = bad.flatMap((name, index) => cow(String(700 + index), name, 85, [served(21)]))
  const screen = await openOn([...frame(), ...facts], { now, by: 'MK' })
  const rows = bad.map((_, index) => screen.lines.findIndex((line) => line.includes(` ${700 + index} `)))
  expect(rows.every((row) => row > 0)).toBe(true)
  for (const row of rows) {
    // The reason begins in the same cell in every row.
    const cells = Array.from({ length: 30 }, (_, column) => screen.cell(column, row).text)
    expect(cells.slice(21, 24).join('')).toBe('may')
  }
  expect(screen.line(' 700 ')).toContain('<001B>[3')
  expect(screen.line(' 701 ')).toContain('a<202E>b')
  expect(screen.cellsOf('may come back').every((cell) => cell.colour === -1)).toBe(true)
})

test('a result that contradicts itself can be struck out where it stands', async () => {
  const screen = await openOn([...frame(), ...cow('5', 'Wren', 100, [served(70), checked(20, 'pregnant')])], {
    now,
    by: 'MK',
  })
  await screen.send('5\r')
  expect(screen.text).toContain('In calf')
  await screen.press('void', 'agree')
  expect(screen.text).not.toContain('In calf for')
  expect(screen.text).toContain('Struck out: 5: in calf by ultrasound')
})
