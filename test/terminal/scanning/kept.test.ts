import { afterEach, describe, expect, test } from 'vitest'
import { ago, at, DAY } from '../support/herd.ts'
import { bare, factsOf, recorded, scan, tally, visit } from '../support/scanning.ts'
import { closeAll, openOn } from '../support/screen.ts'

afterEach(closeAll)

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
