import { afterEach, expect, test } from 'vitest'
import { CASES_DAY } from '../../sample-herd/hand-made/case.ts'
import { caseFacts } from '../../sample-herd/hand-made/herd.ts'
import { dayIso } from '../../source/breeding/day.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { golden } from './support/golden.ts'
import { at, herd, now } from './support/herd.ts'
import { closeAll, openOn, type Screen, type Settings } from './support/screen.ts'
import { bulls, doubtfulBull, seasonHerd } from './support/season-herd.ts'

afterEach(closeAll)

const open = async (settings: Partial<Settings> = {}, facts = seasonHerd()): Promise<Screen> => {
  const screen = await openOn(facts, { now, by: 'MK', ...settings })
  await screen.press('go', 'go-bulls')
  await screen.reckoned()
  return screen
}
/** In the bull weeks, 28 days after the first service of the doubtful bull. */
const inBullWeeks = at('05:15', '2026-07-10')
const withDoubt = () => [...seasonHerd(), ...doubtfulBull()]

for (const [columns, rows] of [
  [80, 24],
  [120, 40],
  [60, 20],
] as const)
  test(`the bulls at ${columns}x${rows}`, async () => {
    const screen = await open({ columns, rows })
    await expect(golden(screen)).toMatchFileSnapshot(`golden/bulls-${columns}x${rows}.txt`)
  })

test('without colours and in ASCII nothing is lost', async () => {
  const screen = await open(
    { colours: false, ascii: true, columns: 120, rows: 40, now: inBullWeeks },
    withDoubt(),
  )
  expect(screen.text).toMatch(/^[\x20-\x7e\n]*$/)
  await expect(golden(screen)).toMatchFileSnapshot('golden/bulls-120x40-ascii.txt')
})

test('how many are needed and why, when they must be sound and here', async () => {
  const screen = await open({ rows: 40 })
  expect(screen.line('Spring block ─')).toContain('turn-out in 15 days')
  expect(screen.line('needed')).toMatch(/\d+ bulls needed, 3 on hand/)
  expect(screen.text).toMatch(/For \d+ animals not in calf at turn-out, the high end of the forecast/)
  expect(screen.text).toMatch(/at least 8 in 10: \d+ to \d+/)
  expect(screen.line('Soundness')).toContain('by Mon 13 Apr (45 days ago)')
  expect(screen.line('On the farm')).toContain('by Tue 2 Jun (in 5 days)')
  expect(screen.text).toContain('no bull is safe, never alone')
})

test('beside it: young bulls, rotation, the least, whose numbers these are, the caution in full', async () => {
  const screen = await open({ columns: 120, rows: 40 })
  const beside = screen.lines.map((line) => line.split('║')[1]?.trim() ?? '').join(' ')
  for (const said of [
    'Never fewer than two with a group',
    'Of young bulls, under two years',
    'Where half of them rest',
    'Managing your working bulls',
    'No bull is safe, the quiet ones least of all.',
  ])
    expect(beside).toContain(said)
})

test('a bull on hold is shown as such, and does not count', async () => {
  const lame = {
    id: 'lame',
    about: 'bull-B7',
    at: '2026-05-27T00:00:00.000Z',
    kind: 'hold',
    date: '2026-05-27',
  }
  const screen = await open({ rows: 40 }, [...seasonHerd(), lame as Fact])
  expect(screen.line('needed')).toMatch(/, 2 on hand/)
  expect(screen.line('B7')).toContain('on hold')
})

test('a short supply of bulls is said, and stands out', async () => {
  const screen = await open({}, herd())
  expect(screen.line('needed')).toMatch(/2 bulls needed, 0 on hand: 2 short/)
  expect(screen.cellsOf('2 short')[0]).toMatchObject({ colour: 1, bold: true })
  expect(screen.text).toContain('No bull is on record here')
})

test('each bull with his age at turn-out; Enter opens his page, Esc comes back to him', async () => {
  const screen = await open()
  expect(screen.line('Otto')).toContain('4 years')
  expect(screen.line('Sprig')).toContain('16 months, young')
  await screen.press('his-page')
  expect(screen.text).toContain('Point at a bull first.')
  await screen.press('down', 'down')
  expect(screen.line('Basil')).toMatch(/^►/)
  await screen.press('his-page')
  expect(screen.session.desk.places.at(-1)).toMatchObject({ at: 'animal', animal: 'bull-B8' })
  await screen.press('back')
  expect(screen.line('Basil')).toMatch(/^►/)
})

test('his examination by the vet is recorded on his page and told here', async () => {
  const screen = await open({ columns: 120, rows: 40 })
  await screen.press('down')
  expect(screen.text).toContain('No examination is on record')
  await screen.press('his-page', 'examined')
  await screen.type('sound, feet trimmed')
  await screen.press('accept', 'back')
  await screen.reckoned()
  expect(screen.text).toContain('Examined by the vet Thu 28 May.')
})

test('services seen and returns: a bull whose cows come back is marked, with how rare that would be', async () => {
  const screen = await open({ columns: 120, rows: 40, now: inBullWeeks }, withDoubt())
  expect(screen.line('Basil')).toContain('! 5 of 6 came back')
  await screen.press('down', 'down')
  const beside = screen.lines.map((line) => line.split('║')[1]?.trim() ?? '').join(' ')
  expect(beside).toMatch(/5 of 6 services came back\. A sound bull would show that in \d of 100 seasons/)
  expect(beside).toContain('have him checked')
  expect(screen.line('12 Jun')).toContain('50')
})

test('the hand-made cases have a bull whose cows come back, and one who is sound', async () => {
  const screen = await open({ columns: 120, rows: 40, now: at('05:15', dayIso(CASES_DAY)) }, caseFacts())
  expect(screen.line('B2 ')).toMatch(/! 7 of 8 came back/)
  expect(screen.line('B1 ')).toMatch(/1 of 5 came back/)
  expect(screen.line('B1 ')).not.toContain('!')
  await expect(golden(screen)).toMatchFileSnapshot('golden/bulls-cases-120x40.txt')
})

test('M goes to the move of the bulls, and a number to an animal', async () => {
  const screen = await open()
  await screen.press('bull-out')
  expect(screen.session.desk.places.at(-1)?.at).toBe('turn-out')
  await screen.press('back')
  await screen.type('412')
  await screen.press('his-page')
  expect(screen.session.desk.places.at(-1)).toMatchObject({ at: 'animal', animal: 'cow-412' })
})

test('undo works here', async () => {
  const screen = await open()
  await screen.press('back', 'heat-now', 'go', 'go-bulls', 'undo')
  expect(screen.text).toContain('Taken back')
})

test('with no bull weeks it says so', async () => {
  const facts = [...herd(), ...bulls()].map((fact) =>
    fact.kind === 'season' ? { ...fact, bullWeeks: 0 } : fact,
  )
  const screen = await open({}, facts)
  expect(screen.text).toContain('No block has bull weeks now.')
  expect(screen.line('Otto')).toContain('B7')
})
