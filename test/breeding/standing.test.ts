import { describe, expect, test } from 'vitest'
import {
  calvedAtLeast,
  checkedEmpty,
  daysCalved,
  daysSinceService,
  heatOfNow,
  mayBeServed,
  onHeat,
  returned,
  tooYoung,
  unchecked,
} from '../../source/breeding/questions.ts'
import { oldEnoughToServe, type Standing } from '../../source/breeding/standing.ts'
import {
  type Animal,
  bookOf,
  bullService,
  calving,
  cow,
  dayAt,
  empty,
  fromBull,
  type Happening,
  type Herd,
  heat,
  left,
  loss,
  maiden,
  matingStart,
  on,
  pregnant,
  score,
  service,
  standingAt,
  suspect,
  toBull,
  unsure,
  withBull,
} from './support.ts'

const fresh = calving(-60)
/** A table of animals, each with the season day and what is said of her there. */
const says = <Said>(
  of: (standing: Standing) => Said,
  lines: readonly (readonly [what: string, one: Animal, s: number, expected: Said, herd?: Herd])[],
): void => {
  test.each(lines.map((line) => [line[0], line] as const))('%s', (_, [, one, s, expected, herd]) => {
    expect(of(standingAt(s, one, herd))).toEqual(expected)
  })
}

describe('in the herd: born, and not left before the day', () => {
  says(
    ({ inHerd }) => inHerd,
    [
      ['birth not known', cow(), 0, true],
      ['born today', maiden({ born: on(0) }), 0, true],
      ['born tomorrow', maiden({ born: on(1) }), 0, false],
      ['leaves today', cow(left(0)), 0, true],
      ['left yesterday', cow(left(-1)), 0, false],
    ],
  )
})

describe('meant for service: cows, and maidens that are marked and old enough, or were served', () => {
  says(
    ({ ready }) => ready,
    [
      ['a cow', cow({ ready: false }), 0, true],
      ['a maiden that is marked', maiden(), 0, true],
      ['a maiden that is not', maiden({ ready: undefined }), 0, false],
      ['marked, 330 days old', maiden({ born: on(-330) }), 0, true],
      ['marked, 329 days old', maiden({ born: on(-329) }), 0, false],
      ['not marked, served', maiden({ ready: undefined }, service(-1)), 0, true],
      ['not marked, served today', maiden({ ready: undefined }, service(0)), 0, false],
      ['not marked, found in calf', maiden({ ready: undefined }, pregnant(-1)), 0, true],
      ['not marked, found empty', maiden({ ready: undefined }, empty(-1), unsure(-1)), 0, false],
      ['not marked, served before a loss', maiden({ ready: undefined }, service(-60), loss(-5)), 0, true],
      ['not marked, in calf, then empty', maiden({ ready: undefined }, pregnant(-60), empty(-5)), 0, true],
    ],
  )

  test('too young for service, though served: a maiden under age, never a cow', () => {
    const young = { born: on(-329) }
    expect([
      tooYoung(standingAt(0, maiden(young, service(-1)))),
      tooYoung(standingAt(1, maiden(young, service(-1)))),
      tooYoung(standingAt(0, cow(young))),
    ]).toEqual([true, false, false])
    const her = bookOf(maiden(young)).byNumber.get('1')
    expect([0, 1].map((s) => her && oldEnoughToServe(her, dayAt(s)))).toEqual([false, true])
  })
})

describe('chances used: heats served by AI from s -35 on', () => {
  says(
    ({ chancesUsed }) => chancesUsed,
    [
      ['none', cow(fresh), 10, 0],
      ['on s -35', cow(calving(-120), service(-35)), 10, 1],
      ['on s -36', cow(calving(-120), service(-36)), 10, 0],
      ['two, a loss between', cow(fresh, service(-20), loss(0), service(20)), 30, 2],
      ['by the bull', cow(fresh, bullService(0)), 10, 0],
      ['two straws at one heat', cow(fresh, service(0), service(1)), 10, 1],
      ['her block has no season', cow({ block: 'west' }, fresh, service(0)), 10, 0],
    ],
  )
})

describe('left to the bull by hand since s -35', () => {
  says(
    ({ leftToBull }) => leftToBull,
    [
      ['never', cow(fresh), 10, false],
      ['on s -35', cow(fresh, toBull(-35)), 10, true],
      ['on s -36', cow(fresh, toBull(-36)), 10, false],
      ['this season and the last', cow(fresh, toBull(-200), toBull(0)), 10, true],
      ['her block has no season', cow({ block: 'west' }, toBull(0)), 10, false],
    ],
  )
})

describe('may be served', () => {
  says(
    (standing) => mayBeServed(standing, 2),
    [
      ['open', cow(fresh), 10, true],
      ['one chance used', cow(fresh, service(0)), 10, true],
      ['both used', cow(fresh, service(-20), service(0)), 10, false],
      ['in calf', cow(fresh, service(0), pregnant(35)), 40, false],
      ['left to the bull', cow(fresh, toBull(0)), 10, false],
      ['a maiden under age', maiden({ born: on(-300) }, bullService(0)), 10, false],
    ],
  )
})

describe('on heat: her latest heat is of today or yesterday, and was not served', () => {
  says(onHeat, [
    ['today', cow(fresh, heat(10)), 10, true],
    ['yesterday', cow(fresh, heat(9)), 10, true],
    ['two days ago', cow(fresh, heat(8)), 10, false],
    ['suspect', cow(fresh, suspect(10)), 10, true],
    ['served', cow(fresh, heat(9), service(9)), 10, false],
    ['served today', cow(fresh, service(10)), 10, true],
    ['never seen', cow(fresh), 10, false],
  ])

  test('which heat it is', () => {
    const standing = standingAt(10, cow(fresh, heat(-11), heat(9)))
    expect((heatOfNow(standing)?.day ?? 0) - matingStart).toBe(9)
  })
})

describe('days from her last service to the heat of now, or to today', () => {
  says(daysSinceService, [
    ['never served', cow(fresh, heat(10)), 10, undefined],
    ['no heat now', cow(fresh, service(0)), 10, 10],
    ['a heat yesterday', cow(fresh, service(0), heat(19)), 20, 19],
    ['a heat two days ago', cow(fresh, service(0), heat(18)), 20, 20],
  ])
})

describe('what became of her last service', () => {
  const state = (standing: Standing): string =>
    [
      unchecked(standing) ? 'unchecked' : '',
      checkedEmpty(standing) ? 'empty' : '',
      returned(standing, 18) ? 'returned' : '',
    ]
      .filter((word) => word !== '')
      .join(' ')
  says(state, [
    ['never served', cow(fresh, heat(0), empty(30)), 40, ''],
    ['served', cow(fresh, service(0)), 40, 'unchecked'],
    ['checked a day too early', cow(fresh, service(0), empty(29)), 40, 'unchecked'],
    ['checked empty', cow(fresh, service(0), empty(30)), 40, 'empty'],
    ['checked unsure', cow(fresh, service(0), unsure(30)), 40, ''],
    ['empty, then unsure', cow(fresh, service(0), empty(30), unsure(35)), 40, ''],
    ['unsure, then empty', cow(fresh, service(0), unsure(30), empty(35)), 40, 'empty'],
    ['empty for the service before', cow(fresh, service(0), service(21), empty(35)), 40, 'unchecked'],
    ['seen on day 17', cow(fresh, service(0), heat(17)), 40, 'unchecked'],
    ['seen on day 18', cow(fresh, service(0), heat(18)), 40, 'unchecked returned'],
    ['suspect on day 18', cow(fresh, service(0), suspect(18)), 40, 'unchecked'],
    ['served again on day 18', cow(fresh, service(0), service(18)), 40, 'unchecked'],
    ['seen before she was served', cow(fresh, heat(-30), service(0)), 40, 'unchecked'],
  ])
})

describe('the last day on which a bull was with her', () => {
  says(
    ({ lastWithBull }) => (lastWithBull === undefined ? undefined : lastWithBull - matingStart),
    [
      ['nothing told, before the bull weeks', cow(fresh), 41, undefined],
      ['nothing told, in the bull weeks of her block', cow(fresh), 50, 50],
      ['nothing told, after them', cow(fresh), 80, 62],
      ['her own time goes before the bull weeks', cow(fresh, withBull(10), fromBull(20)), 80, 20],
      ['a time before she calved says nothing', cow(withBull(-100), fromBull(-61), fresh), 80, 62],
      ['one that ended on the day she calved does', cow(withBull(-100), fromBull(-60), fresh), 80, -60],
      ['with him still', cow(withBull(-100), fresh), 30, 30],
      ['a service of his', cow(fresh, bullService(5)), 30, 5],
      ['an AI is none', cow(fresh, service(5)), 30, undefined],
      ['without a block', cow({ block: undefined }), 50, undefined],
    ],
  )
})

describe('days calved', () => {
  test('on another day than the list’s', () => {
    const standing = standingAt(10, cow(fresh))
    expect([daysCalved(standing), daysCalved(standing, dayAt(20))]).toEqual([70, 80])
    expect([calvedAtLeast(standing, 80), calvedAtLeast(standing, 80, dayAt(20))]).toEqual([false, true])
  })

  test('a maiden after a late loss waits like a cow', () => {
    const lost = maiden(service(-150), pregnant(-100), loss(-20))
    expect([calvedAtLeast(standingAt(10, lost), 30), calvedAtLeast(standingAt(10, lost), 31)]).toEqual([
      true,
      false,
    ])
  })
})

describe('her score counts for 60 days', () => {
  says(
    ({ condition }) => condition,
    [
      ['none', cow(fresh), 10, undefined],
      ['60 days ago', cow(fresh, score(-50, 2.5)), 10, 2.5],
      ['61 days ago', cow(fresh, score(-51, 2.5)), 10, undefined],
      ['the last one', cow(fresh, score(0, 2.5), score(5, 3)), 10, 3],
    ],
  )
})

describe('her latest heat, and her latest sure one', () => {
  const told: readonly Happening[] = [heat(-22), heat(0), suspect(5)]
  says(
    ({ latestHeat, latestSureHeat, lastCheck }) =>
      [latestHeat, latestSureHeat, lastCheck].map((one) => one && one.day - matingStart),
    [
      ['none', cow(fresh), 10, [undefined, undefined, undefined]],
      ['a suspect one after the sure', cow(fresh, ...told), 10, [5, 0, undefined]],
      ['the last check', cow(fresh, unsure(2), empty(4)), 10, [undefined, undefined, 4]],
    ],
  )
})

describe('without a season of her block there is no day of it', () => {
  says(
    ({ block, season, phase, s }) => [block, season?.block, phase, s],
    [
      ['no block', cow({ block: undefined }), 10, [undefined, undefined, undefined, undefined]],
      ['a block without a season', cow({ block: 'west' }), 10, ['west', undefined, undefined, undefined]],
      ['a block with one', cow(), 10, ['spring', 'spring', 'ai', 10]],
    ],
  )
})
