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

test('her page says who recorded a fact and when, what it was before, and what was taken back', async () => {
  const screen = await openOn(herd(), { now, by: 'MK' })
  await screen.send('905\r')
  await screen.press('heat-now')
  expect(screen.line('recorded by MK')).toContain('recorded by MK, Thu 28 May 2026 05:15')
  await screen.press('change-fact')
  await screen.press('turn-on', 'accept')
  expect(screen.line('in the place of')).toMatch(
    /in the place of: heat seen \(standing\) \(2026-05-28\), recorded by MK, Thu/,
  )
  expect(screen.text).not.toContain('Struck out or')
  await screen.press('undo', 'undo')
  await screen.press('last')
  expect(screen.line('Struck out or taken back')).not.toBe('')
  expect(screen.text).toContain('recorded by MK, Thu 28 May 2026 05:15; taken back by MK, Thu 28 May')
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
  // The reason begins in the same cell in every row.
  const starts = rows.map((row) => {
    const cells = Array.from({ length: 60 }, (_, column) => screen.cell(column, row).text)
    return cells.findIndex((_, column) => cells.slice(column, column + 3).join('') === 'may')
  })
  expect(starts[0]).toBeGreaterThan(20)
  expect(new Set(starts).size).toBe(1)
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

test('what her facts come to: services with intervals, checks, parents two generations, straws ranked', async () => {
  const facts = [
    ...frame(),
    ...cow('60', 'Granny', 400, [], { sire: 'S21', dam: '59' }),
    ...cow('61', 'Mother', 300, [], { sire: 'S17', dam: '60' }),
    ...cow(
      '62',
      'Daughter',
      120,
      [
        served(63),
        served(42, { sire: 'S21' }),
        checked(20, 'empty'),
        served(5, { natural: true, sire: 'B9' }),
      ],
      { sire: 'S40', dam: '61' },
    ),
    ...cow('63', 'Maiden', undefined, [checked(3, 'empty')]),
  ]
  const screen = await openOn(facts, { now, by: 'MK', rows: 50 })
  await screen.send('62\r')
  await screen.press('more-about')
  expect(screen.line('S21 conv')).toMatch(/Thu 16 Apr 2026 +S21 conventional +did not hold/)
  expect(screen.text).toContain('21 d after: one cycle: as it should be')
  expect(screen.text).toContain('37 d after: two cycles: one return was missed')
  expect(screen.line('bull B9')).toContain('not known yet')
  expect(screen.text).toMatch(/8 May 2026 {2}empty by ultrasound\n +counts for the service of 26 Mar/)
  expect(screen.text).toContain('dam  61 Mother\n      by S17, out of 60 Granny')
  expect(screen.line('sire S40')).toBe(' sire S40')
  expect(screen.text).toMatch(/S17 conventional +30 left +close relative, calf inbred 12\.5 %/)
  // No fact is pointed at here: none is changed or struck out.
  await screen.press('change-fact')
  expect(screen.text).toContain('Tab goes back to her facts')
  await screen.press('void')
  expect(screen.text).toContain('Tab goes back to her facts')
  await screen.press('more-about')
  expect(screen.line('► ')).toContain('served by a bull, B9')
  await screen.send('63\r')
  await screen.press('more-about')
  expect(screen.text).toContain('no service was before it')
  expect(screen.text).toContain('No service is on record.')
})

test('on a wide screen it stands beside her facts', async () => {
  const screen = await openOn(herd(), { now, by: 'MK', columns: 120, rows: 40 })
  await screen.send('101\r')
  expect(screen.text).toContain('║ Services, the last first')
  expect(screen.text).toContain('║ Parents and theirs')
})

for (const [columns, rows] of [
  [80, 24],
  [60, 20],
] as const)
  test(`what her facts come to at ${columns}x${rows}`, async () => {
    const screen = await openOn(herd(), { now, by: 'MK', columns, rows })
    await screen.send('90\r')
    await screen.press('more-about')
    await expect(golden(screen)).toMatchFileSnapshot(`golden/animal-more-${columns}x${rows}.txt`)
  })
