import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { sections } from '../../source/breeding/sections.ts'
import { act } from '../../source/morning/act.ts'
import { type Desk, openDesk } from '../../source/morning/desk.ts'
import {
  bindingOf,
  bindingsNow,
  footBindings,
  helpBindings,
  meaningOf,
  shown,
  whyDisabled,
} from '../../source/screens/keys.ts'
import { themeFor } from '../../source/screens/theme.ts'
import { questionCodes, wrongCodes } from '../../source/screens/words/forms.ts'
import { keyWords, usualWords } from '../../source/screens/words/keys.ts'
import { messageCodes } from '../../source/screens/words/messages.ts'
import { cautions, cautionsOf } from '../../source/words/cautions.ts'
import { herd, now } from '../terminal/support/herd.ts'

const view = { rows: 16, furthest: 0 }
const opened = openDesk(herd(), now, 'MK')
const list: Desk = { ...opened, slip: undefined }
const animal: Desk = { ...list, places: [...list.places, { at: 'animal', animal: 'cow-412', pointer: 0 }] }
const help: Desk = { ...list, places: [...list.places, { at: 'help', top: 0 }] }
const form = act({ ...list, typed: '412' }, { do: 'form', form: 'service' }).desk
const desks: readonly [string, Desk][] = [
  ['the morning list', list],
  ['the first slip', opened],
  ['an animal', animal],
  ['the help', help],
  ['a form', form],
  ['the menu', act({ ...list, typed: '412' }, { do: 'slip', slip: 'menu' }).desk],
  ['a date', act(list, { do: 'slip', slip: 'day' }).desk],
  ['initials', act(list, { do: 'slip', slip: 'initials' }).desk],
  ['a search', act(list, { do: 'slip', slip: 'search' }).desk],
  ['a question', act(list, { do: 'look-all' }).desk],
  ['leaving', { ...list, slip: { is: 'leaving' } }],
]

for (const [what, desk] of desks) {
  test(`${what}: no key means two things`, () => {
    const keys = bindingsNow(desk).flatMap((binding) => binding.keys)
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([])
  })

  test(`${what}: every binding has its words, and Esc or Enter leads out`, () => {
    for (const binding of bindingsNow(desk)) {
      expect(keyWords[binding.name].label).not.toBe('')
      expect(keyWords[binding.name].help).toMatch(/\.$/)
    }
    expect(bindingOf(desk, 'esc')).toBeDefined()
    expect(bindingOf(desk, 'ctrl+c')?.name).toBe('interrupt')
  })

  test(`${what}: the foot shows only keys that work now`, () => {
    const foot = footBindings(desk, view)
    expect(foot.length).toBeGreaterThan(0)
    for (const binding of foot) expect(whyDisabled(desk, binding, view)).toBeUndefined()
  })
}

test('handler, foot and help read the same table', () => {
  const explained = [...helpBindings('morning-list').values()].flat()
  for (const binding of footBindings(list, view)) expect(explained).toContain(binding)
  for (const binding of explained) for (const key of binding.keys) expect(bindingOf(list, key)).toBe(binding)
  expect(meaningOf(list, 'h', view)).toEqual({ do: 'heat-now' })
  expect(meaningOf(list, '~', view)).toMatchObject({ code: 'not-a-key' })
})

test('the usual key says what it records in the section of the row', () => {
  const usual = bindingOf(list, 'space')
  expect(usual && shown(list, usual)).toEqual({ keys: 'Space', label: 'decide' })
  const watch = act(act(list, { do: 'section', by: 1 }).desk, { do: 'section', by: 1 }).desk
  const further = act(watch, { do: 'section', by: 1 }).desk
  expect(usual && shown(further, usual)).toEqual({ keys: 'Space', label: 'looked, none' })
})

test('every section has its usual thing in words, and its cautions are known', () => {
  for (const section of sections) {
    expect(usualWords[section]).not.toBe('')
    for (const name of cautionsOf[section]) expect(cautions[name].full).toMatch(/\.$/)
  }
})

/** Every text in quotes behind a word of the source of a folder: `because('x')`, `refuse(field, 'x')`. */
function codesIn(folder: string, pattern: RegExp): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) => [...readFileSync(join(folder, file), 'utf8').matchAll(pattern)])
    .map((match) => match[1] ?? '')
}

test('every reason why something cannot be done has a sentence', () => {
  const codes = new Set([
    ...codesIn('source/morning', /because\(\s*'([a-z-]+)'/g),
    ...codesIn('source/screens', /because\(\s*'([a-z-]+)'/g),
    ...codesIn('source/morning', /code: '([a-z-]+)'/g),
  ])
  expect(codes.size).toBeGreaterThan(10)
  for (const code of codes) expect(messageCodes).toContain(code)
})

test('every danger has its question, every problem of a field its sentence', () => {
  for (const code of codesIn('source/morning/forms', /'(danger-[a-z-]+)'/g))
    expect(questionCodes).toContain(code)
  const wrong = codesIn('source/morning/forms', /'(form-[a-z-]+)'/g)
  expect(wrong.length).toBeGreaterThan(10)
  for (const code of wrong) expect(wrongCodes).toContain(code)
})

test('the theme has sixteen colours at most, by name; without colours no tone has one', () => {
  const named = ['red', 'green', 'yellow', 'blue', 'magenta', 'cyan', 'white', 'black', 'gray']
  const { looks } = themeFor({ colours: true, ascii: false })
  for (const look of Object.values(looks)) if (look.color !== undefined) expect(named).toContain(look.color)
  for (const look of Object.values(themeFor({ colours: false, ascii: false }).looks))
    expect(look.color).toBeUndefined()
})

test('every sign has its likeness in ASCII, as wide', () => {
  const { signs } = themeFor({ colours: true, ascii: true })
  const flat = Object.entries({ ...signs, ...signs.more }).filter(([, sign]) => typeof sign === 'string')
  for (const [, sign] of flat) expect(sign).toMatch(/^[\x20-\x7e]+$/)
  const pairs = new Set([signs.toDo, signs.done, signs.pointer])
  expect(pairs.size).toBe(3)
})
