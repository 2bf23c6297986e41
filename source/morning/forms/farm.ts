/** Form of the farm: name, time zone, milkings. */
import { dayIso } from '../../breeding/day.ts'
import { type FarmFact, HERD, type NewFact } from '../../breeding/facts.ts'
import { isZone } from '../../herd/zone.ts'
import type { Field, HerdForm } from './form.ts'
import { FieldReader, readTypedTime } from './reader.ts'

/** Milkings as people type them: `05:30 15:30`, `530, 1530`, one or two. */
function readMilkings(text: string): readonly string[] | undefined {
  const times = text
    .trim()
    .split(/[\s,;]+/)
    .map(readTypedTime)
  if (times.length > 2 || times.some((time) => time === undefined || !/^\d/.test(time))) return undefined
  const [first = '', second] = times as string[]
  return second === undefined ? [first] : first < second ? [first, second] : undefined
}

/** What the fields of the farm say. */
export function readFarm(read: FieldReader, date: string): () => NewFact<FarmFact> {
  const name = read.text('farm-name', true) ?? ''
  const zone = read.text('zone', true) ?? ''
  const typed = read.text('milkings', true) ?? ''
  const milkings = readMilkings(typed)
  if (zone !== '' && !isZone(zone)) read.refuse('zone', 'form-zone', { value: zone })
  if (typed !== '' && milkings === undefined) read.refuse('milkings', 'form-milkings', { value: typed })
  return () => ({ kind: 'farm', about: HERD, date, name, zone, milkings: milkings ?? [] })
}

export const farmFields: readonly Field[] = [
  { name: 'farm-name', input: 'text' },
  { name: 'zone', input: 'text' },
  { name: 'milkings', input: 'text' },
]

export const farmForm: HerdForm = {
  name: 'farm',
  fields: () => farmFields,
  begin: ({ book }) => ({
    'farm-name': book.farm.name,
    zone: book.farm.zone,
    milkings: book.farm.milkings.join(' '),
  }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const farm = readFarm(read, dayIso(setting.now.day))
    return read.result(() => [farm()])
  },
}
