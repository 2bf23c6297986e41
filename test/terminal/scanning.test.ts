import { afterEach, describe, expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import type { KeyMeaning } from '../../source/screens/words/keys.ts'
import { golden } from './support/golden.ts'
import { ago, at, cow, DAY, frame, now, served } from './support/herd.ts'
import type { MemoryHerd } from './support/memory-herd.ts'
import { closeAll, openOn, type Screen, type Settings } from './support/screen.ts'
import { visitFrame, visitHerd } from './support/visit.ts'

afterEach(closeAll)

const factsOf = (screen: Screen): readonly Fact[] => (screen.herd as MemoryHerd).state.facts
/** What was recorded about animals; what was kept to be settled, and is settled, is asked for by name. */
function recorded(screen: Screen, before: readonly Fact[] = visitHerd()): readonly Fact[] {
  const since = factsOf(screen).slice(before.length)
  const kept = new Set(since.filter(({ kind }) => kind === 'kept-result').map(({ id }) => id))
  return since.filter((fact) => !kept.has(fact.id) && !(fact.kind === 'correction' && kept.has(fact.voids)))
}
const bare = ({ id: _id, at: _at, action: _action, by: _by, ...rest }: Fact) => rest

/** The scanning visit, opened from the list. */
async function visit(facts: readonly Fact[] = visitHerd(), settings: Settings = {}): Promise<Screen> {
  const screen = await openOn(facts, { now, by: 'MK', ...settings })
  await screen.press('go', 'go-scanning')
  screen.pressed = 0
  return screen
}

/** Types a number, the keys of its result, an age, and Enter. */
async function scan(screen: Screen, number: string, result: KeyMeaning, age = ''): Promise<void> {
  await screen.type(number)
  await screen.press(result)
  await screen.type(age)
  await screen.press('scan-enter')
}
const tally = (screen: Screen, block = 'spring'): readonly number[] =>
  [...screen.line(` ${block} `).matchAll(/\d+/g)].map(([count]) => Number(count))

describe('keys', () => {
  test('a result takes 5 keys without an age, 7 with one, 8 with twins', async () => {
    const screen = await visit()
    await scan(screen, '412', 'scan-in-calf')
    expect(screen.pressed).toBe(5)
    screen.pressed = 0
    await scan(screen, '413', 'scan-in-calf', '39')
    expect(screen.pressed).toBe(7)
    screen.pressed = 0
    await screen.type('414')
    await screen.press('scan-in-calf')
    await screen.type('31')
    await screen.press('scan-twins', 'scan-enter')
    expect(screen.pressed).toBe(8)
    const check = { kind: 'check', date: DAY, method: 'ultrasound', result: 'pregnant' }
    expect(recorded(screen).map(bare)).toEqual([
      { ...check, about: 'cow-412' },
      { ...check, about: 'cow-413', foetalAge: 39 },
      { ...check, about: 'cow-414', foetalAge: 31, foetuses: 2 },
    ])
    expect(new Set(recorded(screen).map(({ action }) => action)).size).toBe(3)
  })

  test('empty and unsure take 5 keys', async () => {
    const screen = await visit()
    await scan(screen, '412', 'scan-empty')
    await scan(screen, '413', 'scan-unsure')
    expect(screen.pressed).toBe(10)
    expect(recorded(screen).map((fact) => [fact.about, fact.kind === 'check' && fact.result])).toEqual([
      ['cow-412', 'empty'],
      ['cow-413', 'unsure'],
    ])
  })

  test('keys that arrive together are taken one by one: a whole visit pasted at once', async () => {
    const screen = await visit()
    await screen.send('412p34\r413e\r414pt\r')
    expect(recorded(screen).map(bare)).toMatchObject([
      { about: 'cow-412', result: 'pregnant', foetalAge: 34 },
      { about: 'cow-413', result: 'empty' },
      { about: 'cow-414', result: 'pregnant', foetuses: 2 },
    ])
  })

  test('the last thing typed is rubbed out: age, twins, result, number', async () => {
    const screen = await visit()
    await screen.type('412')
    await screen.press('scan-in-calf', 'scan-twins')
    await screen.type('34')
    const line = (): string => screen.line('► Number')
    expect(line()).toContain('412   in calf, 34▁ days, twins')
    await screen.press('rub', 'rub')
    expect(line()).toContain('412   in calf ▁ days of age, or Enter, twins')
    await screen.press('rub')
    expect(line()).not.toContain('twins')
    await screen.press('rub')
    expect(line()).toContain('412▁   P in calf, E empty, U unsure')
    await screen.press('rub')
    expect(line()).toContain('41▁')
    await screen.press('rub', 'rub', 'rub')
    expect(line()).toContain('Number ▁')
    expect(recorded(screen)).toEqual([])
  })

  test('a result changed before Enter: the age of one in calf is dropped with it', async () => {
    const screen = await visit()
    await screen.type('412')
    await screen.press('scan-in-calf')
    await screen.type('34')
    await screen.press('scan-twins', 'scan-empty', 'scan-enter')
    expect(recorded(screen).map(bare)).toEqual([
      { kind: 'check', about: 'cow-412', date: DAY, method: 'ultrasound', result: 'empty' },
    ])
  })

  test('what a key cannot do here it says', async () => {
    const screen = await visit()
    const says = async (keys: () => Promise<void>, words: string): Promise<void> => {
      await keys()
      expect(screen.text).toContain(words)
    }
    await says(() => screen.press('scan-in-calf'), 'Type her number first.')
    await says(() => screen.press('scan-enter'), 'Type her number first.')
    await says(() => screen.press('scan-keep'), 'Type a number and a result first')
    await says(() => screen.press('scan-strike'), 'Point at a result below first.')
    await says(() => screen.press('scan-day-after'), 'That day is still to come')
    await says(() => screen.press('undo'), 'Nothing is left to take back.')
    await screen.type('412')
    await says(() => screen.press('scan-enter'), 'P in calf, E empty, U unsure: then Enter.')
    await says(() => screen.press('scan-twins'), 'Twins belong to a result that says in calf.')
    await screen.press('scan-empty')
    await says(() => screen.type('3'), 'An age belongs to a result that says in calf.')
    await screen.press('scan-in-calf')
    await says(() => screen.type('1234'), 'Three digits of age at most.')
    await screen.press('rub')
    await says(() => screen.press('scan-enter'), '12 days does not fit: 20 to 290.')
    expect(recorded(screen)).toEqual([])
  })

  test('the foot shows the keys that the line waits for', async () => {
    const screen = await visit()
    const foot = (): string => screen.lines.at(-1) ?? ''
    expect(foot()).toMatch(/0-9 number/)
    expect(foot()).not.toContain('in calf')
    await screen.type('412')
    expect(foot()).toMatch(/p in calf {3}e empty {3}u unsure/)
    await screen.press('scan-in-calf')
    expect(foot()).toMatch(/Enter record, next/)
    expect(foot()).toMatch(/t twins/)
  })

  test('the help of the screen tells its keys', async () => {
    const screen = await visit(visitHerd(), { rows: 60 })
    await screen.press('help')
    for (const words of ['Twins; again takes it away.', 'Keeps what is typed for later', 'The next method'])
      expect(screen.text).toContain(words)
    expect(screen.text).toMatch(/u +Unsure/)
    expect(screen.text).toMatch(/z +Takes back/)
  })
})

describe('the tally', () => {
  test('in calf, empty, unsure and to come, by block; the last first', async () => {
    const screen = await visit()
    expect(tally(screen)).toEqual([0, 0, 0, 3])
    await scan(screen, '412', 'scan-in-calf', '34')
    await scan(screen, '413', 'scan-empty')
    await scan(screen, '414', 'scan-unsure')
    expect(tally(screen)).toEqual([1, 1, 1, 0])
    const lines = screen.lines.filter((line) => line.startsWith('  ● │'))
    expect(lines.map((line) => line.slice(5, 12).trim())).toEqual(['414', '413', '412'])
    expect(screen.line('412 Buttercup')).toMatch(/in calf, 34 days +AI of 23 Apr, S17, due 28 Jan/)
    expect(screen.text).toContain('Nobody is awaited any more.')
  })

  test('who is to come is named, and no longer once she was read', async () => {
    const screen = await visit()
    expect(screen.text).toContain('To come (3): 412 413 414')
    await scan(screen, '413', 'scan-empty')
    expect(screen.text).toContain('To come (2): 412 414')
  })

  test('ten are shown of those recorded', async () => {
    const many = Array.from({ length: 14 }, (_, index) =>
      cow(String(500 + index), 'Teasel', 90, [served(35)]),
    )
    const screen = await visit([...visitFrame(), ...many.flat()], { rows: 40 })
    for (let index = 0; index < 14; index += 1) await scan(screen, String(500 + index), 'scan-empty')
    expect(screen.text).toContain('Last 10 of 14')
    expect(screen.lines.filter((line) => line.startsWith('  ● │'))).toHaveLength(10)
    expect(tally(screen)).toEqual([0, 14, 0, 0])
  })

  test('without a planned visit every block counts', async () => {
    const facts = [
      ...visitFrame([]),
      ...cow('412', 'Buttercup', 90, [served(35)]),
      ...cow('419', 'Jay', 90, [served(35)], { block: 'autumn' }),
    ]
    const screen = await visit(facts)
    expect(tally(screen)).toEqual([0, 0, 0, 1])
    expect(tally(screen, 'autumn')).toEqual([0, 0, 0, 1])
    await scan(screen, '419', 'scan-empty')
    expect(tally(screen, 'autumn')).toEqual([0, 1, 0, 0])
  })

  test('nobody is due', async () => {
    const screen = await visit([...frame(), ...cow('417', 'Hazel', 90)])
    expect(screen.text).toContain('Nobody is due for a check on this day.')
    expect(screen.text).toContain('No result yet.')
  })

  test('what another program recorded counts too', async () => {
    const screen = await visit()
    ;(screen.herd as MemoryHerd).merge([
      {
        id: 'from-elsewhere',
        about: 'cow-413',
        date: DAY,
        kind: 'check',
        method: 'ultrasound',
        result: 'pregnant',
        at: '2026-05-28T08:00:00.000Z',
      },
    ])
    await screen.quiet()
    expect(tally(screen)).toEqual([1, 0, 0, 2])
  })
})

describe('whom a number means, before the result', () => {
  test.each([
    ['412', 'Buttercup, lactation 3, spring block: served 23 Apr, day 35, S17'],
    ['416', 'Gean, lactation 3, spring block: in calf since 3 Apr'],
    ['417', 'Hazel, lactation 3, spring block: not served since she calved'],
    ['418', '! has left the herd: Ivy'],
    ['419', '! of a block that is not visited today'],
    ['901', '! a male: Boris'],
    ['999', '! no animal has this number'],
  ])('%s: %s', async (number, words) => {
    const screen = await visit(visitHerd(), { columns: 96, rows: 30 })
    await screen.type(number)
    expect(screen.text).toContain(words)
  })

  test('the end of an ear tag will do; two that end so are said', async () => {
    const screen = await visit()
    await screen.type('700412')
    expect(screen.text).toContain('Buttercup')
    await screen.press('back')
    await screen.type('777')
    expect(screen.text).toContain('! several ear tags end so')
  })

  test('the result comes to a service and a due date as soon as it is typed', async () => {
    const screen = await visit()
    await screen.type('412')
    await screen.press('scan-in-calf')
    expect(screen.text).toContain('AI of 23 Apr, S17, due 28 Jan')
    expect(recorded(screen)).toEqual([])
  })
})

describe('what a result would contradict is asked at once', () => {
  const cases: readonly [string, KeyMeaning, string, string, string][] = [
    ['415', 'scan-in-calf', '', 'Her last service is too young for this check.', 'does not count for it'],
    ['415', 'scan-empty', '', 'Her last service is too young for this check.', 'does not count for it'],
    ['417', 'scan-in-calf', '', 'No service and no time with the bull fits', 'No service of 417'],
    ['412', 'scan-in-calf', '60', 'No service and no time with the bull fits', 'No service of 412'],
    ['416', 'scan-empty', '', 'She is recorded in calf', '416 is recorded in calf, and is called empty.'],
  ]
  test.each(cases)('%s %s %s: %s', async (number, result, age, said, asked) => {
    const screen = await visit(visitHerd(), { columns: 96, rows: 30 })
    await screen.type(number)
    await screen.press(result)
    await screen.type(age)
    expect(screen.text).toContain(said)
    await screen.press('scan-enter')
    expect(screen.text.replaceAll(/\s+/g, ' ')).toContain(asked)
    expect(recorded(screen)).toEqual([])
    await screen.press('cancel')
    expect(screen.line('► Number')).toContain(number)
    expect(recorded(screen)).toEqual([])
    await screen.press('scan-enter', 'agree')
    expect(recorded(screen)).toHaveLength(1)
    expect(recorded(screen)[0]).toMatchObject({ kind: 'check', about: `cow-${number}` })
    expect(screen.line('► Number')).toContain('Number ▁')
  })

  test('in calf once more is recorded without a question', async () => {
    const screen = await visit()
    await scan(screen, '416', 'scan-in-calf')
    expect(recorded(screen)).toHaveLength(1)
  })

  test('by hand she must be served longer ago: the method counts', async () => {
    const screen = await visit()
    await screen.press('scan-method')
    expect(screen.line('► Number')).toContain('by hand')
    expect(screen.text).not.toContain('To come')
    await scan(screen, '412', 'scan-in-calf')
    expect(screen.text).toContain('The last service of 412 is too young')
    await screen.press('agree')
    expect(recorded(screen)[0]).toMatchObject({ method: 'hand' })
  })
})

describe('numbers that are not expected are kept until they are settled', () => {
  const cases: readonly [string, string][] = [
    ['999', 'no animal has this number'],
    ['777', 'several ear tags end so'],
    ['418', 'has left the herd'],
    ['901', 'a male'],
    ['419', 'of a block that is not visited today'],
    ['417', 'no check of hers is due'],
  ]
  test.each(cases)('%s: %s; the next animal can come', async (number, why) => {
    const screen = await visit()
    await scan(screen, number, 'scan-empty')
    expect(recorded(screen)).toEqual([])
    expect(screen.text).toContain(`${number} counts for no animal yet: it is kept under To settle.`)
    expect(screen.text).toContain('To settle (1)')
    expect(screen.lines.find((line) => line.startsWith('  ○ │'))).toContain(why)
    await scan(screen, '412', 'scan-in-calf')
    expect(recorded(screen)).toHaveLength(1)
    expect(screen.text).toContain('To settle (1)')
  })

  test('a misread number: taken up again, typed anew, recorded, and settled', async () => {
    const screen = await visit()
    await screen.send('4122p33t\r')
    expect(screen.text).toContain('To settle (1)')
    await screen.press('down')
    expect(screen.line('4122')).toMatch(/^► ○ │/)
    expect(screen.lines.at(-1)).toContain('Enter settle it')
    await screen.press('scan-enter')
    expect(screen.line('► Number')).toContain('4122▁   in calf, 33 days, twins')
    await screen.type('412')
    await screen.press('scan-enter')
    expect(recorded(screen).map(bare)).toMatchObject([
      { about: 'cow-412', result: 'pregnant', foetalAge: 33, foetuses: 2 },
    ])
    expect(screen.text).not.toContain('To settle')
  })

  test('an animal that was not expected is recorded after a question', async () => {
    const screen = await visit()
    await scan(screen, '419', 'scan-empty')
    await screen.press('down', 'scan-enter', 'scan-enter')
    expect(screen.text).toContain('419 is of a block that is not visited on this day.')
    await screen.press('agree')
    expect(recorded(screen)).toHaveLength(1)
    expect(screen.text).not.toContain('To settle')
    expect(tally(screen, 'autumn')).toEqual([0, 1, 0, 0])
  })

  test('one that can never be recorded stays', async () => {
    const screen = await visit()
    await scan(screen, '418', 'scan-empty')
    await screen.press('down', 'scan-enter', 'scan-enter')
    expect(recorded(screen)).toEqual([])
    expect(screen.text).toContain('To settle (1)')
  })

  test('X drops it', async () => {
    const screen = await visit()
    await scan(screen, '999', 'scan-empty')
    await screen.press('down', 'scan-strike')
    expect(screen.text).toContain('999 is dropped: it counts for no animal.')
    expect(screen.text).not.toContain('To settle')
  })

  test('K keeps any result for later', async () => {
    const screen = await visit()
    await screen.type('412')
    await screen.press('scan-in-calf', 'scan-keep')
    expect(screen.lines.find((line) => line.startsWith('  ○ │'))).toContain('kept for later')
    expect(recorded(screen)).toEqual([])
  })

  test('they stay while another screen is shown', async () => {
    const screen = await visit()
    await scan(screen, '999', 'scan-empty')
    await screen.press('go', 'go-straws', 'go', 'go-scanning')
    expect(screen.text).toContain('To settle (1)')
  })

  test('they outlive the program: facts of the herd, said on the morning list until they are settled', async () => {
    const screen = await visit()
    await screen.send('4122p33t\r')
    await scan(screen, '999', 'scan-empty')
    await screen.press('back')
    expect(screen.text).toContain('2 results of a scanning visit to settle')
    expect(factsOf(screen).slice(-2)).toMatchObject([
      {
        kind: 'kept-result',
        number: '4122',
        result: 'pregnant',
        foetalAge: 33,
        foetuses: 2,
        why: 'no-such-number',
      },
      { kind: 'kept-result', about: 'herd', number: '999', method: 'ultrasound', result: 'empty' },
    ])
    const later = await openOn(factsOf(screen), { now: at('06:00', ago(-3)), by: 'MK' })
    await later.press('first', 'up', 'open-animal')
    expect(later.line('► ○ │')).toContain('4122 in calf, 33 days, twins')
    expect(later.line('► ○ │')).toContain('in calf, 33 days, twins')
    // It is settled on the visit that it was read at; the next result is of today again.
    await later.press('scan-enter')
    expect(later.text).toContain('Scanning visit, Thu 28 May')
    await later.type('412')
    await later.press('scan-enter')
    expect(recorded(later, factsOf(screen)).map(bare)).toMatchObject([
      { about: 'cow-412', date: DAY, foetalAge: 33 },
      { kind: 'correction', about: 'herd', reason: 'settled' },
    ])
    expect(later.text).toContain('To settle (1)')
    expect(later.text).toContain('Scanning visit, Sun 31 May')
    await later.press('undo')
    expect(later.text).toContain('To settle (2)')
  })

  test('taken up and left as it was, nothing more is recorded; taken back, it is gone', async () => {
    const screen = await visit()
    await scan(screen, '999', 'scan-empty')
    const { length } = factsOf(screen)
    await screen.press('down', 'scan-enter', 'scan-enter')
    expect(factsOf(screen)).toHaveLength(length)
    await screen.press('undo')
    expect(screen.text).toContain('Taken back: result of 999 kept to be settled: empty by ultrasound.')
    expect(screen.text).not.toContain('To settle')
  })

  test('one with an age that no calf has is not kept', async () => {
    const screen = await visit()
    await screen.send('412p9')
    await screen.press('scan-keep')
    expect(screen.text).not.toContain('To settle')
  })
})

describe('corrections', () => {
  test('one key takes the last result back', async () => {
    const screen = await visit()
    await scan(screen, '412', 'scan-in-calf')
    await scan(screen, '413', 'scan-empty')
    screen.pressed = 0
    await screen.press('undo')
    expect(screen.pressed).toBe(1)
    expect(screen.text).toContain('Taken back: 413: empty by ultrasound.')
    expect(tally(screen)).toEqual([1, 0, 0, 2])
    await screen.press('undo')
    expect(tally(screen)).toEqual([0, 0, 0, 3])
    await screen.press('redo')
    expect(tally(screen)).toEqual([1, 0, 0, 2])
  })

  test('a result just recorded is taken up, changed and recorded in its place', async () => {
    const screen = await visit()
    await scan(screen, '412', 'scan-in-calf', '34')
    await scan(screen, '413', 'scan-empty')
    await screen.press('down', 'down')
    expect(screen.lines.at(-1)).toContain('Enter correct it')
    await screen.press('scan-enter')
    expect(screen.line('► Number')).toContain('412   in calf, 34▁ days')
    await screen.type('35')
    await screen.press('scan-enter')
    const [first, , third, fourth] = recorded(screen)
    expect(third).toMatchObject({ kind: 'check', about: 'cow-412', foetalAge: 35 })
    expect(fourth).toMatchObject({ kind: 'correction', voids: first?.id, date: DAY })
    expect(third?.action).toBe(fourth?.action)
    expect(screen.text).toContain('412: in calf by ultrasound, 35 days along.')
    expect(tally(screen)).toEqual([1, 1, 0, 1])
    await screen.press('undo')
    expect(screen.line('412 Buttercup')).toContain('in calf, 34 days')
  })

  test('the wrong animal: her number is typed anew, and both are right', async () => {
    const screen = await visit()
    await scan(screen, '412', 'scan-empty')
    await screen.press('down', 'scan-enter', 'rub')
    await screen.press('rub')
    await screen.type('4')
    await screen.press('scan-empty', 'scan-enter')
    expect(
      screen.lines.filter((line) => line.startsWith('  ● │')).map((line) => line.slice(5, 12).trim()),
    ).toEqual(['414'])
    expect(tally(screen)).toEqual([0, 1, 0, 2])
  })

  test('a number read twice is asked about; the same result is not recorded twice', async () => {
    const screen = await visit()
    await scan(screen, '412', 'scan-in-calf')
    await scan(screen, '412', 'scan-in-calf')
    expect(screen.text).toContain('412: the same result is recorded already.')
    expect(recorded(screen)).toHaveLength(1)
    await scan(screen, '412', 'scan-empty')
    expect(screen.text).toContain('412 has a result of this day already. Put this one in its place?')
    await screen.press('agree')
    expect(recorded(screen)).toHaveLength(3)
    expect(tally(screen)).toEqual([0, 1, 0, 2])
  })

  test('X strikes a result out', async () => {
    const screen = await visit()
    await scan(screen, '412', 'scan-in-calf')
    await screen.press('down', 'scan-strike')
    expect(screen.text).toContain('Struck out: 412: in calf by ultrasound.')
    expect(tally(screen)).toEqual([0, 0, 0, 3])
  })
})

describe('the day', () => {
  test('a visit of yesterday is recorded for yesterday', async () => {
    const screen = await visit()
    await screen.press('scan-day-before')
    expect(screen.text).toContain('Scanning visit, Wed 27 May')
    await scan(screen, '413', 'scan-in-calf')
    expect(recorded(screen)[0]).toMatchObject({ date: ago(1) })
    await screen.press('scan-day-after')
    expect(screen.text).toContain('Scanning visit, Thu 28 May')
  })

  test('opened from a past list it is about that day, from one to come about today', async () => {
    const past = await openOn(visitHerd(), { now, by: 'MK' })
    await past.press('day-before', 'day-before', 'go', 'go-scanning')
    expect(past.text).toContain('Scanning visit, Tue 26 May')
    const later = await openOn(visitHerd(), { now, by: 'MK' })
    await later.press('day-after', 'go', 'go-scanning')
    expect(later.text).toContain('Scanning visit, Thu 28 May')
  })

  test('midnight leaves the visit on the day it was begun', async () => {
    const screen = await visit(visitHerd(), { now: at('23:59') })
    screen.now = at('00:10', '2026-05-29')
    screen.session.tick()
    await screen.settled()
    await screen.press('take')
    await scan(screen, '412', 'scan-empty')
    expect(recorded(screen)[0]).toMatchObject({ date: DAY })
  })
})

test('each result is recorded at once: what was typed before the program was killed is on record', async () => {
  const screen = await visit()
  await screen.send('412p34\r413e\r414')
  expect(recorded(screen)).toHaveLength(2)
  const again = await visit((screen.herd as MemoryHerd).state.facts, { opening: true })
  expect(tally(again)).toEqual([1, 1, 0, 1])
})

const sizes = [
  [80, 24],
  [120, 40],
  [60, 20],
] as const

/** A visit under way: results, one to settle, a doubt on the line. */
async function underWay(settings: Settings): Promise<Screen> {
  const screen = await visit(visitHerd(), settings)
  await screen.send('412p34t\r413e\r4122u\r')
  await screen.send('416e')
  await screen.quiet()
  return screen
}

for (const [columns, rows] of sizes) {
  test(`the visit at ${columns}x${rows}, in colour, without colours and in ASCII`, async () => {
    const screen = await underWay({ columns, rows })
    await expect(golden(screen)).toMatchFileSnapshot(`golden/scanning-${columns}x${rows}.txt`)
    const plain = await underWay({ columns, rows, colours: false })
    expect(plain.lines).toEqual(screen.lines)
    for (let row = 0; row < rows; row += 1)
      for (let column = 0; column < columns; column += 1) expect(plain.cell(column, row).colour).toBe(-1)
    const ascii = await underWay({ columns, rows, ascii: true })
    expect(ascii.text).toMatch(/^[\x20-\x7e\n]*$/)
    await expect(golden(ascii)).toMatchFileSnapshot(`golden/scanning-${columns}x${rows}-ascii.txt`)
  })

  test(`the visit as it opens, and its question, at ${columns}x${rows}`, async () => {
    const screen = await visit(visitHerd(), { columns, rows })
    await screen.quiet()
    await expect(golden(screen)).toMatchFileSnapshot(`golden/scanning-open-${columns}x${rows}.txt`)
    await scan(screen, '416', 'scan-empty')
    await expect(golden(screen)).toMatchFileSnapshot(`golden/scanning-asks-${columns}x${rows}.txt`)
  })
}

test('on the smallest screen the line being typed and the tally stay in sight', async () => {
  const screen = await underWay({ columns: 60, rows: 16 })
  expect(screen.line('► Number')).toContain('416')
  expect(tally(screen)).toEqual([1, 1, 0, 1])
  await screen.press('scan-enter')
  expect(screen.text).toContain('Record empty all the same?')
  expect(screen.line('► Number')).toContain('416')
})
