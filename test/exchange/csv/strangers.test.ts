/** Spreadsheets as different programs save them and different people head them: invented, of one small herd. */
import { expect, test } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import { isoDay } from '../../../source/breeding/day.ts'
import { morningList } from '../../../source/breeding/morning-list.ts'
import { plain } from '../../../source/exchange/csv/columns.ts'
import { columnsOf } from '../../../source/exchange/csv/tables/index.ts'
import { tableNames } from '../../../source/exchange/csv/tables/names.ts'
import { herd, imported, refusals } from './support/herd.ts'

const animals = Buffer.from(
  [
    'Animal No;Name;Date of Birth;Breed;Sire;Dam;Block;Lactation number;Sex',
    '11;Br\u00edgid;03/02/2020;Holstein-Friesian;KX1;;Spring;4;Female',
    '12;M\u00e9abh;14/03/2021;Holstein-Friesian;KX1;11;Spring;3;Cow',
    '13;\u00d3rla;20.02.2022;Jersey;KX2;;Spring;2;F',
    '14;Sorcha;02/03/2024 00:00:00;Holstein-Friesian;KX1;12;Spring;0;Heifer',
    '15;"Niamh; the black one";01/02/2021;Holstein-Friesian;;;Spring;3;',
    'B9;;01/02/2022;Hereford;;;;;Bull',
    '',
  ].join('\r\n'),
  'latin1',
)
const facts = `\ufeff${[
  'Cow Number;Event Date;Time;Event;How;Service Sire;Straw type;Method;PD result;Days in calf;BCS;Remarks;Weather',
  '11;01/02/2026;;Calved;;;;;;;;;',
  '12;10/02/2026;;calving;;;;;;;;;',
  '13;20/02/2026;;Calved;;;;;;;;;fine',
  '15;25/03/2026;;Calved;;;;;;;;;',
  '11;05/05/2026;6:10;On heat;standing;;;;;;;;',
  '11;05/05/2026;15:30;AI;;KX5;Conv.;;;;;;',
  '12;06/05/2026;6:30;Served;;KX5;conventional;;;;;;',
  '12;27/05/2026;18:00;Bulling;Standing heat;;;;;;;;',
  '13;28/05/2026;05:05;heat;tail paint;;;;;;;;',
  '12;20/04/2026;;Condition score;;;;;;;2,75;;',
  '13;21/04/2026;;BCS;;;;;;;3,25;;',
  '15;22/04/2026;;Remark;;;;;;;;"lame, left hind";',
  '99;01/05/2026;;heat;standing;;;;;;;;',
  '13;31/04/2026;;heat;standing;;;;;;;;',
].join('\n')}\n`
const straws = Buffer.from(
  '"Bull","Type","Straws","Flask","Canister","Volume (ml)","Counted on"\r\n"KX5","Conventional","24","1","2","0,25","20-04-2026"\r\n"KX6","Sexed","10","1","3","0.25","20-04-2026"\r\n',
  'utf16le',
)
const withMark = Buffer.concat([Buffer.from([0xff, 0xfe]), straws])
const seasons = 'Group;Mating start date;Weeks of AI;Weeks of bull\nSpring;01/05/2026;6;3\n'

const files = { animals, facts, straws: withMark, seasons }

test('semicolons, Latin-1, UTF-16, decimal commas, other names of columns and dates make the right list', () => {
  const result = imported(herd(), files, 'day-first')
  expect(result.problems).toEqual([])
  expect(refusals(result)).toEqual(['fact-animal-unknown facts.csv:14 number', 'cell-date facts.csv:15 date'])
  const { rows } = morningList(openBook(result.after), isoDay('2026-05-28'))
  expect(rows.map(({ section, number, straw }) => [section, number, straw?.sire])).toEqual([
    ['serve', '13', 'KX5'],
    ['second-service', '12', 'KX5'],
    ['repeat-heat-watch', '11', undefined],
    ['no-heat-seen', '15', undefined],
  ])
  const [first] = [...openBook(result.after).animals.values()]
  expect(first?.record.name).toBe('Br\u00edgid')
})

test('what was understood is shown: columns under other names, other words and how often, columns left out', () => {
  const result = imported(herd(), files, 'day-first')
  const said = result.tables.flatMap(({ table, notices }) =>
    notices.map(({ code, values }) =>
      [table, code, values?.found ?? values?.word ?? '', values?.column ?? '', values?.count ?? '']
        .join(' ')
        .trim(),
    ),
  )
  for (const line of [
    'animals csv-encoding',
    'animals column-matched Date of Birth born',
    'animals cell-matched Heifer sex 1',
    'facts column-matched PD result result',
    'facts column-matched BCS condition',
    'facts cell-matched Calved fact 3',
    'facts cell-matched AI fact 1',
    'facts cell-matched Conv. kind 1',
    'facts column-unknown  Weather',
    'straws column-matched Bull sire',
    'seasons column-matched Weeks of bull bull_weeks',
  ])
    expect(said).toContain(line)
})

test('without a word on dates nothing is guessed: each such row is refused and offered', () => {
  const result = imported(herd(), files)
  expect(result.facts.filter(({ kind }) => kind !== 'note')).toEqual([])
  expect(refusals(result)).toContain('cell-date-form facts.csv:2 date')
})

test('a column under its own name comes before one under another; two others for one are too many', () => {
  const both = imported(herd(), { animals: 'number,Tag,cow\n7,UK1,8\n' })
  expect(both.after.at(-1)).toMatchObject({ number: '7', officialId: 'UK1' })
  const two = imported(herd(), { animals: 'Animal No,Cow\n7,8\n' })
  expect(refusals(two)).toEqual(['csv-column-twice animals.csv:1 number'])
})

test('no name and no word stands for two things in one table, and none hides a name of the table itself', () => {
  for (const table of tableNames) {
    const own = columnsOf[table].map(({ name }) => plain(name))
    const other = columnsOf[table].flatMap(({ also = [] }) => also.map(plain))
    expect(new Set(other).size, table).toBe(other.length)
    expect(other.filter((name) => own.includes(name), table)).toEqual([])
    for (const { name, words = {}, cell } of columnsOf[table]) {
      for (const [word, meant] of Object.entries(words)) {
        expect('refused' in cell.read(word), `${table} ${name} ${word}`).toBe(true)
        expect(cell.read(meant)).toEqual({ value: meant })
      }
    }
  }
})
