/** What holds for every herd, whatever was written down. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import { type Day, isoDay } from '../../source/breeding/day.ts'
import { type AnimalFact, type Fact, HERD } from '../../source/breeding/facts.ts'
import type { MorningList, Row } from '../../source/breeding/list.ts'
import { kindRank, momentOf } from '../../source/breeding/moment.ts'
import { listAt, morningList } from '../../source/breeding/morning-list.ts'
import { compareNumbers } from '../../source/breeding/order.ts'
import { placesOn } from '../../source/breeding/places.ts'
import { reasonsOf, sections } from '../../source/breeding/sections.ts'
import type { Standing } from '../../source/breeding/standing.ts'
import { factShapes } from '../../source/herd/schema.ts'
import { anyMorning } from './histories.ts'
import {
  bar,
  dayAt,
  described,
  dry,
  empty,
  examined,
  fromBull,
  type Happening,
  hold,
  left,
  looked,
  note,
  pregnant,
  score,
  toBull,
  unbar,
  unsure,
  withBull,
} from './support.ts'

const isOfAnimal = (fact: Fact): fact is AnimalFact => fact.about !== HERD && fact.kind !== 'animal'
const listOfFacts = (facts: readonly Fact[], day: Day): MorningList => morningList(openBook(facts), day)

/** Each row with the standing that it rests on. */
function everyRow(numRuns: number, check: (row: Row, standing: Standing, list: MorningList) => void): void {
  fc.assert(
    fc.property(anyMorning(), ({ facts, s }) => {
      const book = openBook(facts)
      const places = placesOn(book, dayAt(s))
      const list = listAt(places)
      const standings = places.each.map(({ standing }) => standing)
      for (const row of list.rows) {
        check(row, standings.find((one) => one.animal.id === row.animal) as Standing, list)
      }
    }),
    { numRuns },
  )
}

/** In calf by the words of the rule alone: a pregnant result with no later empty one, calving or loss. */
function inCalf({ animal, today }: Standing): boolean {
  let found = false
  for (const { fact, day } of animal.happenings) {
    if (day > today || (day === today && fact.kind === 'check')) continue
    if (fact.kind === 'check' && fact.result !== 'unsure') found = fact.result === 'pregnant'
    if (fact.kind === 'calving' || fact.kind === 'loss') found = false
  }
  return found
}

/** Barred by the words of the rule alone. */
function barred({ animal, today }: Standing): boolean {
  const last = animal.happenings.findLast(
    ({ fact, day }) => day < today && (fact.kind === 'bar' || fact.kind === 'unbar'),
  )
  return last?.fact.kind === 'bar'
}

test('the random histories are such as the schema accepts', () => {
  fc.assert(
    fc.property(anyMorning(), ({ facts }) => {
      for (const fact of JSON.parse(JSON.stringify(facts)) as Fact[]) {
        const judged = factShapes[fact.kind].safeParse(fact)
        if (!judged.success) throw new Error(`${JSON.stringify(fact)}: ${judged.error.message}`)
      }
    }),
    { numRuns: 100 },
  )
})

describe('no animal', () => {
  test('stands twice', () => {
    fc.assert(
      fc.property(anyMorning(8), ({ facts, s }) => {
        const rows = listOfFacts(facts, dayAt(s)).rows
        expect(new Set(rows.map((row) => row.animal)).size).toBe(rows.length)
      }),
      { numRuns: 300 },
    )
  })

  test('in calf is proposed a straw or a service', () => {
    everyRow(600, (row, standing) => {
      if (inCalf(standing)) {
        expect(row.straw).toBeUndefined()
        expect(row.session).toBeUndefined()
        expect(['serve', 'second-service', 'sweep-bull']).not.toContain(row.section)
        expect(['serve', 'second-service', 'sweep-bull']).not.toContain(row.also)
      }
    })
  })

  test('is proposed for AI once two chances are used', () => {
    everyRow(600, (row, standing) => {
      if (standing.chancesUsed >= 2) {
        expect(['serve', 'second-service']).not.toContain(row.section)
        expect(['serve', 'second-service']).not.toContain(row.also)
      }
    })
  })

  test('barred, unready, male, gone or without a block stands anywhere but in Take care', () => {
    everyRow(600, (row, standing) => {
      const { record, happenings } = standing.animal
      const before = happenings.filter(({ day }) => day <= standing.today).map(({ fact }) => fact)
      const calved = (record.lactation ?? 0) > 0 || before.some(({ kind }) => kind === 'calving')
      const once = before.some((fact) => fact.kind === 'service' || fact.kind === 'check')
      const unready = !calved && record.ready !== true && !once
      const gone = before.some((fact) => fact.kind === 'left' && isoDay(fact.date) < standing.today)
      const male = record.sex === 'M'
      if (barred(standing) || unready || gone || male || row.block === undefined) {
        expect(row.section).toBe('take-care')
        expect(row.also).toBeUndefined()
      }
    })
  })

  test('may be put to the bull before she is 42 days calved by his last day', () => {
    everyRow(600, (row, standing) => {
      if (row.section !== 'sweep-bull' || row.reasons[0] !== 'window') return
      const { waitFrom, season } = standing
      if (waitFrom !== undefined && season !== undefined) {
        expect(season.matingStart + season.bullEnd - waitFrom).toBeGreaterThanOrEqual(42)
      }
      expect(standing.onHold).toBe(false)
    })
  })
})

test('every row is whole: its codes in order, a session where she is served, chances between 0 and 1', () => {
  everyRow(600, (row) => {
    const codes = reasonsOf[row.section] as readonly string[]
    const places = row.reasons.map((reason) => codes.indexOf(reason))
    expect(places.length).toBeGreaterThan(0)
    expect(places).toEqual([...new Set(places)].sort((a, b) => a - b))
    expect(places).not.toContain(-1)
    const served = row.section === 'serve' || row.section === 'second-service'
    expect(row.session !== undefined).toBe(served)
    if (!served) expect(row.straw).toBeUndefined()
    if (row.section !== 'take-care') expect(row.also).toBeUndefined()
    expect(row.also).not.toBe('take-care')
    expect(row.chance ?? 0).toBeGreaterThanOrEqual(0)
    expect(row.chance ?? 0).toBeLessThanOrEqual(1)
    expect(row.since === undefined).toBe(row.days === undefined)
    expect(row.days ?? 0).toBeGreaterThanOrEqual(0)
    expect(new Set(row.warnings).size).toBe(row.warnings.length)
  })
})

test('rows stand by section, block, then the order of the section', () => {
  const session = ['morning', 'evening', 'next-morning', 'next-evening']
  const code = (row: Row): number =>
    (reasonsOf[row.section] as readonly string[]).indexOf(row.reasons[0] ?? '')
  const keys: Readonly<Record<Row['section'], (row: Row) => readonly number[]>> = {
    'take-care': (row) => [code(row)],
    serve: (row) => [session.indexOf(row.session ?? ''), row.moment],
    'second-service': (row) => [session.indexOf(row.session ?? ''), row.moment],
    'repeat-heat-watch': (row) => [-(row.chance ?? 0)],
    'pregnancy-check': (row) => [-(row.days ?? -1)],
    'sweep-bull': (row) => [code(row)],
    'no-heat-seen': (row) => [-(row.days ?? -1)],
    'heat-record': () => [],
  }
  fc.assert(
    fc.property(anyMorning(8), ({ facts, s }) => {
      const list = listOfFacts(facts, dayAt(s))
      const blocks = list.blocks.map(({ block }) => block)
      const place = (row: Row): readonly number[] => [
        sections.indexOf(row.section),
        row.block !== undefined && blocks.includes(row.block) ? blocks.indexOf(row.block) : blocks.length,
        ...keys[row.section](row),
      ]
      for (let i = 1; i < list.rows.length; i += 1) {
        const [a, b] = [list.rows[i - 1] as Row, list.rows[i] as Row]
        const [before, after] = [place(a), place(b)]
        const differs = before.findIndex((one, at) => one !== after[at])
        if (differs === -1) expect(compareNumbers(a.number, b.number)).toBeLessThan(0)
        else expect(before[differs]).toBeLessThan(after[differs] ?? Number.NaN)
      }
    }),
    { numRuns: 500 },
  )
})

describe('the facts behind a list', () => {
  test('a voided fact is one that was never recorded', () => {
    fc.assert(
      fc.property(anyMorning(), ({ facts, s }) => {
        const live = new Set(openBook(facts).live)
        const never = facts.filter((fact) => live.has(fact))
        expect(never.some((fact) => fact.kind === 'correction')).toBe(false)
        expect(listOfFacts(facts, dayAt(s))).toEqual(listOfFacts(never, dayAt(s)))
      }),
      { numRuns: 500 },
    )
  })

  test('facts dated later do not change an earlier list', () => {
    fc.assert(
      fc.property(anyMorning(), ({ facts, s }) => {
        const day = dayAt(s)
        const until = facts.filter(
          (fact) => !isOfAnimal(fact) || fact.kind === ('correction' as string) || isoDay(fact.date) <= day,
        )
        expect(listOfFacts(facts, day)).toEqual(listOfFacts(until, day))
      }),
      { numRuns: 500 },
    )
  })

  test('facts of different moments or kinds may stand in the file in any order', () => {
    fc.assert(
      fc.property(anyMorning(), fc.infiniteStream(fc.nat()), ({ facts, s }, random) => {
        const milkings = openBook(facts).farm.milkings
        const moment = (fact: Fact): string =>
          `${fact.about} ${fact.date} ${momentOf(fact.time, milkings)} ${kindRank(fact.kind)}`
        const moving = facts.filter((fact) => isOfAnimal(fact) && fact.kind !== ('correction' as string))
        const shuffled = moving
          .map((fact) => ({ fact, at: random.next().value as number }))
          .sort((a, b) => a.at - b.at)
          .map(({ fact }) => fact)
        // Facts of one moment and kind keep the order in which they were recorded.
        const inOrder = Map.groupBy(moving, moment)
        const taken = new Map<string, number>()
        const again = shuffled.map((fact) => {
          const key = moment(fact)
          const next = taken.get(key) ?? 0
          taken.set(key, next + 1)
          return inOrder.get(key)?.[next] as Fact
        })
        const rest = facts.filter((fact) => !moving.includes(fact))
        expect(listOfFacts([...rest, ...again], dayAt(s))).toEqual(listOfFacts(facts, dayAt(s)))
      }),
      { numRuns: 500 },
    )
  })

  test('what is done today ticks, and moves nobody before midnight', () => {
    const done: readonly ((s: number) => Happening)[] = [
      ...[looked, pregnant, empty, unsure, examined, bar, unbar, toBull, withBull, fromBull, left, dry, note],
      hold,
      (s) => score(s, 2),
    ]
    fc.assert(
      fc.property(anyMorning(), fc.constantFrom(...done), ({ facts, s }, fact) => {
        const about = facts.find((one) => one.kind === 'animal')?.about
        const today = { id: 'done', about, at: '2026-05-28T04:15:09.120Z', ...fact(s) } as unknown as Fact
        // A ticked row gives its straw to the next: straws and what rests on them may change.
        const unticked = (list: MorningList) =>
          list.rows.map((row) => [
            row.number,
            described({ ...row, done: false }),
            row.since,
            row.days,
            row.session,
            row.moment,
          ])
        const [before, after] = [listOfFacts(facts, dayAt(s)), listOfFacts([...facts, today], dayAt(s))]
        expect(unticked(after)).toEqual(unticked(before))
        const undone = before.rows.filter((row, i) => row.done && !after.rows[i]?.done)
        expect(undone).toEqual([])
      }),
      { numRuns: 500 },
    )
  })
})

test('nothing is thrown, for any date that there is', () => {
  const years = fc.constantFrom('0001', '0004', '1899', '1999', '2026', '2027', '9998', '9999')
  const date = fc
    .tuple(years, fc.constantFrom('01-01', '02-28', '05-01', '06-12', '12-31'))
    .map((parts) => parts.join('-'))
  fc.assert(
    fc.property(
      anyMorning(),
      date,
      fc.array(date, { minLength: 60, maxLength: 60 }),
      ({ facts }, day, dates) => {
        const scattered = facts.map((fact, i) =>
          i % 3 === 0 && fact.kind !== 'farm'
            ? {
                ...fact,
                date: dates[i % 60] as string,
                ...('until' in fact ? { until: dates[(i + 1) % 60] } : {}),
              }
            : fact,
        ) as Fact[]
        const list = listOfFacts(scattered, isoDay(day))
        expect(list.rows.length).toBeLessThanOrEqual(4)
        expect(JSON.stringify(list)).not.toMatch(/NaN|Infinity/)
      },
    ),
    { numRuns: 500 },
  )
})
