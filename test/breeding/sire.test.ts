import { describe, expect, test } from 'vitest'
import { sireOf } from '../../source/breeding/sire.ts'
import { bookOf, type Happening, on } from './support.ts'

const counted = (s: number, more: object = {}): Happening => ({
  kind: 'stock-take',
  date: on(s),
  sire: 'S1',
  straw: 'conventional',
  count: 9,
  ...more,
})
const recorded = (more: object): Happening => ({
  kind: 'animal',
  date: on(0),
  about: 'bull',
  number: 'S1',
  sex: 'M',
  ...more,
})
const known = (...extra: Happening[]) => sireOf(bookOf([], { extra }), 'S1')
const traits = { breed: 'Jersey', easyCalving: true, gestationDays: 279 }

describe('what is known of a sire', () => {
  test('nothing but his code', () => {
    const nothing = { name: undefined, breed: undefined, easyCalving: undefined, gestationDays: undefined }
    expect(known()).toEqual({ code: 'S1', ...nothing })
    expect(known(counted(0, { sire: 'S2', ...traits }))).toEqual({ code: 'S1', ...nothing })
  })

  test('told with his straws, where a later count tells more', () => {
    expect(known(counted(0, { sireName: 'Bramble', ...traits }))).toEqual({
      code: 'S1',
      name: 'Bramble',
      ...traits,
    })
    const twice = known(
      counted(5, { breed: 'Angus', easyCalving: false }),
      counted(0, { sireName: 'Bramble', ...traits }),
    )
    expect(twice).toEqual({
      code: 'S1',
      name: 'Bramble',
      breed: 'Angus',
      easyCalving: false,
      gestationDays: 279,
    })
  })

  test('his own record goes before his straws', () => {
    const own = { name: 'Thorn', breed: 'Angus', easyCalving: false, gestationDays: 283 }
    expect(known(recorded(own), counted(0, { sireName: 'Bramble', ...traits }))).toEqual({
      code: 'S1',
      ...own,
    })
    expect(known(recorded({ name: 'Thorn' }), counted(0, traits))).toEqual({
      code: 'S1',
      name: 'Thorn',
      ...traits,
    })
  })

  test('by his international ID', () => {
    const book = bookOf([], { extra: [recorded({ number: '90', internationalId: 'X1', breed: 'Angus' })] })
    expect(sireOf(book, 'X1')).toMatchObject({ code: 'X1', breed: 'Angus' })
  })

  test('asked again the same, and of each herd its own', () => {
    const [one, other] = [bookOf([], { extra: [counted(0, traits)] }), bookOf([])]
    expect(sireOf(one, 'S1')).toBe(sireOf(one, 'S1'))
    expect(sireOf(other, 'S1').breed).toBeUndefined()
  })
})
