/** Invented bulls: the AI sires of each year with their straws, their forefathers, and the sweep bulls. */
import type { StrawKind } from '../../source/breeding/facts.ts'

export interface Lot {
  readonly straw: StrawKind
  readonly flask: 'house' | 'travel'
  readonly canister: string
  /** Straws a year. */
  readonly wanted: number
  readonly volumeMl: number
}

export interface Bull {
  readonly code: string
  readonly name: string
  readonly breed: 'Holstein-Friesian' | 'Jersey' | 'Angus' | 'Hereford' | 'Belgian Blue'
  readonly born: string
  readonly sire?: string
  readonly dam?: string
  readonly easyCalving?: boolean
  readonly gestationDays?: number
  /** Years in which his straws are bought. */
  readonly from?: number
  readonly to?: number
  readonly lots?: readonly Lot[]
}

const lot = (
  straw: StrawKind,
  flask: Lot['flask'],
  canister: string,
  wanted: number,
  volumeMl = 0.25,
): Lot => ({
  straw,
  flask,
  canister,
  wanted,
  volumeMl,
})
const holstein = 'Holstein-Friesian'

/** Sires of the herd's older cows; the AI sires of today are their sons and grandsons. */
export const forefathers: readonly Bull[] = [
  { code: 'HX01', name: 'Milldam', breed: holstein, born: '2009-03-02' },
  { code: 'HX02', name: 'Rampart', breed: holstein, born: '2010-02-11' },
  { code: 'HX03', name: 'Estuary', breed: holstein, born: '2011-01-27', sire: 'HX01' },
  { code: 'HX04', name: 'Lodestar', breed: holstein, born: '2012-02-19', sire: 'HX02' },
  { code: 'HX05', name: 'Drumlin', breed: holstein, born: '2013-03-08', sire: 'HX01' },
  { code: 'HX06', name: 'Outcrop', breed: holstein, born: '2014-02-04', sire: 'HX02' },
  { code: 'HX07', name: 'Plinth', breed: holstein, born: '2015-01-30', sire: 'HX03' },
  { code: 'HX08', name: 'Northing', breed: holstein, born: '2016-02-22', sire: 'HX04' },
  { code: 'JX01', name: 'Marzipan', breed: 'Jersey', born: '2014-04-01' },
]

/** AI sires with their straws. */
export const aiSires: readonly Bull[] = [
  {
    code: 'HX11',
    name: 'Cobalt',
    breed: holstein,
    born: '2018-02-03',
    sire: 'HX05',
    easyCalving: true,
    from: 2023,
    to: 2023,
    lots: [lot('sexed', 'house', '1', 40), lot('conventional', 'house', '2', 40)],
  },
  {
    code: 'HX12',
    name: 'Spindle',
    breed: holstein,
    born: '2018-02-26',
    sire: 'HX06',
    from: 2023,
    to: 2024,
    lots: [lot('conventional', 'house', '2', 40)],
  },
  {
    code: 'HX13',
    name: 'Harbour',
    breed: holstein,
    born: '2019-01-14',
    sire: 'HX07',
    easyCalving: true,
    gestationDays: 277,
    from: 2023,
    to: 2024,
    lots: [lot('sexed', 'house', '1', 40), lot('conventional', 'house', '3', 35)],
  },
  {
    code: 'HX14',
    name: 'Wharf',
    breed: holstein,
    born: '2019-03-21',
    sire: 'HX08',
    from: 2023,
    to: 2025,
    lots: [lot('conventional', 'travel', '1', 40)],
  },
  {
    code: 'HX15',
    name: 'Tundra',
    breed: holstein,
    born: '2020-02-09',
    sire: 'HX05',
    dam: 'HXD4',
    easyCalving: true,
    from: 2024,
    to: 2025,
    lots: [lot('sexed', 'house', '1', 40), lot('conventional', 'house', '3', 35)],
  },
  {
    code: 'HX16',
    name: 'Kiln',
    breed: holstein,
    born: '2020-03-17',
    sire: 'HX11',
    easyCalving: true,
    from: 2024,
    to: 2026,
    lots: [lot('sexed', 'travel', '2', 40), lot('conventional', 'travel', '1', 35)],
  },
  {
    code: 'HX17',
    name: 'Quarry',
    breed: holstein,
    born: '2021-01-25',
    sire: 'HX12',
    from: 2025,
    to: 2026,
    lots: [lot('conventional', 'house', '4', 40)],
  },
  {
    code: 'HX18',
    name: 'Beacon',
    breed: holstein,
    born: '2021-02-28',
    sire: 'HX13',
    dam: 'HXD9',
    easyCalving: true,
    gestationDays: 276,
    from: 2025,
    to: 2026,
    lots: [lot('sexed', 'house', '1', 45), lot('conventional', 'house', '4', 35)],
  },
  {
    code: 'HX19',
    name: 'Sextant',
    breed: holstein,
    born: '2022-02-06',
    sire: 'HX15',
    easyCalving: true,
    from: 2026,
    to: 2026,
    lots: [lot('sexed', 'house', '2', 40)],
  },
  {
    code: 'HX20',
    name: 'Gable',
    breed: holstein,
    born: '2022-03-11',
    sire: 'HX14',
    from: 2026,
    to: 2026,
    lots: [lot('conventional', 'travel', '1', 40)],
  },
  {
    code: 'JX11',
    name: 'Fudge',
    breed: 'Jersey',
    born: '2019-04-05',
    sire: 'JX01',
    easyCalving: true,
    from: 2023,
    to: 2026,
    lots: [lot('conventional', 'house', '5', 30)],
  },
  {
    code: 'AX11',
    name: 'Slate',
    breed: 'Angus',
    born: '2018-04-18',
    easyCalving: true,
    from: 2023,
    to: 2026,
    lots: [lot('beef', 'house', '6', 60, 0.5)],
  },
  {
    code: 'AX12',
    name: 'Peat',
    breed: 'Angus',
    born: '2020-04-09',
    easyCalving: true,
    gestationDays: 279,
    from: 2024,
    to: 2026,
    lots: [lot('beef', 'travel', '3', 50, 0.5)],
  },
  {
    code: 'EX11',
    name: 'Copperbeech',
    breed: 'Hereford',
    born: '2019-03-29',
    easyCalving: true,
    from: 2023,
    to: 2026,
    lots: [lot('beef', 'travel', '3', 45, 0.5)],
  },
  {
    code: 'BX11',
    name: 'Millstone',
    breed: 'Belgian Blue',
    born: '2019-02-12',
    from: 2023,
    to: 2024,
    lots: [lot('beef', 'house', '6', 30, 0.5)],
  },
]

/** Bulls on the farm, by the mating seasons (years) that they work in. */
export const sweepBulls: readonly Bull[] = [
  {
    code: 'B7',
    name: 'Gatepost',
    breed: 'Hereford',
    born: '2020-03-14',
    easyCalving: true,
    from: 2023,
    to: 2024,
  },
  {
    code: 'B8',
    name: 'Haystack',
    breed: 'Angus',
    born: '2020-04-02',
    easyCalving: true,
    from: 2023,
    to: 2024,
  },
  { code: 'B9', name: 'Barrow', breed: 'Angus', born: '2021-03-20', easyCalving: true, from: 2023, to: 2025 },
  {
    code: 'B10',
    name: 'Doorstep',
    breed: 'Hereford',
    born: '2022-04-11',
    easyCalving: true,
    from: 2024,
    to: 2026,
  },
  {
    code: 'B11',
    name: 'Ploughboy',
    breed: 'Angus',
    born: '2023-03-05',
    easyCalving: true,
    from: 2025,
    to: 2026,
  },
  {
    code: 'B12',
    name: 'Thatch',
    breed: 'Angus',
    born: '2024-03-27',
    easyCalving: true,
    from: 2026,
    to: 2026,
  },
]

const every = new Map([...forefathers, ...aiSires, ...sweepBulls].map((bull) => [bull.code, bull]))

export const bullNamed = (code: string | undefined): Bull | undefined =>
  code === undefined ? undefined : every.get(code)

/** Days of gestation of a bull's calves: his own figure, else his breed's. */
export function gestationOf(bull: Bull | undefined, maiden: boolean): number {
  if (bull?.gestationDays !== undefined) return bull.gestationDays
  const byBreed = {
    'Holstein-Friesian': maiden ? 278 : 280,
    Jersey: 280,
    Angus: 282,
    Hereford: 285,
    'Belgian Blue': 285,
  }
  return bull === undefined ? 282 : byBreed[bull.breed]
}

/** Bulls whose straws are bought, or who work, in a year. */
export const inYear = (bulls: readonly Bull[], year: number): readonly Bull[] =>
  bulls.filter((bull) => year >= (bull.from ?? 0) && year <= (bull.to ?? 0))
