/**
 * What became of an animal of the cohort.
 */
import type { HerdBook } from '../book.ts'
import type { Cycle } from '../cycle.ts'
import type { Day } from '../day.ts'
import { gestationDays } from '../gestation.ts'
import { dayOfSeason, PRE_MATING, type Season, seasonDay } from '../season.ts'
import { sireOf } from '../sire.ts'
import type { Member } from './cohort.ts'

/** `day` is a season day. In calf: conceived then, and not lost since. Open: not in calf, known up to and with that day. */
export type Outcome =
  | { readonly kind: 'in-calf'; readonly day: number }
  /** Found empty after the season. */
  | { readonly kind: 'empty' }
  /** Left before a result. */
  | { readonly kind: 'left'; readonly day: number }
  /** Not known: open for certain until the day before `day` only. */
  | { readonly kind: 'unknown'; readonly day: number }

/** The conception of a cycle that a calving ended, where no check told of it. */
function conceivedToCalving({ services }: Cycle, calved: Day, book: HerdBook): Day | undefined {
  const conceptions = services.map((service) => {
    const sire = service.sire === undefined ? {} : sireOf(book, service.sire)
    return {
      day: service.day,
      early: Math.abs(service.day + gestationDays(sire, service.maiden, book.policy) - calved),
    }
  })
  const [nearest] = conceptions.toSorted((a, b) => a.early - b.early)
  return nearest !== undefined && nearest.early <= 12
    ? nearest.day
    : ((calved - book.policy.defaultGestation) as Day)
}

/** Conception in the season, not lost by its end: a pregnant result by then, or a calving later. */
function conceptionIn({ now, end }: Member, book: HerdBook, season: Season): number | undefined {
  const inSeason = (day: Day | undefined): number | undefined => {
    const s = day === undefined ? undefined : seasonDay(season, day)
    return s !== undefined && s >= PRE_MATING && s <= season.bullEnd + 15 ? s : undefined
  }
  if (end.pregnancy !== undefined) return inSeason(end.pregnancy.conception?.day)
  for (const [i, cycle] of now.cycles.entries()) {
    const next = now.cycles[i + 1]
    if (next?.openedBy !== 'calving' || next.opened === undefined) continue
    const found = inSeason(conceivedToCalving(cycle, next.opened, book))
    if (found !== undefined) return found
  }
  return inSeason(now.pregnancy?.conception?.day)
}

/** Found empty late enough for a calf of the bull to be found, or conceived in a later season without a calving between. */
function foundEmpty({ now, end }: Member, book: HerdBook, season: Season): boolean {
  const later = now.pregnancy?.conception?.day
  if (later !== undefined && later > end.today && now.cycles.length === end.cycles.length) return true
  const check = end.lastCheck
  if (check?.fact.result !== 'empty' || check.day <= dayOfSeason(season, season.bullEnd)) return false
  const natural = end.services.findLast(({ ai }) => !ai)?.day ?? Number.NEGATIVE_INFINITY
  const withBull = Math.max(end.lastWithBull ?? Number.NEGATIVE_INFINITY, natural)
  return check.day - withBull >= book.policy.finalCheckDays
}

/** First season day on which it is not known any more that she is open. */
function openUntil({ now, services }: Member, season: Season): number {
  const unsettled = services.find(({ end }) => end === 'unknown')
  const bull =
    seasonDay(season, now.today) > season.aiEnd + 1 && season.bullEnd > season.aiEnd
      ? season.aiEnd + 1
      : undefined
  const service = unsettled === undefined ? undefined : seasonDay(season, unsettled.service.day)
  return Math.max(
    0,
    Math.min(
      seasonDay(season, now.today),
      service ?? Number.POSITIVE_INFINITY,
      bull ?? Number.POSITIVE_INFINITY,
    ),
  )
}

/**
 * What became of an animal of the cohort, as known on the day of the figures.
 *
 * @example outcomeOf(member, book, season) // { kind: 'in-calf', day: 12 }
 */
export function outcomeOf(member: Member, book: HerdBook, season: Season): Outcome {
  const conceived = conceptionIn(member, book, season)
  if (conceived !== undefined) return { kind: 'in-calf', day: Math.min(conceived, season.bullEnd) }
  if (foundEmpty(member, book, season)) return { kind: 'empty' }
  const { leftOn } = member.now
  const open = openUntil(member, season)
  if (leftOn !== undefined)
    return { kind: 'left', day: Math.max(0, Math.min(open, seasonDay(season, leftOn))) }
  return { kind: 'unknown', day: open }
}
