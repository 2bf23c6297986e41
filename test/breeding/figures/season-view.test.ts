import { describe, expect, test } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import type { Fact } from '../../../source/breeding/facts.ts'
import { type SeasonView, seasonShown, seasonView } from '../../../source/breeding/figures/season-view.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import { finished } from '../../../source/breeding/steps.ts'
import {
  type Animal,
  bookOf,
  calving,
  cow,
  dayAt,
  empty,
  factsOf,
  type Herd,
  heat,
  matingStart,
  on,
  pregnant,
  service,
} from '../support.ts'

const herd: readonly Animal[] = [
  cow({ number: '1' }, calving(-70), service(2), pregnant(40)),
  cow({ number: '2' }, calving(-70), service(5), heat(26)),
  cow({ number: '3' }, calving(-10)),
  { record: { number: 'B1', sex: 'M', block: undefined, ready: true, born: on(-1200) }, happenings: [] },
]
const twoYears: Herd = { seasons: [{ matingStart: on(-365) }, {}, { matingStart: on(365) }] }

/** The view of the season of a block that begins on a season day. */
function viewAt(s: number, facts: readonly Fact[] = factsOf(herd), starts = 0): SeasonView {
  const book = openBook(facts)
  const season = book.allSeasons.find((one) => one.matingStart === dayAt(starts))
  if (season === undefined) throw new Error('no season')
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, dayAt(s)))
  return seasonView(book, standings, season, dayAt(s))
}

test('season day and phase of the morning', () => {
  const view = viewAt(45)
  expect([view.s, view.phase, view.today, view.season.matingStart]).toEqual([
    45,
    'bull',
    dayAt(45),
    matingStart,
  ])
})

test('figures, forecast, assumptions, bulls and last chances of a season that is on', () => {
  const view = viewAt(30)
  expect(view.figures.cohort).toBe(3)
  expect(view.figures.submission.all.numerator).toBe(2)
  expect(view.counted.members).toHaveLength(3)
  expect(view.forecast?.animals).toBe(3)
  expect(view.assumptions.map(({ code }) => code)).toContain('bulls-on-hand')
  expect(view.bulls).toMatchObject({ turnOut: dayAt(42), onHand: 1, needed: view.forecast?.bullsNeeded })
  expect(viewAt(15).lastChances.map(({ standing }) => standing.animal.number)).toEqual(['3'])
})

test('what if: the forecast with a change of the plan', () => {
  const view = viewAt(30)
  expect(view.whatIf({ bulls: 0 })?.bulls).toBe(0)
  expect(view.whatIf({ aiWeeks: 1 })?.lastAiDay).toBe(48)
  expect(view.forecast?.lastAiDay).toBe(41)
})

test('changes worth a look rest on the bulls on hand, or on as many as are needed', () => {
  const bulls = (facts: readonly Fact[]) => viewAt(30, facts).changes.flatMap(({ bulls: many }) => many ?? [])
  expect(bulls(factsOf(herd))).toEqual([0, 2])
  expect(bulls(factsOf(herd.slice(0, 3)))).toEqual([1, 3])
  const seen = viewAt(30).changes.flatMap(({ heatSeen }) => heatSeen ?? [])
  expect(seen).toEqual([0.8, 0.95])
})

test('84 days after the bull nothing lies ahead any more', () => {
  expect(viewAt(62 + 84).isOver).toBe(false)
  const over = viewAt(62 + 85)
  expect([over.isOver, over.forecast, over.bulls, over.changes, over.assumptions]).toEqual([
    true,
    undefined,
    undefined,
    [],
    [],
  ])
  expect(over.figures.cohort).toBe(3)
})

test('without bull weeks there is no plan of bulls', () => {
  expect(viewAt(30, factsOf(herd.slice(0, 1), { bullWeeks: 0 })).bulls).toBeUndefined()
})

describe('in steps', () => {
  test('a part is known once it was reckoned, and is then the same', () => {
    const view = viewAt(31)
    expect(view.knows('figures')).toBe(false)
    finished(view.reckon('figures'))
    expect(view.knows('figures')).toBe(true)
    const { counted, figures } = view
    finished(view.reckon('figures'))
    expect(view.figures).toBe(figures)
    expect(view.counted).toBe(counted)
    expect(view.knows('earlier')).toBe(false)
    finished(view.reckon('earlier'))
    expect(view.knows('earlier')).toBe(true)
    expect(view.earlier).toEqual([])
  })

  test('each change is a part of its own', () => {
    const view = viewAt(32)
    finished(view.reckon({ bulls: 0 }))
    expect([view.knows({ bulls: 0 }), view.knows({}), view.knows({ bulls: 1 })]).toEqual([true, false, false])
    const reckoned = view.whatIf({ bulls: 0 })
    expect(reckoned?.bulls).toBe(0)
    finished(view.reckon({}))
    expect(view.knows({})).toBe(true)
    expect(view.forecast?.bulls).toBe(1)
    expect(view.whatIf({ bulls: 0 })).toBe(reckoned)
  })

  test('of a season that is over no forecast is to be reckoned', () => {
    const view = viewAt(62 + 85)
    expect([view.knows({}), view.knows('figures')]).toEqual([true, false])
    expect([...view.reckon({})]).toEqual([])
    expect(view.forecast).toBeUndefined()
  })
})

describe('seasons before', () => {
  const archive = (before: number): Fact =>
    ({
      id: 'a1',
      about: 'herd',
      kind: 'archive',
      date: on(10),
      at: '2026-05-28T04:15:09.120Z',
      before: on(before),
      file: 'old.json',
      took: [],
    }) as unknown as Fact

  test('of the block, the latest first', () => {
    const starts = (view: SeasonView) => view.earlier.map(({ season }) => season.matingStart - matingStart)
    expect(starts(viewAt(400, factsOf(herd, twoYears), 365))).toEqual([0, -365])
    expect(starts(viewAt(30, factsOf(herd, twoYears)))).toEqual([-365])
    const blocks: Herd = { seasons: [{ block: 'autumn', matingStart: on(-200) }, {}] }
    expect(starts(viewAt(30, factsOf(herd, blocks)))).toEqual([])
    expect(viewAt(30, factsOf(herd, twoYears)).earlier[0]?.s).toBe(395)
  })

  test('those whose facts went to an archive are not reckoned; where they went is told', () => {
    const facts = factsOf(herd, twoYears)
    const older = viewAt(30, [...facts, archive(-100)])
    expect(older.earlier).toEqual([])
    expect(older.archive?.file).toBe('old.json')
    // On its day -35 the season of two years ago begins: an archive of what was before leaves it whole.
    const before = viewAt(30, [...facts, archive(-400)])
    expect(before.earlier).toHaveLength(1)
    expect(before.archive).toBeUndefined()
    const one = viewAt(400, [...facts, archive(-100)], 365)
    expect(one.earlier.map(({ season }) => season.matingStart)).toEqual([matingStart])
    expect(one.archive?.file).toBe('old.json')
    expect(viewAt(30, facts).archive).toBeUndefined()
  })
})

test('one view of a book, a season and a day', () => {
  const book = bookOf(herd, twoYears)
  const [first, second] = book.allSeasons
  if (first === undefined || second === undefined) throw new Error('no seasons')
  const at = (s: number, season = second) => seasonView(book, [], season, dayAt(s))
  expect(at(30)).toBe(at(30))
  expect(at(31)).not.toBe(at(30))
  expect(at(30, first)).not.toBe(at(30))
  expect(at(30, first).season).toBe(first)
})

describe('the season shown', () => {
  const blocks = {
    seasons: [{}, { block: 'autumn', matingStart: on(100) }, { block: 'winter', matingStart: on(-140) }],
  }
  const shown = (s: number, block?: string) => seasonShown(bookOf(herd, blocks), dayAt(s), block)?.block

  test.each([
    ['the block that is bred now', 10, 'spring'],
    ['the block whose bull weeks are on', 60, 'spring'],
    ['the block that is next rather than one that closes', 70, 'autumn'],
    ['the block that closes rather than one that is closed', -50, 'winter'],
  ] as const)('%s', (_, s, block) => {
    expect(shown(s)).toBe(block)
  })

  test('the block that is asked for', () => {
    expect(['spring', 'autumn', 'winter', 'summer'].map((one) => shown(10, one))).toEqual([
      'spring',
      'autumn',
      'winter',
      undefined,
    ])
  })
})

test('an empty cow is asked about at the final check', () => {
  const view = viewAt(105, factsOf([cow({ number: '4' }, calving(-70), service(2), empty(104))]))
  expect(view.lastChances.map(({ reason }) => reason)).toEqual(['empty'])
})
