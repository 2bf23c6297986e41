/** Files of events in memory: what a herd exports, and what an import of them would record. */
import { openBook } from '../../../../source/breeding/book.ts'
import type { Fact } from '../../../../source/breeding/facts.ts'
import { readDocuments } from '../../../../source/exchange/ade/documents.ts'
import { adePlan } from '../../../../source/exchange/ade/plan.ts'
import { adeExport, collectionText } from '../../../../source/exchange/ade/write.ts'
import { harmlessJson } from '../../../../source/herd/escape.ts'
import { asFacts } from '../../../../source/herd/recording.ts'
import { at, counter, today } from '../../csv/support/herd.ts'

/** By name: a text, or what is written as JSON. */
export type Files = Readonly<Record<string, unknown>>

/** What files add to a herd. */
export function imported(facts: readonly Fact[], files: Files, herdId = 'k2m9') {
  const bytes = Object.entries(files).map(([path, json]) => ({
    path,
    bytes: Buffer.from(typeof json === 'string' ? json : JSON.stringify(json)),
  }))
  const documents = readDocuments(bytes)
  if (!documents.ok) return { tables: [], facts: [], after: [...facts], problems: documents.problems }
  const newId = counter()
  const made = Math.random().toString(36).slice(2)
  const plan = adePlan(facts, documents.value, {
    path: 'ade',
    herdId,
    today,
    newId: () => `${newId()}-${made}`,
  })
  return { ...plan, problems: [], after: [...facts, ...asFacts(plan.facts, { at })] }
}

/** The files that a herd exports. */
export const exported = (facts: readonly Fact[], herdId = 'k2m9'): Files =>
  Object.fromEntries(
    adeExport(facts, openBook(facts), herdId, today).collections.map((each) => [
      each.file,
      collectionText(each, harmlessJson),
    ]),
  )
