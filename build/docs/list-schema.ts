import { readFileSync } from 'node:fs'
import { reasonsOf, warnings } from '../../source/breeding/sections.ts'
import { below } from '../paths.ts'

export const listSchemaPath = 'docs/schemas/list.schema.json'

const choices = (codes: Iterable<string>): string =>
  `[\n${[...new Set(codes)].map((code) => `                ${JSON.stringify(code)}`).join(',\n')}\n              ]`

/** The schema of `list --json`, written by hand but for the codes that it allows. */
export function listSchema(): string {
  let schema = readFileSync(below(listSchemaPath), 'utf8')
  for (const [key, codes] of [
    ['reasons', Object.values(reasonsOf).flat()],
    ['warnings', warnings],
  ] as const) {
    const place = new RegExp(`("${key}": \\{\\s+"type": "array",\\s+"items": \\{\\s+"enum": )\\[[^\\]]*\\]`)
    if (!place.test(schema)) throw new Error(`${listSchemaPath} has no choices of ${key}`)
    schema = schema.replace(place, (_all, before: string) => before + choices(codes))
  }
  return schema
}
