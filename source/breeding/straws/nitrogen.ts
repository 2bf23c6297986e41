/** The log of liquid nitrogen: how deep it stands in each flask, and when more must be ordered. */
import type { HerdBook } from '../book.ts'
import { compareTexts } from '../compare-texts.ts'
import { type Day, isoDay, plusDays } from '../day.ts'
import type { NitrogenFact } from '../facts.ts'
import { momentOf } from '../moment.ts'

export type NitrogenState = 'enough' | 'order' | 'alarm'

interface NitrogenReading {
  readonly day: Day
  readonly depthCm: number
}

export interface NitrogenLevel {
  /** Name of the flask; undefined where readings name none. */
  readonly flask: string | undefined
  /** All readings until today, oldest first. */
  readonly readings: readonly NitrogenReading[]
  readonly latest: NitrogenReading
  readonly state: NitrogenState
  /** cm a day since it was last filled; undefined with one reading since. */
  readonly fallsBy: number | undefined
  /** The day it reaches the order level at that pace; undefined where that is not known or has come. */
  readonly orderOn: Day | undefined
}

/**
 * What a depth asks for: order at or below the order level (25 cm), alarm at or below the alarm level (15 cm).
 * Source: S. Johnson, Kansas State University, Proper semen handling maximizes fertility, 2022 (15 cm); J. Dalton,
 * University of Idaho (25 cm).
 *
 * @example nitrogenState(18, { nitrogenOrder: 25, nitrogenAlarm: 15 }) // 'order'
 */
export function nitrogenState(
  depthCm: number,
  levels: { readonly nitrogenOrder: number; readonly nitrogenAlarm: number },
): NitrogenState {
  if (depthCm <= levels.nitrogenAlarm) return 'alarm'
  return depthCm <= levels.nitrogenOrder ? 'order' : 'enough'
}

/**
 * The flasks with their readings until a day, by name.
 *
 * @param book the herd book, @param today readings of this day count
 * @example nitrogenLevels(book, today)[0]?.state // 'enough'
 */
export function nitrogenLevels(book: HerdBook, today: Day): readonly NitrogenLevel[] {
  const known = book.nitrogen.filter((fact) => isoDay(fact.date) <= today)
  const flasks = [...Map.groupBy(known, (fact) => fact.flask)].sort(([a], [b]) =>
    compareTexts(a ?? '', b ?? ''),
  )
  return flasks.map(([flask, facts]) => levelOf(flask, facts, book))
}

function levelOf(flask: string | undefined, facts: readonly NitrogenFact[], book: HerdBook): NitrogenLevel {
  const minute = (fact: NitrogenFact): number => momentOf(fact.time, book.farm.milkings)
  const readings = facts
    .toSorted(
      (a, b) =>
        compareTexts(a.date, b.date) ||
        minute(a) - minute(b) ||
        compareTexts(a.at, b.at) ||
        compareTexts(a.id, b.id),
    )
    .map((fact) => ({ day: isoDay(fact.date), depthCm: fact.depthCm }))
  const latest = readings.at(-1) as NitrogenReading
  const state = nitrogenState(latest.depthCm, book.policy)
  const fallsBy = fallSinceFilled(readings)
  const daysLeft =
    fallsBy === undefined || fallsBy <= 0
      ? undefined
      : Math.floor((latest.depthCm - book.policy.nitrogenOrder) / fallsBy)
  return {
    flask,
    readings,
    latest,
    state,
    fallsBy,
    orderOn: state !== 'enough' || daysLeft === undefined ? undefined : plusDays(latest.day, daysLeft),
  }
}

/** cm a day between the last reading that was higher than the one before it (a filling) and the latest. */
function fallSinceFilled(readings: readonly NitrogenReading[]): number | undefined {
  let filled = readings.length - 1
  while (filled > 0) {
    const [before, here] = [readings[filled - 1] as NitrogenReading, readings[filled] as NitrogenReading]
    if (before.depthCm < here.depthCm) break
    filled -= 1
  }
  const [first, latest] = [readings[filled] as NitrogenReading, readings.at(-1) as NitrogenReading]
  if (latest.day === first.day) return undefined
  return (first.depthCm - latest.depthCm) / (latest.day - first.day)
}
