import { expect, test } from 'vitest'
import { returnsOf } from '../../../source/breeding/animal-chances.ts'
import type { Service } from '../../../source/breeding/cycle.ts'
import { type BullRecord, bullRecords } from '../../../source/breeding/figures/bull-records.ts'
import { countedIn } from '../../../source/breeding/figures/season-figures.ts'
import { ratesOfPolicy } from '../../../source/breeding/rates-of-policy.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import { type Animal, bookOf, bullService, calving, cow, dayAt, heat, pregnant, service } from '../support.ts'

/** Records on a season day. */
function recordsAt(s: number, animals: readonly Animal[]): BullRecord[] {
  const book = bookOf(animals.map((one, i) => ({ ...one, record: { ...one.record, number: String(i + 1) } })))
  const [season] = book.allSeasons
  if (season === undefined) throw new Error('no season')
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, dayAt(s)))
  const { services } = countedIn(book, standings, season, dayAt(s))
  return bullRecords(services, ratesOfPolicy(book.policy), book.policy)
}
const by = (sire: string | undefined, s = 43): ReturnType<typeof bullService> =>
  bullService(s, sire === undefined ? {} : { sire })
const served = (sire?: string, s?: number): Animal => cow(calving(-60), by(sire, s))
const back = (sire?: string): Animal => cow(calving(-60), by(sire), heat(64))

test('services by AI are none of a bull’s; bulls with most services come first, an unnamed one among them', () => {
  const records = recordsAt(70, [
    cow(calving(-60), service(3)),
    served('B2'),
    served('B1'),
    served('B1'),
    served(undefined),
  ])
  expect(records.map(({ bull, services }) => [bull, services.length])).toEqual([
    ['B1', 2],
    ['B2', 1],
    [undefined, 1],
  ])
})

test('what became of his services', () => {
  const [record] = recordsAt(110, [
    back('B1'),
    served('B1'),
    cow(calving(-60), by('B1'), pregnant(100, { foetalAge: 57 })),
  ])
  expect(record).toMatchObject({ returned: 1, held: 1, unknown: 1 })
})

test('one return of one service is no doubt, nor are four of five; five of six are', () => {
  expect(recordsAt(75, [back('B1')])[0]).toMatchObject({ returned: 1, doubtful: false })
  const four = [back('B1'), back('B1'), back('B1'), back('B1')]
  expect(recordsAt(75, [...four, served('B1')])[0]).toMatchObject({ returned: 4, doubtful: false })
  expect(recordsAt(75, [...four, back('B1'), served('B1')])[0]).toMatchObject({ returned: 5, doubtful: true })
  expect(
    recordsAt(75, [back('B1'), served('B1'), served('B1'), served('B1'), served('B1')])[0],
  ).toMatchObject({
    returned: 1,
    doubtful: false,
  })
})

test('the chance of so many returns is the binomial one where all services are of one age', () => {
  const [record] = recordsAt(75, [back('B1'), back('B1'), served('B1')])
  const rates = ratesOfPolicy(bookOf([]).policy)
  const one = record?.services[0]
  if (one === undefined) throw new Error('no service')
  const p = (1 - rates.conception.natural) * (returnsOf(one.service, rates).byDay[75 - 43 - 1] ?? 0)
  expect(record?.chanceIfSound).toBeCloseTo(3 * p ** 2 * (1 - p) + p ** 3, 10)
})

test('two early returns are a doubt, one alone is none, however rare', () => {
  const early = cow(calving(-60), by('B1'), heat(61))
  expect(recordsAt(61, [early])[0]).toMatchObject({ returned: 1, doubtful: false })
  expect(recordsAt(61, [early])[0]?.chanceIfSound).toBeLessThan(0.05)
  expect(recordsAt(61, [early, early])[0]).toMatchObject({ returned: 2, doubtful: true })
})

test('of an old service that failed a return has long come', () => {
  const [record] = recordsAt(300, [back('B1')])
  const rates = ratesOfPolicy(bookOf([]).policy)
  const seen = returnsOf(record?.services[0]?.service as Service, rates).byDay.at(-1) ?? Number.NaN
  expect(record?.chanceIfSound).toBeCloseTo((1 - rates.conception.natural) * seen, 12)
})

test('his services stand in the order of their days', () => {
  const [record] = recordsAt(75, [served('B1', 50), served('B1', 44), served('B1', 47)])
  expect(record?.services.map(({ service: { day } }) => day - dayAt(0))).toEqual([44, 47, 50])
})

test('services too young to be followed by a return say nothing against him', () => {
  const [record] = recordsAt(50, [served('B1', 45), served('B1', 46)])
  expect(record).toMatchObject({ returned: 0, chanceIfSound: 1, doubtful: false })
})
