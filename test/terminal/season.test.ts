import { afterEach, describe, expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { type SeasonPart, seasonParts } from '../../source/morning/place.ts'
import { golden } from './support/golden.ts'
import { ago, at, frame, herd, now } from './support/herd.ts'
import { closeAll, openOn, type Screen, type Settings } from './support/screen.ts'
import { seasonHerd } from './support/season-herd.ts'

afterEach(closeAll)

const open = async (
  part: SeasonPart = 'answers',
  settings: Partial<Settings> = {},
  facts = seasonHerd(),
): Promise<Screen> => {
  const screen = await openOn(facts, { now, by: 'MK', ...settings })
  await screen.press('go', 'go-season')
  for (const name of seasonParts) {
    if (name === part) break
    await screen.press('next-part')
  }
  await screen.reckoned()
  return screen
}

for (const [columns, rows] of [
  [80, 24],
  [120, 40],
  [60, 20],
] as const)
  for (const part of seasonParts)
    test(`${part} at ${columns}x${rows}`, async () => {
      const screen = await open(part, { columns, rows })
      await expect(golden(screen)).toMatchFileSnapshot(`golden/season-${part}-${columns}x${rows}.txt`)
    })

for (const part of seasonParts)
  test(`${part} without colours and in ASCII`, async () => {
    const screen = await open(part, { colours: false, ascii: true })
    expect(screen.text).toMatch(/^[\x20-\x7e\n]*$/)
    expect(screen.line('= ')).toContain(`= ${part} =`)
    await expect(golden(screen)).toMatchFileSnapshot(`golden/season-${part}-80x24-ascii.txt`)
  })

test('the first frame says that it reckons; keys work meanwhile', async () => {
  const screen = await openOn(seasonHerd(), { now, by: 'MK' })
  await screen.press('go')
  screen.input.send('s')
  screen.input.send('\t')
  await screen.settled()
  expect(screen.line('━ ')).toContain('━ figures ━')
  await screen.reckoned()
  expect(screen.text).not.toContain('reckoning')
})

test('the smallest screen has room for each part', async () => {
  for (const part of seasonParts) {
    const screen = await open(part, { columns: 60, rows: 16 })
    expect(screen.text).toContain(`━ ${part} ━`)
    expect(screen.lines).toHaveLength(16)
  }
})

describe('the five questions', () => {
  test('each has an answer in words', async () => {
    const screen = await open('answers', { rows: 50 })
    for (const said of [
      'Are we on pace?',
      '6 of 17 served (35 %). Aim in three weeks 90 %: 10 animals short of it.',
      'Is the AI working?',
      'Who is probably empty?',
      'not served',
      'How many bulls, and when?',
      'from Fri 12 Jun',
      'What would another week of AI bring?',
      'straws',
    ])
      expect(screen.text).toContain(said)
    expect(screen.text).toMatch(
      /Ahead: \d+ of 17 in calf in six weeks \(\d+ %\), \d+ to \d+ at least 8 times/,
    )
  })

  test('Enter looks into each, Esc comes back', async () => {
    const screen = await open()
    await screen.press('look-into')
    expect(screen.text).toContain('── Not served ─')
    await screen.press('back')
    expect(screen.line('Served in three weeks')).toMatch(/^►/)
    await screen.press('previous-part', 'last', 'look-into')
    await screen.reckoned()
    expect(screen.line('── If')).toContain('AI one week longer')
    await screen.press('previous-part', 'previous-part', 'previous-part', 'down', 'down', 'look-into')
    expect(screen.text).toContain('━ empties ━')
  })

  test('before mating it tells of heats seen, after it of what was found', async () => {
    const before = await open('answers', { now: at('05:15', '2026-04-20') })
    expect(before.text).toContain('Mating begins Fri 1 May.')
    expect(before.text).toMatch(/\d+ of \d+ seen on heat so far/)
    const after = await open('answers', { rows: 40, now: at('05:15', '2026-09-20') })
    expect(after.text).toContain('The AI weeks are over.')
    expect(after.text).toMatch(/Found empty \d+ of \d+/)
  })
})

describe('figures', () => {
  test('every figure opens to its animals, an animal to her page, and Esc goes back the same way', async () => {
    const screen = await open('figures', { rows: 40 })
    let opened = 0
    for (let i = 0; i < 60; i += 1) {
      const line = screen.lines.find((one) => one.startsWith('►')) ?? ''
      await screen.press('look-into')
      expect(
        screen.lines.some((one) => one.includes('── ')),
        line,
      ).toBe(true)
      await screen.press('back')
      expect(screen.lines.find((one) => one.startsWith('►'))).toBe(line)
      opened += 1
      await screen.press('down')
      if (screen.lines.find((one) => one.startsWith('►')) === line) break
    }
    expect(opened).toBeGreaterThan(15)
    await screen.press('first', 'look-into', 'down', 'look-into')
    expect(screen.session.desk.places.at(-1)?.at).toBe('animal')
    await screen.press('back', 'back')
    expect(screen.line('Served in three weeks')).toMatch(/^►/)
  })

  test('each says numerator, denominator, interval and aim; what is not known counts for nothing', async () => {
    const screen = await open('figures', { columns: 120, rows: 40 })
    const line = screen.line('► Served in three weeks')
    expect(line).toContain('6 of 17')
    expect(line).toContain('35 %')
    expect(line).toContain('aim 90 %')
    expect(screen.line('In calf in six weeks')).toMatch(/2 of 17 +12 % +\d+ not known +aim 78 %/)
    expect(screen.text).toContain('meant for')
    expect(screen.text).toContain('19 times in')
  })
})

describe('forecast', () => {
  test('Right and Left turn a knob; what it brings stands beside the plan; X goes back to the plan', async () => {
    const screen = await open('forecast', { rows: 40 })
    await screen.press('try-more')
    await screen.reckoned()
    expect(screen.line('── If')).toContain('AI one week longer')
    expect(screen.line('Weeks of AI')).toContain('< 7 >       planned 6')
    expect(screen.line('likely')).toContain('What if')
    expect(screen.line('In calf in six weeks')).toMatch(
      /In calf in six weeks +\d+ +\d+ to \d+ +\d+ +\d+ to \d+/,
    )
    await screen.press('try-less')
    expect(screen.line('── As planned')).not.toBe('')
    await screen.press('down', 'down', 'try-less', 'down', 'try-more')
    await screen.reckoned()
    expect(screen.line('── If')).toContain('services hold')
    await screen.press('as-planned')
    expect(screen.line('── As planned')).not.toBe('')
  })

  test('changes worth a look are tried by Enter', async () => {
    const screen = await open('forecast', { rows: 40 })
    for (let i = 0; i < 4; i += 1) await screen.press('down')
    await screen.press('look-into')
    await screen.reckoned()
    expect(screen.line('── If')).toContain('shorter')
  })

  test('what it rests on can be brought into sight on the smallest screen', async () => {
    const screen = await open('forecast', { columns: 60, rows: 16 })
    await screen.press('last')
    expect(screen.text).toContain('What it rests on')
    expect(screen.text).toMatch(/Services hold as/)
  })

  test('nothing is recorded by trying', async () => {
    const screen = await open('forecast')
    const before = screen.session.desk.log.length
    await screen.press('try-more', 'down', 'try-less', 'look-into')
    expect(screen.session.desk.log.length).toBe(before)
  })
})

test('pictures move as a page', async () => {
  const screen = await open('pictures')
  expect(screen.text).toContain('In calf by day of the season')
  await screen.press('page-down')
  expect(screen.text).not.toContain('In calf by day of the season')
  await screen.press('last')
  expect(screen.text).toContain('Calvings to come from this season')
  await screen.press('first')
  expect(screen.text).toContain('In calf by day of the season')
})

test('the earlier season stands beside this one', async () => {
  const screen = await open('earlier', { columns: 120, rows: 40 })
  expect(screen.line('2025')).toContain('2026 so far')
  expect(screen.line('Animals')).toMatch(/17 +17/)
})

test('what is recorded meanwhile is marked until it is reckoned in, and can be taken back here', async () => {
  const screen = await open('empties', { columns: 120, rows: 40 })
  await screen.press('look-into')
  await screen.press('bar', 'accept', 'back')
  await screen.reckoned()
  expect(screen.text).not.toContain('reckoning anew')
  await screen.press('undo')
  expect(screen.text).toContain('Taken back')
})

test('another block is a key away', async () => {
  const autumn = {
    id: 'autumn',
    about: 'herd',
    at: '2026-01-01T00:00:00.000Z',
    kind: 'season',
    date: '2026-01-01',
    block: 'autumn',
    matingStart: '2026-11-20',
    aiWeeks: 6,
    bullWeeks: 3,
  } as unknown as Fact
  const screen = await open('answers', {}, [...seasonHerd(), autumn])
  await screen.press('other-block')
  await screen.reckoned()
  expect(screen.text).toContain('Mating begins Fri 20 Nov.')
  await screen.press('other-block')
  expect(screen.text).toContain('Are we on pace?')
  const alone = await open('answers', {}, herd())
  await alone.press('other-block')
  expect(alone.text).toContain('There is one block only.')
})

test('a herd without a season says what to do', async () => {
  const bare = frame().filter((fact) => fact.kind !== 'season')
  const screen = await open('answers', {}, bare)
  expect(screen.text).toContain('No season is set up yet')
})

test('a past list shows the season as it stood then', async () => {
  const screen = await openOn(seasonHerd(), { now, by: 'MK' })
  await screen.press('some-day')
  await screen.type(ago(20))
  await screen.press('take', 'go', 'go-season')
  await screen.reckoned()
  expect(screen.text).toContain('a past list')
  expect(screen.text).toMatch(/Aim by now 3\d %/)
})
