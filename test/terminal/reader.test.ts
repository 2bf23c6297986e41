import { afterEach, expect, test } from 'vitest'
import { wantsReader } from '../../source/screens/terminal.ts'
import type { KeyMeaning } from '../../source/screens/words/keys.ts'
import { at, herd, now } from './support/herd.ts'
import { closeAll, openOn } from './support/screen.ts'
import { seasonHerd } from './support/season-herd.ts'

afterEach(closeAll)

const open = () => openOn(herd(), { now, by: 'MK', reader: true })

test('a screen reader is given text with states, and no signs or rules', async () => {
  const screen = await open()
  await screen.type('412')
  expect(screen.output.terminal.buffer.active.type).toBe('normal')
  const read = screen.text.replaceAll('\n', ' ')
  expect(read).toContain('Hazel Bank, Thu 28 May 2026. all saved.')
  expect(read).toContain('Serve, 412 Buttercup, to do, on heat, this morning, S21 conv.')
  expect(read).toMatch(/Row 4 of \d+/)
  expect(read).toContain('Keys: Space served')
  expect(read).not.toMatch(/[─━│║○●►▼▁]/)
})

test('a tick is read out as done, with what was recorded', async () => {
  const screen = await open()
  await screen.type('412')
  await screen.press('usual')
  await screen.type('412')
  await screen.press('back')
  expect(screen.text.replaceAll('\n', ' ')).toContain('412 Buttercup, done')
})

test('in a form the field that keys go to is named', async () => {
  const screen = await open()
  await screen.type('412')
  await screen.press('service')
  expect(screen.text).toContain('field: Straw of, S21')
  await screen.press('next-field')
  expect(screen.text).toContain('field: Kind, conventional')
})

test('the reader is asked for by a variable', () => {
  expect(wantsReader({})).toBe(false)
  expect(wantsReader({ DAWNLIST_SCREEN_READER: '0' })).toBe(false)
  expect(wantsReader({ DAWNLIST_SCREEN_READER: '1' })).toBe(true)
})

/** What is read out of each screen, approved by eye. */
const screens: Readonly<Record<string, readonly KeyMeaning[]>> = {
  list: [],
  'her-page': ['open-animal'],
  'more-about-her': ['open-animal', 'more-about'],
  ahead: ['go', 'go-ahead'],
  season: ['go', 'go-season'],
  empties: ['go', 'go-season', 'previous-part', 'previous-part'],
  scanning: ['go', 'go-scanning'],
  straws: ['go', 'go-straws'],
  bulls: ['go', 'go-bulls'],
  'turn-out': ['go', 'go-turn-out'],
  'set-up-seasons': ['go', 'go-set-up', 'next-part'],
  'set-up-policy': ['go', 'go-set-up', 'next-part', 'next-part'],
  help: ['help'],
  menu: ['menu'],
  go: ['go'],
}
for (const [name, keys] of Object.entries(screens))
  test(`what is read out of ${name}`, async () => {
    const screen = await openOn(seasonHerd(), {
      now: at('05:15'),
      by: 'MK',
      reader: true,
      columns: 100,
      rows: 60,
    })
    await screen.press(...keys)
    await screen.reckoned()
    const read = screen.lines.map((line) => line.trimEnd()).join('\n')
    expect(read).not.toMatch(/[─━│║○●►▼▁┼█▒]/)
    // Nothing of an earlier frame is left once all is known.
    expect(read).not.toMatch(/being reckoned|reckoning/)
    await expect(`${read.trim()}\n`).toMatchFileSnapshot(`golden/reader-${name}.txt`)
  })
