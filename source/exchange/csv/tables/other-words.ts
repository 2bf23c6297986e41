/**
 * Other names of columns and other words in cells, as herds are written down in the trade: compared by letters and
 * digits only, and shown wherever one was understood. A word that could mean two things stands in none of them.
 * Common practice, no source.
 */
import type { TableName } from './names.ts'

/** By table and column. */
type Names = Readonly<Partial<Record<TableName, Readonly<Record<string, readonly string[]>>>>>
/** By table and column: what a word stands for. */
type Words = Readonly<Partial<Record<TableName, Readonly<Record<string, Readonly<Record<string, string>>>>>>>

const animal = ['animal', 'animal no', 'animal number', 'cow', 'cow no', 'cow number', 'no']
const kind = ['straw kind', 'straw type', 'kind of straw', 'semen type', 'type of semen']
const sire = ['bull', 'bull code', 'sire code', 'ai bull', 'ai sire']
const count = ['straws', 'number of straws', 'no of straws', 'number', 'quantity', 'left']
const canister = ['pot', 'goblet']

export const otherNames: Names = {
  animals: {
    number: animal,
    name: ['animal name', 'cow name'],
    official_id: ['official number', 'official tag', 'ear tag', 'tag', 'tag number', 'tag no'],
    electronic_id: ['electronic number', 'electronic tag', 'eid', 'rfid'],
    international_id: ['international number'],
    sex: ['gender'],
    born: ['birth', 'birth date', 'date of birth', 'dob', 'birthday', 'born on'],
    sire: ['father', 'sire code'],
    dam: ['mother', 'dam number', 'dam no'],
    block: ['group', 'calving block', 'calving group', 'herd group'],
    lactation: ['lactations', 'lactation no', 'lactation number', 'parity', 'calvings', 'lact', 'lact no'],
    ready: ['ready to serve'],
    easy_calving: ['calves easily'],
    gestation_days: ['gestation', 'gestation length', 'days of gestation'],
    plan: ['use', 'breeding group'],
  },
  facts: {
    number: animal,
    date: ['event date', 'date of event', 'day', 'on'],
    time: ['event time', 'time of day', 'at'],
    fact: ['event', 'event type', 'what', 'what happened'],
    how: ['seen by', 'how seen', 'detection', 'detected by'],
    certainty: ['sure'],
    sire: ['service sire', ...sire.slice(1)],
    kind,
    batch: ['batch no', 'batch number', 'straw batch'],
    by: ['inseminator', 'served by', 'technician', 'ai technician'],
    method: ['check method', 'scan method'],
    result: ['check result', 'scan result', 'pd result', 'outcome'],
    foetal_age: ['fetal age', 'age of foetus', 'days in calf', 'days pregnant'],
    foetuses: ['fetuses', 'calves seen'],
    service_date: ['date of service', 'served on', 'ai date'],
    serve_on: ['fixed time date'],
    ease: ['calving ease', 'ease of calving', 'calving score'],
    calves: ['number of calves', 'no of calves', 'calves born'],
    dead: ['calves dead', 'dead calves', 'stillborn'],
    calf_sex: ['sex of calf', 'calf sexes'],
    until: ['hold until', 'to', 'end date'],
    condition: ['body condition', 'body condition score', 'bcs', 'condition score', 'score'],
    note: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  },
  straws: {
    date: ['counted on', 'date counted', 'count date'],
    sire,
    name: ['bull name', 'sire name'],
    kind: [...kind, 'type'],
    batch: ['batch no', 'batch number'],
    flask: ['tank', 'container'],
    canister,
    count,
    volume_ml: ['volume', 'ml', 'straw size', 'size ml'],
    gestation_days: ['gestation', 'gestation length'],
  },
  stock: {
    what: ['event', 'what happened'],
    sire,
    kind,
    batch: ['batch no', 'batch number'],
    flask: ['tank', 'container'],
    canister,
    count,
    depth_cm: ['depth', 'nitrogen depth', 'nitrogen cm', 'cm'],
  },
  seasons: {
    block: ['group', 'calving block', 'calving group'],
    mating_start: ['mating start date', 'start of mating', 'start date', 'start'],
    ai_weeks: ['weeks of ai', 'weeks ai'],
    bull_weeks: ['weeks of bull', 'weeks with bull', 'weeks with the bull', 'weeks bull'],
    scan_dates: ['scans', 'scanning dates', 'scan date'],
  },
}

const kinds = { conv: 'conventional', 'sexed female': 'sexed', female: 'sexed' }
const facts = {
  oestrus: 'heat',
  estrus: 'heat',
  'in heat': 'heat',
  'on heat': 'heat',
  bulling: 'heat',
  ai: 'service',
  served: 'service',
  serve: 'service',
  insemination: 'service',
  inseminated: 'service',
  pd: 'check',
  scan: 'check',
  scanned: 'check',
  'pregnancy check': 'check',
  'pregnancy test': 'check',
  'pregnancy diagnosis': 'check',
  calved: 'calving',
  abortion: 'loss',
  aborted: 'loss',
  lost: 'loss',
  'dried off': 'dry',
  'dry off': 'dry',
  'drying off': 'dry',
  'condition score': 'score',
  'body condition': 'score',
  bcs: 'score',
  'do not breed': 'bar',
  barred: 'bar',
  vet: 'examined',
  examination: 'examined',
  'vet check': 'examined',
  remark: 'note',
  comment: 'note',
}

export const otherWords: Words = {
  animals: {
    sex: { female: 'F', cow: 'F', heifer: 'F', male: 'M', bull: 'M' },
    plan: { 'to beef': 'beef', 'to dairy': 'dairy' },
  },
  facts: {
    fact: facts,
    how: { 'standing heat': 'standing', 'tail paint': 'paint', 'activity system': 'activity' },
    kind: kinds,
    method: {
      scan: 'ultrasound',
      scanned: 'ultrasound',
      scanner: 'ultrasound',
      manual: 'hand',
      rectal: 'hand',
    },
    result: {
      'in calf': 'pregnant',
      positive: 'pregnant',
      pos: 'pregnant',
      'not in calf': 'empty',
      'not pregnant': 'empty',
      negative: 'empty',
      neg: 'empty',
      open: 'empty',
      recheck: 'unsure',
      doubtful: 'unsure',
    },
  },
  straws: { kind: kinds },
  stock: {
    kind: kinds,
    what: { delivered: 'delivery', received: 'delivery', damaged: 'spoiled', 'nitrogen level': 'nitrogen' },
  },
}
