import { afterEach, describe, expect, test } from 'vitest'
import { ago, at, cow, DAY, frame, now, served } from '../support/herd.ts'
import type { MemoryHerd } from '../support/memory-herd.ts'
import { recorded, scan, tally, visit } from '../support/scanning.ts'
import { closeAll, openOn } from '../support/screen.ts'
import { visitFrame, visitHerd } from '../support/visit.ts'

afterEach(closeAll)

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
