/** What a rule says of an animal, and the small words that the rules share. */
import type { Day } from '../day.ts'
import type { Policy } from '../policy.ts'
import { daysCalved } from '../questions.ts'
import type { Reason, Section, Since, Warning } from '../sections.ts'
import type { Serving } from '../session.ts'
import type { Standing } from '../standing.ts'

/** A place on the list: the section, and why. */
export interface Placement {
  readonly section: Section
  readonly reasons: readonly [Reason, ...Reason[]]
  readonly warnings: readonly Warning[]
  readonly since: Since | undefined
  readonly days: number | undefined
  readonly serving?: Serving
}

/** A section's rule: the placement of an animal on the morning of `standing.today`, or nothing. Pure. */
export type Rule = (standing: Standing, setting: RuleSetting) => Placement | undefined

/** What the rules need besides her standing. */
export interface RuleSetting {
  readonly policy: Policy
  readonly milkings: readonly string[]
  /** Contradictions among her facts, found by the shell that knows the whole herd. */
  readonly contradicted: (standing: Standing) => boolean
}

/** The reasons whose test holds, in order; undefined where none does. */
export function fitting<R extends Reason>(
  tests: readonly (readonly [R, boolean])[],
): [R, ...R[]] | undefined {
  const fit = tests.filter(([, holds]) => holds).map(([reason]) => reason)
  return fit.length === 0 ? undefined : (fit as [R, ...R[]])
}

/** The warnings whose test holds, in order. */
export const holding = <W extends Warning>(tests: readonly (readonly [W, boolean])[]): readonly W[] =>
  tests.filter(([, holds]) => holds).map(([warning]) => warning)

type SinceDays = Pick<Placement, 'since' | 'days'>

export const sinceNothing: SinceDays = { since: undefined, days: undefined }

const counted = (since: Since, from: Day | undefined, today: Day): SinceDays =>
  from === undefined ? sinceNothing : { since, days: today - from }

/** Days since her latest heat. */
export const sinceHeat = (standing: Standing): SinceDays =>
  counted('heat', standing.latestHeat?.day, standing.today)

/** Days since her last service. */
export const sinceService = (standing: Standing): SinceDays =>
  counted('service', standing.lastService?.day, standing.today)

/** Days since her last loss. */
export const sinceLoss = (standing: Standing): SinceDays =>
  counted('loss', standing.losses.at(-1), standing.today)

/** Days since the calving or late loss that she waits from. */
export const sinceCalving = (standing: Standing): SinceDays =>
  standing.waitSince === undefined ? sinceNothing : { since: standing.waitSince, days: daysCalved(standing) }

/** Day on which she has calved 42 days, as a season day; undefined where she waits for nothing known. */
export const seasonDayReady = (standing: Standing, calvedToServe: number): number | undefined =>
  standing.waitFrom === undefined || standing.season === undefined
    ? undefined
    : standing.waitFrom + calvedToServe - standing.season.matingStart

/** In the herd, a female, neither barred nor unready, with a block: whom sections 2 to 8 concern. */
export const concernsBreeding = (standing: Standing): boolean =>
  standing.inHerd && standing.female && !standing.barred && standing.ready && standing.season !== undefined

/** Her heats as known before today: a record of today ticks sections 7 and 8 and does not move her there. */
export const sureHeatSince = (standing: Standing, from: number): boolean =>
  standing.heats.some((heat) => heat.sureOn !== undefined && heat.sureOn < standing.today && heat.day >= from)
