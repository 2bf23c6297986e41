/** The herd of hand-made cases: one farm, four blocks, two sires in the flask, one animal a case. */
import { dayIso, isoDay, plusDays } from '../../source/breeding/day.ts'
import { type AnimalRecordFact, type Fact, HERD, type NewFact } from '../../source/breeding/facts.ts'
import { bullCases } from './bulls.ts'
import { careCases } from './care.ts'
import { ago, blocks, CASES_DAY, type Case } from './case.ts'
import { warningCases } from './warnings.ts'
import { workCases } from './work.ts'

/** The file is written down in one go, three days before the day of the cases. */
const AT = '2026-05-25T09:00:00.000Z'
const date = ago(150)

export const allCases: readonly Case[] = [...careCases, ...workCases, ...warningCases, ...bullCases]

const herdFacts: readonly NewFact[] = [
  {
    about: HERD,
    date,
    kind: 'farm',
    name: 'Casebook Farm',
    zone: 'Europe/Dublin',
    milkings: ['05:30', '15:30'],
  },
  ...Object.entries(blocks).map(
    ([block, season]): NewFact => ({ about: HERD, date, kind: 'season', block, ...season }),
  ),
  ...['K1', 'K2'].map(
    (sire): NewFact => ({
      about: HERD,
      date: dayIso(plusDays(isoDay(blocks.closing.matingStart), -10)),
      kind: 'stock-take',
      sire,
      straw: 'conventional',
      flask: 'house',
      canister: '1',
      count: 60,
      breed: 'Holstein-Friesian',
      easyCalving: false,
    }),
  ),
]

/** K1 and K2 are sons of K0, K3 is a grandson; cow 199 is a daughter of K0. */
const kin: readonly Omit<AnimalRecordFact, 'id' | 'at'>[] = [
  bull('K0', 'sire of both sires in the flask', '2010-01-01'),
  { ...bull('K1', 'sire in the flask', '2014-01-01'), sire: 'K0', dam: 'M1' },
  { ...bull('K2', 'other sire in the flask', '2014-02-01'), sire: 'K0', dam: 'M2' },
  { ...bull('K3', 'grandson of K0', '2018-01-01'), sire: 'P3', dam: 'K9' },
  { ...bull('B1', 'sweep bull', '2023-01-01'), ready: true },
  { ...bull('B2', 'sweep bull whose cows come back', '2023-02-01'), ready: true },
  {
    about: 'K9',
    date,
    kind: 'animal',
    number: 'K9',
    name: 'dam of K3',
    sex: 'F',
    born: '2014-03-01',
    sire: 'K0',
    lactation: 3,
  },
  {
    about: '199',
    date,
    kind: 'animal',
    number: '199',
    name: 'dam of 193',
    sex: 'F',
    born: '2016-03-01',
    sire: 'K0',
    lactation: 5,
  },
]
const dams = ['K9', '199']

function bull(number: string, name: string, born: string): Omit<AnimalRecordFact, 'id' | 'at'> {
  return { about: number, date, kind: 'animal', number, name, sex: 'M', born, breed: 'Holstein-Friesian' }
}

const animalOf = ({ number, name, record }: Case): NewFact => ({
  about: number,
  date,
  kind: 'animal',
  number,
  name,
  sex: 'F',
  ...record,
})

/** The facts of all cases; the id of an animal is her number, a fact's id her number and a count. */
export function caseFacts(): Fact[] {
  const counts = new Map<string, number>()
  const withId = (fact: NewFact): Fact => {
    const count = (counts.get(fact.about) ?? 0) + 1
    counts.set(fact.about, count)
    const { about, date, kind, ...rest } = fact
    return { id: `${about}-${count}`, about, date, kind, by: 'AB', at: AT, ...rest } as Fact
  }
  const animals = allCases.flatMap((one): NewFact[] => [
    animalOf(one),
    ...one.facts.map((fact) => ({ about: one.number, ...fact }) as NewFact),
  ])
  const sold = dams.map((about): NewFact => ({ about, date, kind: 'left', reason: 'sold' }))
  return [...herdFacts, ...kin, ...sold, ...animals].map(withId)
}

/** The list on which every code stands. */
export const casesDate = dayIso(CASES_DAY)
