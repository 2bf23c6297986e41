import { defaultRates, type Rates } from '../../../source/breeding/chances/rates.ts'
import type { StrawKind } from '../../../source/breeding/facts.ts'
import type { AnimalOutlook, SeasonDays } from '../../../source/breeding/forecast/outlook.ts'

/** A cow with one conventional straw after the other and nothing known of her cycle. */
export const cow: AnimalOutlook = {
  anchor: { kind: 'evenly', day: 0, days: 21 },
  chancesUsed: 0,
  earliestDay: 0,
  leftToBull: false,
  unwatched: new Set(),
  maiden: false,
  cycleMean: 22,
  straws: [['conventional']],
  gestation: { conventional: 280, sexed: 280, beef: 283, natural: 282 },
}

/** Six weeks of AI, three with the bull, seen from a morning; heats soon after a service are served too. */
export const seasonOn = (today: number): SeasonDays => ({
  today,
  lastAiDay: 41,
  lastBullDay: 62,
  finalCheckDay: 104,
  returnsFrom: 0,
  chances: 2,
})

/** No late returns, no losses. */
export const plainRates = (heatSeen: number, conception: number): Rates => ({
  ...defaultRates,
  heatSeen,
  lateReturn: { ...defaultRates.lateReturn, share: 0 },
  losses: [],
  conception: { ...defaultRates.conception, cowConventional: conception },
})

/** Straws by season day: one kind until day 20, conventional until day 34, beef in the last week. */
export const planFrom = (first: StrawKind): StrawKind[] =>
  Array.from({ length: 42 }, (_, day) => (day >= 35 ? 'beef' : day <= 20 ? first : 'conventional'))

/** Cows by conventional and sexed straws; of three one has calved lately, the others have been seen on heat. */
export const herdOf = (size: number): AnimalOutlook[] =>
  Array.from({ length: size }, (_, i) => ({
    ...cow,
    straws: [planFrom('sexed'), planFrom('conventional')],
    anchor: i % 3 === 0 ? { kind: 'calved', day: -(i % 50) } : { kind: 'heat', day: -(i % 18) - 1 },
    earliestDay: i % 3 === 0 ? Math.max(0, 42 - (i % 50)) : 0,
  }))
