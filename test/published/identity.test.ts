import { expect, test } from 'vitest'
import { earTagFits } from '../../source/breeding/identity/ear-tag.ts'
import { electronicFits } from '../../source/breeding/identity/electronic.ts'
import { readInternationalId } from '../../source/breeding/identity/international.ts'
import { identityNotices } from '../../source/breeding/identity/notices.ts'

// Tags as they are printed in published guidance on cattle ear tags of Great Britain; the rule (remainder of the
// eleven digits by 7, plus 1) is derived from them.
test.each(['UK 123450 600001', 'UK 284205 600015', 'UK 284205 700016', 'UK 284205 100017'])(
  '%s is right',
  (tag) => {
    expect(earTagFits(tag)).toBe(true)
    expect(earTagFits(tag.replaceAll(' ', ''))).toBe(true)
  },
)

test('UK 123456 600001 is wrong, and so is every other check digit of a right tag', () => {
  expect(earTagFits('UK 123456 600001')).toBe(false)
  for (const digit of [0, 1, 2, 3, 4, 5, 7, 8, 9]) expect(earTagFits(`UK 123450 ${digit}00001`)).toBe(false)
})

test('a tag of another sort is not judged', () => {
  for (const tag of ['IE 15 12345 8 1234', 'NL 123456789', '412', '']) expect(earTagFits(tag)).toBeUndefined()
})

// ISO 11784, Radio frequency identification of animals, code structure: three digits for the country, twelve for the
// animal, which has 38 bits.
test('15 digits, the animal up to 274877906943', () => {
  expect(2 ** 38 - 1).toBe(274_877_906_943)
  expect(electronicFits('826274877906943')).toBe(true)
  expect(electronicFits('826 012345678901')).toBe(true)
  expect(electronicFits('826274877906944')).toBe(false)
  expect(electronicFits('82601234567890')).toBe(false)
  expect(electronicFits('8260123456789012')).toBe(false)
  expect(electronicFits('82601234567890A')).toBe(false)
})

// Interbull, File 200: breed 3, country 3, sex 1, number 12.
test('an international ID of 19 characters', () => {
  expect(readInternationalId('HOLCANM000000A12345')).toEqual({
    breed: 'HOL',
    country: 'CAN',
    sex: 'M',
    number: '000000A12345',
  })
  for (const wrong of ['HOLCANM00000A12345', 'HOLCANX000000A12345', 'holcanm000000A12345', ''])
    expect(readInternationalId(wrong)).toBeUndefined()
})

test('what is odd about an animal is named, and nothing else', () => {
  const record = {
    id: 'f',
    about: 'a',
    date: '2026-01-01',
    at: '2026-01-01T00:00:00Z',
    kind: 'animal',
    number: '412',
  } as const
  const codes = (more: object) => identityNotices({ ...record, sex: 'F', ...more }).map(({ code }) => code)
  expect(
    codes({
      officialId: 'UK 123450 600001',
      electronicId: '826274877906943',
      internationalId: 'HOLGBRF000000A12345',
    }),
  ).toEqual([])
  expect(
    codes({ officialId: 'UK 123456 600001', electronicId: '1', internationalId: 'HOLCANM000000A12345' }),
  ).toEqual(['ear-tag-odd', 'electronic-odd', 'international-sex'])
  expect(codes({ internationalId: 'Bess' })).toEqual(['international-odd'])
  // Nothing is odd about an animal without them, or with a tag that cannot be judged.
  expect([codes({}), codes({ officialId: 'IE 15 12345 8 1234' })]).toEqual([[], []])
})
