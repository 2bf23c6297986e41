/** What stands in files of the ICAR ADE standard: resources, wherever they are wrapped. */
import { basename } from 'node:path'
import { fault, notice, type Outcome, type Problem } from '../../breeding/problem.ts'
import { type ResourceName, resourceNamed } from './codes.ts'
import { isObject, type Loose } from './json.ts'

/** Largest file, bytes. */
const adeLimit = 64 * 1024 * 1024

export interface Found {
  /** `heats.json: member[3]` */
  readonly path: string
  readonly name: ResourceName
  readonly resource: Loose
}

export interface Documents {
  readonly found: readonly Found[]
  readonly notices: readonly Problem[]
}

/** A file by its path. */
export interface NamedBytes {
  readonly path: string
  readonly bytes: Uint8Array
}

/**
 * The resources of some files. A type may be written as a file name or as a short name; where a resource has none, its
 * collection, the name it stands under or the file tells. What is no animal and no breeding event is counted and left out.
 *
 * @returns resources in order; or the faults ade-too-large, ade-not-json, ade-nothing
 */
export function readDocuments(files: readonly NamedBytes[]): Outcome<Documents> {
  const found: Found[] = []
  const problems: Problem[] = []
  const others = new Map<string, number>()
  for (const { path, bytes } of files) {
    const json =
      bytes.length > adeLimit
        ? fault('ade-too-large', path, { limit: adeLimit / 2 ** 20 })
        : parsed(bytes, path)
    if ('severity' in json) {
      problems.push(json)
      continue
    }
    const hint = resourceNamed(basename(path)) ?? ofOurs[basename(path)]
    for (const each of resourcesIn(json.value, path, hint, 0)) {
      if ('resource' in each) found.push(each)
      else others.set(`${path} ${each.type}`, (others.get(`${path} ${each.type}`) ?? 0) + 1)
    }
  }
  if (problems.length === 0 && found.length === 0)
    problems.push(fault('ade-nothing', files.map(({ path }) => path).join(', ')))
  const notices = [...others].map(([key, count]) => {
    const cut = key.lastIndexOf(' ')
    return notice('ade-left-out', key.slice(0, cut), { type: key.slice(cut + 1), count })
  })
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: { found, notices } }
}

/** The files that an export writes. */
const ofOurs: Readonly<Record<string, ResourceName>> = {
  'animals.json': 'animal',
  'heats.json': 'heat',
  'inseminations.json': 'insemination',
  'pregnancy-checks.json': 'check',
  'parturitions.json': 'parturition',
  'abortions.json': 'abortion',
  'do-not-breed.json': 'doNotBreed',
}

function parsed(bytes: Uint8Array, path: string): { readonly value: unknown } | Problem {
  try {
    return { value: JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)) }
  } catch {
    return fault('ade-not-json', path)
  }
}

/** Wrappings that are looked into: a collection, a list, an object of collections. */
const DEEPEST = 4

type Piece = Found | { readonly type: string }

function* resourcesIn(
  value: unknown,
  path: string,
  hint: ResourceName | undefined,
  depth: number,
): Generator<Piece> {
  if (depth > DEEPEST) return
  const inside = depth === 0 ? `${path}: ` : `${path}.`
  if (Array.isArray(value)) {
    for (const [place, each] of value.entries())
      yield* resourcesIn(each, `${depth === 0 ? `${path}: ` : path}[${place}]`, hint, depth + 1)
    return
  }
  if (!isObject(value)) return
  const type = value.resourceType ?? value['@type']
  const named = resourceNamed(type)
  if ('member' in value) yield* resourcesIn(value.member, `${inside}member`, named ?? hint, depth + 1)
  else if (named !== undefined) yield { path, name: named, resource: value }
  else if (typeof type === 'string') yield { type }
  else if (hint !== undefined && isResource(value)) yield { path, name: hint, resource: value }
  else
    for (const [key, each] of Object.entries(value))
      if (typeof each === 'object')
        yield* resourcesIn(each, `${inside}${key}`, resourceNamed(key) ?? hint, depth + 1)
}

/** Whether an object without a type of its own can be the resource that its place says it is. */
const isResource = (value: Loose): boolean =>
  ['animal', 'eventDateTime', 'identifier', 'meta', 'id'].some((key) => key in value)
