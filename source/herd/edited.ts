import type { Fact } from '../breeding/facts.ts'
import { fault } from '../breeding/problem.ts'
import { checkFacts } from './check.ts'
import { currentFormat } from './format.ts'
import type { Reading } from './herd-file.ts'
import { type Migration, migrated } from './migrations.ts'

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
  let data: unknown
  let text = ''
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    data = JSON.parse(text)
  } catch (error) {
    return { state: 'fault', problems: [fault('herd-damaged', path, whereBroken(text, error))] }
  }
  if (!isRecord(data) || data.kind !== 'dawnlist')
    return { state: 'fault', problems: [fault('herd-other-json', path)] }
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
  const found = checkFacts(now)
  const faults = found.filter((problem) => problem.severity === 'fault')
  if (faults.length > 0) {
    const invalid = fault('herd-invalid', path, { count: faults.length })
    return { state: 'fault', problems: [invalid, ...faults.slice(0, namedProblems)] }
  }
  return {
    state: 'edited',
    herd: {
      format: format as number,
      revision: revision as number,
      herdId: herd as string,
      facts: now as Fact[],
      lines: Buffer.alloc(0),
    },
    notices: found,
  }
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const isCount = (value: unknown): value is number =>
  typeof value === 'number' && Number.isSafeInteger(value) && value >= 0 && value < 1e15

/** Line, counted from 1, where reading stopped; line 0 where the bytes are no text at all. */
function whereBroken(text: string, error: unknown): { line: number } {
  if (text === '') return { line: 0 }
  const found = /position (\d+)/.exec(error instanceof Error ? error.message : '')
  const end = found === null ? text.length : Number(found[1])
  return { line: text.slice(0, end).split('\n').length }
}
