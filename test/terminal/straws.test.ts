import { afterEach, describe, expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { stockOn } from '../../source/breeding/straws/stock.ts'
import { golden } from './support/golden.ts'
import { frame, herd, now, served } from './support/herd.ts'
import { closeAll, openOn, type Screen, type Settings } from './support/screen.ts'
import { seasonHerd } from './support/season-herd.ts'

afterEach(closeAll)

const straws = async (settings: Partial<Settings> = {}, facts = seasonHerd()): Promise<Screen> => {
  const screen = await openOn(facts, { now, by: 'MK', ...settings })
  await screen.press('go', 'go-straws')
  await screen.reckoned()
  return screen
}
const stock = (screen: Screen) => stockOn(openBook(screen.session.desk.log), now.day)
const isAt = (screen: Screen, text: string): boolean =>
  screen.lines.some((line) => line.startsWith('►') && line.split('║')[0]?.includes(text) === true)
/** Moves the pointer down to a line that holds a text. */
const to = async (screen: Screen, text: string): Promise<void> => {
  for (let i = 0; i < 30 && !isAt(screen, text); i += 1) await screen.press('down')
  expect(isAt(screen, text), `${text} in\n${screen.text}`).toBe(true)
}

for (const [columns, rows] of [
  [80, 24],
  [120, 40],
  [60, 20],
] as const)
  test(`the straws at ${columns}x${rows}`, async () => {
    const screen = await straws({ columns, rows })
    await to(screen, 'S30')
    await expect(golden(screen)).toMatchFileSnapshot(`golden/straws-${columns}x${rows}.txt`)
  })

test('without colours and in ASCII nothing is lost', async () => {
  const screen = await straws({ colours: false, ascii: true, columns: 120, rows: 40 })
  await screen.press('down', 'down')
  expect(screen.text).toMatch(/^[\x20-\x7e\n]*$/)
  await expect(golden(screen)).toMatchFileSnapshot('golden/straws-120x40-ascii.txt')
})

test('until the forecast is known the need is open; then it stands in its column', async () => {
  const screen = await openOn(seasonHerd(), { now, by: 'MK' })
  await screen.press('go')
  screen.input.send('f')
  await screen.settled()
  await screen.reckoned()
  expect(screen.line('conventional')).toMatch(/ conventional +42 +\d+ /)
  expect(screen.text).not.toContain('reckoning')
  // Hidden behind a slip and back: what is known stays known.
  await screen.press('go', 'cancel')
  expect(screen.line('conventional')).toMatch(/ conventional +42 +\d+ /)
})

test('nitrogen: the level with what it asks for, its readings, the cautions in full', async () => {
  const screen = await straws({ columns: 120, rows: 40 })
  expect(screen.line('► house')).toContain('22 cm  order nitrogen')
  expect(screen.line('travel')).toContain('enough')
  expect(screen.text).toContain('Order at 25 cm; at 15 cm fill it')
  expect(screen.text).toContain('12 May')
  expect(screen.text).toContain('Liquid nitrogen is at -196')
  expect(screen.text).toContain('Never seal the flask')
})

test('a lot: sire, place, use, and the serving card with the supplier’s card first', async () => {
  const screen = await straws({ columns: 120, rows: 50 })
  await to(screen, 'S30')
  for (const said of ['S30 sexed  Lantern', 'Jersey, easy calving', 'Serving card'])
    expect(screen.text).toContain(said)
  expect(screen.text).toMatch(/1 {2}The supplier’s own card comes/)
  expect(screen.text).toContain('30 seconds for a straw')
  expect(screen.text).toContain('A sexed straw holds fewer sperm')
  expect(screen.text).toContain('18 May  3 delivered')
})

test('on a narrow screen Enter tells all about the line, moves within it, and goes back', async () => {
  const screen = await straws({ columns: 60, rows: 20 })
  await to(screen, 'S30')
  await screen.press('whole')
  expect(screen.text).toContain('S30 sexed')
  expect(screen.text).not.toContain('In the cow within')
  await screen.press('page-down')
  await screen.press('last')
  expect(screen.text).toContain('In the cow within')
  expect(screen.line('Enter')).toContain('the list')
  await screen.press('back')
  expect(screen.line('S30')).toMatch(/^►/)
})

test('lots that are used up are folded away, and shown on a key', async () => {
  const screen = await straws({ rows: 40 })
  expect(screen.line('used up')).toContain('1 lot is used up  O shows them')
  expect(screen.text).not.toContain('S9 ')
  await screen.press('used-up')
  expect(screen.line('S9 ')).toMatch(/^►/)
  await screen.press('used-up')
  expect(screen.text).not.toContain('S9 ')
})

describe('recording', () => {
  test('a delivery of the straws pointed at', async () => {
    const screen = await straws()
    await to(screen, 'S30')
    await screen.press('delivered')
    expect(screen.line('► Straw of')).toContain('S30')
    for (let i = 0; i < 5; i += 1) await screen.press('next-field')
    await screen.type('20')
    await screen.press('accept')
    expect(screen.text).toContain('20 straws of S30 sexed delivered, batch 12, flask house, canister 2.')
    expect(stock(screen).left('S30', 'sexed')).toBe(32)
    await screen.press('undo')
    expect(screen.text).toContain('Taken back: 20 straws of S30 sexed delivered')
    expect(stock(screen).left('S30', 'sexed')).toBe(12)
    await screen.press('redo')
    expect(stock(screen).left('S30', 'sexed')).toBe(32)
  })

  test('a count is two keys and the number; it replaces the number of the lot', async () => {
    const screen = await straws()
    await to(screen, 'S30')
    await screen.press('counted')
    await screen.type('5')
    await screen.press('accept')
    expect(stock(screen).left('S30', 'sexed')).toBe(5)
    expect(screen.line('S30')).toMatch(/ 5 {2}counted 28 May/)
  })

  test('spoiled straws, and the depth of the flask pointed at', async () => {
    const screen = await straws()
    await to(screen, 'travel')
    await screen.press('nitrogen')
    expect(screen.line('Flask  ')).toContain('travel')
    await screen.type('14')
    await screen.press('accept')
    expect(screen.text).toContain('nitrogen 14 cm in flask travel.')
    expect(screen.line('travel')).toContain('fill it today')
    await to(screen, 'S30')
    await screen.press('spoiled')
    await screen.type('2')
    await screen.press('accept')
    expect(stock(screen).left('S30', 'sexed')).toBe(10)
  })

  test('what is wrong is said at its field; Esc records nothing', async () => {
    const screen = await straws()
    await screen.press('nitrogen')
    await screen.type('deep')
    await screen.press('accept')
    expect(screen.text).toContain('"deep" is not a number: type digits')
    await screen.press('cancel')
    expect(screen.text).toContain('Nothing recorded.')
    expect(screen.session.desk.log.length).toBe(seasonHerd().length)
  })

  test('each form at every size shows the field that keys go to, and its caution', async () => {
    for (const [columns, rows] of [
      [80, 24],
      [120, 40],
      [60, 16],
    ] as const) {
      const screen = await straws({ columns, rows })
      for (const form of ['delivered', 'counted', 'spoiled', 'nitrogen'] as const) {
        await screen.press(form)
        expect(screen.text).toContain('nitrogen: air, eyes, dry gloves')
        const { slip } = screen.session.desk
        const fields = slip?.is === 'form' ? slip.form.fields.length : 0
        for (let i = 0; i < fields; i += 1) {
          expect(screen.lines.filter((line) => line.startsWith(' ► '))).toHaveLength(1)
          await screen.press('next-field')
        }
        await screen.press('cancel')
      }
    }
  })

  test('on a list still to come nothing is recorded, and it says so', async () => {
    const screen = await openOn(seasonHerd(), { now, by: 'MK' })
    await screen.press('day-after', 'go', 'go-straws')
    await screen.press('delivered')
    expect(screen.text).toContain('This list is still to come')
    expect(screen.session.desk.slip).toBeUndefined()
  })
})

test('a service without a straw in the book is looked into, and leads to counting the flask', async () => {
  const missing = {
    ...served(3, { sire: 'S99' }),
    id: 'x1',
    about: 'cow-52',
    at: '2026-05-25T06:00:00.000Z',
  } as unknown as Fact
  const screen = await straws({ columns: 120, rows: 40 }, [...seasonHerd(), missing])
  expect(screen.text).toContain('To look into')
  await to(screen, 'animal 52')
  expect(screen.text).toContain('not in stock')
})

test('an empty flask and no AI ahead: it says what to do', async () => {
  const bare = frame().filter((fact) => fact.kind !== 'stock-take' && fact.kind !== 'season')
  const screen = await straws({}, bare)
  expect(screen.text).toContain('No straws are on record: D records a delivery, C a count.')
  expect(screen.text).toContain('No depth is on record: N records one.')
  await screen.press('whole')
  expect(screen.text).toContain('There is nothing here to point at.')
  await screen.press('used-up')
  expect(screen.text).toContain('No straws are used up.')
})

test('straws that will not last are ordered before they run out', async () => {
  const short = herd().map((fact) =>
    fact.kind === 'stock-take' && fact.straw === 'conventional' ? { ...fact, count: 2 } : fact,
  )
  const screen = await straws({}, short)
  expect(screen.line('conventional')).toMatch(/order \d+ /)
})

test('a typed number goes to that animal, and Esc comes back', async () => {
  const screen = await straws()
  await screen.type('412')
  expect(screen.text).toContain('412 Buttercup')
  await screen.press('whole')
  expect(screen.session.desk.places.at(-1)).toMatchObject({ at: 'animal', animal: 'cow-412' })
  await screen.press('back')
  expect(screen.text).toContain('Will they last')
})
