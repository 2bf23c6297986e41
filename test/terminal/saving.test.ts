import { afterEach, expect, test, vi } from 'vitest'
import { fault, notice } from '../../source/breeding/problem.ts'
import { asFacts } from '../../source/herd/recording.ts'
import { cow, heat, herd, now } from './support/herd.ts'
import { MemoryHerd } from './support/memory-herd.ts'
import { closeAll, instantOf, openOn } from './support/screen.ts'

afterEach(closeAll)

const full = [fault('ENOSPC', 'herd.json')]
const memory = (
  mode?: 'writable' | 'read-only',
  problems = mode === 'read-only' ? [notice('herd-read-only', 'herd.json')] : [],
) => new MemoryHerd(herd(), () => instantOf(now), mode, problems)

test('what the first tick needs is loaded once, when the first frame stands', async () => {
  const store = memory()
  const screen = await openOn([], { now, by: 'MK', herd: store })
  expect(screen.lines[0]).toContain('all saved')
  await vi.waitFor(() => expect(store.prepared).toBe(1))
  await screen.press('down')
  expect(store.prepared).toBe(1)
})

test('what waits to be saved is shown as such, and then as saved', async () => {
  const store = memory()
  store.slow = true
  const screen = await openOn([], { now, by: 'MK', herd: store })
  await screen.type('412')
  await screen.press('usual')
  expect(screen.lines[0]).toContain('saving · MK')
  expect(screen.line('412 Buttercup')).toContain('●')
  store.save()
  await screen.quiet()
  expect(screen.lines[0]).toContain('all saved · MK')
})

test('what cannot be saved is kept, shown with the reason, and tried again with the next key', async () => {
  const store = memory()
  store.trouble = full
  const screen = await openOn([], { now, by: 'MK', herd: store })
  await screen.type('412')
  await screen.press('usual')
  await screen.quiet()
  expect(screen.lines[0]).toContain('NOT SAVED: 1 · MK')
  expect(screen.cellsOf('NOT SAVED')[0]).toMatchObject({ colour: 1, bold: true })
  await screen.press('back')
  expect(screen.line('herd.json')).not.toBe('')
  expect(screen.line('412 Buttercup')).toContain('●')
  store.trouble = []
  await screen.press('down')
  await screen.quiet()
  expect(screen.lines[0]).toContain('all saved · MK')
  expect(store.state.facts.at(-1)).toMatchObject({ kind: 'service' })
})

test('leaving with something unsaved is asked about; a copy can be saved first', async () => {
  const store = memory()
  store.trouble = full
  const screen = await openOn([], { now, by: 'MK', herd: store })
  await screen.type('412')
  await screen.press('usual', 'quit')
  expect(screen.text).toContain('1 fact is not saved')
  expect(screen.text).toContain('They are lost if you leave now.')
  await screen.press('cancel', 'quit', 'copy')
  await screen.type('/stick/herd.json')
  await screen.press('take')
  await screen.quiet()
  expect(store.copies).toEqual(['/stick/herd.json'])
  expect(screen.text).toContain('A copy of the whole herd is saved as /stick/herd.json.')
  await screen.press('quit', 'leave-unsaved')
  expect(await screen.exit()).toBe(0)
})

test('who leaves while a fact is being saved waits for it, also where the keys came together', async () => {
  const store = memory()
  store.slow = true
  const screen = await openOn([], { now, by: 'MK', herd: store })
  await screen.type('412')
  await screen.send(' q')
  expect(screen.text).toContain('The program leaves as soon as that is done.')
  store.trouble = full
  store.save()
  await screen.quiet()
  expect(screen.text).toContain('1 fact is not saved')
  await screen.press('cancel')
  store.trouble = []
  store.slow = false
  await screen.press('quit')
  expect(await screen.exit()).toBe(0)
  expect(store.state.unsaved).toEqual([])
})

test('a copy that fails says why', async () => {
  const store = memory()
  store.trouble = full
  const screen = await openOn([], { now, by: 'MK', herd: store })
  await screen.press('copy')
  await screen.type('/full/herd.json')
  await screen.press('take')
  await screen.quiet()
  expect(screen.text).toContain('No copy saved: herd.json')
})

test('a herd that may only be read records nothing and says why', async () => {
  const store = memory('read-only')
  const screen = await openOn([], { now, by: 'MK', herd: store })
  expect(screen.lines[0]).toContain('read only · MK')
  await screen.type('412')
  await screen.press('usual')
  await screen.quiet()
  expect(screen.text).toContain('Not recorded:')
  expect(screen.line('412 Buttercup')).toContain('○')
})

test('a fact that the herd refuses goes from the screen again, with the reason', async () => {
  const store = memory()
  store.refusal = [fault('herd-invalid', 'herd.json')]
  const screen = await openOn([], { now, by: 'MK', herd: store })
  await screen.type('412')
  await screen.press('usual')
  await screen.quiet()
  expect(screen.text).toContain('Not recorded:')
  expect(screen.line('412 Buttercup')).toContain('○')
  expect(store.state.facts).toHaveLength(herd().length)
})

test('an older copy in the place of the file is saved over only when the user says so', async () => {
  const store = memory()
  const screen = await openOn([], { now, by: 'MK', herd: store })
  await screen.press('over-older')
  expect(screen.text).toContain('No older copy stands in the place of the file.')
  store.trouble = [fault('herd-older', 'herd.json', { found: 3, known: 9 })]
  await screen.type('412')
  await screen.press('usual')
  await screen.quiet()
  expect(screen.lines[0]).toContain('NOT SAVED: 1')
  await screen.press('over-older')
  expect(screen.text).toContain('An older copy stands in the place of the file')
  expect(store.overOlder).toBe(false)
  store.trouble = []
  await screen.press('agree')
  await screen.quiet()
  expect(store.overOlder).toBe(true)
  expect(screen.lines[0]).toContain('all saved')
})

test('what another program records comes onto the list, and what was typed here stays', async () => {
  const store = memory()
  const screen = await openOn([], { now, by: 'MK', herd: store, rows: 30 })
  await screen.type('412')
  await screen.press('note')
  await screen.type('half a no')
  store.merge(cow('777', 'Zinnia', 80, [heat(0, { time: '05:10' })]))
  await screen.quiet()
  expect(screen.line('► Note')).toContain('half a no▁')
  await screen.press('cancel')
  expect(screen.line('777 Zinnia')).toContain('on heat')
})

test('a row that somebody else ticked says who; one ticked here does not', async () => {
  const store = memory()
  const screen = await openOn([], { now, by: 'MK', herd: store, rows: 30 })
  await screen.type('53')
  await screen.press('usual')
  store.merge(
    asFacts([{ kind: 'looked', about: 'cow-54', date: '2026-05-28' }], { at: instantOf(now), by: 'OB' }),
  )
  await screen.quiet()
  expect(screen.line('54 Hazel')).toContain('looked for a return, none seen (OB)')
  expect(screen.line('53 Gorse')).toMatch(/looked for a return, none seen$/)
})

test('facts recorded while an earlier save still runs are all kept', async () => {
  const store = memory()
  store.slow = true
  const screen = await openOn([], { now, by: 'MK', herd: store })
  await screen.send('905h412h101h')
  expect(screen.lines[0]).toContain('saving')
  store.save()
  await screen.quiet()
  expect(screen.lines[0]).toContain('all saved')
  expect(store.state.facts.slice(herd().length).map((fact) => fact.about)).toEqual([
    'cow-905',
    'cow-412',
    'cow-101',
  ])
})

test('a tick is in sight before the list is made anew, and stays as the list comes', async () => {
  const screen = await openOn(herd(), { now, by: 'MK' })
  await screen.type('53')
  screen.session.press(['space'], { rows: 16, furthest: 0 })
  expect(screen.session.desk.unsettled).toHaveLength(1)
  const { page, book } = screen.session.desk
  expect(page.list.rows.find((row) => row.number === '53')).toMatchObject({ done: true })
  await screen.quiet()
  expect(screen.session.desk.unsettled).toEqual([])
  expect(screen.session.desk.book).not.toBe(book)
  expect(screen.session.desk.page.list.rows).toEqual(page.list.rows)
  expect(screen.line('53 Gorse')).toContain('● │  53 Gorse')
})

test('what is said at more length than two lines is shown whole by a key', async () => {
  const path = 'herd of Hazel Bank, taken along on the stick of the second computer.json'
  const problems = [
    notice('copy-with-more', '', { path, file: 'herd.json', facts: 12 }),
    notice('herd-read-only', 'herd.json'),
  ]
  const screen = await openOn([], { now, by: 'MK', herd: memory('writable', problems) })
  await screen.type('5')
  await screen.press('back')
  expect(screen.text).not.toContain('check herd.json --merge')
  expect(screen.lines.at(-1)).toContain('! all of it')
  await screen.press('whole-notice')
  expect(screen.text).toContain('━━ What is said')
  const flat = screen.text.replaceAll(/\s+/g, ' ')
  expect(flat).toContain('dawnlist check')
  expect(flat).toContain('--merge')
  expect(flat).toContain('herd.json')
  await screen.press('back')
  expect(screen.text).not.toContain('━━ What is said')
  await screen.send('!!')
  expect(screen.text).not.toContain('━━ What is said')
})

test('where nothing is cut the foot names no key for it, and the key says that nothing is said', async () => {
  const screen = await openOn([], { now, by: 'MK', herd: memory() })
  expect(screen.lines.at(-1)).not.toContain('all of it')
  await screen.press('whole-notice')
  expect(screen.text).toContain('Nothing is said just now.')
})
