/** Where a resource comes from, and which fact of the herd it is. */
import { createHash } from 'node:crypto'
import { sourceOf } from './codes.ts'
import type { Found } from './documents.ts'
import { isObject, textOf } from './json.ts'

interface Meta {
  readonly source: string | undefined
  /** Id of the resource in its source. */
  readonly sourceId: string | undefined
  readonly modified: string
  readonly isDeleted: boolean
}

export function metaOf({ resource }: Found): Meta {
  const meta = isObject(resource.meta) ? resource.meta : {}
  return {
    source: textOf(meta.source),
    sourceId: textOf(meta.sourceId) ?? textOf(resource.id),
    modified: textOf(meta.modified) ?? '',
    isDeleted: meta.isDeleted === true || meta.isDeleted === 'true',
  }
}

/** Of several resources with one id in their source the one modified last. */
export function latestOf(found: readonly Found[]): Found[] {
  const latest = new Map<string, Found>()
  for (const [place, each] of found.entries()) {
    const { source, sourceId, modified } = metaOf(each)
    const key =
      sourceId === undefined ? `${place}` : JSON.stringify([source, each.name === 'animal', sourceId])
    const other = latest.get(key)
    if (other === undefined || metaOf(other).modified <= modified) latest.set(key, each)
  }
  return [...latest.values()]
}

export const isEvent = ({ name }: Found): boolean => name !== 'animal'

/**
 * The id of the fact of an event: that of the herd for its own events, else made from source and id there, so that the
 * same event is the same fact whenever it is read.
 *
 * @param part `end` for what ends a time with the bull
 */
export function factId({ source, sourceId }: Meta, herdId: string, part: '' | 'end'): string | undefined {
  if (sourceId === undefined) return undefined
  if (part === '' && source === sourceOf(herdId)) return sourceId
  const sum = createHash('sha256')
    .update(JSON.stringify([source ?? '', sourceId, part]))
    .digest('hex')
  return `ade-${sum.slice(0, 24)}`
}
