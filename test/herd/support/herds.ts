import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { NewFact } from '../../../source/breeding/facts.ts'
import type { Outcome } from '../../../source/breeding/problem.ts'

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

/** Does something in a folder of its own, which is removed afterwards. */
export async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'herd-'))
  try {
    return await work(folder)
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
