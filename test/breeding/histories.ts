/** Random herds: histories as a farm writes them down, and histories that nobody could have. */
import fc from 'fast-check'
import { isoDay } from '../../source/breeding/day.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import {
  type Animal,
  bar,
  block,
  bullService,
  calving,
  correction,
  dry,
  empty,
  examined,
  factsOf,
  fromBull,
  type Happening,
  type Herd,
  heat,
  hold,
  left,
  looked,
  loss,
  matingStart,
  note,
  on,
  onset,
  planned,
  pregnant,
  type Season,
  score,
  service,
  suspect,
  toBull,
  unbar,
  unsure,
  withBull,
} from './support.ts'

type Facts = fc.Arbitrary<readonly Happening[]>

const time = fc.constantFrom(
  undefined,
  undefined,
  'morning',
  'evening',
  '00:05',
  '05:30',
  '11:59',
  '16:20',
  '23:55',
)
const timed = (one: fc.Arbitrary<Happening>): fc.Arbitrary<Happening> =>
  fc.tuple(one, time).map(([fact, at]) => (at === undefined ? fact : { ...fact, time: at }))
/** Evenly: a bias to the ends would put half of all facts on two days. */
const between = (min: number, max: number): fc.Arbitrary<number> => fc.noBias(fc.integer({ min, max }))
const seldom = (facts: Facts, one: number, of: number): Facts =>
  fc.oneof({ weight: of - one, arbitrary: fc.constant([]) }, { weight: one, arbitrary: facts })

const straw = fc.constantFrom('conventional', 'sexed', 'beef')
const sire = fc.constantFrom('S1', 'S2', 'B1')
const served = (day: number): fc.Arbitrary<Happening> =>
  fc.record({ straw, sire }).map((given) => service(day, given))
/** A check, more often than not of the service on a day, with an age that fits it or nearly. */
const check = (day: number, of: number): fc.Arbitrary<Happening> =>
  fc
    .record({
      result: fc.constantFrom('pregnant', 'pregnant', 'empty', 'unsure'),
      method: fc.constantFrom('ultrasound', 'ultrasound', 'hand', 'milk', 'blood'),
      aged: fc.constantFrom(undefined, undefined, day - of, day - of - 5, day - of + 7, 60),
      named: fc.constantFrom(undefined, undefined, undefined, on(of), on(of + 3)),
    })
    .map(({ aged, named, ...given }) =>
      pregnant(day, {
        ...given,
        ...(aged === undefined || aged < 20 || aged > 290 ? {} : { foetalAge: aged }),
        ...(named === undefined ? {} : { serviceDate: named }),
      }),
    )

/** A season as a cow may go through it: calved, seen, served, perhaps back, checked, with the bull. */
const plausible: Facts = fc
  .record({
    calved: fc.oneof(between(-110, -40), between(-110, 30)),
    ease: between(1, 5),
    seen: between(-42, 41),
    first: between(-3, 41),
    cycle: between(16, 26),
    services: between(0, 3),
    checkAfter: between(24, 60),
  })
  .chain(({ calved, ease, seen, first, cycle, services, checkAfter }) => {
    const days = Array.from({ length: services }, (_, i) => first + i * cycle)
    const last = days.at(-1) ?? first
    return fc
      .tuple(
        fc.constant([calving(calved, { ease }), heat(seen)]),
        fc.tuple(
          ...days.map((day) => timed(fc.oneof(served(day), served(day), fc.constant(bullService(day))))),
        ),
        fc.tuple(
          ...days.map((day) => timed(fc.constantFrom(heat(day), heat(day - 1), onset(day), suspect(day)))),
        ),
        seldom(fc.tuple(between(12, 30).map((k) => heat(last + k))), 1, 2),
        seldom(fc.tuple(check(last + checkAfter, last)), 1, 2),
        seldom(fc.tuple(check(last + checkAfter + 30, last)), 1, 3),
        seldom(fc.tuple(between(-20, 120).map((day) => loss(day))), 1, 6),
        seldom(fc.tuple(between(-30, 60).map((day) => hold(day, day + 14))), 1, 6),
        seldom(fc.tuple(between(-10, 60).map((day) => toBull(day))), 1, 8),
        seldom(fc.constant([withBull(42, { bull: 'B1' }), fromBull(63)]), 1, 3),
        seldom(fc.tuple(between(-40, 100).map((day) => bar(day))), 1, 10),
        seldom(fc.tuple(between(0, 30).map((day) => planned(day, day + 10))), 1, 8),
        seldom(fc.tuple(between(-30, 40).map((day) => examined(day))), 1, 5),
        seldom(fc.tuple(between(-20, 120).map((day) => left(day))), 1, 30),
      )
      .map((parts) => parts.flat())
  })

/** Any fact on any day, in any order; most often what is written down most often. */
const anything: fc.Arbitrary<Happening> = between(-90, 150).chain((day) =>
  timed(
    fc.oneof(
      {
        weight: 8,
        arbitrary: fc.constantFrom(
          ...[heat, heat, suspect, onset, looked, service, bullService].map((fact) => fact(day)),
        ),
      },
      {
        weight: 2,
        arbitrary: fc.constantFrom(
          ...[unsure, empty, loss, bar, unbar, toBull, withBull, fromBull, dry, note, examined].map((fact) =>
            fact(day),
          ),
          hold(day),
          hold(day, day + 10),
          hold(day, day - 1),
          planned(day, day + 5, { session: 'evening' }),
          score(day, 2.5),
          block(day, 'autumn'),
          block(day, 'spring'),
        ),
      },
      {
        weight: 1,
        arbitrary: fc.oneof(
          fc.constantFrom(calving(day), left(day), calving(day, { ease: 5, calves: 2, dead: 1 })),
          check(day, day - 35),
        ),
      },
    ),
  ),
)

const facts: Facts = fc.oneof(
  { weight: 4, arbitrary: plausible },
  { weight: 3, arbitrary: fc.array(anything, { maxLength: 12 }) },
  {
    weight: 3,
    arbitrary: fc.tuple(plausible, fc.array(anything, { maxLength: 4 })).map((both) => both.flat()),
  },
)

const record = (number: number): fc.Arbitrary<Animal['record']> =>
  fc
    .record({
      lactation: fc.constantFrom(undefined, 0, 0, 1, 2, 4),
      ready: fc.constantFrom(undefined, true, true, false),
      sex: fc.constantFrom(...Array(40).fill('F'), 'M'),
      block: fc.constantFrom(...Array(9).fill('spring'), 'autumn', 'autumn', undefined, 'winter'),
      born: fc.constantFrom(...Array(30).fill(undefined), on(-900), on(-900), on(-400), on(40)),
      dam: fc.constantFrom(...Array(8).fill(undefined), '2'),
    })
    .map((given) => ({ ...given, number: String(number) }) as Animal['record'])

/** An animal with some facts voided by corrections that stand beside them, and some of these voided again. */
const animal = (number: number): fc.Arbitrary<Animal> =>
  fc
    .tuple(
      record(number),
      facts,
      fc.array(fc.record({ which: fc.nat(30), again: fc.boolean() }), { maxLength: 2 }),
    )
    .map(([given, happenings, voids]) => {
      const named = happenings.map((one, i) => ({ ...one, id: `a${number}-${i}` }))
      const corrections = voids.flatMap(({ which, again }, i) => {
        const about = named[which % Math.max(1, named.length)]
        if (about === undefined) return []
        const voiding = correction(about.id, { id: `v${number}-${i}` })
        return again ? [voiding, correction(`v${number}-${i}`)] : [voiding]
      })
      return { record: given, happenings: [...named, ...corrections] }
    })

const weeks = fc.constantFrom(
  { aiWeeks: 6, bullWeeks: 3 },
  { aiWeeks: 6, bullWeeks: 3 },
  { aiWeeks: 5, bullWeeks: 4 },
  { aiWeeks: 9, bullWeeks: 0 },
  { aiWeeks: 12, bullWeeks: 3 },
)
const seasons: fc.Arbitrary<readonly Season[]> = fc
  .record({
    spring: weeks,
    autumn: weeks,
    apart: fc.constantFrom(30, 180, 200),
    scans: fc.constantFrom<readonly number[]>([], [], [], [35, 70, 110]),
    next: fc.boolean(),
  })
  .map(({ spring, autumn, apart, scans, next }) => [
    { block: 'spring', ...spring, scans },
    { block: 'autumn', ...autumn, matingStart: on(apart) },
    ...(next ? [{ block: 'spring', ...spring, matingStart: on(365) }] : []),
  ])

const policy = fc.record({
  checkMethod: fc.constantFrom('ultrasound', 'ultrasound', 'hand', 'milk', 'blood'),
  servingTime: fc.constantFrom('at-next-milking', 'by-the-hour'),
})
const milkings = fc.constantFrom(['05:30', '15:30'], ['05:30', '15:30'], ['07:00'])
const stock: readonly Happening[] = ['S1', 'S2'].flatMap((one, i) => [
  { kind: 'stock-take', date: on(-100), sire: one, straw: 'conventional', count: 40, easyCalving: i === 0 },
  { kind: 'stock-take', date: on(-100), sire: one, straw: 'sexed', count: 5 },
])

const anyHerd: fc.Arbitrary<Herd> = fc
  .record({ seasons, policy, milkings })
  .map((given) => ({ ...given, extra: stock }))

const anyAnimals = (most: number): fc.Arbitrary<readonly Animal[]> =>
  between(1, most).chain((count) => fc.tuple(...Array.from({ length: count }, (_, i) => animal(i + 1))))

/** Days after a fact on which it may ask for something. */
const daysLater = [
  ...Array<number>(16).fill(0),
  ...Array<number>(8).fill(1),
  2,
  2,
  3,
  3,
  5,
  7,
  8,
  14,
  18,
  21,
  24,
  25,
  30,
  36,
  42,
  60,
  90,
  120,
  297,
]

export interface Morning {
  readonly facts: Fact[]
  /** The list's day, as a season day of the spring block. */
  readonly s: number
}

/** The facts of a herd of one animal or more, and a day on which its list is made. */
export const anyMorning = (most = 4): fc.Arbitrary<Morning> =>
  fc
    .record({
      animals: anyAnimals(most),
      herd: anyHerd,
      which: between(0, 200),
      later: fc.constantFrom(...daysLater),
      anyDay: fc.option(between(-40, 160), { nil: undefined, freq: 2 }),
    })
    .map(({ animals, herd, which, later, anyDay }) => {
      const days = animals.flatMap(({ happenings }) =>
        happenings.flatMap(({ kind, date }) => Array<number>(kind === 'heat' ? 4 : 1).fill(isoDay(date))),
      )
      const day = days[which % Math.max(1, days.length)]
      return {
        facts: factsOf(animals, herd),
        s: anyDay ?? (day === undefined ? 0 : day - matingStart + later),
      }
    })
