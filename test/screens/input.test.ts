import type { Key } from 'ink'
import { expect, test } from 'vitest'
import { splitKeys } from '../../source/screens/input/split.ts'
import { asciiOnly, wantsColours, whyNoScreen } from '../../source/screens/terminal.ts'

const none: Key = {
  upArrow: false,
  downArrow: false,
  leftArrow: false,
  rightArrow: false,
  pageDown: false,
  pageUp: false,
  home: false,
  end: false,
  return: false,
  escape: false,
  ctrl: false,
  shift: false,
  tab: false,
  backspace: false,
  delete: false,
  meta: false,
  super: false,
  hyper: false,
  capsLock: false,
  numLock: false,
}

test('keys that arrive together are split', () => {
  expect(splitKeys('jjj', none)).toEqual(['j', 'j', 'j'])
  expect(splitKeys('412\r', none)).toEqual(['4', '1', '2', 'enter'])
  expect(splitKeys('a\r\nb\n', none)).toEqual(['a', 'enter', 'b', 'enter'])
  expect(splitKeys('x \t\u007f', none)).toEqual(['x', 'space', 'tab', 'backspace'])
  expect(splitKeys('é牛👍', none)).toEqual(['é', '牛', '👍'])
  expect(splitKeys('a\u001a', none)).toEqual(['a', 'ctrl+z'])
})

test('named keys have one name', () => {
  expect(splitKeys('', { ...none, upArrow: true })).toEqual(['up'])
  expect(splitKeys('', { ...none, return: true })).toEqual(['enter'])
  expect(splitKeys('', { ...none, tab: true, shift: true })).toEqual(['shift+tab'])
  expect(splitKeys('c', { ...none, ctrl: true })).toEqual(['ctrl+c'])
  expect(splitKeys('q', { ...none, meta: true })).toEqual(['esc', 'q'])
  expect(splitKeys('', { ...none, ctrl: true })).toEqual([])
  expect(splitKeys('a', { ...none, eventType: 'release' })).toEqual([])
})

test('a screen is drawn where someone sits at both ends, whatever CI says', () => {
  const both = { stdin: { isTTY: true }, stdout: { isTTY: true } }
  expect(whyNoScreen(both, { TERM: 'xterm', CI: 'true' })).toBeUndefined()
  expect(whyNoScreen({ ...both, stdin: {} }, { TERM: 'xterm' })).toBe('no-terminal')
  expect(whyNoScreen({ ...both, stdout: {} }, { TERM: 'xterm' })).toBe('no-terminal')
  expect(whyNoScreen(both, { TERM: 'dumb' })).toBe('dumb-terminal')
})

test('NO_COLOR counts when it is set to anything (no-color.org)', () => {
  expect(wantsColours({})).toBe(true)
  expect(wantsColours({ NO_COLOR: '' })).toBe(true)
  expect(wantsColours({ NO_COLOR: '1' })).toBe(false)
  expect(wantsColours({ NO_COLOR: 'false' })).toBe(false)
})

test('ASCII alone where the terminal cannot draw more', () => {
  expect(asciiOnly({ TERM: 'linux', LANG: 'en_IE.UTF-8' })).toBe(true)
  expect(asciiOnly({ TERM: 'xterm', LANG: 'en_IE.UTF-8' })).toBe(false)
  expect(asciiOnly({ TERM: 'xterm', LANG: 'C' })).toBe(true)
  expect(asciiOnly({ TERM: 'xterm', LC_ALL: 'C.utf8', LANG: 'C' })).toBe(false)
  expect(asciiOnly({ TERM: 'xterm' })).toBe(false)
})
