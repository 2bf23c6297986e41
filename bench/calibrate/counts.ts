/** What a forecast counts, and what came of it. */
import { AI_END, BULL_END, FINAL, inCalfOn, type Life } from './season.ts'

export const counts = [
  'in calf in six weeks',
  'open at turn-out',
  'empty at the final check',
  'conventional straws',
] as const
export type Count = (typeof counts)[number]

const DAYS_TO_SERVE = 42

/** The bull may serve her. */
const mayBeServed = ({ written }: Life): boolean =>
  written.every((one) => one.kind !== 'calving' || one.day + DAYS_TO_SERVE <= BULL_END)

/**
 * What came, counted from the lives.
 *
 * @param morning season day of the forecast: straws count from it on
 * @example came(lives, 21)['in calf in six weeks'] // 87
 */
export function came(lives: readonly Life[], morning: number): Readonly<Record<Count, number>> {
  const of = (test: (life: Life) => boolean): number => lives.filter(test).length
  const turnOut = Math.max(morning, AI_END + 1)
  const straws = lives.flatMap(({ written }) =>
    written.filter((one) => one.kind === 'service' && one.straw === 'conventional' && one.day >= morning),
  )
  return {
    'in calf in six weeks': of((life) => inCalfOn(life, FINAL, AI_END)),
    'open at turn-out': of((life) => mayBeServed(life) && !inCalfOn(life, turnOut - 1)),
    'empty at the final check': of((life) => !inCalfOn(life, FINAL)),
    'conventional straws': straws.length,
  }
}
