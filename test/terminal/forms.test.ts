import { afterEach, expect, test } from 'vitest'
import type { KeyMeaning } from '../../source/screens/words/keys.ts'
import { golden } from './support/golden.ts'
import { ago, DAY, herd, now } from './support/herd.ts'
import type { MemoryHerd } from './support/memory-herd.ts'
import { bytesOf, closeAll, openOn, type Screen } from './support/screen.ts'

afterEach(closeAll)

const count = herd().length
const recorded = (screen: Screen) => (screen.herd as MemoryHerd).state.facts.slice(count)
const openForm = async (number: string, meaning: KeyMeaning): Promise<Screen> => {
  const screen = await openOn(herd(), { now, by: 'MK', rows: 30 })
  await screen.type(number)
  await screen.press(meaning)
  return screen
}

/** How many fields lie before a field. */
function fieldsTo(screen: Screen, name: string): number {
  const { slip } = screen.session.desk
  if (slip?.is !== 'form') throw new Error('no form is open')
  return slip.form.fields.findIndex((field) => field.name === name) - slip.form.at
}

/** Every form: its key, its title, what must be typed, what is recorded. */
const formKeys: readonly {
  readonly meaning: KeyMeaning
  readonly title: string
  readonly type?: string
  readonly kind: string
}[] = [
  { meaning: 'heat', title: 'Heat seen', kind: 'heat' },
  { meaning: 'service', title: 'Served by AI', kind: 'service' },
  { meaning: 'check', title: 'Pregnancy check', kind: 'check' },
  { meaning: 'in-calf', title: 'Pregnancy check', kind: 'check' },
  { meaning: 'not-in-calf', title: 'Pregnancy check', kind: 'check' },
  { meaning: 'examined', title: 'Examined by the vet', kind: 'examined' },
  { meaning: 'hold', title: 'Health hold', kind: 'hold' },
  { meaning: 'note', title: 'Note', type: 'limps', kind: 'note' },
  { meaning: 'block', title: 'Moved to another block', kind: 'block' },
  { meaning: 'to-bull', title: 'Left to the sweep bull', kind: 'to-bull' },
  { meaning: 'with-bull', title: 'Put with the bull', kind: 'with-bull' },
  { meaning: 'from-bull', title: 'Taken from the bull', kind: 'from-bull' },
  { meaning: 'bull-service', title: 'Served by a bull', kind: 'service' },
  { meaning: 'score', title: 'Body condition', type: '3', kind: 'score' },
  { meaning: 'bar', title: 'Do not breed', kind: 'bar' },
  { meaning: 'calving', title: 'Calved', kind: 'calving' },
  { meaning: 'loss', title: 'Pregnancy lost', kind: 'loss' },
  { meaning: 'dry', title: 'Dried off', kind: 'dry' },
  { meaning: 'left', title: 'Left the herd', kind: 'left' },
]

for (const { meaning, title, type, kind } of formKeys) {
  test(`${meaning}: opens about her; Esc records nothing, a wrong date is said, Enter records`, async () => {
    const screen = await openForm('412', meaning)
    const heading = `━━ ${title}: 412 Buttercup, lactation 3, spring block`
    expect(screen.text).toContain(heading)
    await screen.press('cancel')
    expect(screen.text).not.toContain(heading)
    expect(screen.text).toContain('Nothing recorded.')

    await screen.type('412')
    await screen.press(meaning)
    if (type !== undefined) await screen.type(type)
    await screen.send(bytesOf('tab').repeat(fieldsTo(screen, 'date')))
    await screen.send('30 feb\r')
    expect(screen.text).toContain('! "30 feb" is not a date. Write 28 May')
    expect(recorded(screen)).toEqual([])

    await screen.send(`${bytesOf('backspace').repeat(6)}${ago(1)}\r`)
    expect(recorded(screen)).toHaveLength(1)
    expect(recorded(screen)[0]).toMatchObject({ kind, about: 'cow-412', date: ago(1), by: 'MK' })
    expect(screen.text).not.toContain(heading)
  })
}

test('as it opens, a form is about today', async () => {
  const screen = await openForm('412', 'heat')
  await screen.press('accept')
  expect(recorded(screen)[0]).toMatchObject({ kind: 'heat', date: DAY, time: '05:15' })
})

test('do not breed is lifted by the same key', async () => {
  const screen = await openForm('412', 'bar')
  await screen.press('accept')
  await screen.type('412')
  await screen.press('bar')
  expect(screen.text).toContain('━━ May be bred again: 412 Buttercup')
  await screen.press('accept')
  expect(recorded(screen).map((fact) => fact.kind)).toEqual(['bar', 'unbar'])
})

test('a service of an animal in calf is asked about in the form', async () => {
  const screen = await openForm('90', 'service')
  await screen.press('accept')
  expect(recorded(screen)).toEqual([])
  expect(screen.text).toContain('! 90 is recorded in calf. A service can end the pregnancy')
  await screen.press('accept')
  expect(recorded(screen)).toHaveLength(1)
})

test('each form shows the caution that goes with it', async () => {
  const cautions: readonly [KeyMeaning, string][] = [
    ['service', 'in a crush, arms out of the rails'],
    ['check', 'in a crush, arms out of the rails'],
    ['with-bull', 'no bull is safe'],
    ['examined', 'hormones: check first'],
    ['loss', 'gloves, keep her apart, ring the vet'],
  ]
  for (const [meaning, caution] of cautions) {
    const screen = await openForm('412', meaning)
    expect(screen.lines.findLast((line) => line.startsWith(' ! '))).toContain(caution)
  }
})

test('the menu shows all that can be recorded about her, and its keys work in it', async () => {
  const screen = await openOn(herd(), { now, by: 'MK', rows: 30 })
  await screen.type('412')
  await screen.press('menu')
  expect(screen.text).toContain('━━ Record about 412 Buttercup')
  expect(screen.text).toMatch(/C +calved/)
  await screen.press('calving')
  expect(screen.text).toContain('━━ Calved: 412 Buttercup')
  await screen.press('cancel')
  await screen.type('412')
  await screen.press('menu', 'cancel')
  expect(screen.text).not.toContain('Record about')
})

test('what lies on top takes the keys: letters are text in a field', async () => {
  const screen = await openForm('412', 'note')
  await screen.type('q h 412?')
  expect(screen.line('Note   ')).toContain('q h 412?▁')
  await screen.press('accept')
  expect(recorded(screen)[0]).toMatchObject({ kind: 'note', note: 'q h 412?' })
})

test('a form fits a small screen: the field that keys go to is always in sight', async () => {
  const screen = await openOn(herd(), { now, by: 'MK', columns: 60, rows: 16 })
  await screen.type('412')
  await screen.press('service')
  for (const name of ['Straw of', 'Kind', 'Batch', 'Inseminator', 'Milking', 'Time', 'Date']) {
    expect(screen.line(`► ${name}`)).not.toBe('')
    await screen.press('next-field')
  }
  await expect(golden(screen)).toMatchFileSnapshot('golden/form-60x16.txt')
})

test('a resize in a form keeps what was typed', async () => {
  const screen = await openForm('412', 'note')
  await screen.type('half a no')
  await screen.resize(120, 40)
  expect(screen.line('► Note')).toContain('half a no▁')
  await screen.resize(60, 16)
  expect(screen.line('► Note')).toContain('half a no▁')
  await screen.resize(40, 10)
  await screen.type('t')
  await screen.resize(80, 24)
  expect(screen.line('► Note')).toContain('half a not▁')
  await screen.press('accept')
  expect(recorded(screen)[0]).toMatchObject({ note: 'half a not' })
})

for (const [columns, rows] of [
  [80, 24],
  [120, 40],
] as const)
  test(`a form at ${columns}x${rows}`, async () => {
    const screen = await openOn(herd(), { now, by: 'MK', columns, rows })
    await screen.type('412')
    await screen.press('service', 'next-field', 'next-field', 'next-field', 'next-field', 'next-field')
    await screen.type('2500')
    await screen.press('accept')
    await expect(golden(screen)).toMatchFileSnapshot(`golden/form-${columns}x${rows}.txt`)
  })

test('a note about a row that is done does not hide what was done', async () => {
  const screen = await openOn(herd(), { now, by: 'MK' })
  await screen.type('412')
  await screen.press('usual')
  await screen.type('412')
  await screen.press('note')
  await screen.type('limps')
  await screen.press('accept')
  expect(screen.line('412 Buttercup')).toContain('served by AI, S21 conventional')
})
