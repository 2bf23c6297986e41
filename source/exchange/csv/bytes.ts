/** The bytes of a CSV file as text. */
import { fault, type Outcome } from '../../breeding/problem.ts'

/** How a file was written. Only UTF-8 is what the format asks for; the others are named in the report. */
export type Encoding = 'UTF-8' | 'Latin-1' | 'UTF-16'

interface Decoded {
  /** Without a byte order mark. */
  readonly text: string
  readonly encoding: Encoding
}

/**
 * Decodes the bytes of a file: UTF-8 with or without a mark, UTF-16 by its mark, else Latin-1 (with the letters
 * that Windows adds to it), in which every byte is a letter.
 *
 * @returns the text, or the problem csv-empty or csv-not-text
 */
export function decodeText(bytes: Uint8Array, path: string): Outcome<Decoded> {
  const decoded = decode(bytes)
  if (decoded.text.trim() === '') return { ok: false, problems: [fault('csv-empty', path)] }
  if (decoded.text.includes('\u0000')) return { ok: false, problems: [fault('csv-not-text', path)] }
  return { ok: true, value: decoded }
}

function decode(bytes: Uint8Array): Decoded {
  if (bytes[0] === 0xff && bytes[1] === 0xfe)
    return { text: new TextDecoder('utf-16le').decode(bytes), encoding: 'UTF-16' }
  if (bytes[0] === 0xfe && bytes[1] === 0xff)
    return { text: new TextDecoder('utf-16be').decode(bytes), encoding: 'UTF-16' }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'UTF-8' }
  } catch {
    return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'Latin-1' }
  }
}
