/** At which milking a heat is served. */
import type { Heat } from './cycle.ts'
import type { Day } from './day.ts'
import type { ExaminedFact, SessionName } from './facts.ts'
import { type Minute, minuteOf } from './moment.ts'
import type { ServingTime } from './policy.ts'

/** The milking at which she is served: of the list's day, or of the next. */
export type ServingSession = SessionName | 'next-morning' | 'next-evening'

/** A milking on the clock: its day and minute, and what it is called on the list of `today`. */
interface Milking {
  readonly day: Day
  readonly minute: Minute
  readonly name: 'morning' | 'evening'
}

export interface Serving {
  readonly session: ServingSession
  /** Hours by the clock from the heat's moment to the session; undefined without a heat. */
  readonly hours: number | undefined
  /** The moment is an onset, from an activity record. */
  readonly fromOnset: boolean
}

/** Best hour after the onset for a conventional straw, and what is still acceptable. */
const BEST_HOUR = 15.5
const EARLIEST_HOUR = 7
const LATEST_HOUR = 24

/**
 * The milking at which a heat is served. If the one that the rule finds has gone by, the next one; on the last day
 * of AI never later than that evening.
 * Source: Vishwanath et al. 2004, Proc NZ Soc Anim Prod 64:140-142 (and Trimberger 1948); Freie Universitaet Berlin,
 * Timing of AI after activity monitoring.
 *
 * @param heat the heat to serve, @param milkings one or two wall times in order
 * @param today the list's day, @param lastDayOfAi today is the last day of AI
 * @example servingOf(heatSeenAt('2026-05-28', '06:10'), 'at-next-milking', ['05:30', '15:30'], today, false).session // 'evening'
 */
export function servingOf(
  heat: Heat,
  rule: ServingTime,
  milkings: readonly string[],
  today: Day,
  lastDayOfAi: boolean,
): Serving {
  const sessions = milkingsFrom(heat.day, today, milkings)
  const found =
    rule === 'by-the-hour' ? byTheHour(heat, sessions) : nextMilking(heat, sessions, milkings.length === 1)
  const milking = sessions.find((one) => one.day >= today && !isBefore(one, found)) as Milking
  const fromOnset = heat.how === 'activity'
  if (milking.day > today && lastDayOfAi) {
    const last = sessions.findLast((one) => one.day === today) as Milking
    return { session: 'evening', hours: hoursTo(heat, last), fromOnset }
  }
  return {
    session: milking.day > today ? `next-${milking.name}` : milking.name,
    hours: hoursTo(heat, milking),
    fromOnset,
  }
}

/** The session of a planned fixed-time service: as planned, else the morning. */
export const fixedServing = (plan: ExaminedFact): Serving => ({
  session: plan.session ?? 'morning',
  hours: undefined,
  fromOnset: false,
})

/** Whether a session lies outside the hours that a conventional straw accepts. */
export const outsideHours = (serving: Serving, rule: ServingTime): boolean =>
  serving.hours !== undefined &&
  (serving.hours > LATEST_HOUR ||
    (rule === 'by-the-hour' && serving.fromOnset && serving.hours < EARLIEST_HOUR))

/** Every milking from the heat's day to the day after today. */
function milkingsFrom(first: Day, today: Day, milkings: readonly string[]): readonly Milking[] {
  const sessions: Milking[] = []
  for (let day = first; day <= today + 1; day = (day + 1) as Day) {
    milkings.forEach((time, index) => {
      sessions.push({ day, minute: minuteOf(time), name: index === 0 ? 'morning' : 'evening' })
    })
  }
  return sessions
}

const isBefore = (a: Milking, b: Milking): boolean =>
  a.day < b.day || (a.day === b.day && a.minute < b.minute)

const hoursTo = (heat: Heat, milking: Milking): number =>
  (milking.day - heat.day) * 24 + (milking.minute - heat.minute) / 60

/** The first session at or after the heat; once a day, last evening's heats go with this morning's. */
function nextMilking(heat: Heat, sessions: readonly Milking[], onceADay: boolean): Milking {
  return sessions.find((one) =>
    onceADay && heat.time === 'evening' ? one.day > heat.day : hoursTo(heat, one) >= 0,
  ) as Milking
}

/** From an onset the session nearest to 15.5 hours; otherwise seen before noon that evening, later the next morning. */
function byTheHour(heat: Heat, sessions: readonly Milking[]): Milking {
  const later = sessions.filter((one) => hoursTo(heat, one) > 0)
  if (heat.how === 'activity') {
    return later.reduce((best, one) =>
      Math.abs(hoursTo(heat, one) - BEST_HOUR) < Math.abs(hoursTo(heat, best) - BEST_HOUR) ? one : best,
    )
  }
  const morningHeat = heat.minute < 12 * 60
  const found = morningHeat
    ? later.find((one) => one.day === heat.day && one.name === 'evening')
    : later.find((one) => one.day === heat.day + 1 && one.name === 'morning')
  return found ?? (later[0] as Milking)
}
