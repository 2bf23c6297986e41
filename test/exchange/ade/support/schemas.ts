/** The schemas of the ICAR ADE standard, where present. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { Ajv, type ValidateFunction } from 'ajv'

/** The folder of the standard: named by ADE_SCHEMAS, else `standards/icar-ade` in a folder beside the repository's. */
function standardFolder(): string {
  if (process.env.ADE_SCHEMAS !== undefined) return process.env.ADE_SCHEMAS
  const around = fileURLToPath(new URL('../../../../../', import.meta.url))
  const beside = readdirSync(around).map((name) => join(around, name, 'standards', 'icar-ade'))
  return beside.find((path) => existsSync(path)) ?? ''
}

const folder = standardFolder()
export const schemasPresent = existsSync(join(folder, 'resources', 'icarResource.json'))
if (!schemasPresent)
  process.stdout.write(
    'Validation by the schemas of the ICAR ADE standard is skipped: they are not there (ADE_SCHEMAS names their folder).\n',
  )

/** RFC 3339, in UTC with Z, as the standard demands. */
const utc = /^\d{4}-\d{2}-\d{2}T([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d+)?Z$/

/** The schemas say `nullable` also beside a reference, where JSON Schema knows no such word; we never write null. */
function withoutLooseNull(_key: string, value: unknown): unknown {
  if (typeof value !== 'object' || value === null || 'type' in value) return value
  const { nullable: _nullable, ...rest } = value as { nullable?: unknown }
  return Array.isArray(value) ? value : rest
}

/** Validators by the file name of the resource. */
export function validators(): (resourceType: string) => ValidateFunction {
  const ajv = new Ajv({ strict: false, allErrors: true })
  ajv.addFormat('date-time', (text: string) => utc.test(text) && !Number.isNaN(Date.parse(text)))
  ajv.addFormat('uri', (text: string) => URL.canParse(text))
  ajv.addFormat('double', { type: 'number', validate: Number.isFinite })
  for (const part of ['types', 'enums', 'resources'])
    for (const file of readdirSync(join(folder, part)))
      ajv.addSchema({
        ...JSON.parse(readFileSync(join(folder, part, file), 'utf8'), withoutLooseNull),
        $id: `ade:/${part}/${file}`,
      })
  return (resourceType) => {
    const validate = ajv.getSchema(`ade:/resources/${resourceType}.json`)
    if (validate === undefined) throw new Error(`no schema of ${resourceType}`)
    return validate as ValidateFunction
  }
}
