/** The form in which a recorded fact is changed: which one, and what stood in it. */
import type { AnimalFact } from '../../breeding/facts.ts'
import type { FormName, Values } from './form.ts'

/** Fields whose name in the form is another than in the fact; the rest is the same, with a hyphen for a capital. */
const named: Readonly<Record<string, string>> = { foetalAge: 'age', straw: 'kind' }

const field = (key: string): string =>
  named[key] ?? key.replaceAll(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`)

/** What a fact carries that no field of a form shows. */
const unseen: ReadonlySet<string> = new Set([
  'id',
  'about',
  'kind',
  'by',
  'at',
  'action',
  'natural',
  'proposed',
])

/**
 * The form of a fact; undefined for one that is not recorded through a form (looked).
 *
 * @example formOfFact(checkFact) // { name: 'check', values: { result: 'pregnant', age: '40', … } }
 */
export function formOfFact(fact: AnimalFact): { name: FormName; values: Values } | undefined {
  if (fact.kind === 'looked') return undefined
  const entries = Object.entries(fact).filter(
    ([key, value]) => !unseen.has(key) && (typeof value === 'string' || typeof value === 'number'),
  )
  const values = Object.fromEntries(entries.map(([key, value]) => [field(key), String(value)]))
  const time = 'time' in values ? values : { ...values, time: '' }
  if (fact.kind !== 'service' || fact.natural !== true) return { name: fact.kind, values: time }
  const { sire, ...rest } = time as Values & { sire?: string }
  return { name: 'bull-service', values: { ...rest, bull: sire ?? '' } }
}
