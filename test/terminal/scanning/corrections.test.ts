import { afterEach, describe, expect, test } from 'vitest'
import { DAY } from '../support/herd.ts'
import { recorded, scan, tally, visit } from '../support/scanning.ts'
import { closeAll } from '../support/screen.ts'

afterEach(closeAll)

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
