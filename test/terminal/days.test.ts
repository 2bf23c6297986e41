import { afterEach, expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { ago, at, herd, now } from './support/herd.ts'
import type { MemoryHerd } from './support/memory-herd.ts'
import { closeAll, openOn, type Screen } from './support/screen.ts'

afterEach(closeAll)

const open = () => openOn(herd(), { now, by: 'MK' })
const count = herd().length
const recorded = (screen: Screen) => (screen.herd as MemoryHerd).state.facts.slice(count)

test('tomorrow is to look at only, and says so', async () => {
  const screen = await open()
  await screen.press('day-after')
  expect(screen.lines[0]).toContain('Fri 29 May 2026 (still to come, to look at only)')
  await screen.press('usual')
  expect(screen.text).toContain('This list is still to come: nothing can be recorded on it. T goes to today.')
  await screen.press('heat-now', 'note', 'fill-in')
  expect(recorded(screen)).toEqual([])
  expect(screen.session.desk.slip).toBeUndefined()
  await screen.press('today')
  expect(screen.lines[0]).not.toContain('still to come')
})

test('yesterday is shown as it stood; one key records nothing there, a form records for that date', async () => {
  const screen = await open()
  await screen.press('day-before')
  expect(screen.lines[0]).toContain('Wed 27 May 2026 (a past list)')
  expect(screen.line('37 Dora')).toContain('tomorrow early')
  await screen.type('53')
  await screen.press('usual')
  expect(screen.text).toContain('This is a past list, to look at. A form can record for that date')
  expect(recorded(screen)).toEqual([])
  await screen.press('service')
  expect(screen.line('   Date')).toContain('Wed 27 May 2026')
  await screen.press('accept')
  expect(recorded(screen)[0]).toMatchObject({ kind: 'service', about: 'cow-53', date: ago(1) })
})

test('a past list is shown as it was known then, and as it is known now', async () => {
  const screen = await open()
  await screen.press('known-then')
  expect(screen.text).toContain('Only a past list can be shown as it was known then')
  await screen.press('day-before', 'known-then')
  expect(screen.lines[0]).toContain('Wed 27 May 2026 (as it was known then)')
  const then = screen.session.desk.page.list
  await screen.press('known-then')
  expect(screen.lines[0]).toContain('Wed 27 May 2026 (a past list) ')
  await screen.type('53')
  await screen.press('service', 'accept')
  expect(recorded(screen)[0]).toMatchObject({ date: ago(1) })
  // Recorded today of yesterday: known now, and not known then.
  const done = () => screen.session.desk.page.list.rows.filter((row) => row.done).length
  const now = done()
  await screen.press('known-then')
  expect(screen.session.desk.page.list).toEqual(then)
  expect(done()).toBeLessThan(now)
})

test('a day before seasons were archived says where its facts are', async () => {
  const archive = { before: '2024-03-27', file: 'herd.archive-2026-05-28.json', took: ['gone'] }
  const told = {
    id: 'archive',
    about: 'herd',
    date: '2026-05-28',
    kind: 'archive',
    at: '2026-05-28T04:00:00Z',
  }
  const screen = await openOn([...herd(), { ...told, ...archive } as Fact], { now, by: 'MK' })
  await screen.press('day-before')
  expect(screen.text).toContain('herd.archive-2026-05-28.json has facts from before 27 Mar 2024')
  await screen.press('today')
  expect(screen.text).not.toContain('herd.archive')
})

test('any date: typed in words or as a date, or a sentence what to write', async () => {
  const screen = await open()
  await screen.press('some-day')
  await screen.type('5/6')
  await screen.press('take')
  expect(screen.text).toContain('That is not a date. Write 28 May, or 2026-05-28.')
  await screen.press('cancel', 'some-day')
  await screen.type('12 June')
  await screen.press('take')
  expect(screen.lines[0]).toContain('Fri 12 Jun 2026 (still to come')
  expect(screen.lines[1]).toContain('sweep bull day 1 of 21, closes Thu 2 Jul')
  await screen.press('some-day')
  await screen.type('2026-04-20')
  await screen.press('take')
  expect(screen.lines[0]).toContain('Mon 20 Apr 2026 (a past list)')
  expect(screen.lines[1]).toContain('11 days to the mating start, last day Thu 30 Apr')
})

test('at midnight on the farm the new day’s list comes, and the screen says so', async () => {
  const screen = await openOn(herd(), { now: at('23:59'), by: 'MK' })
  screen.now = at('00:00', '2026-05-29')
  screen.session.tick()
  await screen.settled()
  expect(screen.lines[0]).toContain('Fri 29 May 2026')
  expect(screen.text).toContain('It is Fri 29 May 2026 now: this is the new day’s list.')
  expect(screen.text).toContain('Before you start')
  await screen.press('take')
  await screen.type('905')
  await screen.press('heat-now')
  expect(recorded(screen)[0]).toMatchObject({ kind: 'heat', date: '2026-05-29', time: '00:00' })
})

test('midnight leaves an open form as it is, with the date it was opened on', async () => {
  const screen = await openOn(herd(), { now: at('23:59'), by: 'MK' })
  await screen.type('412')
  await screen.press('service')
  screen.now = at('00:01', '2026-05-29')
  screen.session.tick()
  await screen.settled()
  expect(screen.line('   Date')).toContain('Thu 28 May 2026')
  await screen.press('accept')
  expect(recorded(screen)[0]).toMatchObject({ date: '2026-05-28', time: '23:59' })
})

test('a key pressed after midnight belongs to the new day, before any timer has looked', async () => {
  const screen = await openOn(herd(), { now: at('23:59'), by: 'MK' })
  screen.now = at('00:01', '2026-05-29')
  await screen.send('905')
  expect(screen.lines[0]).toContain('Fri 29 May 2026')
})

test('another day shown stays shown when the day turns', async () => {
  const screen = await openOn(herd(), { now: at('23:59'), by: 'MK' })
  await screen.press('some-day')
  await screen.type('20 May 2026')
  await screen.press('take')
  screen.now = at('00:01', '2026-05-29')
  screen.session.tick()
  await screen.settled()
  expect(screen.lines[0]).toContain('Wed 20 May 2026 (a past list)')
})

test('initials are asked for once; nothing typed records without', async () => {
  const screen = await openOn(herd(), { now, opening: true })
  expect(screen.text).toContain('Who is recording? Initials, or nothing: ▁')
  await screen.press('take')
  expect(screen.lines[0]).toContain('no initials')
  await screen.type('905')
  await screen.press('heat-now')
  expect(recorded(screen)[0]).not.toHaveProperty('by')
  await screen.press('initials')
  await screen.type('jo')
  await screen.press('take')
  expect(screen.text).toContain('Recording as JO.')
  await screen.type('905')
  await screen.press('note')
  await screen.type('x')
  await screen.press('accept')
  expect(recorded(screen)[1]).toMatchObject({ by: 'JO' })
})

test('once the day has begun the cautions are not shown again, and the last initials are offered', async () => {
  const first = await openOn(herd(), { now, by: 'MK' })
  await first.type('905')
  await first.press('heat-now')
  const facts = (first.herd as MemoryHerd).state.facts
  const again = await openOn(facts, { now: at('15:00'), opening: true })
  expect(again.text).not.toContain('Before you start')
  expect(again.text).toContain('Who is recording? Initials, or nothing')
  expect(again.text).toContain(' MK▁')
  await again.type('jo')
  expect(again.text).toContain(' JO▁')
  await again.press('take')
  expect(again.lines[0]).toContain('JO')
})

test('the cautions of the day stand there in full, and can be read on a small screen', async () => {
  const screen = await openOn(herd(), { now, columns: 60, rows: 16, opening: true })
  let read = ''
  for (let i = 0; i < 30; i += 1) {
    read += screen.text
    await screen.press('down')
  }
  for (const words of [
    'catch her in a crush',
    'Liquid nitrogen burns',
    'No bull is safe',
    'Prostaglandin',
    'local law',
  ])
    expect(read).toContain(words)
  expect(screen.text).toContain('Initials, or nothing')
})
