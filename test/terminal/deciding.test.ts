/** Late calvers and empties: what becomes of each is decided on her row. */
import { afterEach, describe, expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { golden } from './support/golden.ts'
import { at, checked, cow, served } from './support/herd.ts'
import type { MemoryHerd } from './support/memory-herd.ts'
import { closeAll, openOn, type Screen, type Settings } from './support/screen.ts'
import { seasonHerd } from './support/season-herd.ts'

afterEach(closeAll)

const herdFact = (id: string, more: object): Fact =>
  ({ id, about: 'herd', at: '2026-01-01T00:00:00.000Z', date: '2026-01-01', ...more }) as unknown as Fact

/** The season's herd with three cows that calve late, two that are found empty, and an autumn block. */
const facts = (): readonly Fact[] => [
  ...seasonHerd(),
  herdFact('autumn', {
    kind: 'season',
    block: 'autumn',
    matingStart: '2026-11-20',
    aiWeeks: 6,
    bullWeeks: 3,
  }),
  ...cow('701', 'Willow', 40),
  ...cow('702', 'Yarrow', 32),
  ...cow('703', 'Zinnia', 20),
  ...cow('801', 'Aster', 90, [served(25), checked(-90, 'empty')]),
  ...cow('802', 'Betony', 90, [served(26), checked(-90, 'empty')]),
]
const before = facts().length

async function open(settings: Partial<Settings> = {}): Promise<Screen> {
  const screen = await openOn(facts(), { now: at('05:15', '2026-05-12'), by: 'MK', ...settings })
  await screen.press('go', 'go-season', 'previous-part', 'previous-part')
  await screen.reckoned()
  return screen
}
const recorded = (screen: Screen) => (screen.herd as MemoryHerd).state.facts.slice(before)
const final = at('05:15', '2026-08-28')

for (const [columns, rows] of [
  [80, 24],
  [120, 40],
  [60, 20],
] as const) {
  test(`before day 20 at ${columns}x${rows}`, async () => {
    const screen = await open({ columns, rows })
    await expect(golden(screen)).toMatchFileSnapshot(`golden/deciding-before-${columns}x${rows}.txt`)
  })
  test(`decided at ${columns}x${rows}`, async () => {
    const screen = await open({ columns, rows })
    await screen.press('decide-bar', 'decide-block', 'decide-bull')
    await screen.reckoned()
    await expect(golden(screen)).toMatchFileSnapshot(`golden/deciding-decided-${columns}x${rows}.txt`)
  })
  test(`after the final check at ${columns}x${rows}`, async () => {
    const screen = await open({ columns, rows, now: final })
    await expect(golden(screen)).toMatchFileSnapshot(`golden/deciding-final-${columns}x${rows}.txt`)
  })
}

test('read out', async () => {
  const screen = await open({ reader: true })
  await screen.press('decide-block')
  await screen.reckoned()
  await expect(`${screen.text}\n`).toMatchFileSnapshot('golden/reader-deciding.txt')
})

describe('one key a row', () => {
  test('records as of today, the row says it at once, and the next row follows', async () => {
    const screen = await open()
    expect(screen.line('Willow')).toContain('► 701')
    await screen.press('decide-bar')
    expect(screen.line('Willow')).toContain('not to be bred, calved too late for the block, 12 May')
    expect(screen.line('Yarrow')).toContain('► 702')
    await screen.press('decide-block', 'decide-bull')
    expect(screen.line('Yarrow')).toContain('moved to the autumn block, 12 May')
    expect(recorded(screen).map(({ kind, about, date }) => [kind, about, date])).toEqual([
      ['bar', 'cow-701', '2026-05-12'],
      ['block', 'cow-702', '2026-05-12'],
      ['to-bull', 'cow-319', '2026-05-12'],
    ])
    expect(screen.line('Little or no time')).toContain('3 decided')
    await screen.reckoned()
    expect(screen.line('Willow')).toContain('not to be bred')
    expect(screen.line('Yarrow')).toContain('moved to the autumn block')
    expect(screen.line('Little or no time')).toContain('3 decided')
  })

  test('U takes back one after the other, R puts back', async () => {
    const screen = await open()
    await screen.press('decide-bar', 'decide-block', 'undo')
    expect(screen.text).toContain('Taken back: 702: moved to the autumn block.')
    expect(screen.line('Yarrow')).toContain('► 702')
    await screen.reckoned()
    expect(screen.line('Yarrow')).toContain('AI to 11 Jun, bull to 2 Jul; calved')
    await screen.press('undo')
    await screen.reckoned()
    expect(screen.line('Willow')).toContain('AI to 11 Jun')
    expect(screen.line('Willow')).toContain('► 701')
    await screen.press('last', 'redo')
    expect(screen.line('Willow')).toContain('not to be bred')
    expect(screen.line('Willow')).toContain('► 701')
  })

  test('another decision takes the place of the first, in one step', async () => {
    const screen = await open()
    await screen.press('decide-bar', 'up', 'decide-block')
    expect(screen.line('Willow')).toContain('moved to the autumn block')
    expect(recorded(screen).map(({ kind }) => kind)).toEqual(['bar', 'correction', 'block'])
    await screen.reckoned()
    expect(screen.session.desk.book.animals.get('cow-701')?.happenings.at(-1)?.fact.kind).toBe('block')
    await screen.press('undo')
    await screen.reckoned()
    expect(screen.line('Willow')).toContain('not to be bred')
  })

  test('the same again, and the bull once he is out, are not recorded, and why is said', async () => {
    const screen = await open()
    await screen.press('decide-bull', 'up', 'decide-bull')
    expect(screen.text).toContain('That is decided of 701 already.')
    expect(recorded(screen)).toHaveLength(1)
    const over = await open({ now: final })
    await over.press('decide-bull')
    expect(over.text).toContain('The bull’s last day in this season is over')
    expect(recorded(over)).toEqual([])
  })

  test('on another part, and on a past list, nothing is recorded', async () => {
    const screen = await open()
    await screen.press('next-part', 'decide-bar')
    expect(screen.text).toContain('Point at an animal')
    expect(recorded(screen)).toEqual([])
    const past = await openOn(facts(), { now: final, by: 'MK' })
    await past.press('some-day')
    await past.type('2026-05-12')
    await past.press('take', 'go', 'go-season', 'previous-part', 'previous-part')
    await past.reckoned()
    await past.press('decide-bar')
    expect(past.text).toContain('This is a past list')
    expect(recorded(past)).toEqual([])
  })

  test('with another reason, to a block by name, left the herd: by their forms', async () => {
    const screen = await open()
    await screen.press('bar')
    await screen.type('lame')
    await screen.press('accept')
    expect(screen.line('Willow')).toContain('not to be bred, lame')
    await screen.press('down', 'block')
    expect(screen.text).toContain('Moved to another block: 702')
    await screen.press('accept')
    expect(screen.line('Yarrow')).toContain('moved to the autumn block')
    await screen.press('down', 'left', 'accept')
    expect(recorded(screen).map(({ kind }) => kind)).toEqual(['bar', 'block', 'left'])
  })
})

test('nobody stands on two rows after the final check', async () => {
  const screen = await open({ now: final, rows: 40 })
  for (const number of ['801', '802'])
    expect(screen.lines.filter((line) => line.includes(` ${number} `))).toHaveLength(1)
  expect(screen.line('801')).toContain('autumn from 20 Nov, or cull; found empty 26 Aug')
})
