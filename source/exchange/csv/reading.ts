/** CSV as rows. Source: Y. Shafranovich, RFC 4180, Common Format and MIME Type for CSV Files, 2005, section 2. */
import { CsvError, parse } from 'csv-parse/sync'
import { fault, type Outcome } from '../../breeding/problem.ts'
import { decodeText, type Encoding } from './bytes.ts'
import { original } from './formula.ts'

/** Largest CSV file, bytes. */
const csvLimit = 64 * 1024 * 1024

export interface Sheet {
  readonly path: string
  readonly header: readonly string[]
  readonly rows: readonly SheetRow[]
  readonly encoding: Encoding
}

interface SheetRow {
  /** Line of the file where the row begins, from 1. */
  readonly line: number
  readonly cells: readonly string[]
}

interface Parsed {
  readonly record: readonly string[]
  readonly info: { readonly bytes: number }
}

/**
 * Reads a CSV file: comma or semicolon, CRLF, LF or CR, quotes. Empty rows are left out.
 *
 * @param path name of the file, for the problems
 * @returns header and rows, or one problem of the whole file: csv-empty, csv-not-text, csv-too-large,
 *   csv-quote-open (a quote that never closes), csv-quote (a quote in the wrong place), csv-tabs
 */
export function readSheet(bytes: Uint8Array, path: string): Outcome<Sheet> {
  if (bytes.length > csvLimit) return refuse(fault('csv-too-large', path, { limit: csvLimit / 2 ** 20 }))
  const decoded = decodeText(bytes, path)
  if (!decoded.ok) return decoded
  const text = Buffer.from(decoded.value.text)
  const delimiter = delimiterOf(decoded.value.text)
  if (delimiter === undefined) return refuse(fault('csv-tabs', path))
  try {
    const parsed = parse(text, {
      delimiter,
      record_delimiter: ['\r\n', '\n', '\r'],
      relax_column_count: true,
      info: true,
    }) as unknown as readonly Parsed[]
    const rows = withLines(parsed, text).filter(({ cells }) => cells.some((cell) => cell.trim() !== ''))
    const [header, ...rest] = rows
    return {
      ok: true,
      value: { path, header: header?.cells ?? [], rows: rest, encoding: decoded.value.encoding },
    }
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    return refuse(quoteFault(error, text, path))
  }
}

const refuse = (problem: ReturnType<typeof fault>): Outcome<never> => ({ ok: false, problems: [problem] })

/** The separator of the header row: of comma and semicolon the more frequent; undefined where only tabs are found. */
function delimiterOf(text: string): ',' | ';' | undefined {
  const header =
    text
      .trimStart()
      .split(/[\r\n]/, 1)[0]
      ?.replace(/"[^"]*"/g, '') ?? ''
  const commas = header.split(',').length
  const semicolons = header.split(';').length
  if (commas === 1 && semicolons === 1 && header.includes('\t')) return undefined
  return semicolons > commas ? ';' : ','
}

/** Each record with the line where it begins: line ends are counted in the bytes before it. */
function withLines(parsed: readonly Parsed[], text: Buffer): SheetRow[] {
  let line = 1
  let start = 0
  return parsed.map(({ record, info }) => {
    const row = { line, cells: record.map(original) }
    line += lineEnds(text, start, info.bytes)
    start = info.bytes
    return row
  })
}

/** Line ends from one byte up to another: CRLF, LF or CR each count once. */
function lineEnds(text: Buffer, from: number, to: number): number {
  let count = 0
  for (let place = from; place < to; place += 1) {
    if (text[place] === 10 || (text[place] === 13 && text[place + 1] !== 10)) count += 1
  }
  return count
}

function quoteFault(error: CsvError, text: Buffer, path: string): ReturnType<typeof fault> {
  const { bytes } = error as CsvError & { readonly bytes: number }
  const line = 1 + lineEnds(text, 0, bytes)
  const code = error.code === 'CSV_QUOTE_NOT_CLOSED' ? 'csv-quote-open' : 'csv-quote'
  return fault(code, `${path}:${line}`)
}
