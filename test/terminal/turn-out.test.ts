import { afterEach, describe, expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { golden } from './support/golden.ts'
import { ago, at, cow, frame, heat, served } from './support/herd.ts'
import type { MemoryHerd } from './support/memory-herd.ts'
import { closeAll, openOn, type Screen, type Settings } from './support/screen.ts'

afterEach(closeAll)

/** Season days of the spring block, mating start Fri 1 May 2026: last day of AI 41, bull 42 to 62. */
const CLOSE = '2026-06-11'
const IN = '2026-06-12'
const LAST = '2026-07-02'
const OUT = '2026-07-03'

const bull = (
  number: string,
  name: string,
  born: string,
  more: Record<string, unknown> = {},
): readonly Fact[] =>
  cow(number, name, undefined, [], { sex: 'M', born, ready: true, breed: 'Angus', block: undefined, ...more })

/** Six that go, one in calf, one on hold, one that calved too lately; two bulls, one of them young. */
const facts = (): readonly Fact[] => [
  ...frame(),
  ...cow('101', 'Erica', 90, [served(20)]),
  ...cow('102', 'Fern', 90, [served(25), heat(2)]),
  ...cow('103', 'Gorse', 90),
  ...cow('104', 'Hazel', 90, [served(12)]),
  ...cow('105', 'Iris', 90, [served(10)]),
  ...cow('106', 'Juno', undefined, [served(9)]),
  ...cow('201', 'Kelpie', 120, [
    served(60),
    { kind: 'check', date: ago(25), method: 'ultrasound', result: 'pregnant' },
  ]),
  ...cow('301', 'Linnet', 90, [served(12), { kind: 'hold', date: ago(3) }]),
  ...cow('302', 'Moss', -5),
  ...cow('303', 'Nettle', 90, [{ kind: 'bar', date: ago(30) }]),
  ...bull('901', 'Boris', '2022-03-01'),
  ...bull('902', 'Tom', '2024-12-01'),
]
const going = ['101', '102', '103', '104', '105', '106']

const recorded = (screen: Screen): readonly Fact[] =>
  (screen.herd as MemoryHerd).state.facts.slice(facts().length)
const bare = ({ id: _id, at: _at, action: _action, by: _by, ...rest }: Fact) => rest
/** The text of the screen on one line. */
const flat = (screen: Screen): string => screen.text.replaceAll(/\s+/g, ' ')

const list = (day: string, settings: Settings = {}): Promise<Screen> =>
  openOn(facts(), { now: at('09:00', day), by: 'MK', rows: 60, ...settings })

/** The move, opened with G M. */
async function turnOut(day: string, settings: Settings = {}): Promise<Screen> {
  const screen = await list(day, settings)
  await screen.press('go', 'go-turn-out')
  await screen.reckoned()
  return screen
}
const pointTo = async (screen: Screen, text: string): Promise<void> => {
  for (let i = 0; i < 30 && !screen.line('► ').includes(text); i += 1) await screen.press('down')
  expect(screen.line('► ')).toContain(text)
}

describe('the step on the morning list', () => {
  test('from the close date on it stands above the sections until it is done', async () => {
    const before = await list('2026-06-10')
    expect(before.text).not.toContain('the bull goes in')
    const screen = await list(CLOSE)
    expect(screen.lines[3]).toMatch(/^ {2}○ │ Spring block: the bull goes in Fri 12 Jun, 6 animals/)
    const later = await list('2026-06-20')
    expect(later.text).toContain('Spring block: the bull goes in Fri 12 Jun')
  })

  test('Enter on it opens the step; one key back to the list says what putting it off does', async () => {
    const screen = await list(CLOSE)
    await screen.press('first')
    expect(screen.line('► ')).toContain('the bull goes in')
    expect(screen.lines.at(-1)).toContain('Enter bull in, bull out')
    await screen.press('open-animal')
    expect(screen.text).toContain('── The bull goes in ─')
    await screen.press('back')
    expect(flat(screen)).toMatch(
      /Put off: the bull of the spring block is to go in on Fri 12 Jun\. Each day later leaves about 0\.\d heats a day unserved\./,
    )
    expect(recorded(screen)).toEqual([])
    expect(screen.text).toContain('Spring block: the bull goes in Fri 12 Jun')
  })

  test('no row is in its way: the pointer begins on the first work', async () => {
    const screen = await list(CLOSE)
    expect(screen.line('► ')).not.toContain('the bull goes in')
  })

  test('once recorded it is gone, and the animals are ticked the next morning', async () => {
    const screen = await turnOut(CLOSE)
    await screen.press('record-move', 'agree', 'back')
    expect(screen.text).not.toContain('the bull goes in')
    screen.now = at('05:00', IN)
    screen.session.tick()
    await screen.settled()
    await screen.press('take', 'unfold')
    expect(screen.text).not.toContain('the bull goes in')
    expect(screen.line('Gorse')).toMatch(/● │ +103/)
  })
})

describe('the move in', () => {
  test('who goes, who is kept from him and why, who is in calf', async () => {
    const screen = await turnOut(CLOSE)
    expect(screen.text).toContain('── Go with him: 6 ')
    for (const number of going)
      expect(screen.lines.some((line) => line.startsWith(`  ● │   ${number}`))).toBe(true)
    expect(screen.text).toContain('── Kept from him: 3 ')
    expect(screen.line(' 301 ')).toContain('on health hold')
    expect(screen.line(' 302 ')).toContain('calved too lately for his weeks')
    expect(screen.line(' 303 ')).toContain('not to be bred')
    expect(screen.line('In calf, need no bull: 1')).not.toBe('')
    expect(screen.line('102 Fern')).toContain('came back, 1 of 2 chances')
    expect(screen.line('103 Gorse')).toContain('not served')
    expect(screen.line('104 Hazel')).toMatch(/served 26 d ago, \d+ % in calf, 1 of 2 chances/)
  })

  test('how many bulls, for the high end of the open; which are on hand; the caution in full', async () => {
    const screen = await turnOut(CLOSE)
    expect(flat(screen)).toMatch(
      /\d+ to \d+ open at turn-out, at least 8 times in 10: for \d+ it takes 2 bulls of two years or more, or \d+ younger\./,
    )
    expect(screen.text).toContain('Bulls on hand: 2 chosen, for 50 open')
    expect(screen.line('901 Boris')).toContain('Angus, 4 years old')
    expect(screen.line('902 Tom')).toContain('under two years: 20 open at most')
    expect(flat(screen)).toContain('No bull is safe, the quiet ones least of all. Never work him alone')
    expect(flat(screen)).toContain('put up signs where the public may walk.')
  })

  test('recorded at once as one action, a fact for each animal and each bull, and taken back with one key', async () => {
    const screen = await turnOut(CLOSE)
    await screen.press('record-move')
    expect(flat(screen)).toContain('Record 6 animals with 901 and 902 from Fri 12 Jun 2026? No bull is safe')
    await screen.press('cancel')
    expect(recorded(screen)).toEqual([])
    await screen.press('record-move', 'agree')
    expect(recorded(screen).map(bare)).toEqual(
      going.flatMap((number) =>
        ['901', '902'].map((one) => ({ kind: 'with-bull', about: `cow-${number}`, date: IN, bull: one })),
      ),
    )
    expect(new Set(recorded(screen).map(({ action }) => action)).size).toBe(1)
    expect(screen.text).toContain('6 animals with 901 and 902 from Fri 12 Jun 2026.')
    expect(screen.text).toContain('Nobody is left to put with him.')
    expect(screen.text).toContain('6 animals are with him already.')
    screen.pressed = 0
    await screen.press('undo')
    expect(screen.pressed).toBe(1)
    expect(screen.text).toContain('Taken back: 6 animals: put with the bull, 901, 902, Fri 12 Jun.')
    expect(screen.text).toContain('── Go with him: 6 ')
    expect(recorded(screen)).toHaveLength(24)
    await screen.press('redo')
    expect(screen.text).toContain('Nobody is left to put with him.')
  })

  test('more than fifty animals are taken back with one key as well', async () => {
    const many = Array.from({ length: 60 }, (_, index) => cow(String(500 + index), 'Teasel', 90)).flat()
    const screen = await openOn([...facts(), ...many], { now: at('09:00', CLOSE), by: 'MK', rows: 30 })
    await screen.press('go', 'go-turn-out', 'record-move', 'agree')
    const before = (screen.herd as MemoryHerd).state.facts.length
    await screen.press('undo')
    expect((screen.herd as MemoryHerd).state.facts.length - before).toBe(132)
    expect(screen.session.desk.slip).toBeUndefined()
  })

  test('a bull or an animal is left out with Space, by the pointer or by her number', async () => {
    const screen = await turnOut(CLOSE)
    await pointTo(screen, '902 Tom')
    await screen.press('toggle-move')
    expect(screen.text).toContain('Bulls on hand: 1 chosen, for 30 open')
    expect(screen.text).toContain('two at least: one may go lame')
    await screen.type('104')
    await screen.press('toggle-move')
    expect(screen.line('104 Hazel')).toMatch(/^► ○ │/)
    expect(screen.text).toContain('── Go with him: 5 ')
    expect(screen.text).toContain('1 left out')
    await screen.press('record-move', 'agree')
    expect(recorded(screen)).toHaveLength(5)
    expect(recorded(screen).every((fact) => fact.kind === 'with-bull' && fact.bull === '901')).toBe(true)
    expect(recorded(screen).some((fact) => fact.about === 'cow-104')).toBe(false)
  })

  test('a small group: all left out, then some taken in by number', async () => {
    const screen = await turnOut(CLOSE)
    await screen.press('all-or-none')
    expect(screen.text).toContain('── Go with him: 0 ')
    await screen.press('record-move')
    expect(screen.text).toContain('Nobody is left to put with the bull.')
    for (const number of ['101', '106']) {
      await screen.type(number)
      await screen.press('toggle-move')
    }
    await screen.press('record-move', 'agree')
    expect(new Set(recorded(screen).map(({ about }) => about))).toEqual(new Set(['cow-101', 'cow-106']))
    expect(screen.text).toContain('2 animals are with him already.')
    await screen.press('all-or-none')
    expect(screen.text).toContain('── Go with him: 4 ')
  })

  test('a number that is not on the list of the move is said', async () => {
    const screen = await turnOut(CLOSE)
    await screen.type('301')
    await screen.press('toggle-move')
    expect(screen.text).toContain('301 does not stand on this list.')
    await screen.type('999')
    await screen.press('toggle-move')
    expect(screen.text).toContain('There is no animal 999.')
    await screen.type('10')
    await screen.press('back')
    expect(screen.session.desk.typed).toBe('')
    await screen.type('103')
    await screen.press('record-move')
    expect(screen.text).toContain('103  Gorse')
  })

  test('who does not go can be looked at on a small screen: each says why she stays', async () => {
    const screen = await turnOut(CLOSE, { rows: 24 })
    await pointTo(screen, '302 Moss')
    await screen.press('toggle-move')
    expect(flat(screen)).toContain('302 is kept from him: calved too lately for his weeks')
    await screen.press('last')
    expect(screen.line('► ')).toContain('201')
    await screen.press('toggle-move')
    expect(screen.text).toContain('They are in calf: they need no bull.')
    expect(recorded(screen)).toEqual([])
  })

  test('without a bull on record the move names none', async () => {
    const without = facts().filter((fact) => fact.about !== 'cow-901' && fact.about !== 'cow-902')
    const screen = await openOn(without, { now: at('09:00', CLOSE), by: 'MK', rows: 60 })
    await screen.press('go', 'go-turn-out')
    expect(flat(screen)).toContain('No bull of the farm is on record')
    await screen.press('record-move', 'agree')
    const made = (screen.herd as MemoryHerd).state.facts.slice(without.length)
    expect(made).toHaveLength(6)
    expect(made.every((fact) => fact.kind === 'with-bull' && fact.bull === undefined)).toBe(true)
  })
})

describe('another day', () => {
  test('later: what it does is said; the season stays; nothing is recorded before it comes', async () => {
    const screen = await turnOut(CLOSE)
    await screen.press('move-later', 'move-later', 'move-later')
    expect(screen.text).toContain('Day Mon 15 Jun 3 days later than planned, he comes out Fri 3 Jul')
    expect(flat(screen)).toMatch(/About \d heats? goe?s? unserved .* and 18 days with him are left\./)
    await screen.press('record-move')
    expect(flat(screen)).toMatch(/Nothing recorded: Mon 15 Jun 2026 is still to come\. About \d heats? go/)
    expect(recorded(screen)).toEqual([])
  })

  test('on that day it is recorded with the day’s date', async () => {
    const screen = await turnOut('2026-06-15')
    expect(screen.text).toContain('Day Mon 15 Jun 3 days later than planned')
    await screen.press('record-move', 'agree')
    expect(recorded(screen).every(({ date }) => date === '2026-06-15')).toBe(true)
  })

  test('he went in last Friday and it is recorded today', async () => {
    const screen = await turnOut('2026-06-15')
    await screen.press('move-earlier', 'move-earlier', 'move-earlier', 'record-move', 'agree')
    expect(recorded(screen).every(({ date }) => date === IN)).toBe(true)
  })

  test('earlier: of a calf conceived then nobody can tell the sire', async () => {
    const screen = await turnOut('2026-06-05')
    expect(screen.text).toContain('Day Fri 12 Jun as planned')
    expect(screen.text).toContain('nothing is recorded for a day after tomorrow')
    for (let i = 0; i < 6; i += 1) await screen.press('move-earlier')
    expect(flat(screen)).toContain('AI goes on until Thu 11 Jun: of a calf conceived in these days')
    await screen.press('record-move', 'agree')
    expect(recorded(screen)[0]).toMatchObject({ kind: 'with-bull', date: '2026-06-06' })
  })

  test('not outside the season', async () => {
    const screen = await turnOut('2026-07-01')
    for (let i = 0; i < 2; i += 1) await screen.press('move-later')
    expect(screen.text).toContain('That day lies outside the season.')
  })

  test('a week more of AI is a change of the season, asked about, and taken back with one key', async () => {
    const screen = await turnOut(CLOSE)
    expect(flat(screen)).toMatch(
      /W: AI a week longer, to Thu 18 Jun\. Forecast: \d+ empty at the end in the place of \d+/,
    )
    await screen.press('ai-longer')
    expect(flat(screen)).toContain('Let AI of the spring block go on to Thu 18 Jun 2026, 7 weeks?')
    await screen.press('agree')
    expect(recorded(screen).map(bare)).toEqual([
      {
        kind: 'season',
        about: 'herd',
        date: CLOSE,
        block: 'spring',
        matingStart: '2026-05-01',
        aiWeeks: 7,
        bullWeeks: 2,
      },
    ])
    expect(screen.lines[1]).toContain('AI day 42 of 49, closes Thu 18 Jun')
    expect(screen.text).toContain('Day Fri 19 Jun as planned, he comes out Fri 3 Jul')
    await screen.press('undo')
    expect(screen.lines[1]).toContain('AI day 42 of 42, closes Thu 11 Jun')
  })

  test('once AI is over it can no longer be made longer', async () => {
    const screen = await turnOut('2026-06-15')
    await screen.press('ai-longer')
    expect(screen.text).toContain('AI is over in this block')
    expect(screen.text).not.toContain('W: AI a week longer')
  })
})

describe('the move out', () => {
  /** In since the planned day; today is the day he is to come out. */
  async function out(day = OUT, settings: Settings = {}): Promise<Screen> {
    const screen = await turnOut(CLOSE, settings)
    await screen.press('record-move', 'agree', 'back')
    screen.now = at('09:00', day)
    screen.session.tick()
    await screen.settled()
    await screen.press('take')
    return screen
  }

  test('from the day after his last on it stands on the list, opens, and is recorded at once', async () => {
    const early = await out(LAST)
    expect(early.text).not.toContain('the bull comes out')
    const screen = await out()
    expect(screen.line('the bull comes out')).toContain(
      'Spring block: the bull comes out Fri 3 Jul, 6 animals',
    )
    await screen.press('first', 'open-animal')
    expect(screen.text).toContain('── The bull comes out ─')
    expect(screen.text).toContain('── Taken from him: 6 ')
    expect(screen.line('101 Erica')).toContain('since Fri 12 Jun, 901, 902')
    expect(flat(screen)).toContain('No bull is safe')
    await screen.press('record-move')
    expect(flat(screen)).toContain('Record 6 animals taken from the bull on Fri 3 Jul 2026?')
    await screen.press('agree')
    expect(recorded(screen).slice(12).map(bare)).toEqual(
      going.map((number) => ({ kind: 'from-bull', about: `cow-${number}`, date: OUT })),
    )
    expect(screen.text).toContain('6 animals without a bull from Fri 3 Jul 2026.')
    await screen.press('back')
    expect(screen.text).not.toContain('the bull comes out')
    await screen.press('undo')
    expect(screen.text).toContain('the bull comes out')
  })

  test('later than planned: the last calves come later', async () => {
    const screen = await out('2026-07-06')
    await screen.press('first', 'open-animal')
    expect(screen.text).toContain('Day Mon 6 Jul 3 days later than planned')
    expect(flat(screen)).toContain('The last calves then come about Wed 14 Apr 2027.')
    await screen.press('back')
    expect(flat(screen)).toContain('Put off: the bull of the spring block was to come out on Fri 3 Jul.')
  })

  test('some stay with him', async () => {
    const screen = await out()
    await screen.press('first', 'open-animal')
    await screen.type('103')
    await screen.press('toggle-move', 'record-move', 'agree')
    expect(recorded(screen).slice(12)).toHaveLength(5)
    expect(screen.text).toContain('── Taken from him: 0 ')
    expect(screen.text).toContain('1 stays with him')
  })

  test('Tab turns to the other way', async () => {
    const screen = await turnOut(CLOSE)
    await screen.press('other-way')
    expect(screen.text).toContain('── The bull comes out ─')
    expect(screen.text).toContain('No animal of this block is with a bull.')
    await screen.press('record-move')
    expect(screen.text).toContain('No animal of this block is with a bull.')
    await screen.press('other-way')
    expect(screen.text).toContain('── The bull goes in ─')
  })
})

test('a herd without bull weeks says so', async () => {
  const none = facts().map((fact) => (fact.kind === 'season' ? { ...fact, bullWeeks: 0 } : fact))
  const screen = await openOn(none, { now: at('09:00', CLOSE), by: 'MK' })
  await screen.press('go', 'go-turn-out')
  expect(screen.text).toContain('No block has bull weeks')
  await screen.press('record-move')
  expect(screen.text).toContain('This block has no bull weeks')
  await screen.press('back')
  expect(screen.text).not.toContain('No block has bull weeks')
})

const sizes = [
  [80, 24],
  [120, 40],
  [60, 20],
] as const
for (const [columns, rows] of sizes)
  test(`the move at ${columns}x${rows}, in colour, without colours and in ASCII`, async () => {
    const screen = await turnOut(CLOSE, { columns, rows })
    await expect(golden(screen)).toMatchFileSnapshot(`golden/turn-out-${columns}x${rows}.txt`)
    await screen.press('move-later', 'move-later', 'last')
    await expect(golden(screen)).toMatchFileSnapshot(`golden/turn-out-later-${columns}x${rows}.txt`)
    const plain = await turnOut(CLOSE, { columns, rows, colours: false })
    await plain.press('move-later', 'move-later', 'last')
    expect(plain.lines).toEqual(screen.lines)
    for (let row = 0; row < rows; row += 1)
      for (let column = 0; column < columns; column += 1) expect(plain.cell(column, row).colour).toBe(-1)
    const ascii = await turnOut(CLOSE, { columns, rows, ascii: true })
    expect(ascii.text).toMatch(/^[\x20-\x7e\n]*$/)
    await expect(golden(ascii)).toMatchFileSnapshot(`golden/turn-out-${columns}x${rows}-ascii.txt`)
    await ascii.press('first', 'record-move')
    await expect(golden(ascii)).toMatchFileSnapshot(`golden/turn-out-asks-${columns}x${rows}-ascii.txt`)
  })

describe('the day of the move, typed', () => {
  const typeDay = async (screen: Screen, text: string): Promise<void> => {
    await screen.press('move-day')
    await screen.type(text)
    await screen.press('take')
  }

  test('a move in that is recorded late has the day that was', async () => {
    const screen = await turnOut('2026-06-20')
    await typeDay(screen, '13 jun')
    expect(screen.text).toContain('Day Sat 13 Jun')
    await screen.press('record-move', 'agree')
    expect(new Set(recorded(screen).map(({ date }) => date))).toEqual(new Set(['2026-06-13']))
  })

  test('and so has one out of the bull weeks', async () => {
    const screen = await turnOut(LAST)
    if (screen.text.includes('The bull comes out')) await screen.press('other-way')
    await typeDay(screen, IN)
    await screen.press('record-move', 'agree')
    const before = recorded(screen).length
    await screen.press('other-way')
    expect(screen.text).toContain('The bull comes out')
    await typeDay(screen, '30 June')
    expect(screen.text).toContain('Day Tue 30 Jun')
    await screen.press('record-move', 'agree')
    const out = recorded(screen).slice(before)
    expect(new Set(out.map(({ kind, date }) => `${kind} ${date}`))).toEqual(new Set(['from-bull 2026-06-30']))
  })

  test('what is no day of the season is said, and Esc leaves the day as it was', async () => {
    const screen = await turnOut(CLOSE)
    const day = screen.line(' Day ')
    await screen.press('move-day')
    for (const [text, sentence] of [
      ['30 feb', 'That is not a date. Write 28 May, or 2026-05-28.'],
      ['1900-01-01', 'That day lies outside the season: type one within it.'],
      ['2100-01-01', 'That day lies outside the season: type one within it.'],
    ] as const) {
      await screen.type(text)
      await screen.press('take')
      expect(screen.text).toContain(sentence)
      for (let i = 0; i < text.length; i += 1) await screen.press('rub')
    }
    await screen.press('cancel')
    expect(screen.line(' Day ')).toBe(day)
  })
})

describe('recording on the animals of the step', () => {
  test('the keys of the list are about the animal pointed at', async () => {
    const screen = await turnOut(CLOSE)
    await pointTo(screen, '103')
    await screen.press('note')
    expect(screen.text).toContain('━━ Note: 103 Gorse')
    await screen.type('limps')
    await screen.press('accept')
    expect(recorded(screen).map(bare)).toEqual([
      { kind: 'note', about: 'cow-103', date: CLOSE, note: 'limps' },
    ])
  })

  test('a letter of the step itself is about the number that is being typed', async () => {
    const screen = await turnOut(CLOSE)
    await screen.type('103w')
    expect(screen.text).toContain('━━ Put with the bull: 103 Gorse')
    await screen.press('cancel')
    await screen.type('w')
    expect(flat(screen)).toContain('Let AI of the spring block go on')
  })
})

describe('one bull alone, lame in his weeks', () => {
  /** 101 to 103 run with Boris, 104 and 105 with Tom, 106 with both. */
  const running = (): readonly Fact[] => [
    ...facts(),
    ...[
      ['101', '901'],
      ['102', '901'],
      ['103', '901'],
      ['104', '902'],
      ['105', '902'],
      ['106', '901'],
      ['106', '902'],
    ].map(
      ([number, name]) =>
        ({
          id: `with-${number}-${name}`,
          kind: 'with-bull',
          about: `cow-${number}`,
          date: IN,
          bull: name,
          at: `${IN}T05:00:00.000Z`,
        }) as Fact,
    ),
  ]
  const since = (screen: Screen): readonly Partial<Fact>[] =>
    (screen.herd as MemoryHerd).state.facts.slice(running().length).map(bare)

  test('pointed at among the bulls he comes out today, the other bull stays, and another goes in for him', async () => {
    const screen = await openOn(running(), { now: at('09:00', '2026-06-20'), by: 'MK', rows: 60 })
    await screen.press('go', 'go-bulls')
    await screen.reckoned()
    await pointTo(screen, '901')
    await screen.press('bull-out')
    expect(screen.text).toContain('── 901 comes out ─')
    expect(screen.text).toContain('── Taken from him: 4 ')
    expect(screen.text).toContain('Day Sat 20 Jun')
    expect(screen.text).not.toContain('than planned')
    expect(screen.text).not.toContain('104 Hazel')
    await screen.press('record-move')
    expect(flat(screen)).toContain('Record 4 animals taken from 901 on Sat 20 Jun 2026?')
    await screen.press('agree')
    expect(since(screen)).toEqual(
      ['101', '102', '103', '106'].map((number) => ({
        kind: 'from-bull',
        about: `cow-${number}`,
        date: '2026-06-20',
        bull: '901',
      })),
    )
    expect(flat(screen)).toContain('4 animals without 901 from Sat 20 Jun 2026. Tab puts another in.')
    await screen.press('other-way')
    expect(screen.text).toContain('── Go with him: 3 ')
    expect(screen.text).toContain('1 chosen')
    await screen.press('record-move', 'agree')
    expect(since(screen).slice(4)).toEqual(
      ['101', '102', '103'].map((number) => ({
        kind: 'with-bull',
        about: `cow-${number}`,
        date: '2026-06-20',
        bull: '902',
      })),
    )
  })

  test('pointed at one that is with none, or at the block: the move of all', async () => {
    const screen = await openOn(facts(), { now: at('09:00', CLOSE), by: 'MK', rows: 60 })
    await screen.press('go', 'go-bulls')
    await screen.reckoned()
    await pointTo(screen, '901')
    await screen.press('bull-out')
    expect(screen.text).toContain('── The bull goes in ─')
    await screen.press('back', 'first', 'bull-out')
    expect(screen.text).toContain('── The bull goes in ─')
  })
})
