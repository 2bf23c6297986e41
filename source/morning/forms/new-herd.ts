/** Forms that begin a herd: its file and farm; with tables to read into it at once. */
import { dayIso } from '../../breeding/day.ts'
import { standardMilkings } from '../../breeding/moment.ts'
import { farmFields, readFarm } from './farm.ts'
import type { Field, HerdForm } from './form.ts'
import { FieldReader } from './reader.ts'

/** Tables that can be read, by the name of their option. */
export const tableFields = ['animals', 'facts', 'seasons', 'straws', 'stock'] as const

const pathField = (name: string): Field => ({ name: `table-${name}`, input: 'text', optional: true })

const beginning = (name: 'new-herd' | 'new-from-tables', tables: readonly string[]): HerdForm => ({
  name,
  fields: () => [{ name: 'herd-file', input: 'text' }, ...farmFields, ...tables.map(pathField)],
  begin: () => ({
    'herd-file': 'herd.json',
    'farm-name': '',
    zone: '',
    milkings: standardMilkings.join(' '),
    ...Object.fromEntries(tables.map((table) => [`table-${table}`, ''])),
  }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    read.text('herd-file', true)
    const farm = readFarm(read, dayIso(setting.now.day))
    const named = tables.filter((table) => read.text(`table-${table}`) !== undefined)
    if (tables.length > 0 && named.length === 0) read.refuse(`table-${tables[0]}`, 'form-no-table')
    return read.result(() => [farm()])
  },
})

export const newHerdForm = beginning('new-herd', [])
export const newFromTablesForm = beginning('new-from-tables', tableFields)
