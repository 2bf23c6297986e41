/** Forms of the flask: straws delivered, counted, spoiled. */
import { HERD, type StockTakeFact, type StrawKind, type StrawLot } from '../../breeding/facts.ts'
import { stockOn } from '../../breeding/straws/stock.ts'
import type { Field, HerdForm, HerdSetting, Pick } from './form.ts'
import { FieldReader, known } from './reader.ts'
import { strawKinds } from './service.ts'

/** Straws of one fact. */
const MOST = 100_000
/** Days of gestation of a sire's calves. */
const GESTATION = { least: 260, most: 300 } as const

/** Lots that a fact of the flask may be about: those with straws in them first. */
function lotPicks({ book, now }: HerdSetting): readonly Pick[] {
  return stockOn(book, now.day)
    .lots.toSorted((a, b) => Number(b.left > 0) - Number(a.left > 0))
    .map(({ sire, straw, batch, flask, canister, left }) => ({
      fills: { sire, kind: straw, batch: batch ?? '', flask: flask ?? '', canister: canister ?? '' },
      left,
    }))
}

const lotFields = (setting: HerdSetting): readonly Field[] => [
  { name: 'sire', input: 'pick', picks: lotPicks(setting), open: true },
  { name: 'kind', input: 'choice', choices: strawKinds },
  { name: 'batch', input: 'text', optional: true },
  { name: 'flask', input: 'text', optional: true },
  { name: 'canister', input: 'text', optional: true },
]

const whenFields: readonly Field[] = [
  { name: 'time', input: 'time', optional: true },
  { name: 'date', input: 'date' },
]

const beginLot = (setting: HerdSetting) => ({
  sire: '',
  kind: 'conventional',
  batch: '',
  flask: '',
  canister: '',
  count: '',
  ...lotPicks(setting)[0]?.fills,
  time: setting.now.time,
  date: setting.date,
})

/** What every such fact says: which straws, how many, when. */
function readLot(read: FieldReader, least: number) {
  const sire = read.text('sire', true)
  const straw = read.choice('kind', strawKinds, true)
  const batch = read.text('batch')
  const flask = read.text('flask')
  const canister = read.text('canister')
  read.text('count', true)
  const count = read.number('count', least, MOST)
  const date = read.date()
  const time = read.time(date)
  return () => ({
    about: HERD,
    date,
    ...known({ time }),
    ...({ sire, straw: straw as StrawKind, ...known({ batch, flask, canister }) } as StrawLot),
    count: count as number,
  })
}

const movement = (name: 'delivery' | 'spoiled'): HerdForm => ({
  name,
  fields: (setting) => [...lotFields(setting), { name: 'count', input: 'number' }, ...whenFields],
  begin: beginLot,
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const lot = readLot(read, 1)
    return read.result(() => [{ kind: name, ...lot() }])
  },
})
export const deliveryForm = movement('delivery')
export const spoiledForm = movement('spoiled')

/** A count: besides the number it tells what stands on the straw of its sire. */
export const stockTakeForm: HerdForm = {
  name: 'stock-take',
  fields: (setting) => [
    ...lotFields(setting),
    { name: 'count', input: 'number' },
    { name: 'sire-name', input: 'text', optional: true },
    { name: 'breed', input: 'text', optional: true },
    { name: 'volume', input: 'choice', choices: ['', '0.25', '0.5'], optional: true },
    { name: 'easy-calving', input: 'choice', choices: ['', 'yes', 'no'], optional: true },
    { name: 'gestation', input: 'number', optional: true },
    ...whenFields,
  ],
  begin: (setting) => ({
    ...beginLot(setting),
    'sire-name': '',
    breed: '',
    volume: '',
    'easy-calving': '',
    gestation: '',
  }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const lot = readLot(read, 0)
    const sireName = read.text('sire-name')
    const breed = read.text('breed')
    const volumeMl = read.number('volume', 0.1, 5, 0.01)
    const easy = read.choice('easy-calving', ['', 'yes', 'no'])
    const gestationDays = read.number('gestation', GESTATION.least, GESTATION.most)
    const easyCalving = easy === undefined || easy === '' ? undefined : easy === 'yes'
    return read.result(() => [
      {
        kind: 'stock-take',
        ...lot(),
        ...known({ sireName, breed, volumeMl, easyCalving, gestationDays }),
      } as Omit<StockTakeFact, 'id' | 'at'>,
    ])
  },
}
