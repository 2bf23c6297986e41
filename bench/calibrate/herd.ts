/** The facts of invented seasons, as a herd file has them. */
import { type Day, dayIso, isoDay, plusDays } from '../../source/breeding/day.ts'
import { type Fact, HERD } from '../../source/breeding/facts.ts'
import type { Life, Written } from './season.ts'

export const matingStart: Day = isoDay('2026-05-01')

const at = '2026-01-01T00:00:00.000Z'

/** Lives of one season that began so many years before. */
interface Told {
  readonly lives: readonly Life[]
  readonly yearsBefore: number
}

/**
 * The facts of one block. Animals of earlier seasons have left: only their results are still there.
 *
 * @example factsOf([{ lives, yearsBefore: 0 }]).length // 900
 */
export function factsOf(told: readonly Told[]): Fact[] {
  const facts: Record<string, unknown>[] = [
    { about: HERD, date: '2020-01-01', kind: 'farm', name: 'Calibration', zone: 'UTC', milkings: ['05:30'] },
    { about: HERD, date: '2020-01-01', kind: 'policy', set: { useSexed: false } },
  ]
  for (const { lives, yearsBefore } of told) {
    const start = plusDays(matingStart, -365 * yearsBefore)
    facts.push({
      about: HERD,
      date: '2020-01-01',
      kind: 'season',
      block: 'spring',
      matingStart: dayIso(start),
      aiWeeks: 6,
      bullWeeks: 3,
    })
    for (const [i, life] of lives.entries()) {
      const about = `cow-${yearsBefore}-${i}`
      facts.push({
        about,
        date: '2020-01-01',
        kind: 'animal',
        number: `${yearsBefore}${String(i).padStart(4, '0')}`,
        sex: 'F',
        block: 'spring',
        lactation: Math.max(0, life.lactation - 1),
        ...(life.maiden ? { ready: true } : {}),
      })
      for (const one of life.written) facts.push({ about, ...factOf(one, start) })
      if (yearsBefore > 0) facts.push({ about, kind: 'left', date: dayIso(plusDays(start, 200)) })
    }
  }
  return facts.map((fact, i) => ({ id: `f${i}`, at, ...fact })) as unknown as Fact[]
}

function factOf(one: Written, start: Day): Record<string, unknown> {
  const date = dayIso(plusDays(start, one.day))
  switch (one.kind) {
    case 'calving':
      return { kind: 'calving', date, ease: 1 }
    case 'heat':
      return { kind: 'heat', date, time: '06:00', how: 'standing', certainty: 'sure' }
    case 'service':
      return { kind: 'service', date, time: '16:00', sire: 'S1', straw: one.straw }
    case 'check':
      return {
        kind: 'check',
        date,
        method: 'ultrasound',
        result: one.result,
        ...(one.result === 'pregnant' ? { foetalAge: one.age } : {}),
      }
  }
}
