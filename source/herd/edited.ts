import type { Fact } from '../breeding/facts.ts'
import { fault, type Problem } from '../breeding/problem.ts'
import { checkFacts } from './check.ts'
import { currentFormat } from './format.ts'
import type { Reading } from './herd-file.ts'
import { type Migration, migrated } from './migrations.ts'

/** Far more saves than there will ever be, and few enough digits for the header line. */
const countLimit = 1e12
/** Problems named at most; a file of another kind would give one for each line. */
const namedProblems = 50

/**
 * Reads a file whose sum is wrong, strictly: someone edited it by hand, or it is damaged, or it is something else.
 * A byte order mark and CRLF, which editors add, are no fault.
 */
export async function readEdited(
  bytes: Buffer,
  path: string,
  migrations?: readonly Migration[],
): Promise<Reading> {
  // Any JSON: of a text or a number there are no fields either.
  let data: Readonly<Record<string, unknown>> | null
  let text = ''
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    data = JSON.parse(text)
  } catch (error) {
    return { state: 'fault', problems: [fault('herd-damaged', path, whereBroken(text, error))] }
  }
  if (data?.kind !== 'dawnlist') return { state: 'fault', problems: [fault('herd-other-json', path)] }
  const { format, revision, herd, facts } = data
  const problems = []
  if (!isCount(format)) problems.push(fault('header-field', path, { field: 'format' }))
  else if (format > currentFormat)
    problems.push(fault('herd-newer', path, { found: format, known: currentFormat }))
  if (!isCount(revision)) problems.push(fault('header-field', path, { field: 'revision' }))
  if (typeof herd !== 'string' || !/^[0-9a-z]{1,32}$/.test(herd))
    problems.push(fault('header-field', path, { field: 'herd' }))
  if (!Array.isArray(facts)) problems.push(fault('header-field', path, { field: 'facts' }))
  if (problems.length > 0) return { state: 'fault', problems }
  const now = migrated(facts as unknown[], format as number, migrations)
  if (now === undefined) {
    return {
      state: 'fault',
      problems: [fault('herd-format-unknown', path, { found: format as number, known: currentFormat })],
    }
  }
  const faults = checkFacts(now).filter((problem) => problem.severity === 'fault')
  if (faults.length > 0) {
    const invalid = fault('herd-invalid', path, { count: faults.length })
    const named = faults.slice(0, namedProblems).map((each) => inFile(each, path, text, now.length))
    return { state: 'fault', problems: [invalid, ...named] }
  }
  return {
    state: 'edited',
    herd: {
      format: format as number,
      revision: revision as number,
      herdId: herd as string,
      facts: now as Fact[],
      lines: [],
    },
  }
}

/** Names the file too, and the line of the fact where the file still has one fact a line. */
function inFile(problem: Problem, path: string, text: string, count: number): Problem {
  const index = /^facts\[(\d+)\]/.exec(problem.path)?.[1]
  const ours =
    /^\{"kind":"dawnlist".*"facts":\[\r?\n/.test(text) && text.trimEnd().split('\n').length === count + 2
  const line = ours && index !== undefined ? `:${Number(index) + 2}` : ''
  return { ...problem, path: `${path}${line}: ${problem.path}` }
}

const isCount = (value: unknown): value is number =>
  Number.isInteger(value) && (value as number) >= 0 && (value as number) <= countLimit

/** Line, counted from 1, where reading stopped; 0 where that cannot be told. */
function whereBroken(text: string, error: unknown): { line: number } {
  const line = text
    .split('\n')
    .findIndex((each) => each.startsWith('{"id":') && !parses(each.replace(/,?\r?$/, '')))
  if (line !== -1) return { line: line + 1 }
  const position = /position (\d+)/.exec(error instanceof Error ? error.message : '')?.[1]
  return { line: position === undefined ? 0 : text.slice(0, Number(position)).split('\n').length }
}

function parses(text: string): boolean {
  try {
    JSON.parse(text)
    return true
  } catch {
    return false
  }
}
