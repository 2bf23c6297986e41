/**
 * Fourteen mornings through the keys: heats, services, watches, a visit of 120 animals, the move to the bull. The same
 * facts are written down beside as rows of tables and read into the same herd: both herds must be equal.
 */
import { afterEach, expect, test } from 'vitest'
import { type HerdBook, openBook } from '../../source/breeding/book.ts'
import { plusDays } from '../../source/breeding/day.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import { stockOn } from '../../source/breeding/straws/stock.ts'
import { importPlan } from '../../source/exchange/csv/import/plan.ts'
import { readSheet } from '../../source/exchange/csv/reading.ts'
import { newId } from '../../source/herd/ids.ts'
import { asFacts } from '../../source/herd/recording.ts'
import { comeBack, fortnightHerd, momentOn, on, type Served, served, unserved } from './support/fortnight.ts'
import type { MemoryHerd } from './support/memory-herd.ts'
import { closeAll, instantOf, openOn, type Screen } from './support/screen.ts'

afterEach(closeAll)

const FIRST = 35
const CLOSE = 41
const VISIT = 45
const LAST = 48
const TIME = '05:15'

/** Keys of a result, as they arrive together; each by itself is proven beside. */
const keys = { pregnant: 'p', empty: 'e', unsure: 'u', twins: 't' } as const

type Row = Readonly<Record<string, string>>

/** Two weeks of work on the screen, and what was done written down as rows. */
class Fortnight {
  readonly screen: Screen
  readonly rows: Row[] = []
  s = FIRST

  constructor(screen: Screen) {
    this.screen = screen
  }

  /** The next morning. */
  async wake(s: number): Promise<void> {
    this.s = s
    this.screen.now = momentOn(s, TIME)
    this.screen.session.tick()
    await this.screen.settled()
    await this.screen.press('take')
  }

  wrote(number: string, fact: string, more: Row = {}): void {
    this.rows.push({ number, date: on(this.s), fact, ...more })
  }

  async heat(number: string): Promise<void> {
    await this.screen.send(`${number}h`)
    this.wrote(number, 'heat', { time: TIME, how: 'standing', certainty: 'sure' })
  }

  /** Served with the proposed straw: there is one kind in the flask. */
  async serve(number: string): Promise<void> {
    await this.screen.type(number)
    await this.screen.press('usual')
    if (this.screen.session.desk.slip !== undefined) await this.screen.press('agree')
    this.wrote(number, 'service', { time: TIME, sire: 'S17', kind: 'conventional', batch: '4', by: 'MK' })
  }

  /** Looked at all of the watch that are not ticked. */
  async look(numbers: readonly string[]): Promise<void> {
    await this.screen.press('look-all')
    expect(this.screen.text).toContain(`Looked at ${numbers.length} animals of the watch`)
    await this.screen.press('agree')
    for (const number of numbers) this.wrote(number, 'looked')
  }

  async form(
    number: string,
    meaning: 'hold' | 'note' | 'score' | 'calving' | 'bull-service',
    text = '',
  ): Promise<void> {
    await this.screen.type(number)
    await this.screen.press(meaning)
    await this.screen.type(text)
    await this.screen.press('accept')
  }

  async scan(
    number: string,
    result: 'pregnant' | 'empty' | 'unsure',
    age = '',
    twins = false,
  ): Promise<void> {
    await this.screen.send(`${number}${keys[result]}${age}${twins ? keys.twins : ''}\r`)
  }
}

/** Who is on the repeat-heat watch of a morning: served 18 to 24 days ago, and not seen again. */
const watched = (s: number): readonly string[] =>
  served
    .filter(({ day }) => s - day >= 18 && s - day <= 24)
    .map(({ number }) => number)
    .filter((number) => !comeBack.slice(0, s - FIRST + 1).includes(number))

/** What the vet finds: one in ten empty, one in 24 unsure, the rest in calf, every other with an age. */
function finding({ number, day }: Served, index: number) {
  const age = VISIT - day
  if (index % 10 === 3) return { number, result: 'empty', age: '', twins: false } as const
  if (index % 24 === 7) return { number, result: 'unsure', age: '', twins: false } as const
  return {
    number,
    result: 'pregnant',
    age: index % 2 === 0 ? String(age) : '',
    twins: index % 40 === 8,
  } as const
}

/** The visit: 120 animals in the order of the crush, with a misread number, a wrong result and a second look. */
async function visit(fortnight: Fortnight): Promise<void> {
  const { screen } = fortnight
  const due = served.filter(({ number }) => !comeBack.includes(number))
  // The order of the crush is nobody's: every seventh after every seventh.
  const crush = due.map((_, index) => due[(index * 7) % due.length] as Served)
  expect(new Set(crush).size).toBe(120)
  await screen.press('go', 'go-scanning')
  expect(screen.text).toContain('to come 120')
  for (const [index, cow] of crush.entries()) {
    const { number, result, age, twins } = finding(cow, index)
    if (index === 20) {
      // Misread: kept, and settled at once with the right number.
      await fortnight.scan(`${number}9`, result, age, twins)
      await screen.press('down', 'scan-enter')
      await screen.type(number)
      await screen.press('scan-enter')
    } else if (index === 50) {
      // The wrong key, taken back.
      await fortnight.scan(number, 'unsure')
      await screen.press('undo')
      await fortnight.scan(number, result, age, twins)
    } else if (index === 90) {
      // Looked at once more: the second result takes the place of the first.
      await fortnight.scan(number, 'empty')
      await fortnight.scan(number, result, age, twins)
      await screen.press('agree')
    } else await fortnight.scan(number, result, age, twins)
    fortnight.wrote(number, 'check', {
      method: 'ultrasound',
      result,
      ...(age === '' ? {} : { foetal_age: age }),
      ...(twins ? { foetuses: '2' } : {}),
    })
  }
  expect(screen.text).toMatch(/to come 0 /)
  expect(screen.text).not.toContain('To settle')
  await screen.press('back')
}

/** The mornings, one after another. */
async function fourteenMornings(fortnight: Fortnight): Promise<void> {
  const { screen } = fortnight
  for (let s = FIRST; s <= LAST; s += 1) {
    await fortnight.wake(s)
    const first = unserved[s - FIRST]
    const back = comeBack[s - FIRST]
    if (s < CLOSE && first !== undefined) {
      await fortnight.heat(first)
      await fortnight.serve(first)
    }
    if (back !== undefined) {
      await fortnight.heat(back)
      await fortnight.serve(back)
    }
    if (watched(s).length > 0) await fortnight.look(watched(s))
    if (s === FIRST) {
      await screen.press('go', 'go-ahead')
      await screen.press(...Array.from({ length: VISIT - FIRST - 1 }, () => 'down' as const))
      expect(screen.line('► ')).toContain('Mon 15 Jun')
      await screen.press('plan-visit', 'agree', 'back')
    }
    if (s === 36) {
      // A heat of the wrong cow, taken back at once.
      await screen.type('320')
      await screen.press('heat-now', 'undo')
    }
    if (s === 37) {
      await fortnight.form('510', 'hold')
      fortnight.wrote('510', 'hold')
      await fortnight.form('509', 'note', 'limps')
      fortnight.wrote('509', 'note', { note: 'limps' })
    }
    if (s === 38) {
      await fortnight.form('508', 'score', '3')
      fortnight.wrote('508', 'score', { condition: '3' })
      await fortnight.form('601', 'calving')
      fortnight.wrote('601', 'calving', { calves: '1' })
    }
    if (s === CLOSE) await move(fortnight)
    if (s === 44) {
      await fortnight.form('507', 'bull-service')
      fortnight.wrote('507', 'service', { time: TIME, natural: 'yes', sire: '902' })
    }
    if (s === VISIT) await visit(fortnight)
  }
}

/** The close date: all that are not in calf go with the two bulls, but the one on hold and the one that calved lately. */
async function move(fortnight: Fortnight): Promise<void> {
  const { screen } = fortnight
  await screen.press('first')
  expect(screen.line('► ')).toContain('Spring block: the bull goes in Fri 12 Jun')
  await screen.press('open-animal', 'record-move')
  expect(screen.text.replaceAll(/\s+/g, ' ')).toContain(
    'Record 133 animals with 901 and 902 from Fri 12 Jun 2026?',
  )
  await screen.press('agree', 'back')
  const go = [...served.map(({ number }) => number), ...unserved.filter((number) => number !== '510')]
  for (const number of go)
    for (const bull of ['901', '902'])
      fortnight.rows.push({ number, date: on(CLOSE + 1), fact: 'with-bull', bull })
}

/** A table of rows as the bytes of a CSV file. */
function csvOf(rows: readonly Row[]): Buffer {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))]
  const lines = [columns, ...rows.map((row) => columns.map((column) => row[column] ?? ''))]
  return Buffer.from(lines.map((line) => `${line.join(',')}\n`).join(''))
}

/** The herd with the rows read into it. */
function importedInto(facts: readonly Fact[], rows: readonly Row[]): readonly Fact[] {
  const seasons = csvOf([
    { block: 'spring', mating_start: on(0), ai_weeks: '6', bull_weeks: '3', scan_dates: on(VISIT) },
  ])
  const sheet = (name: string, bytes: Buffer) => {
    const read = readSheet(bytes, `${name}.csv`)
    if (!read.ok) throw new Error(`${name}.csv is not read`)
    return read.value
  }
  const today = momentOn(LAST, TIME)
  const plan = importPlan(
    facts,
    { facts: sheet('facts', csvOf(rows)), seasons: sheet('seasons', seasons) },
    { today: today.day, newId },
  )
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
  for (const { refused } of plan.value.tables) expect(refused).toEqual([])
  return [...facts, ...asFacts(plan.value.facts, { at: instantOf(today) })]
}

/** What a herd knows, without what is different each time a fact is recorded. */
const known = (book: HerdBook) =>
  Object.fromEntries(
    [...book.animals.values()].map(({ number, happenings }) => [
      number,
      happenings.map(({ fact: { id: _id, at: _at, by: _by, action: _action, ...rest } }) => rest),
    ]),
  )

test('fourteen mornings on the screen make the herd that reading the same facts from tables makes', async () => {
  const facts = fortnightHerd()
  const screen = await openOn(facts, { now: momentOn(FIRST - 1, TIME), by: 'MK', columns: 100, rows: 50 })
  const fortnight = new Fortnight(screen)
  await fourteenMornings(fortnight)

  const byKeys = openBook((screen.herd as MemoryHerd).state.facts)
  const byTables = openBook(importedInto(facts, fortnight.rows))
  expect(known(byKeys)).toEqual(known(byTables))
  expect(byKeys.allSeasons.map(({ factId: _id, ...season }) => season)).toEqual(
    byTables.allSeasons.map(({ factId: _id, ...season }) => season),
  )
  for (let s = FIRST; s <= LAST + 30; s += 1) {
    const { day } = momentOn(s, TIME)
    const [one, other] = [byKeys, byTables].map((book) => morningList(book, day))
    expect(one?.rows).toEqual(other?.rows)
    expect(one?.visits).toEqual(other?.visits)
  }
  const last = plusDays(momentOn(LAST, TIME).day, 1)
  expect(stockOn(byKeys, last).lots).toEqual(stockOn(byTables, last).lots)
  expect(byKeys.live.filter((fact) => fact.kind === 'check' && fact.date === on(VISIT))).toHaveLength(120)
}, 300_000)
