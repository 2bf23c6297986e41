import { expect, test } from 'vitest'
import { standingOn } from '../../source/breeding/standing.ts'
import { openDesk } from '../../source/morning/desk.ts'
import { strawFor } from '../../source/screens/animal/straw.ts'
import { calving, cow, dayAt, factsOf, heat, on } from '../breeding/support.ts'

const flask = (['sexed', 'conventional'] as const).map((straw) => ({
  kind: 'stock-take' as const,
  date: on(-10),
  sire: `${straw}-sire`,
  straw,
  count: 20,
}))

/** Why the straw of a cow on heat since an hour of day 5 is this one, where she is served by the hour. */
function whyAt(time: string) {
  const facts = factsOf([cow(calving(-90), heat(-16), heat(5, { time }))], {
    policy: { servingTime: 'by-the-hour' },
    extra: flask,
  })
  const desk = openDesk(facts, { day: dayAt(5), time: '05:15' }, undefined)
  const [row] = desk.page.list.rows
  const animal = desk.book.animals.get(row?.animal ?? '')
  if (row === undefined || animal === undefined) throw new Error('no row')
  return { row, why: strawFor(desk, standingOn(desk.book, animal, dayAt(5)), row) }
}
const codes = (why: ReturnType<typeof whyAt>['why']): string[] => why?.reasons.map(({ code }) => code) ?? []

test('a straw that is not sexed because of the hours says so, in the words of the milking where she is served', () => {
  const { row, why } = whyAt('03:00')
  expect(row.straw).toMatchObject({ straw: 'conventional' })
  expect(codes(why)).toContain('outside-sexed-hours')
  expect(codes(why)).not.toContain('sexed-fits')
  expect(why?.sire).toMatchObject({ sire: 'conventional-sire', inbreeding: 0 })
})

test('where the hours suit, the sexed straw says that all fits', () => {
  const { row, why } = whyAt('00:30')
  expect(row.straw).toMatchObject({ straw: 'sexed' })
  expect(codes(why)).toContain('sexed-fits')
  expect(why?.sire?.sire).toBe('sexed-sire')
})
