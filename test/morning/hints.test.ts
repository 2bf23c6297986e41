import { describe, expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { type Desk, openDesk } from '../../source/morning/desk.ts'
import { hintOf } from '../../source/morning/hints.ts'
import { calving, cow, dayAt, factsOf, heat, on, service } from '../breeding/support.ts'

const herd = factsOf([1, 2, 3, 4, 5].map((n) => cow({ number: String(n) }, calving(-60), service(0))))
/** Who gives no initials. */
const NOBODY = ''
let made = 0
const did = (kind: string, s: number, by = 'AB'): Fact => {
  made += 1
  return {
    ...heat(s, kind === 'heat' ? {} : { kind }),
    id: `did${made}`,
    action: `deed${made}`,
    about: 'animal-1',
    at: `${on(s)}T05:00:00Z`,
    ...(by === NOBODY ? {} : { by }),
  } as unknown as Fact
}
const desk = (log: readonly Fact[], by = 'AB'): Desk => ({
  ...openDesk(log, { day: dayAt(21), time: '05:15' }, by === NOBODY ? undefined : by),
  slip: undefined,
})
const hint = (...more: readonly Fact[]) => hintOf(desk([...herd, ...more]))

describe('one at a time, each gone once it was done', () => {
  test('what is needed first: a season, animals', () => {
    expect(hintOf(desk(herd.filter(({ kind }) => kind !== 'season')))).toBe('no-season')
    expect(hintOf(desk(herd.filter(({ about }) => about === 'herd')))).toBe('no-animal')
  })

  test('then the usual key, a heat, the whole watch', () => {
    expect(hint()).toBe('usual')
    expect(hint(did('note', 21))).toBe('heat')
    expect(hint(did('heat', 21))).toBe('look-all')
    expect(hint(did('heat', 20), did('looked', 20))).toBeUndefined()
  })

  test('nobody is told after three mornings', () => {
    expect(hint(did('note', 18), did('note', 19))).toBe('heat')
    expect(hint(did('note', 18), did('note', 19), did('note', 20))).toBeUndefined()
  })

  test('who is new to the farm is told, whatever others have done', () => {
    const others = [18, 19, 20].map((s) => did('heat', s, 'OB'))
    expect(hint(...others)).toBe('usual')
    expect(hintOf(desk([...herd, ...others], 'OB'))).toBeUndefined()
  })

  test('what was read from tables counts for nobody', () => {
    const read = [did('heat', 19, NOBODY), did('heat', 20, NOBODY)].map((fact) => ({
      ...fact,
      action: 'read',
    }))
    expect(hintOf(desk([...herd, ...read], NOBODY))).toBe('usual')
    expect(hintOf(desk([...herd, did('heat', 20, NOBODY)], NOBODY))).toBe('look-all')
  })
})

test('never in the way: not while something is said, typed or open, nor on another day', () => {
  const shown = desk(herd)
  expect(hintOf({ ...shown, typed: '4' })).toBeUndefined()
  expect(hintOf({ ...shown, said: { tone: 'done', code: 'recorded', facts: [] } })).toBeUndefined()
  expect(hintOf({ ...shown, slip: { is: 'menu' } })).toBeUndefined()
  expect(hintOf({ ...shown, places: [...shown.places, { at: 'help', top: 0 }] })).toBeUndefined()
  expect(hintOf({ ...shown, now: { ...shown.now, day: dayAt(22) } })).toBeUndefined()
})
