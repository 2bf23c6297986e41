import { describe, expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import { openDesk, withDay } from '../../source/morning/desk.ts'
import { settled } from '../../source/morning/tick.ts'
import { calving, correction, cow, dayAt, factsOf, heat, on, service } from '../breeding/support.ts'

const log = factsOf([
  cow({ number: '1' }, calving(-60), heat(20)),
  cow({ number: '2' }, calving(-70), service(0, { id: 'served' })),
])
const next = (told: object, about: string, id: string): Fact =>
  ({ ...told, about, id, at: '2026-07-01T05:00:00Z' }) as unknown as Fact
const served = next(service(20), 'animal-1', 'tick')
const undone = next(correction('served'), 'animal-2', 'undone')
const farm = next({ kind: 'policy', date: on(20), set: { watchFrom: 21 } }, 'herd', 'policy')

describe('the list shown is that of all facts', () => {
  const desk = openDesk(log, { day: dayAt(20), time: '05:15' }, 'AB')

  test.each([
    ['a tick', [...log, served]],
    ['a correction', [...log, undone]],
    ['a change of the policy', [...log, farm]],
    ['another log', log.slice(0, -1)],
    ['the same log', log],
  ] as const)('after %s', (_, after) => {
    expect(settled(desk, after).page.list).toEqual(morningList(openBook(after), dayAt(20)))
  })

  test('tick after tick, from day to day', () => {
    let now = desk
    const grown = [...log]
    for (const [fact, day] of [
      [served, 20],
      [undone, 41],
      [farm, 41],
    ] as const) {
      grown.push(fact)
      now = settled(withDay(now, dayAt(day)), [...grown])
      expect(now.page.list).toEqual(morningList(openBook(grown), dayAt(day)))
    }
  })

  test('animals to whom nothing happened keep their records', () => {
    const after = settled(desk, [...log, served])
    expect(after.book.animals.get('animal-2')).toBe(desk.book.animals.get('animal-2'))
  })
})
