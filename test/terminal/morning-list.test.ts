import { afterEach, expect, test } from 'vitest'
import { golden } from './support/golden.ts'
import { cow, frame, heat, herd, now, served } from './support/herd.ts'
import { closeAll, openOn } from './support/screen.ts'

afterEach(closeAll)

const sizes = [
  [80, 24],
  [120, 40],
  [60, 20],
] as const

for (const [columns, rows] of sizes) {
  test(`the whole screen at ${columns}x${rows}, in colour`, async () => {
    const screen = await openOn(herd(), { now, columns, rows, by: 'MK' })
    await expect(golden(screen)).toMatchFileSnapshot(`golden/list-${columns}x${rows}.txt`)
  })

  test(`the first slip of the day at ${columns}x${rows}`, async () => {
    const screen = await openOn(herd(), { now, columns, rows, opening: true })
    await expect(golden(screen)).toMatchFileSnapshot(`golden/opening-${columns}x${rows}.txt`)
  })

  test(`without colours at ${columns}x${rows} the same characters stand there, and no cell has a colour`, async () => {
    const coloured = await openOn(herd(), { now, columns, rows, by: 'MK' })
    const screen = await openOn(herd(), { now, columns, rows, by: 'MK', colours: false })
    expect(screen.lines).toEqual(coloured.lines)
    for (let row = 0; row < rows; row += 1)
      for (let column = 0; column < columns; column += 1) expect(screen.cell(column, row).colour).toBe(-1)
    await expect(golden(screen)).toMatchFileSnapshot(`golden/list-${columns}x${rows}-no-colour.txt`)
  })

  test(`with ASCII alone at ${columns}x${rows} nothing else is drawn`, async () => {
    const screen = await openOn(herd(), { now, columns, rows, by: 'MK', ascii: true })
    expect(screen.text).toMatch(/^[\x20-\x7e\n]*$/)
    await expect(golden(screen)).toMatchFileSnapshot(`golden/list-${columns}x${rows}-ascii.txt`)
  })
}

test('every section of the rules stands on the list in order, with what is to do', async () => {
  const screen = await openOn(herd(), { now, columns: 120, rows: 40, by: 'MK' })
  const headings = screen.lines
    .filter((line) => line.startsWith('── '))
    .map((line) => line.slice(3).split(' ─')[0])
  expect(headings).toEqual([
    'Take care',
    'Serve',
    'Second service',
    'Repeat-heat watch',
    'Pregnancy check',
    'Leave to the sweep bull',
    'No heat seen',
    'Also recorded (1)',
  ])
  expect(screen.line('Serve ─')).toContain('2 to do')
  expect(screen.line('288 Bramble')).toContain('in calf, and on heat')
  expect(screen.line('412')).toMatch(/on heat +this morning +S21 conv\./)
  expect(screen.line(' 53')).toMatch(/may come back +day 22 +\d\.\d % today/)
})

test('the head says farm, day in words, the block, the pace and whether all is saved', async () => {
  const screen = await openOn(herd(), { now, columns: 120, rows: 40, by: 'MK' })
  expect(screen.lines[0]).toMatch(/^ Hazel Bank · Thu 28 May 2026 +all saved · MK$/)
  expect(screen.lines[1]).toMatch(
    /^ Spring block: AI day 28 of 42, closes Thu 11 Jun +served in three weeks 6 of 15 \(40 %\), aim by now 90 %$/,
  )
  expect(screen.lines[2]).toMatch(/ 0 of \d+ done ──$/)
})

test('each danger has its short caution beside the heading', async () => {
  const screen = await openOn(herd(), { now, columns: 80, rows: 40, by: 'MK' })
  expect(screen.line('── Serve')).toContain('! in a crush, arms out of the rails')
  expect(screen.line('── Pregnancy check')).toContain('! in a crush, arms out of the rails')
  expect(screen.line('── Leave to the sweep bull')).toContain('! no bull is safe, never alone')
  expect(screen.line('── No heat seen')).toContain('! hormones: check first')
  expect(screen.cellsOf('! in a crush').every((cell) => cell.colour === 1)).toBe(true)
})

test('on a wide screen the animal pointed at stands beside the list: why, her wait to scale, her cycle', async () => {
  const screen = await openOn(herd(), { now, columns: 120, rows: 40, by: 'MK' })
  await screen.type('53')
  expect(screen.text).toContain('║ 53  Gorse')
  expect(screen.text).toContain('║ 22 days since her service of Wed 6')
  expect(screen.text).toContain('day 22')
  expect(screen.text).toContain('1 of 2 chances used')
  expect(screen.text).toContain('This cycle, days since calving')
})

test('on a narrow screen the reason stands below the list', async () => {
  const screen = await openOn(herd(), { now, columns: 80, rows: 24, by: 'MK' })
  await screen.type('319')
  expect(screen.text).toContain(
    '25 days since she calved, Sun 3 May. She is on heat, calved less than 30 days',
  )
})

test('a list without rows says so and how a heat is recorded all the same', async () => {
  const screen = await openOn([...frame(), ...cow('90', 'Nettle', 60, [served(5)])], { now, by: 'MK' })
  expect(screen.text).toContain('Nothing to do on this list.')
  expect(screen.text).toContain('type her number, then h')
})

test('animals with the bull are one line that opens and closes', async () => {
  const inBullWeeks = { ...now, day: (now.day + 16) as typeof now.day }
  const screen = await openOn(herd(), { now: inBullWeeks, by: 'MK', rows: 40 })
  expect(screen.line('with the bull')).toMatch(/ \d+ with the bull {2}O shows them/)
  expect(screen.text).not.toContain('Clover')
  await screen.press('unfold')
  expect(screen.text).toContain('O folds them away')
  expect(screen.line('Clover')).toContain('with the bull')
  await screen.press('unfold')
  expect(screen.text).not.toContain('Clover')
})

test('below 60x16 one line says what is needed, and the list comes back with the room', async () => {
  const screen = await openOn(herd(), { now, by: 'MK' })
  await screen.resize(59, 20)
  expect(screen.lines.filter((line) => line !== '')).toEqual([
    'dawnlist needs 60 x 16 characters; this is 59 x 20',
  ])
  await screen.resize(60, 15)
  expect(screen.lines.filter((line) => line !== '')).toHaveLength(1)
  await screen.resize(60, 16)
  expect(screen.text).toContain('Hazel Bank')
  expect(screen.line('Take care')).not.toBe('')
})

test('a long list is seen through a window: the pointer stays in sight, the margin says that there is more', async () => {
  const many = Array.from({ length: 200 }, (_, index) =>
    cow(String(1000 + index), 'Teasel', 85, [heat(0, { time: '05:00' })]),
  ).flat()
  const screen = await openOn([...frame(), ...many], { now, by: 'MK' })
  expect(screen.line('1000')).toMatch(/^► /)
  expect(screen.lines.some((line) => line.startsWith('▼'))).toBe(true)
  await screen.press('page-down', 'page-down')
  const pointed = screen.lines.filter((line) => line.startsWith('► '))
  expect(pointed).toHaveLength(1)
  expect(screen.lines.some((line) => line.startsWith('▲'))).toBe(true)
  await screen.press('last')
  expect(screen.line('1199')).toMatch(/^► /)
  await screen.press('first')
  expect(screen.line('1000')).toMatch(/^► /)
})
