import { afterEach, expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import { herd, now } from './support/herd.ts'
import { closeAll, openOn, type Screen } from './support/screen.ts'

afterEach(closeAll)

const factsOf = (screen: Screen, number: string) =>
  openBook(screen.session.desk.log)
    .byNumber.get(number)
    ?.happenings.map(({ fact }) => fact) ?? []

test('a fact is changed in its form: the old value shows, the old fact stays on record as voided, undo brings it back', async () => {
  const screen = await openOn(herd(), { now, by: 'MK', rows: 30 })
  await screen.type('412')
  await screen.press('score')
  await screen.type('3')
  await screen.press('accept')
  await screen.type('412')
  await screen.press('open-animal')
  const before = factsOf(screen, '412')
  await screen.press('change-fact')
  expect(screen.text).toContain('On record: body condition 3')
  await screen.type('2.5')
  await screen.press('accept')
  const after = factsOf(screen, '412')
  expect(after).toHaveLength(before.length)
  expect(after.at(-1)).toMatchObject({ kind: 'score', condition: 2.5 })
  expect(screen.session.desk.log.at(-2)).toMatchObject({ kind: 'correction', reason: 'changed' })
  await screen.press('undo')
  expect(factsOf(screen, '412')).toEqual(before)
})

test('what cannot be right is said, and nothing is recorded', async () => {
  const screen = await openOn(herd(), { now, by: 'MK', rows: 30 })
  await screen.type('412')
  await screen.press('score')
  await screen.type('3')
  await screen.press('accept')
  await screen.type('412')
  await screen.press('open-animal', 'change-fact')
  const { length } = screen.session.desk.log
  await screen.type('9')
  await screen.press('accept')
  expect(screen.text).toContain('9 does not fit: type 1 to 5.')
  await screen.press('cancel')
  expect(screen.session.desk.log).toHaveLength(length)
})

test('a service of hers opens with its straw, a bull service with the bull', async () => {
  const screen = await openOn(herd(), { now, by: 'MK', rows: 34 })
  await screen.type('412')
  await screen.press('bull-service')
  await screen.type('B7')
  await screen.press('accept')
  await screen.type('412')
  await screen.press('open-animal', 'change-fact')
  expect(screen.line('Bull')).toContain('B7')
})
