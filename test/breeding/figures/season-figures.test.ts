import { expect, test } from 'vitest'
import {
  type Animal,
  bullService,
  calving,
  cow,
  empty,
  heat,
  loss,
  on,
  pregnant,
  service,
} from '../support.ts'
import { figuresAt, thirteen, told } from './herd.ts'

const calved = calving(-70)
const herd = thirteen

test('the cohort is fixed at the mating start', () => {
  expect([-5, 0, 20, 60, 140].map((s) => figuresAt(s, herd).cohort)).toEqual([11, 9, 9, 9, 9])
})

test('submission of the cohort, and of those calved 42 days by day 20', () => {
  const { submission } = figuresAt(30, herd)
  expect(told(submission.all)).toBe('6/9')
  expect(told(submission.ready)).toBe('6/7')
  expect(submission.all).toMatchObject({
    target: 90,
    source: 'agriland.ie (Teagasc), achieving your breeding targets for 2021',
  })
  expect(submission.pace).toHaveLength(21)
  expect(submission.pace.map(({ served }) => served).filter((n, i, all) => n !== all[i - 1])).toEqual([
    0, 1, 2, 3, 4, 5, 6,
  ])
})

test('pace goes as far as the days that are over', () => {
  expect(figuresAt(0, herd).submission.pace).toEqual([])
  expect(figuresAt(10, herd).submission.pace.at(-1)).toMatchObject({ day: 9, served: 4 })
})

test('conception by order and kind, of services 42 days old with a result', () => {
  const { conception, conceptionBy, servicesPerPregnancy } = figuresAt(140, herd)
  expect(told(conception)).toBe('4/8 ?1')
  expect(conceptionBy.order.map(({ key, figure }) => `${key} ${told(figure)}`)).toEqual(['1 3/6 ?1', '2 1/2'])
  expect(conceptionBy.straw.map(({ key, figure }) => `${key} ${told(figure)}`)).toEqual([
    'conventional 3/6 ?1',
    'sexed 1/2',
  ])
  expect(conceptionBy.inseminator.map(({ key }) => key)).toEqual([undefined, 'OB'])
  expect(conceptionBy.session.map(({ key }) => key)).toEqual([undefined, 'evening'])
  expect(conceptionBy.sire.map(({ key }) => key)).toEqual(['S1', 'S2'])
  expect(conceptionBy.parity.map(({ key }) => key)).toEqual(['0', '2'])
  expect(servicesPerPregnancy).toEqual({ services: 8, pregnancies: 4, ratio: 2 })
})

test('early in the season failures alone are known, and are not shown as a rate', () => {
  expect(told(figuresAt(35, herd).conception)).toBe('0/0 ?9')
  expect(figuresAt(35, herd).conception.percent).toBeUndefined()
})

test('services after those that were checked count on neither side', () => {
  const early = Array.from({ length: 10 }, (_, i) => cow(calved, service(i), pregnant(45)))
  const late = [cow(calved, service(15), heat(36)), cow(calved, service(15))]
  expect(told(figuresAt(60, [...early, ...late]).conception)).toBe('10/10 ?2')
  const scanned = late.map((one) => ({ ...one, happenings: [...one.happenings, empty(58)] }))
  expect(told(figuresAt(60, [...early, ...scanned]).conception)).toBe('10/12')
})

test('non-return at 24 and 56 days, without those that left', () => {
  const { nonReturn24, nonReturn56 } = figuresAt(140, herd)
  expect(told(nonReturn24)).toBe('5/8')
  expect(told(nonReturn56)).toBe('5/8')
  expect(told(figuresAt(30, herd).nonReturn24)).toBe('2/3')
})

test('returns by class', () => {
  const { returnIntervals } = figuresAt(140, herd)
  expect(returnIntervals.counts['short-regular']).toBe(2)
  expect(returnIntervals.all).toBe(2)
  expect(returnIntervals.ratio).toBeUndefined()
})

test('in calf by six weeks, empty, left, not known: together the cohort', () => {
  const { inCalf } = figuresAt(140, herd)
  expect(told(inCalf.sixWeeks)).toBe('4/9')
  expect(told(inCalf.all)).toBe('5/9 ?2')
  expect(told(inCalf.empty)).toBe('1/9 ?2')
  expect(inCalf.leftBefore).toBe(1)
  expect(inCalf.sixWeeks.target).toBe(78)
})

test('before the results nobody counts as in calf', () => {
  const { inCalf } = figuresAt(30, herd)
  expect(told(inCalf.sixWeeks)).toBe('0/9 ?8')
  expect(inCalf.leftBefore).toBe(1)
  expect(inCalf.curve).toEqual([])
})

test('the curve of conceptions: who left is taken out on that day', () => {
  const { curve } = figuresAt(140, herd).inCalf
  expect(curve.map(({ day }) => day)).toEqual([1, 2, 26, 34])
  // 9 at risk on day 1, 8 on day 2, then one left with an open service of day 19: 6 on day 26, 5 on day 34.
  const expected = 1 - (8 / 9) * (7 / 8) * (5 / 6) * (4 / 5)
  expect(curve.at(-1)?.percent).toBeCloseTo(100 * expected, 10)
})

test('the curve ends where it is not known of more than one in twenty', () => {
  // Two of nine with the bull are not known from day 42 on, though one is known to have conceived on day 50.
  expect(figuresAt(140, herd).inCalf.knownTo).toBe(41)
  const known = Array.from({ length: 40 }, (_, i) => cow(calved, service(i % 20), pregnant(60)))
  const withTwo = [...known, cow(calved, service(30)), cow(calved, service(35))]
  expect(figuresAt(61, withTwo).inCalf.knownTo).toBe(62)
  const withThree = [...withTwo, cow(calved, service(38))]
  expect(figuresAt(61, withThree).inCalf.knownTo).toBe(37)
  expect(figuresAt(61, withThree).inCalf.curve.at(-1)?.day).toBe(19)
})

test('heats seen in 24 days, of those ready and not in calf at the start', () => {
  expect(told(figuresAt(30, herd).heatDetection)).toBe('6/7')
})

test('calving pattern and days to the first service', () => {
  const { calving: pattern, calvingToFirstService } = figuresAt(30, herd)
  // Mating start 1 May 2026, 282 days: calving planned from 7 February 2026, season day -83.
  expect(pattern.plannedStart).toBe(figuresAt(30, herd).season.matingStart - 83)
  expect(told(pattern.byDay21)).toBe('6/8')
  expect(told(pattern.byDay42)).toBe('6/8')
  expect(calvingToFirstService).toMatchObject({ animals: 5, median: 79 })
})

test('still to calve counts as not known', () => {
  const due = cow(calving(-400), service(-270), pregnant(-230))
  expect(told(figuresAt(-50, [due, cow(calved)]).calving.byDay42)).toBe('1/2 ?1')
  // Day 42 of calving is season day -42: who has not calved by then is known not to have.
  expect(told(figuresAt(5, [due, cow(calved)]).calving.byDay42)).toBe('1/2')
})

test('a loss takes her back; found in calf by the end, a later loss does not', () => {
  const by = (s: number, one: Animal) => told(figuresAt(s, [one]).inCalf.sixWeeks)
  expect(by(100, cow(calved, service(2), pregnant(40), loss(60)))).toBe('0/1')
  expect(by(300, cow(calved, service(2), pregnant(40), loss(200)))).toBe('1/1')
})

test('a calving without a check is a result; so is a later season without one', () => {
  const seasons = [{}, { matingStart: on(200) }]
  const calvedLater = cow(calved, service(2), calving(283))
  expect(told(figuresAt(300, [calvedLater], { seasons }).inCalf.sixWeeks)).toBe('1/1')
  const later = cow(calved, service(2), heat(23), service(205), pregnant(250))
  expect(told(figuresAt(300, [later], { seasons }).inCalf.empty)).toBe('1/1')
})

test('a season to come and an empty block', () => {
  expect(figuresAt(-60, herd).s).toBe(-60)
  const none = figuresAt(30, [])
  expect(none.submission.all.percent).toBeUndefined()
  expect(none.inCalf.curve).toEqual([])
  expect(none.calvingToFirstService).toEqual({ animals: 0, mean: undefined, median: undefined })
})

test('bull services are no AI services and give no straws', () => {
  const figures = figuresAt(140, [cow(calved, bullService(45), pregnant(100))])
  expect(told(figures.conception)).toBe('0/0')
  expect(told(figures.inCalf.all)).toBe('1/1')
  expect(told(figures.inCalf.sixWeeks)).toBe('0/1')
})
