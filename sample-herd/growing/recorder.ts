/** The farm's notebook: what people saw and wrote down, and when they wrote it. */
import { type Day, dayIso, dayOf, weekday } from '../../source/breeding/day.ts'
import type { Fact, NewFact } from '../../source/breeding/facts.ts'
import { randomFrom } from './random.ts'

/** When and by whom a fact was written down: by the clock on the wall. */
interface Written {
  readonly day: Day
  readonly minute: number
  readonly by: string
  /** Facts that were written down in one go. */
  readonly action?: string
}

export interface Recorder {
  /** Writes a fact down and returns its id. */
  record(fact: NewFact, written: Written): string
  /** An id for facts that are written down in one go. */
  action(): string
  /** All facts in the order they were written down. */
  facts(): Fact[]
}

/** A notebook whose ids come from a seed. */
export function recorderFrom(seed: number): Recorder {
  const random = randomFrom(seed)
  const written: { fact: Fact; instant: number; order: number }[] = []
  return {
    record: (newFact, { day, minute, by, action }) => {
      const { id: _, about, date, time, kind, ...rest } = newFact
      const id = random.id()
      const instant = (day * 1440 + minute - (isSummer(day) ? 60 : 0)) * 60 + random.whole(0, 59)
      const fact = {
        id,
        about,
        date,
        ...(time === undefined ? {} : { time }),
        kind,
        by,
        at: instantText(instant),
        ...(action === undefined ? {} : { action }),
        ...rest,
      } as Fact
      written.push({ fact, instant, order: written.length })
      return id
    },
    action: () => random.id(),
    facts: () =>
      written.toSorted((a, b) => a.instant - b.instant || a.order - b.order).map((entry) => entry.fact),
  }
}

/** Irish summer time: from the last Sunday of March to the Saturday before the last Sunday of October. */
function isSummer(day: Day): boolean {
  const year = Number(dayIso(day).slice(0, 4))
  return day >= lastSunday(year, 3) && day < lastSunday(year, 10)
}

function lastSunday(year: number, month: 3 | 10): Day {
  const last = dayOf(year, month, 31)
  return (last - weekday(last)) as Day
}

function instantText(seconds: number): string {
  const day = Math.floor(seconds / 86_400) as Day
  const rest = seconds - day * 86_400
  const two = (value: number): string => String(value).padStart(2, '0')
  return `${dayIso(day)}T${two(Math.floor(rest / 3600))}:${two(Math.floor(rest / 60) % 60)}:${two(rest % 60)}.000Z`
}

/** The wall time of a minute of the day. */
export const wallTime = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`
