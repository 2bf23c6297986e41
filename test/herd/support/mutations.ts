import type { Random } from './memory-files.ts'
import { seeded } from './worlds.ts'

const at = (random: Random, length: number): number => Math.floor(random() * length)

const texts = [
  '"__proto__":{"x":1},',
  '"constructor":1,',
  '-1',
  '1e999',
  '9007199254740993',
  'null',
  'true',
  '[]',
  '{}',
  '""',
  '"2026-02-30"',
  '"25:61"',
  '"\\u0000\\u001b[2J\\u202e"',
  `"${'x'.repeat(10_001)}"`,
  '"correction"',
  '\n',
  ',',
  '}',
  ']',
  '\ufeff',
]

/** Ways in which a file may have been changed, one after the other. */
const ways: readonly ((bytes: Buffer, random: Random) => Buffer)[] = [
  (bytes, random) => {
    const changed = Buffer.from(bytes)
    changed[at(random, bytes.length)] = at(random, 256)
    return changed
  },
  (bytes, random) => bytes.subarray(0, at(random, bytes.length)),
  (bytes, random) => {
    const start = at(random, bytes.length)
    return Buffer.concat([bytes.subarray(0, start), bytes.subarray(start + at(random, 200))])
  },
  (bytes, random) => {
    const start = at(random, bytes.length)
    return Buffer.concat([bytes.subarray(0, start), bytes.subarray(at(random, bytes.length))])
  },
  (bytes, random) => {
    const start = at(random, bytes.length)
    const text = Buffer.from(texts[at(random, texts.length)] ?? '')
    return Buffer.concat([bytes.subarray(0, start), text, bytes.subarray(start)])
  },
  // A value of one field becomes another: still JSON most of the time.
  (bytes, random) => {
    const text = bytes.toString('utf8')
    const values = [...text.matchAll(/:("(?:[^"\\]|\\.)*"|-?\d+|true|false)/g)]
    const value = values[at(random, values.length)]
    if (value === undefined) return bytes
    const start = value.index + 1
    return Buffer.from(
      text.slice(0, start) +
        (texts[at(random, texts.length)] ?? '') +
        text.slice(value.index + value[0].length),
    )
  },
  // Two lines change places, or one stands twice.
  (bytes, random) => {
    const lines = bytes.toString('utf8').split('\n')
    const from = at(random, lines.length)
    lines.splice(at(random, lines.length), random() < 0.5 ? 1 : 0, lines[from] ?? '')
    return Buffer.from(lines.join('\n'))
  },
]

/**
 * Changed files: one to three changes each, the same ones for the same seed; the file itself is not among them.
 *
 * @param seed a whole number, @param count how many are tried
 */
export function* mutations(whole: Buffer, seed: number, count: number): Generator<Buffer> {
  const random = seeded(seed)
  for (let made = 0; made < count; made += 1) {
    let bytes = whole
    for (let changes = 1 + at(random, 3); changes > 0; changes -= 1) {
      bytes = ways[at(random, ways.length)]?.(bytes, random) ?? bytes
    }
    if (!bytes.equals(whole)) yield bytes
  }
}
