/** Tables as someone might type them: few values, so that rows meet, agree, differ and contradict each other. */
import fc from 'fast-check'

const pick = (...cells: string[]) => fc.constantFrom(...cells)

/** A column is mostly empty where nothing needs it. */
const seldom = (...cells: string[]) => pick('', '', '', ...cells)

type Columns = Readonly<Record<string, fc.Arbitrary<string>>>

const facts: Columns = {
  number: pick('1', '2', '3', '7'),
  date: pick('2026-04-01', '2026-05-01', '2026-05-02', '01/05/2026', '2026-02-30', '2062-01-01'),
  time: seldom('05:30', '15:30', 'evening'),
  fact: pick('heat', 'heat', 'service', 'check', 'calving', 'score', 'loss', 'note', 'hold', 'foal'),
  how: seldom('paint', 'standing'),
  sire: seldom('S17', 'B4'),
  kind: seldom('sexed', 'beef'),
  method: seldom('hand', 'milk'),
  result: seldom('pregnant', 'empty'),
  ease: seldom('1', '3', '9'),
  calves: seldom('1', '2'),
  condition: seldom('3', '3.25'),
  until: seldom('2026-05-09', '2026-03-01'),
  note: seldom('lame', '=1+1'),
  order: seldom('1', '2'),
  id: pick('', '', '', '', 'x1', 'x2', 'k1', 'k2', 'f1', '?'),
}

const animals: Columns = {
  number: pick('1', '2', '3', '4'),
  name: seldom('Bess', 'Blanche'),
  international_id: seldom('I1', 'I2'),
  sex: seldom('F', 'M'),
  born: seldom('2022-02-01', '2026-04-15', '2022-02-30'),
  dam: seldom('1', '2'),
  block: seldom('spring', 'autumn'),
  lactation: seldom('0', '2'),
}

const straws: Columns = {
  date: seldom('2026-05-01', '2026-05-02', '2062-01-01'),
  sire: pick('S17', 'B4'),
  kind: pick('sexed', 'beef'),
  batch: seldom('b1'),
  flask: seldom('1', '2'),
  count: pick('10', '20', '-1'),
  name: seldom('Sigurd'),
  order: seldom('1', '2'),
}

const stock: Columns = {
  date: pick('2026-05-01', '2026-05-02'),
  what: pick('delivery', 'spoiled', 'nitrogen'),
  sire: seldom('S17', 'B4'),
  kind: seldom('sexed', 'beef'),
  count: seldom('5', '10'),
  depth_cm: seldom('20', '22.5'),
  flask: seldom('1'),
}

const seasons: Columns = {
  block: pick('spring', 'autumn'),
  mating_start: pick('2026-05-01', '2026-05-08'),
  ai_weeks: pick('6', '7'),
  bull_weeks: pick('3', ''),
  scan_dates: seldom('2026-07-20 2026-08-20'),
}

const policy: Columns = {
  key: pick('chances', 'heatDetection', 'useSexed', 'checkMethod', 'luck'),
  value: pick('2', '0,8', '0.80', 'yes', 'No', 'hand', '99'),
}

type Table = readonly (readonly string[])[]
export type Tables = Readonly<Record<string, Table>>

const table = (columns: Columns, maxLength: number): fc.Arbitrary<Table> =>
  fc.array(fc.tuple(...Object.values(columns)), { maxLength }).map((rows) => [Object.keys(columns), ...rows])

/** All six tables, each with its header row first. */
export const tables: fc.Arbitrary<Tables> = fc.record({
  facts: table(facts, 25),
  animals: table(animals, 6),
  straws: table(straws, 8),
  stock: table(stock, 8),
  seasons: table(seasons, 5),
  policy: table(policy, 5),
})

/** A table as the bytes of a file. */
export const fileOf = (rows: Table): Buffer =>
  Buffer.from(
    rows.map((row) => `${row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')}\n`).join(''),
  )
