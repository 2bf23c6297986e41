/** Form of an animal's own record: a new animal, or one whose record is changed (the old one is voided with it). */
import { dayIso } from '../../breeding/day.ts'
import { type AnimalRecordFact, HERD, type NewFact } from '../../breeding/facts.ts'
import { voiding } from '../history.ts'
import { blockPicks } from './blocks.ts'
import type { HerdForm, HerdSetting } from './form.ts'
import { FieldReader, known } from './reader.ts'

const MOST_CALVINGS = 25
const LONGEST_ID = 90
const GESTATION = { least: 260, most: 300 } as const

const changedRecord = ({ book, about }: HerdSetting): AnimalRecordFact | undefined =>
  about === undefined ? undefined : book.animals.get(about)?.record

const yes = (value: boolean | undefined): string => (value === undefined ? '' : value ? 'yes' : 'no')

export const recordForm: HerdForm = {
  name: 'record',
  fields: ({ book }) => [
    { name: 'number', input: 'text' },
    { name: 'name', input: 'text', optional: true },
    { name: 'sex', input: 'choice', choices: ['F', 'M'] },
    { name: 'born', input: 'date', optional: true },
    {
      name: 'block',
      input: 'pick',
      picks: blockPicks(book),
      open: true,
      optional: true,
    },
    { name: 'lactation', input: 'number', optional: true },
    { name: 'ready', input: 'choice', choices: ['', 'yes', 'no'], optional: true },
    { name: 'plan', input: 'choice', choices: ['', 'dairy', 'beef'], optional: true },
    { name: 'animal-breed', input: 'text', optional: true },
    { name: 'sire-of', input: 'text', optional: true },
    { name: 'dam-of', input: 'text', optional: true },
    { name: 'official-id', input: 'text', optional: true },
    { name: 'electronic-id', input: 'text', optional: true },
    { name: 'international-id', input: 'text', optional: true },
    { name: 'easy-calving', input: 'choice', choices: ['', 'yes', 'no'], optional: true },
    { name: 'gestation', input: 'number', optional: true },
  ],
  begin: (setting) => {
    const record = changedRecord(setting)
    return {
      number: record?.number ?? '',
      name: record?.name ?? '',
      sex: record?.sex ?? 'F',
      born: record?.born ?? '',
      block: record?.block ?? '',
      lactation: record?.lactation === undefined ? '' : String(record.lactation),
      ready: yes(record?.ready),
      plan: record?.plan ?? '',
      'animal-breed': record?.breed ?? '',
      'sire-of': record?.sire ?? '',
      'dam-of': record?.dam ?? '',
      'official-id': record?.officialId ?? '',
      'electronic-id': record?.electronicId ?? '',
      'international-id': record?.internationalId ?? '',
      'easy-calving': yes(record?.easyCalving),
      gestation: record?.gestationDays === undefined ? '' : String(record.gestationDays),
    }
  },
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const before = changedRecord(setting)
    const number = read.text('number', true) ?? ''
    const taken = setting.book.byNumber.get(number)
    if (taken !== undefined && taken.id !== before?.about)
      read.refuse('number', 'form-number-taken', { number })
    const fields = {
      name: read.text('name'),
      born: (values.born ?? '').trim() === '' ? undefined : read.date('born'),
      block: read.text('block'),
      lactation: read.number('lactation', 0, MOST_CALVINGS),
      ready: told(read.choice('ready', ['yes', 'no'])),
      plan: read.choice('plan', ['dairy', 'beef']),
      breed: read.text('animal-breed'),
      sire: read.text('sire-of'),
      dam: read.text('dam-of'),
      officialId: read.text('official-id'),
      electronicId: read.text('electronic-id'),
      internationalId: read.text('international-id'),
      easyCalving: told(read.choice('easy-calving', ['yes', 'no'])),
      gestationDays: read.number('gestation', GESTATION.least, GESTATION.most),
    }
    const sex = read.choice('sex', ['F', 'M'], true) ?? 'F'
    const others = [...setting.book.animals.values()].filter((animal) => animal.id !== before?.about)
    for (const [field, key] of tagFields) {
      const tag = fields[key]
      const other = others.find(({ record }) => sameTag(record[key], tag))
      if (other !== undefined && tag !== before?.[key])
        read.refuse(field, 'form-tag-taken', { number: other.number })
    }
    for (const [field, parent] of [
      ['sire-of', fields.sire],
      ['dam-of', fields.dam],
    ] as const)
      if (number !== '' && parent === number) read.refuse(field, 'form-own-parent')
    const first = before === undefined ? undefined : setting.book.animals.get(before.about)?.happenings[0]
    const { born } = fields
    if (first !== undefined && born !== undefined && born !== before?.born && born > first.fact.date)
      read.refuse('born', 'form-born-after', { date: first.fact.date })
    return read.result((): readonly NewFact[] => [
      ...(before === undefined ? [] : [voiding(before, 'record changed')]),
      {
        kind: 'animal',
        about: before?.about ?? newAnimalId(setting, number),
        date: dayIso(setting.now.day),
        number,
        sex,
        ...known(fields),
      } as NewFact<AnimalRecordFact>,
    ])
  },
}

const told = (choice: 'yes' | 'no' | undefined): boolean | undefined =>
  choice === undefined ? undefined : choice === 'yes'

const tagFields = [
  ['official-id', 'officialId'],
  ['electronic-id', 'electronicId'],
  ['international-id', 'internationalId'],
] as const

/** Spaces in a tag do not count. */
const sameTag = (one: string | undefined, other: string | undefined): boolean =>
  one !== undefined && other !== undefined && one.replaceAll(/\s/g, '') === other.replaceAll(/\s/g, '')

/** Her number, where no animal was ever known by it; else with a mark behind it. An id has no spaces. */
function newAnimalId({ book }: HerdSetting, number: string): string {
  const base = number
    .replaceAll(/[^\w.:-]/g, '-')
    .replace(/^[^0-9A-Za-z]/, 'a')
    .slice(0, LONGEST_ID)
  let id = base
  for (let next = 2; book.animals.has(id) || id === HERD; next += 1) id = `${base}.${next}`
  return id
}
