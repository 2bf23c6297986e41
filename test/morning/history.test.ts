import fc from 'fast-check'
import { expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { voidedBy } from '../../source/breeding/voided.ts'
import { asFacts } from '../../source/herd/recording.ts'
import { foundByNumber, foundByText } from '../../source/morning/find.ts'
import { historyOf, putBack, takeBack, voiding } from '../../source/morning/history.ts'
import { cow, DAY, frame, herd } from '../terminal/support/herd.ts'

const at = new Date('2026-05-28T04:15:00Z')
const looked = (about: string): readonly Fact[] => asFacts([{ kind: 'looked', about, date: DAY }], { at })
const undo = (log: readonly Fact[]): readonly Fact[] => {
  const { last } = historyOf(log)
  return last === undefined ? log : [...log, ...asFacts(takeBack(last), { at })]
}
const redo = (log: readonly Fact[]): readonly Fact[] => {
  const { takenBack } = historyOf(log)
  return takenBack === undefined ? log : [...log, ...asFacts(putBack(takenBack.by), { at })]
}
const live = (log: readonly Fact[]): readonly string[] => {
  const voided = voidedBy(log)
  return log.filter((fact) => fact.kind === 'looked' && !voided.has(fact.id)).map((fact) => fact.about)
}

test('taking back and putting back behave as a plain list of deeds with a mark in it, whatever the order', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom('do', 'undo', 'redo'), { maxLength: 40 }), (steps) => {
      let log: readonly Fact[] = []
      let done: string[] = []
      let back: string[] = []
      steps.forEach((step, index) => {
        if (step === 'do') {
          log = [...log, ...looked(`cow${index}`)]
          done = [...done, `cow${index}`]
          back = []
        } else if (step === 'undo') {
          log = undo(log)
          const last = done.at(-1)
          if (last !== undefined) {
            done = done.slice(0, -1)
            back = [...back, last]
          }
        } else {
          log = redo(log)
          const last = back.at(-1)
          if (last !== undefined) {
            back = back.slice(0, -1)
            done = [...done, last]
          }
        }
        expect([...live(log)].sort()).toEqual([...done].sort())
      })
    }),
    { numRuns: 200 },
  )
})

test('a deed of many facts is taken back whole', () => {
  const log = asFacts(
    ['a', 'b', 'c'].map((about) => ({ kind: 'looked' as const, about, date: DAY })),
    { at },
  )
  expect(live(undo(log))).toEqual([])
  expect([...live(redo(undo(log)))]).toEqual(['a', 'b', 'c'])
})

test('each correction carries the date of the fact that it voids', () => {
  const log = asFacts([{ kind: 'looked', about: 'a', date: '2026-05-20' }], { at })
  const [correction] = undo(log).slice(1)
  expect(correction).toMatchObject({ kind: 'correction', date: '2026-05-20', voids: log[0]?.id, about: 'a' })
})

test('what was struck out for its own sake is not taken back a second time', () => {
  const first = looked('a')
  const second = looked('b')
  const [fact] = second as [Fact]
  const log = [...first, ...second, ...asFacts([voiding(fact, 'recorded by mistake')], { at })]
  // The strike itself is the last deed; then a, since nothing of b is left.
  const once = undo(log)
  expect([...live(once)]).toEqual(['a', 'b'])
  expect([...live(undo(undo(once)))]).toEqual([])
})

test('facts without an action, read from elsewhere, are not taken back', () => {
  expect(historyOf(herd()).last).toBeUndefined()
})

test('a number is found exactly before any ear tag that ends so', () => {
  const book = openBook([...frame(), ...cow('12', 'Ada', 80), ...cow('412', 'Bea', 80)])
  expect(foundByNumber(book, '12')).toMatchObject({ by: 'number', animal: { number: '12' } })
  expect(foundByNumber(book, '0412')).toMatchObject({ by: 'tag', animal: { number: '412' } })
  expect(foundByNumber(book, '2')).toEqual({ many: 0 })
  expect(foundByNumber(book, '0000')).toEqual({ many: 0 })
})

test('an ear tag end that several share names none of them', () => {
  const tag = { officialId: 'XX 999999 700555' }
  const book = openBook([...cow('1', 'Ada', 80, [], tag), ...cow('2', 'Bea', 80, [], tag)])
  expect(foundByNumber(book, '0555')).toEqual({ many: 2 })
})

test('a name is found by any part of it, those that begin with it first', () => {
  const book = openBook([...cow('1', 'Larkspur', 80), ...cow('2', 'Spurge', 80), ...cow('3', 'Ada', 80)])
  expect(foundByText(book, ' SPUR ', 8).map((animal) => animal.number)).toEqual(['2', '1'])
  expect(foundByText(book, '', 8)).toEqual([])
  expect(foundByText(book, 'a', 1)).toHaveLength(1)
})
