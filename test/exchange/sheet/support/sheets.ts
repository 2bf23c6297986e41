import { openBook } from '../../../../source/breeding/book.ts'
import { isoDay } from '../../../../source/breeding/day.ts'
import type { NewFact } from '../../../../source/breeding/facts.ts'
import { morningList } from '../../../../source/breeding/morning-list.ts'
import { type SheetContent, sheetContent } from '../../../../source/exchange/sheet/content.ts'
import { cow, herd, season } from '../../csv/support/herd.ts'

/** Cows on heat on 8 May, and straws for them. */
export const onHeat = (count: number, first: { readonly name?: string } = {}): NewFact[] => [
  season,
  {
    about: 'herd',
    date: '2026-04-20',
    kind: 'stock-take',
    sire: 'S17',
    straw: 'conventional',
    flask: '1',
    canister: '3',
    count: 500,
  },
  ...Array.from({ length: count }, (_, place) => String(100 + place)).flatMap((number, place): NewFact[] => [
    cow(number, {
      block: 'spring',
      lactation: 2,
      name: `Bess ${place}`,
      ...(place === 0 ? first : {}),
    }),
    { about: number, date: '2026-02-10', kind: 'calving' },
    { about: number, date: '2026-05-08', time: '05:00', kind: 'heat', how: 'standing', certainty: 'sure' },
  ]),
]

/** The sheet of a herd of these facts. */
export const contentOf = (facts: readonly NewFact[], date: string): SheetContent => {
  const book = openBook(herd(...facts))
  return sheetContent(book, morningList(book, isoDay(date)))
}

/** Names and numbers as long as a hostile file may bring them. */
export const hostile = (): SheetContent => {
  const content = contentOf(onHeat(30), '2026-05-08')
  const names = [
    'W'.repeat(90),
    'a quiet cow of the old line '.repeat(4),
    '\u4e2d'.repeat(40),
    '<b>&amp;',
    '',
  ]
  const numbers = ['12345', '1234567', 'UK123450700101', 'W'.repeat(40), '7']
  return {
    ...content,
    farm: 'The Farm of the Long Acre below the Hill with the Two Windmills and the Pond',
    sections: content.sections.map((section) => ({
      ...section,
      rows: section.rows.map((row, place) => ({
        ...row,
        name: names[place % names.length] ?? '',
        number: `${numbers[place % numbers.length]}${place}`,
        warnings: [...row.warnings, 'a warning that has many words to say'],
        straw: `${row.straw} ${'M'.repeat((place % 3) * 20)}`,
        place: `flask ${'behind the bulk tank '.repeat(place % 4)}, canister 3`,
      })),
    })),
  }
}
