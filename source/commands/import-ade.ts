/** Reads files of the ICAR ADE standard, and plans what they would record. */
import { readdir, readFile, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { buffer } from 'node:stream/consumers'
import { openBook } from '../breeding/book.ts'
import type { Outcome } from '../breeding/problem.ts'
import { type NamedBytes, readDocuments } from '../exchange/ade/documents.ts'
import { adePlan } from '../exchange/ade/plan.ts'
import type { ImportPlan } from '../exchange/csv/import/plan.ts'
import type { Progress } from '../exchange/csv/import/progress.ts'
import { newId } from '../herd/ids.ts'
import { asOutcome } from '../herd/outcome.ts'
import { attempt } from '../herd/store/failure.ts'
import type { HerdStore } from '../herd/store.ts'
import { today } from './today.ts'

/** Stands for standard input. */
const INPUT = '-'

/**
 * What an import of a file, of all JSON files of a folder, or of standard input would record.
 *
 * @param path `-` is standard input
 * @returns the plan, or why the files cannot be read
 */
export async function adePlanOf(
  herd: HerdStore,
  path: string,
  progress?: Progress,
): Promise<Outcome<ImportPlan>> {
  const files = await asOutcome(() => filesAt(path))
  if (!files.ok) return files
  const documents = readDocuments(files.value)
  if (!documents.ok) return documents
  const { zone } = openBook(herd.facts).farm
  const options = { path, herdId: herd.herdId, today: today(zone), newId, ...(progress && { progress }) }
  return { ok: true, value: adePlan(herd.facts, documents.value, options) }
}

async function filesAt(path: string): Promise<NamedBytes[]> {
  if (path === INPUT) return [{ path, bytes: await attempt(path, () => buffer(process.stdin)) }]
  const isFolder = await attempt(path, async () => (await stat(path)).isDirectory())
  const names = isFolder ? await attempt(path, () => readdir(path)) : []
  const inFolder = names.filter((name) => name.endsWith('.json')).sort()
  const files: NamedBytes[] = []
  for (const each of isFolder ? inFolder.map((name) => join(path, name)) : [path])
    files.push({ path: each, bytes: await attempt(each, () => readFile(each)) })
  return files
}
