import { afterEach, expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { ago, at, cow, DAY, frame, heat, herd, now, served } from './support/herd.ts'
import type { MemoryHerd } from './support/memory-herd.ts'
import { closeAll, openOn, type Screen } from './support/screen.ts'

afterEach(closeAll)

/** What was recorded since the herd was opened. */
const recorded = (screen: Screen, before: readonly Fact[]): readonly Fact[] =>
  (screen.herd as MemoryHerd).state.facts.slice(before.length)

/** A recorded fact without what is different each time. */
const bare = ({ id, at: _at, action, by, ...rest }: Fact) => rest

const open = async (facts: readonly Fact[] = herd()) => {
  const screen = await openOn(facts, { now, by: 'MK' })
  return { screen, facts, recorded: () => recorded(screen, facts) }
}

test('three heats take 12 keys: each number, and one key', async () => {
  const { screen, recorded } = await open()
  for (const number of ['905', '412', '101']) {
    await screen.type(number)
    await screen.press('heat-now')
  }
  expect(screen.pressed).toBe(12)
  expect(recorded().map(bare)).toEqual(
    ['905', '412', '101'].map((number) => ({
      kind: 'heat',
      about: `cow-${number}`,
      date: DAY,
      time: '05:15',
      how: 'standing',
      certainty: 'sure',
    })),
  )
  expect(new Set(recorded().map((fact) => fact.action)).size).toBe(3)
  expect(recorded().every((fact) => fact.by === 'MK')).toBe(true)
})

test('served with the proposed straw takes one key, and goes on to the next row', async () => {
  const { screen, recorded } = await open()
  await screen.type('412')
  screen.pressed = 0
  await screen.press('usual')
  expect(screen.pressed).toBe(1)
  expect(recorded().map(bare)).toEqual([
    {
      kind: 'service',
      about: 'cow-412',
      date: DAY,
      time: '05:15',
      sire: 'S21',
      straw: 'conventional',
      batch: '9',
      inseminator: 'MK',
    },
  ])
  expect(screen.line('412 Buttercup')).toMatch(
    /^ {2}● │ 412 Buttercup +served by AI, S21 conventional, batch 9/,
  )
  expect(screen.text).toContain(' 412: served by AI, S21 conventional, batch 9, by MK, 05:15.')
  expect(screen.line('► ')).toContain('101 Erica')
  expect(screen.lines[2]).toContain('1 of 11 done')
})

test('served with another sire takes five keys at most, and remembers which was proposed', async () => {
  const { screen, recorded } = await open()
  await screen.type('412')
  screen.pressed = 0
  await screen.press('fill-in', 'turn-on', 'turn-on', 'accept')
  expect(screen.pressed).toBeLessThanOrEqual(5)
  const [service] = recorded()
  expect(service).toMatchObject({
    kind: 'service',
    sire: 'B3',
    straw: 'beef',
    batch: '1',
    proposed: { sire: 'S21', straw: 'conventional' },
  })
})

test('typing the begin of a sire chooses his straw', async () => {
  const { screen, recorded } = await open()
  await screen.type('412')
  await screen.press('fill-in')
  await screen.type('b')
  expect(screen.line('Straw of')).toMatch(/b▁ {2}B3, \d+ left/)
  await screen.press('accept')
  expect(recorded()[0]).toMatchObject({ sire: 'B3', straw: 'beef', batch: '1' })
})

test('twenty watches take three keys: to the section, looked at all, yes', async () => {
  const watched = Array.from({ length: 20 }, (_, index) =>
    cow(String(500 + index), 'Teasel', 85, [served(21)]),
  )
  const { screen, recorded } = await open([
    ...frame(),
    ...cow('412', 'Buttercup', 80, [heat(0)]),
    ...watched.flat(),
  ])
  await screen.press('next-section', 'look-all', 'agree')
  expect(screen.pressed).toBe(3)
  expect(recorded()).toHaveLength(20)
  expect(recorded().every((fact) => fact.kind === 'looked' && fact.date === DAY)).toBe(true)
  expect(new Set(recorded().map((fact) => fact.action)).size).toBe(1)
  expect(screen.line('Repeat-heat watch')).toContain('20 done')
  expect(screen.text).toContain('20 animals: looked for a return, none seen.')
})

test('the watch is ticked for those only that nobody has looked at yet', async () => {
  const { screen, recorded } = await open()
  await screen.type('53')
  await screen.press('usual')
  await screen.press('look-all')
  expect(screen.text).toContain('Looked at 2 animals of the watch, and none is in heat?')
  await screen.press('agree')
  expect(
    recorded()
      .map((fact) => fact.about)
      .sort(),
  ).toEqual(['cow-52', 'cow-53', 'cow-54'])
  await screen.press('look-all')
  expect(screen.text).toContain('No row of the repeat-heat watch is left to look at.')
})

test('a scan result takes 5 keys without an age, 7 with one', async () => {
  const { screen, recorded } = await open([
    ...frame(),
    ...cow('612', 'Iris', 100, [served(32)]),
    ...cow('613', 'Juno', 100, [served(40)]),
  ])
  await screen.type('612')
  await screen.press('in-calf', 'accept')
  expect(screen.pressed).toBe(5)
  screen.pressed = 0
  await screen.type('613')
  await screen.press('in-calf')
  await screen.type('39')
  await screen.press('accept')
  expect(screen.pressed).toBe(7)
  expect(recorded().map(bare)).toEqual([
    { kind: 'check', about: 'cow-612', date: DAY, method: 'ultrasound', result: 'pregnant' },
    { kind: 'check', about: 'cow-613', date: DAY, method: 'ultrasound', result: 'pregnant', foetalAge: 39 },
  ])
})

test('empty takes 5 keys as well', async () => {
  const { screen, recorded } = await open([...frame(), ...cow('612', 'Iris', 100, [served(32)])])
  await screen.type('612')
  await screen.press('not-in-calf', 'accept')
  expect(screen.pressed).toBe(5)
  expect(recorded()[0]).toMatchObject({ kind: 'check', result: 'empty' })
})

test('any animal takes 4 keys: her number and Enter, on the list or not', async () => {
  const { screen } = await open()
  await screen.type('905')
  await screen.press('open-animal')
  expect(screen.pressed).toBe(4)
  expect(screen.text).toContain('905  Olive')
  expect(screen.text).toContain('served by AI, S17 conventional, 06:00')
})

test('taking back takes one key', async () => {
  const { screen, recorded } = await open()
  await screen.type('412')
  await screen.press('usual')
  screen.pressed = 0
  await screen.press('undo')
  expect(screen.pressed).toBe(1)
  expect(recorded()[1]).toMatchObject({ kind: 'correction', voids: recorded()[0]?.id, date: DAY })
  expect(screen.text).toContain('Taken back: 412: served by AI')
  expect(screen.line('412 Buttercup')).toMatch(/^► ○ │/)
})

test('the usual thing of each section', async () => {
  const { screen, recorded } = await open()
  for (const number of ['37', '101', '53', '61', '81']) {
    await screen.type(number)
    await screen.press('usual')
  }
  expect(recorded().map(({ about, kind }) => `${about} ${kind}`)).toEqual([
    'cow-37 service',
    'cow-101 service',
    'cow-53 looked',
    'cow-61 check',
    'cow-81 examined',
  ])
})

test('a decision is never ticked with one key: the form that it asks for opens', async () => {
  const { screen, recorded } = await open()
  await screen.type('288')
  await screen.press('usual')
  expect(screen.text).toContain('━━ Pregnancy check: 288 Bramble')
  await screen.press('cancel')
  expect(recorded()).toEqual([])
  expect(screen.text).toContain('Nothing recorded.')
})

test('a heat on record before the mating start, and with the bull in the bull weeks', async () => {
  const before = await openOn([...frame(), ...cow('81', 'Moss', 40)], {
    now: at('05:15', '2026-04-20'),
    by: 'MK',
  })
  expect(before.line('Heat record')).toContain('1 animal')
  await before.press('usual')
  expect((before.herd as MemoryHerd).state.facts.at(-1)).toMatchObject({ kind: 'heat', certainty: 'sure' })

  const facts = [...frame(), ...cow('82', 'Moss', 70)]
  const later = await openOn(facts, { now: at('05:15', '2026-06-15'), by: 'MK' })
  await later.press('unfold', 'last', 'usual')
  expect((later.herd as MemoryHerd).state.facts.at(-1)).toMatchObject({ kind: 'with-bull', about: 'cow-82' })
})

test('a ticked row is not ticked twice by the same key', async () => {
  const { screen, recorded } = await open()
  await screen.type('412')
  await screen.press('usual')
  await screen.type('412')
  await screen.press('usual')
  expect(recorded()).toHaveLength(1)
  expect(screen.text).toContain('412 is ticked already. F opens the form to record more.')
})

test('a heat says where the animal stands now', async () => {
  const { screen } = await open()
  await screen.type('52')
  await screen.press('heat-now')
  expect(screen.text).toContain('52: heat seen (standing), 05:15. Now under Second service.')
  expect(screen.line('► ')).toContain('62 Juno')
})

test('a heat of an animal in calf is shown as the danger that it is', async () => {
  const { screen } = await open()
  await screen.type('90')
  await screen.press('heat-now')
  expect(screen.text).toContain('Now under Take care.')
  expect(screen.line('90 Nettle')).toContain('in calf, and on heat')
})

test('a fact about an animal without a row stands below the list', async () => {
  const { screen } = await open()
  await screen.type('905')
  await screen.press('note')
  await screen.type('limps')
  await screen.press('accept', 'last')
  expect(screen.text).toContain('Also recorded (2)')
  expect(screen.line('905 Olive')).toMatch(/● │ 905 Olive +note: limps/)
})

test('a late return is asked about before she is served: it can end a pregnancy', async () => {
  const { screen, recorded } = await open([
    ...frame(),
    ...cow('101', 'Erica', 90, [served(26), heat(0, { time: '05:00' })]),
  ])
  await screen.press('usual')
  expect(recorded()).toEqual([])
  expect(screen.text).toContain('one in five such cows is in calf')
  await screen.press('agree')
  expect(recorded()).toHaveLength(1)
  expect(recorded()[0]).toMatchObject({ kind: 'service', date: ago(0) })
})

test('with nothing in the flask the form opens, and takes a straw that is not there', async () => {
  const { screen, recorded } = await open([
    ...frame().filter((fact) => fact.kind !== 'stock-take'),
    ...cow('412', 'Buttercup', 80, [heat(0, { time: '05:00' })]),
  ])
  await screen.press('usual')
  expect(screen.text).toContain('━━ Served by AI: 412 Buttercup')
  await screen.type('Z9')
  await screen.press('accept')
  expect(recorded()[0]).toMatchObject({ kind: 'service', sire: 'Z9', straw: 'conventional' })
})
