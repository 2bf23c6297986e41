import { afterEach, expect, test } from 'vitest'
import { herd, now } from './support/herd.ts'
import type { MemoryHerd } from './support/memory-herd.ts'
import { bytesOf, closeAll, openOn, type Screen } from './support/screen.ts'

afterEach(closeAll)

const open = () => openOn(herd(), { now, by: 'MK' })
const count = herd().length
const recorded = (screen: Screen) => (screen.herd as MemoryHerd).state.facts.slice(count)
const pointed = (screen: Screen): string => screen.line('► ').slice(4).trim()

test('keys that arrive together are single keys: a number and Enter', async () => {
  const screen = await open()
  await screen.send('412\r')
  expect(screen.text).toContain(' 412  Buttercup')
})

test('keys that arrive together are single keys: the same key many times', async () => {
  const screen = await open()
  await screen.send(bytesOf('down').repeat(3))
  expect(pointed(screen)).toContain('412 Buttercup')
  await screen.send('   ')
  expect(recorded(screen).map((fact) => `${fact.kind} ${fact.about}`)).toEqual([
    'service cow-412',
    'service cow-101',
    'looked cow-53',
  ])
})

test('each key sees what the one before it did: three heats in one chunk', async () => {
  const screen = await open()
  await screen.send('905h412h101h')
  expect(recorded(screen).map((fact) => fact.about)).toEqual(['cow-905', 'cow-412', 'cow-101'])
})

test('a form filled in and recorded in one chunk', async () => {
  const screen = await open()
  await screen.send('61p35\r')
  expect(recorded(screen)[0]).toMatchObject({ kind: 'check', about: 'cow-61', foetalAge: 35 })
})

test('an arrow key cut in two is still an arrow key', async () => {
  const screen = await open()
  await screen.send('\u001b[')
  await screen.send('B')
  expect(pointed(screen)).toContain('319 Clover')
  expect(screen.text).not.toContain('does nothing here')
})

test('Esc and a key that arrive together were two presses', async () => {
  const screen = await open()
  await screen.type('412')
  await screen.press('note')
  await screen.send('\u001bq')
  expect(await screen.exit()).toBe(0)
  expect(recorded(screen)).toEqual([])
})

test('Esc alone is one step back', async () => {
  const screen = await open()
  await screen.type('41')
  expect(screen.text).toContain('Number 41')
  await screen.press('back')
  expect(screen.text).not.toContain('Number 41')
})

test('what a terminal reports by itself is no key', async () => {
  const screen = await open()
  const before = screen.text
  // Focus in and out, the cursor's place, a mouse click, device attributes.
  for (const report of ['\u001b[I', '\u001b[O', '\u001b[12;40R', '\u001b[<0;10;10M', '\u001b[?62;1;4c'])
    await screen.send(report)
  expect(screen.text).toBe(before)
})

test('a key that means nothing says so, in words that cannot harm', async () => {
  const screen = await open()
  await screen.send('#')
  expect(screen.text).toContain('# does nothing here. ? shows the keys.')
  await screen.send('\u0001')
  expect(screen.text).toContain('ctrl+a does nothing here.')
})

test('pasted text goes into the field as it is and presses no keys', async () => {
  const screen = await open()
  await screen.type('412')
  await screen.press('note')
  await screen.send('\u001b[200~limps\rq h\u001b[201~')
  expect(screen.line('► Note')).toContain('limps q h▁')
  expect(recorded(screen)).toEqual([])
  await screen.press('accept')
  expect(recorded(screen)[0]).toMatchObject({ note: 'limps q h' })
})

test('pasted text on the list presses no keys; a number goes to the animal', async () => {
  const screen = await open()
  await screen.send('\u001b[200~hhh q\u001b[201~')
  expect(recorded(screen)).toEqual([])
  await screen.send('\u001b[200~412\n\u001b[201~')
  expect(screen.text).toContain('Number 412')
  expect(pointed(screen)).toContain('412 Buttercup')
})

test('a pasted terminal escape is shown by its code, never sent on', async () => {
  const screen = await open()
  await screen.type('412')
  await screen.press('note')
  await screen.send('\u001b[200~a\u0007b\u202ec\u001b[201~')
  expect(screen.line('► Note')).toContain('a<0007>b<202E>c')
})

test('the end of an ear tag finds the animal, a shorter number its own', async () => {
  const screen = await open()
  await screen.type('0412')
  expect(screen.text).toContain('Number 0412▁  412 Buttercup')
  await screen.press('back')
  await screen.type('700')
  await screen.press('heat-now')
  expect(screen.text).toContain('There is no animal 700.')
  await screen.press('back')
  await screen.type('99')
  await screen.press('open-animal')
  expect(screen.text).toContain('There is no animal 99. / finds her by name or ear tag.')
})

test('the digits can be corrected', async () => {
  const screen = await open()
  await screen.type('413')
  await screen.press('rub')
  await screen.type('2')
  expect(pointed(screen)).toContain('412 Buttercup')
})

test('a name finds the animal: on the list the pointer goes to her, else her page opens', async () => {
  const screen = await open()
  await screen.press('search')
  await screen.type('butter')
  expect(screen.text).toContain('► 412 Buttercup, lactation 3, spring block')
  await screen.press('take')
  expect(pointed(screen)).toContain('412 Buttercup')
  await screen.press('search')
  await screen.type('oli')
  await screen.press('take')
  expect(screen.text).toContain(' 905  Olive')
  await screen.press('back', 'search')
  await screen.type('zzz')
  expect(screen.text).toContain('No animal like that.')
  await screen.press('take', 'cancel')
  expect(screen.text).toContain('Take care')
})

test('among several names the arrow keys choose', async () => {
  const screen = await open()
  await screen.press('search')
  await screen.type('er')
  const [first] = screen.lines.filter((line) => line.startsWith('► ')).slice(-1)
  await screen.press('next-field')
  const [second] = screen.lines.filter((line) => line.startsWith('► ')).slice(-1)
  expect(second).not.toBe(first)
})

test('Tab goes from section to section, Shift+Tab back', async () => {
  const screen = await open()
  const seen = []
  for (let i = 0; i < 4; i += 1) {
    seen.push(pointed(screen).match(/\d+/)?.[0])
    await screen.press('next-section')
  }
  expect(seen).toEqual(['288', '37', '101', '53'])
  await screen.press('previous-section', 'previous-section')
  expect(pointed(screen)).toContain('101 Erica')
})

test('a disabled key says why', async () => {
  const screen = await open()
  await screen.press('undo')
  expect(screen.text).toContain('Nothing is left to take back.')
  await screen.press('unfold')
  expect(screen.text).toContain('No animals run with the bull today.')
  await screen.type('905')
  await screen.press('usual')
  expect(screen.text).toContain('905 is not on this list')
})

test('Ctrl+C leaves at once with status 130, also from a form', async () => {
  const screen = await open()
  await screen.type('412')
  await screen.press('note', 'interrupt')
  expect(await screen.exit()).toBe(130)
  expect(screen.output.terminal.buffer.active.type).toBe('normal')
  expect(screen.input.raw).toBe(false)
})

test('q leaves with status 0 and gives the terminal back', async () => {
  const screen = await open()
  await screen.press('quit')
  expect(await screen.exit()).toBe(0)
  expect(screen.output.terminal.buffer.active.type).toBe('normal')
  expect(screen.input.raw).toBe(false)
})

test('Ctrl+Z gives the terminal back and stops the job; fg draws the screen anew, also at another size', async () => {
  const screen = await open()
  await screen.type('412')
  await screen.press('note')
  await screen.type('half')
  screen.input.send(bytesOf('ctrl+z'))
  await new Promise((resolve) => setTimeout(resolve, 50))
  expect(screen.killed).toEqual(['SIGTSTP'])
  expect(screen.output.terminal.buffer.active.type).toBe('normal')
  expect(screen.input.raw).toBe(false)
  screen.output.columns = 120
  screen.output.rows = 40
  screen.output.terminal.resize(120, 40)
  screen.process.emit('SIGCONT')
  await screen.quiet()
  expect(screen.output.terminal.buffer.active.type).toBe('alternate')
  expect(screen.input.raw).toBe(true)
  expect(screen.line('► Note')).toContain('half▁')
  expect(screen.lines[0]).toMatch(/^ Hazel Bank.{60,}MK$/)
  await screen.type('-way')
  expect(screen.line('► Note')).toContain('half-way▁')
})

test('where nobody could bring it back Ctrl+Z stops nothing and says so', async () => {
  const screen = await open()
  screen.input.send(bytesOf('ctrl+z'))
  await new Promise((resolve) => setTimeout(resolve, 500))
  await screen.quiet()
  expect(screen.output.terminal.buffer.active.type).toBe('alternate')
  expect(screen.text).toContain('This terminal cannot be suspended.')
  await screen.press('down')
  expect(pointed(screen)).toContain('319 Clover')
})

test('on Windows the last row stays free, and Ctrl+Z says that it cannot', async () => {
  const screen = await openOn(herd(), { now, by: 'MK', platform: 'win32' })
  expect(screen.lines[23]).toBe('')
  expect(screen.lines[22]).toContain('Space')
  await screen.press('suspend')
  await screen.quiet()
  expect(screen.killed).toEqual([])
  expect(screen.text).toContain('This terminal cannot be suspended.')
})

test('the screen never grows over its edge, whatever is pressed', async () => {
  const screen = await openOn(herd(), { now, by: 'MK', columns: 60, rows: 16 })
  for (const chunk of [
    '412',
    's',
    '\t\t',
    '\u001b',
    'm',
    '\u001b',
    '?',
    '\u001b',
    '/er',
    '\u001b',
    'd',
    'x\r',
    '\u001b',
    '5\r',
  ]) {
    await screen.send(chunk)
    expect(screen.lines[0]).toContain('Hazel Bank')
    expect(screen.output.terminal.buffer.active.baseY).toBe(0)
  }
})

test('a number that no animal has is not gone on with by the next digit; Backspace mends it', async () => {
  const screen = await open()
  await screen.send('999h412h')
  expect(recorded(screen).map((fact) => fact.about)).toEqual(['cow-412'])
  await screen.send('1019h')
  expect(screen.text).toContain('There is no animal 1019.')
  await screen.press('rub')
  expect(screen.text).toContain('Number 101▁  101 Erica')
  await screen.send('h')
  expect(recorded(screen).map((fact) => fact.about)).toEqual(['cow-412', 'cow-101'])
})
