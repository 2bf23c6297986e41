import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, expect, test } from 'vitest'
import { saveHerd } from '../../bench/herd-file.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { thisComputer } from '../../source/herd/store/environment.ts'
import { DAY, herd, now } from './support/herd.ts'
import { closeAll, instantOf, openOn, type Screen } from './support/screen.ts'

const folder = mkdtempSync(join(tmpdir(), 'dawnlist-undo-'))
afterEach(closeAll)
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** The program on a real file, as after a start. */
async function start(
  file: string,
  day = now,
  recordedAt = instantOf(day),
): Promise<{ screen: Screen; leave: () => Promise<void> }> {
  const world = { ...thisComputer, now: () => recordedAt }
  const opened = await openHerdFile(file, world)
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
  const store = opened.value
  const screen = await openOn([], { now: day, by: 'MK', herd: store, opening: true })
  if (screen.session.desk.slip !== undefined) await screen.press('take')
  return {
    screen,
    leave: async () => {
      await store.close()
      await screen.close()
    },
  }
}

const saved = async (screen: Screen): Promise<void> => {
  for (let i = 0; i < 100 && screen.session.desk.saving.state !== 'saved'; i += 1)
    await new Promise((resolve) => setTimeout(resolve, 10))
  await screen.settled()
}

async function herdFile(): Promise<string> {
  const { mkdir } = await import('node:fs/promises')
  await mkdir(folder, { recursive: true })
  const file = join(folder, 'herd.json')
  await saveHerd(file, herd())
  return file
}

const tick = (screen: Screen, number: string): string =>
  screen.lines.find((line) => new RegExp(`│ +${number} `).test(line))?.charAt(2) ?? 'none'

test('many steps are taken back and put back, across restarts', async () => {
  const file = await herdFile()
  const first = await start(file)
  await first.screen.type('412')
  await first.screen.press('usual')
  await first.screen.press('look-all', 'agree')
  await saved(first.screen)
  expect(first.screen.text).toContain('all saved')
  await first.leave()

  const second = await start(file)
  expect(tick(second.screen, '412')).toBe('●')
  expect(tick(second.screen, '53')).toBe('●')
  await second.screen.press('undo')
  expect(second.screen.text).toContain('Taken back: 3 animals: looked for a return, none seen.')
  expect(tick(second.screen, '53')).toBe('○')
  expect(tick(second.screen, '54')).toBe('○')
  expect(tick(second.screen, '412')).toBe('●')
  await saved(second.screen)
  await second.leave()

  const third = await start(file)
  await third.screen.press('undo')
  expect(third.screen.text).toContain('Taken back: 412: served by AI')
  expect(tick(third.screen, '412')).toBe('○')
  await third.screen.press('undo')
  expect(third.screen.text).toContain('Nothing is left to take back.')
  await third.screen.press('redo')
  expect(third.screen.text).toContain('Put back: 412: served by AI')
  expect(tick(third.screen, '412')).toBe('●')
  await saved(third.screen)
  await third.leave()

  const fourth = await start(file)
  await fourth.screen.press('redo')
  expect(fourth.screen.text).toContain('Put back: 3 animals: looked')
  expect(tick(fourth.screen, '53')).toBe('●')
  await fourth.screen.press('undo')
  expect(tick(fourth.screen, '53')).toBe('○')
  await saved(fourth.screen)
  await fourth.leave()

  const opened = await openHerdFile(file)
  if (!opened.ok) throw new Error('it does not open')
  const corrections = opened.value.facts.filter(
    (fact): fact is Fact & { kind: 'correction' } => fact.kind === 'correction',
  )
  expect(corrections.every((fact) => fact.date === DAY)).toBe(true)
  await opened.value.close()
})

test('what was done on another day is shown before it is taken back', async () => {
  const file = await herdFile()
  const first = await start(file)
  await first.screen.type('53')
  await first.screen.press('usual')
  await saved(first.screen)
  await first.leave()

  const next = await start(file, { ...now, day: (now.day + 1) as typeof now.day })
  await next.screen.press('undo')
  expect(next.screen.text).toContain('━━ 53: looked for a return, none seen, Thu 28 May')
  expect(next.screen.text).toContain('This is not of today. Take it back?')
  await next.screen.press('cancel')
  expect(next.screen.text).toContain('Nothing recorded.')
  await next.screen.press('undo', 'agree')
  expect(next.screen.text).toContain('Taken back: 53: looked for a return, none seen, Thu 28 May.')
  await saved(next.screen)
  await next.leave()
})

test('something new ends what could be put back', async () => {
  const file = await herdFile()
  const { screen, leave } = await start(file)
  await screen.type('53')
  await screen.press('usual', 'undo')
  await screen.type('54')
  await screen.press('usual', 'redo')
  expect(screen.text).toContain('Nothing was taken back that could be put back.')
  await saved(screen)
  await leave()
})

test('a fact struck out on her page is taken back like anything else', async () => {
  const file = await herdFile()
  const { screen, leave } = await start(file)
  await screen.type('54')
  await screen.press('open-animal')
  expect(screen.text).toContain('served by AI, S17 conventional')
  await screen.press('void')
  expect(screen.text).toContain('Strike this out?')
  await screen.press('agree')
  expect(screen.text).toContain('Struck out: 54: served by AI')
  const served = screen.lines.flatMap((line, at) => (line.includes('served by AI') ? [at] : []))
  expect(served).toHaveLength(2)
  expect(screen.lines.findIndex((line) => line.includes('Struck out or taken back'))).toBeLessThan(
    served[0] ?? 0,
  )
  await screen.press('undo')
  expect(screen.text).toContain('Taken back: 54: struck out, served by AI, S17 conventional')
  await saved(screen)
  await leave()
})

test('on the fixed day of the sample herd what was just recorded is taken back at once', async () => {
  const file = await herdFile()
  const { screen, leave } = await start(file, now, new Date('2027-01-15T09:00:00Z'))
  await screen.type('412')
  await screen.press('usual')
  expect(tick(screen, '412')).toBe('●')
  await screen.press('undo')
  expect(screen.text).toContain('Taken back: 412')
  expect(tick(screen, '412')).toBe('○')
  await leave()
})
