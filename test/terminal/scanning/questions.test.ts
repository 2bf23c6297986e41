import { afterEach, describe, expect, test } from 'vitest'
import type { KeyMeaning } from '../../../source/screens/words/keys.ts'
import { recorded, scan, visit } from '../support/scanning.ts'
import { closeAll } from '../support/screen.ts'
import { visitHerd } from '../support/visit.ts'

afterEach(closeAll)

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
