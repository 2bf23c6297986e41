/** A herd on the day of a scanning visit: Thu 28 May 2026, the spring block is visited, the autumn block is not. Invented. */
import type { Fact } from '../../../source/breeding/facts.ts'
import { ago, checked, cow, DAY, frame, heat, served } from './herd.ts'

const season = (id: string, block: string, matingStart: string, scanDates: readonly string[]): Fact => ({
  id,
  about: 'herd',
  date: '2026-01-02',
  at: '2026-01-02T00:00:00.000Z',
  kind: 'season',
  block,
  matingStart,
  aiWeeks: 6,
  bullWeeks: 3,
  scanDates,
})

/** Farm, straws, and two blocks: the spring block is scanned on the day. */
export const visitFrame = (scanDates: readonly string[] = [DAY]): readonly Fact[] => [
  ...frame().filter((fact) => fact.kind !== 'season'),
  season('spring-2026', 'spring', '2026-05-01', scanDates),
  season('autumn-2025', 'autumn', '2025-12-01', []),
  season('autumn-2026', 'autumn', '2026-11-20', []),
]

const bull = (number: string, name: string, born: string): readonly Fact[] =>
  cow(number, name, undefined, [], { sex: 'M', born, ready: true, breed: 'Angus' })

/** Three that are due, and one of each kind that something is odd about. */
export const visitHerd = (): readonly Fact[] => [
  ...visitFrame(),
  ...cow('412', 'Buttercup', 90, [served(35)]),
  ...cow('413', 'Daisy', 90, [served(40)]),
  ...cow('414', 'Elm', 90, [served(31)]),
  ...cow('415', 'Flora', 90, [served(26)]),
  ...cow('416', 'Gean', 120, [served(55), checked(23, 'pregnant')]),
  ...cow('417', 'Hazel', 90),
  ...cow('418', 'Ivy', 90, [served(35), { kind: 'left', date: ago(5) }]),
  ...cow('419', 'Jay', 90, [served(35)], { block: 'autumn' }),
  ...cow('420', 'Kingcup', 90, [served(50), heat(28)]),
  ...cow('421', 'Lark', 90, [], { officialId: 'UK 123450 1 00777' }),
  ...cow('422', 'Maple', 90, [], { officialId: 'UK 123450 2 00777' }),
  ...bull('901', 'Boris', '2022-03-01'),
]
