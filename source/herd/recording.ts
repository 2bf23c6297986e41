import type { Fact, NewFact } from '../breeding/facts.ts'
import { newId } from './ids.ts'

/** What recording adds to a fact: when, and by whom. */
interface Recording {
  /** The instant of recording. */
  readonly at: Date
  /** Initials of the person who records; absent where nobody said. */
  readonly by?: string | undefined
}

/**
 * Makes facts of what one action of the user says: adds id, instant, initials and the action's own id, which
 * all of them share so that undo takes them back together. The order of fields is that of the herd file.
 *
 * @param newFacts what happened; an id that is there already is kept, and of a fact that is one already all is
 * @returns facts in the same order, ready to be recorded
 * @example asFacts([{ kind: 'looked', about: '7k2m9qxc4t0z', date: '2026-05-28' }], { at, by: 'MK' })
 * // [{ id: 'c0w…', about: '7k2m9qxc4t0z', date: '2026-05-28', kind: 'looked', by: 'MK', at: '2026-05-28T04:15:09.120Z', action: '9tz…' }]
 */
export function asFacts(newFacts: readonly NewFact[], recording: Recording): Fact[] {
  const action = newId()
  const at = recording.at.toISOString()
  return newFacts.map((newFact) => {
    const { id, about, date, time, kind, ...rest } = newFact
    return {
      id: id ?? newId(),
      about,
      date,
      ...(time === undefined ? {} : { time }),
      kind,
      ...(recording.by === undefined ? {} : { by: recording.by }),
      at,
      action,
      ...rest,
    } as Fact
  })
}
