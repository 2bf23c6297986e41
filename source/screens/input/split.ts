/**
 * Keys as they are meant. A terminal may hand over several presses at once ("jjj", "412\r", Esc and a letter),
 * so what arrives is split into single keys before anything is matched.
 */
import type { Key } from 'ink'

/**
 * The name of a key: a printed character as itself (`h`, `H`, `7`), otherwise a word: `space`, `enter`, `esc`, `tab`,
 * `shift+tab`, `backspace`, `delete`, `up`, `down`, `left`, `right`, `pageup`, `pagedown`, `home`, `end`, `ctrl+c`.
 */
export type KeyName = string

const special: readonly (readonly [keyof Key, KeyName])[] = [
  ['upArrow', 'up'],
  ['downArrow', 'down'],
  ['leftArrow', 'left'],
  ['rightArrow', 'right'],
  ['pageUp', 'pageup'],
  ['pageDown', 'pagedown'],
  ['home', 'home'],
  ['end', 'end'],
  ['return', 'enter'],
  ['escape', 'esc'],
  ['backspace', 'backspace'],
  ['delete', 'delete'],
]

const control: Readonly<Record<string, KeyName>> = {
  '\r': 'enter',
  '\n': 'enter',
  '\t': 'tab',
  '\b': 'backspace',
  '\u007f': 'backspace',
  '\u001b': 'esc',
  ' ': 'space',
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

function characterKey(character: string): KeyName {
  const named = control[character] ?? control[character.charAt(0)]
  if (named !== undefined) return named
  const code = character.charCodeAt(0)
  return code < 32 ? `ctrl+${String.fromCharCode(code + 96)}` : character
}

/**
 * Splits what Ink's input hook hands over into key names, in the order they were pressed.
 *
 * @param input text of the press or presses
 * @param key what Ink recognised
 * @returns none for a release or for a key that no one presses on purpose
 * @example splitKeys('412\r', plainKey) // ['4', '1', '2', 'enter']
 */
export function splitKeys(input: string, key: Key): KeyName[] {
  if (key.eventType === 'release') return []
  if (key.tab) return [key.shift ? 'shift+tab' : 'tab']
  const named = special.find(([flag]) => key[flag] === true)
  if (named !== undefined) return [named[1]]
  if (key.ctrl) return input === '' ? [] : [`ctrl+${input}`]
  const keys = [...graphemes.segment(input)].flatMap(({ segment }) =>
    segment === '\r\n' ? ['enter'] : [characterKey(segment)],
  )
  // Nothing here is bound to Alt: Esc and a key that arrived together were two presses.
  return key.meta && keys.length > 0 ? ['esc', ...keys] : keys
}
