/**
 * Time until something happens, where some were watched for a part of the time only.
 */

/** One that was watched: until when, and whether it happened then (otherwise it went out of sight: censored). */
interface Watched {
  readonly time: number
  readonly happened: boolean
}

/** One step of the curve: at `time` something happened. */
export interface SurvivalStep {
  readonly time: number
  /** Still watched just before this time. */
  readonly atRisk: number
  readonly happened: number
  /** Share to which it has not happened after this time, 0 to 1. */
  readonly survival: number
  /** Greenwood's standard error of it; 0 once nobody is left. */
  readonly standardError: number
}

/**
 * The Kaplan-Meier curve. Who goes out of sight at a time still counts as watched at that time.
 *
 * @param watched any order, ties allowed, times in one unit
 * @returns one step for each time at which it happened, earliest first; empty where it never did
 * @source Bewick, Cheek and Ball, Statistics review 12: survival analysis, Critical Care 8, 2004
 * @example kaplanMeier([{ time: 1, happened: true }, { time: 2, happened: false }]) // one step: time 1, survival 0.5
 */
export function kaplanMeier(watched: readonly Watched[]): SurvivalStep[] {
  const byTime = Map.groupBy(
    watched.toSorted((a, b) => a.time - b.time),
    ({ time }) => time,
  )
  const steps: SurvivalStep[] = []
  let survival = 1
  let greenwood = 0
  let left = watched.length
  for (const [time, there] of byTime) {
    const atRisk = left
    left -= there.length
    const happened = there.filter((one) => one.happened).length
    if (happened === 0) continue
    survival *= (atRisk - happened) / atRisk
    greenwood += happened / (atRisk * (atRisk - happened))
    const standardError = survival === 0 ? 0 : survival * Math.sqrt(greenwood)
    steps.push({ time, atRisk, happened, survival, standardError })
  }
  return steps
}

/**
 * Share to which it has not happened after a time.
 *
 * @param steps of `kaplanMeier`
 * @example survivalAt(kaplanMeier([{ time: 1, happened: true }, { time: 2, happened: false }]), 1.5) // 0.5
 */
export function survivalAt(steps: readonly SurvivalStep[], time: number): number {
  let survival = 1
  for (const step of steps) if (step.time <= time) survival = step.survival
  return survival
}
