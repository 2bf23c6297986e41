import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Fact, NewFact } from '../../../source/breeding/facts.ts'
import type { Outcome } from '../../../source/breeding/problem.ts'
import { encodeFile, encodeLines, type Header } from '../../../source/herd/format.ts'
import { readHerd } from '../../../source/herd/reading.ts'
import { asFacts } from '../../../source/herd/recording.ts'

/** An invented farm with two cows. */
export const smallHerd: NewFact[] = [
  {
    kind: 'farm',
    about: 'herd',
    date: '2026-03-01',
    name: 'Long Acre',
    zone: 'Europe/Dublin',
    milkings: ['05:30', '15:30'],
  },
  {
    kind: 'season',
    about: 'herd',
    date: '2026-03-01',
    block: 'spring',
    matingStart: '2026-05-01',
    aiWeeks: 6,
    bullWeeks: 3,
  },
  {
    kind: 'animal',
    about: 'cow412',
    date: '2026-03-01',
    number: '412',
    sex: 'F',
    block: 'spring',
    lactation: 2,
  },
  { kind: 'animal', about: 'cow7', date: '2026-03-01', number: '7', sex: 'F', block: 'spring', lactation: 0 },
]

/** The same farm, old enough on 28 May 2026 to archive what came before the calving of 2023. */
export const oldHerd: NewFact[] = [
  ...smallHerd,
  ...['2021', '2022', '2023', '2024', '2025'].map(
    (year): NewFact => ({
      kind: 'season',
      about: 'herd',
      date: '2021-03-01',
      block: 'spring',
      matingStart: `${year}-05-01`,
      aiWeeks: 6,
      bullWeeks: 3,
    }),
  ),
  { kind: 'calving', about: 'cow412', date: '2023-02-01' },
]

/** A note of the cycle that the calving of 2023 closed. */
export const oldNote = (text: string): NewFact => ({ ...note(text), date: '2022-06-01' })

/** One more fact, told apart by its text. */
export const note = (text: string, about = 'cow412'): NewFact => ({
  kind: 'note',
  about,
  date: '2026-05-28',
  note: text,
})

/** The value of an outcome that must be good. */
export function good<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(`refused: ${JSON.stringify(outcome.problems)}`)
  return outcome.value
}

/** Codes of an outcome that must be refused. */
export function codes(outcome: Outcome<unknown>): string[] {
  if (outcome.ok) throw new Error('not refused')
  return outcome.problems.map((problem) => problem.code)
}

/** The bytes of a herd file with a right sum, whatever its facts are: none of them is checked. */
export async function soundFile(facts: readonly NewFact[], header: Partial<Header> = {}): Promise<Buffer> {
  const lines = await encodeLines(asFacts(facts, { at: new Date('2026-05-28T04:15:09.120Z') }))
  const { parts } = await encodeFile({ format: 1, revision: 1, herdId: '7k2m9qxc4t0z', ...header }, lines)
  return Buffer.concat(parts)
}

/** Does something in a folder of its own, which is removed afterwards. */
export async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'herd-'))
  try {
    return await work(folder)
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

/** Where the herd stands in a computer in memory. */
export const herdPath = '/farm/herd.json'

/** Ids of facts that are in a file more than once. */
function twice(facts: readonly Fact[]): string[] {
  const seen = new Set<string>()
  return facts.map((fact) => fact.id).filter((id) => seen.size === seen.add(id).size)
}

/** The facts in a file, whose sum must be right; each once. */
export async function factsIn(bytes: Buffer | undefined): Promise<readonly Fact[]> {
  if (bytes === undefined) throw new Error('there is no file')
  const reading = await readHerd(bytes, herdPath)
  if (reading.state !== 'sound') throw new Error(`not sound: ${JSON.stringify(reading)}`)
  const doubled = twice(reading.herd.facts)
  if (doubled.length > 0) throw new Error(`twice in the file: ${doubled.join(', ')}`)
  return reading.herd.facts
}

/** Texts of the notes among facts, in order. */
export const notesIn = (facts: readonly Fact[]): string[] =>
  facts.flatMap((fact) => (fact.kind === 'note' ? [fact.note] : []))
