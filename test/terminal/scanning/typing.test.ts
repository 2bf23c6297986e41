import { afterEach, describe, expect, test } from 'vitest'
import { DAY } from '../support/herd.ts'
import type { MemoryHerd } from '../support/memory-herd.ts'
import { bare, recorded, scan, tally, visit } from '../support/scanning.ts'
import { closeAll } from '../support/screen.ts'
import { visitHerd } from '../support/visit.ts'

afterEach(closeAll)

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

test('each result is recorded at once: what was typed before the program was killed is on record', async () => {
  const screen = await visit()
  await screen.send('412p34\r413e\r414')
  expect(recorded(screen)).toHaveLength(2)
  const again = await visit((screen.herd as MemoryHerd).state.facts, { opening: true })
  expect(tally(again)).toEqual([1, 1, 0, 1])
})
