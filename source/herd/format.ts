/**
 * How a herd stands in its file, format 1. Frozen: a change of one byte is a new format with a migration.
 *
 *     {"kind":"dawnlist","format":1,"revision":12,"herd":"7k2m9qxc4t0z","sum":"<64 hexadecimal digits>","facts":[
 *     {"id":…},
 *     {"id":…}
 *     ]}
 *
 * The file is JSON in UTF-8, lines end with LF, the first line is the header, then one fact a line. The sum is the
 * SHA-256 of the whole file with its own 64 digits read as zeros. Facts are appended, so the lines of one revision
 * begin with the lines of the one before, but for a closing of old seasons (archive.ts).
 */
import { createHash } from 'node:crypto'
import type { Fact } from '../breeding/facts.ts'
import { breathe, inSlices } from './breathe.ts'
import { harmlessJson } from './escape.ts'

export const currentFormat = 1
/** Largest herd file, bytes. */
export const fileLimit = 64 * 1024 * 1024

export interface Header {
  readonly format: number
  /** Counts the saves, from 1. */
  readonly revision: number
  /** Random id of the herd, the same in every copy of its file. */
  readonly herdId: string
}

/** Fact lines with the commas between them, in pieces that follow each other; none for a herd without facts. */
export type Lines = readonly Buffer[]

/** A file whose layout is right: its header, its sum as written, and the bytes of its fact lines. */
export interface Layout extends Header {
  readonly sum: string
  /** The fact lines; empty for a herd without facts. */
  readonly lines: Buffer
}

const headerPattern =
  /^\{"kind":"dawnlist","format":(0|[1-9]\d{0,5}),"revision":(0|[1-9]\d{0,14}),"herd":"([0-9a-z]{1,32})","sum":"([0-9a-f]{64})","facts":\[\n/
const longestHeader = 256
const ending = Buffer.from('\n]}\n')
const between = Buffer.from(',\n')
const noSum = '0'.repeat(64)
const hashSlice = 1024 * 1024
const encodeSlice = 500
const decodeSlice = 128 * 1024

const headerLine = (header: Header, sum: string): string =>
  `{"kind":"dawnlist","format":${header.format},"revision":${header.revision},"herd":"${header.herdId}","sum":"${sum}","facts":[\n`

/**
 * Reads the format number alone, which stands at the same place in every format there will be.
 *
 * @returns the number, or undefined where the bytes do not begin like a herd file
 * @example formatOf(Buffer.from('{"kind":"dawnlist","format":2,')) // 2
 */
export function formatOf(bytes: Buffer): number | undefined {
  const found = /^\{"kind":"dawnlist","format":(\d{1,6}),/.exec(bytes.toString('latin1', 0, longestHeader))
  return found === null ? undefined : Number(found[1])
}

/** Header and sum as they stand in the first line, not judged; undefined where it is no header of this format. */
export function headerOf(bytes: Buffer): (Header & { sum: string; length: number }) | undefined {
  const found = headerPattern.exec(bytes.toString('latin1', 0, longestHeader))
  if (found === null) return undefined
  const [line, format, revision, herdId, sum] = found
  return {
    format: Number(format),
    revision: Number(revision),
    herdId: herdId ?? '',
    sum: sum ?? '',
    length: line.length,
  }
}

/**
 * Takes a file apart without judging it: neither sum nor facts are looked at.
 *
 * @returns header and lines, or undefined where the layout is not that of a saved herd file
 */
export function layoutOf(bytes: Buffer): Layout | undefined {
  const header = headerOf(bytes)
  const end = bytes.length - ending.length
  if (header === undefined || end < header.length || !bytes.subarray(end).equals(ending)) return undefined
  const { format, revision, herdId, sum } = header
  return { format, revision, herdId, sum, lines: bytes.subarray(header.length, end) }
}

/** SHA-256 of a herd file with the digits of its own sum read as zeros, 64 hexadecimal digits. */
export async function sumOf(header: Header, lines: Lines): Promise<string> {
  const hash = createHash('sha256').update(headerLine(header, noSum), 'latin1')
  for (const piece of lines) {
    for (let start = 0; start < piece.length; start += hashSlice) {
      if (start > 0) await breathe()
      hash.update(piece.subarray(start, start + hashSlice))
    }
  }
  return hash.update(ending).digest('hex')
}

/**
 * The bytes of a herd file.
 *
 * @returns the parts of the file in order, to be written one after the other, and their sum
 */
export async function encodeFile(header: Header, lines: Lines): Promise<{ parts: Buffer[]; sum: string }> {
  const sum = await sumOf(header, lines)
  return { parts: [Buffer.from(headerLine(header, sum), 'latin1'), ...lines, ending], sum }
}

/** Fact lines for facts, with the commas between them. */
export async function encodeLines(facts: readonly Fact[]): Promise<Lines> {
  const pieces: Buffer[] = []
  let slice: string[] = []
  await inSlices(facts, encodeSlice, (fact, place) => {
    slice.push(harmlessJson(fact))
    if (slice.length < encodeSlice && place < facts.length - 1) return
    if (pieces.length > 0) pieces.push(between)
    pieces.push(Buffer.from(slice.join(',\n')))
    slice = []
  })
  return pieces
}

/** Lines after lines. */
export const joinLines = (before: Lines, after: Lines): Lines =>
  before.length === 0 || after.length === 0 ? [...before, ...after] : [...before, between, ...after]

/**
 * The lines that came after those already known.
 *
 * @returns empty where there are none, undefined where the lines do not begin with the known ones
 */
export function linesAfter(known: Lines, lines: Buffer): Buffer | undefined {
  let end = 0
  for (const piece of known) {
    if (!lines.subarray(end, end + piece.length).equals(piece)) return undefined
    end += piece.length
  }
  if (end === 0 || end === lines.length) return lines.subarray(end)
  const follows = lines.subarray(end, end + between.length).equals(between)
  return follows ? lines.subarray(end + between.length) : undefined
}

/**
 * Facts of lines whose sum was right. Each line feed ends a fact, for JSON has none inside a text.
 *
 * @throws SyntaxError where the lines are not JSON
 */
export async function decodeLines(lines: Buffer): Promise<Fact[]> {
  const facts: Fact[] = []
  let start = 0
  while (start < lines.length) {
    if (start > 0) await breathe()
    const cut = lines.indexOf(between, start + decodeSlice)
    const end = cut === -1 ? lines.length : cut
    for (const fact of JSON.parse(`[${lines.toString('utf8', start, end)}]`)) facts.push(fact)
    start = end + between.length
  }
  return facts
}
