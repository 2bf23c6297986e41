import { afterEach, describe, expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { golden } from './support/golden.ts'
import { cow, DAY, herd, now, served } from './support/herd.ts'
import type { MemoryHerd } from './support/memory-herd.ts'
import { closeAll, openOn, type Screen, type Settings } from './support/screen.ts'
import { visitFrame } from './support/visit.ts'

afterEach(closeAll)

const VISIT = '2026-06-10'

/** A herd with two blocks; a visit of the spring block is planned. */
const facts = (): readonly Fact[] => [
  ...visitFrame([VISIT]),
  ...herd().filter((fact) => fact.about !== 'herd'),
  ...cow('601', 'Nutmeg', 150, [served(20)], { block: 'autumn' }),
]
const recorded = (screen: Screen): readonly Fact[] =>
  (screen.herd as MemoryHerd).state.facts.slice(facts().length)

async function ahead(settings: Settings = {}): Promise<Screen> {
  const screen = await openOn(facts(), { now, by: 'MK', rows: 60, ...settings })
  await screen.press('go', 'go-ahead')
  await screen.reckoned()
  return screen
}

/** The text of the screen on one line. */
const flat = (screen: Screen): string => screen.text.replaceAll(/\s+/g, ' ')

/** Moves down to the line that holds a text. */
async function pointAt(screen: Screen, text: string): Promise<void> {
  await screen.press('first')
  for (let i = 0; i < 80 && !screen.line('► ').includes(text); i += 1) await screen.press('down')
  expect(screen.line('► ')).toContain(text)
}
const visitsOf = (screen: Screen, block = 'spring'): readonly string[] => {
  const season = openBook((screen.herd as MemoryHerd).state.facts).live.findLast(
    (fact) => fact.kind === 'season' && fact.block === block && fact.matingStart > '2026-01-01',
  )
  return season?.kind === 'season' ? (season.scanDates ?? []) : []
}

describe('the next two weeks', () => {
  test('a line a day with its counts by section, the returns expected, and weekends marked', async () => {
    const screen = await ahead()
    const days = screen.lines.filter((line) =>
      /^[► ] {3}[ ·](Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d+ (May|Jun) +[·\d]/.test(line),
    )
    expect(days).toHaveLength(14)
    expect(screen.lines.filter((line) => /·(Sat|Sun) /.test(line))).toHaveLength(4)
    expect(screen.line('weekend')).toMatch(/care +serve? .*watch.* back$/)
    expect(days[0]).toMatch(/► {4}Fri 29 May/)
  })

  test('the counts are those of the list that opens with Enter', async () => {
    const screen = await ahead()
    await pointAt(screen, 'Sun 31 May')
    const heads = screen.line('weekend').replace('· weekend', '').trim().split(/ +/)
    const counts = screen
      .line('► ')
      .replace(/.*31 May/, '')
      .trim()
      .split(/ +/)
    const watch = counts[heads.indexOf('watch')]
    await screen.press('open-day')
    expect(screen.lines[0]).toContain('Sun 31 May 2026 (still to come, to look at only)')
    expect(screen.line('Repeat-heat watch')).toContain(`${watch} to do`)
  })

  test('a number typed goes to her page', async () => {
    const screen = await ahead()
    await screen.type('52')
    await screen.press('open-day')
    expect(screen.text).toContain('52  Fern')
    await screen.press('back')
    expect(screen.text).toContain('The next two weeks')
  })

  test('what may come is told about the day pointed at', async () => {
    const screen = await ahead({ rows: 24 })
    expect(screen.text).toContain('What may come on Fri 29 May')
    expect(screen.text).toMatch(/Returns to be expected that day: about 0\.\d\./)
  })

  test('until it is reckoned the days stand there, and keys work', async () => {
    const screen = await openOn(facts(), { now, by: 'MK', rows: 60 })
    await screen.send('ga')
    expect(screen.text).toContain('Fri 29 May')
    await screen.send('\u001b[B')
    expect(screen.line('► ')).toContain('Sat 30 May')
    await screen.reckoned()
    expect(screen.text).not.toContain('being reckoned')
  })

  test('what is recorded meanwhile changes the counts', async () => {
    const screen = await ahead()
    const before = screen.line('Fri 29 May')
    await screen.press('back')
    for (const number of ['52', '53', '54']) {
      await screen.type(number)
      await screen.press('in-calf', 'accept')
      if (screen.session.desk.slip !== undefined) await screen.press('accept')
    }
    await screen.press('go', 'go-ahead')
    await screen.reckoned()
    expect(screen.line('Fri 29 May')).not.toBe(before)
  })
})

describe('scanning visits', () => {
  test('those planned, then the best days: how many are ready, and whether foetal age tells the sires', async () => {
    const screen = await ahead()
    expect(screen.line('Wed 10 Jun  spring')).toMatch(/● {2}Wed 10 Jun {2}spring +planned, \d+ ready/)
    const best = screen.lines.filter((line) => line.startsWith('  ○ '))
    expect(best.length).toBeGreaterThanOrEqual(2)
    expect(best.some((line) => line.includes('tells AI calves from the bull’s'))).toBe(true)
    expect(best.some((line) => line.includes('autumn'))).toBe(true)
  })

  test('V plans a visit on the day pointed at, after a question, and one key takes it back', async () => {
    const screen = await ahead()
    await pointAt(screen, 'Tue 9 Jun')
    await screen.press('plan-visit')
    expect(flat(screen)).toMatch(
      /Plan a scanning visit of the spring block on Tue 9 Jun 2026, with \d+ animals ready then\?/,
    )
    await screen.press('cancel')
    expect(recorded(screen)).toEqual([])
    await screen.press('plan-visit', 'agree')
    expect(screen.text).toContain('Planned: scanning visit of the spring block on Tue 9 Jun 2026.')
    expect(recorded(screen)).toHaveLength(1)
    expect(recorded(screen)[0]).toMatchObject({
      kind: 'season',
      about: 'herd',
      date: DAY,
      block: 'spring',
      matingStart: '2026-05-01',
      aiWeeks: 6,
      bullWeeks: 3,
      scanDates: ['2026-06-09', VISIT],
    })
    await screen.press('undo')
    expect(visitsOf(screen)).toEqual([VISIT])
  })

  test('M moves the nearest planned visit of the block to the day pointed at', async () => {
    const screen = await ahead()
    await pointAt(screen, 'Fri 5 Jun')
    await screen.press('move-visit')
    expect(flat(screen)).toContain(
      'Move the scanning visit of the spring block from Wed 10 Jun to Fri 5 Jun 2026',
    )
    await screen.press('agree')
    expect(visitsOf(screen)).toEqual(['2026-06-05'])
    expect(flat(screen)).toContain(
      'Moved: the scanning visit of the spring block, from Wed 10 Jun to Fri 5 Jun 2026.',
    )
  })

  test('X takes it out of the plan; only a planned visit can be taken out', async () => {
    const screen = await ahead()
    await screen.press('cancel-visit')
    expect(screen.text).toContain('Point at a planned visit first.')
    await pointAt(screen, 'Wed 10 Jun  spring')
    await screen.press('cancel-visit', 'agree')
    expect(visitsOf(screen)).toEqual([])
    expect(flat(screen)).toContain(
      'Taken out of the plan: the scanning visit of the spring block on Wed 10 Jun 2026.',
    )
  })

  test('a day is planned once', async () => {
    const screen = await ahead()
    await pointAt(screen, 'Wed 10 Jun  spring')
    await screen.press('plan-visit')
    expect(screen.text).toContain('A visit of the spring block is planned for Wed 10 Jun 2026 already.')
    expect(recorded(screen)).toEqual([])
  })

  test('B plans for the other block; a block without a planned visit has none to move', async () => {
    const screen = await ahead()
    await screen.press('other-block')
    expect(screen.text).toContain('V plans for the autumn block')
    await screen.press('move-visit')
    expect(screen.text).toContain('No visit of the autumn block is planned: V plans one.')
    await screen.press('plan-visit', 'agree')
    expect(recorded(screen)[0]).toMatchObject({
      block: 'autumn',
      matingStart: '2025-12-01',
      scanDates: ['2026-05-29'],
    })
  })

  test('the day of a line belongs to its block', async () => {
    const screen = await ahead()
    const autumn = screen.lines.find((line) => line.startsWith('  ○ ') && line.includes('autumn')) ?? ''
    await pointAt(screen, autumn.slice(5, 23).trim())
    await screen.press('plan-visit', 'agree')
    expect(recorded(screen)[0]).toMatchObject({ block: 'autumn' })
  })
})

test('key dates of the next months, and what to do by each', async () => {
  const screen = await ahead({ columns: 120 })
  expect(screen.line('spring block: last day of AI')).toContain('Thu 11 Jun')
  expect(screen.line('spring block: sweep bull goes in')).toContain('Fri 12 Jun')
  await pointAt(screen, 'sweep bull goes in')
  expect(screen.text).toContain('No bull is safe')
})

const sizes = [
  [80, 24],
  [120, 40],
  [60, 20],
] as const
for (const [columns, rows] of sizes)
  test(`the days ahead at ${columns}x${rows}, in colour, without colours and in ASCII`, async () => {
    const down = async (screen: Screen): Promise<void> => {
      for (let i = 0; i < 15; i += 1) await screen.press('down')
    }
    const screen = await ahead({ columns, rows })
    await expect(golden(screen)).toMatchFileSnapshot(`golden/ahead-${columns}x${rows}.txt`)
    await down(screen)
    await expect(golden(screen)).toMatchFileSnapshot(`golden/ahead-visits-${columns}x${rows}.txt`)
    const plain = await ahead({ columns, rows, colours: false })
    await down(plain)
    expect(plain.lines).toEqual(screen.lines)
    for (let row = 0; row < rows; row += 1)
      for (let column = 0; column < columns; column += 1) expect(plain.cell(column, row).colour).toBe(-1)
    const ascii = await ahead({ columns, rows, ascii: true })
    expect(ascii.text).toMatch(/^[\x20-\x7e\n]*$/)
    await expect(golden(ascii)).toMatchFileSnapshot(`golden/ahead-${columns}x${rows}-ascii.txt`)
  })

describe('recording from the days ahead', () => {
  test('a number and a key of the list record about that animal', async () => {
    const screen = await ahead()
    await screen.type('412h')
    expect(recorded(screen)).toMatchObject([{ kind: 'heat', about: 'cow-412', date: DAY }])
    await screen.type('412v')
    expect(screen.text).toContain('━━ Examined by the vet: 412 Buttercup')
    await screen.press('cancel')
    await screen.type('412m')
    expect(screen.text).toContain('━━ Record about 412 Buttercup')
  })

  test('without a number the screen keeps its letters, and says what is missing for the others', async () => {
    const screen = await ahead()
    await screen.type('h')
    expect(screen.text).toContain('Point at an animal or type her number first.')
    await screen.type('v')
    expect(flat(screen)).toContain('Plan a scanning visit')
    await screen.press('cancel')
    expect(recorded(screen)).toEqual([])
  })
})
