/** Reads `--what-if ai-weeks=+1,bulls=3`. */

import type { Change } from '../breeding/forecast/what-if.ts'
import { fault, type Outcome } from '../breeding/problem.ts'

interface Changeable {
  readonly key: keyof Change
  readonly from: number
  readonly to: number
  readonly whole: boolean
}

/** What may be changed, by the word that is typed. */
const changeables: Readonly<Record<string, Changeable>> = {
  'ai-weeks': { key: 'aiWeeks', from: -20, to: 20, whole: true },
  'heat-seen': { key: 'heatSeen', from: 0.01, to: 1, whole: false },
  conception: { key: 'cowConception', from: 0.01, to: 0.95, whole: false },
  bulls: { key: 'bulls', from: 0, to: 1000, whole: true },
}

/**
 * The changes of the plan that were typed.
 *
 * @returns one change with all of them, or option-what-if naming the part that cannot be read
 * @example readWhatIf('ai-weeks=+1,bulls=3') // { aiWeeks: 1, bulls: 3 }
 */
export function readWhatIf(typed: string): Outcome<Change> {
  const change: { -readonly [K in keyof Change]: Change[K] } = {}
  for (const part of typed.split(',')) {
    const [, name = '', value = ''] = /^\s*([a-z-]+)\s*=\s*([+-]?\d+(?:\.\d+)?)\s*$/.exec(part) ?? []
    const known = Object.hasOwn(changeables, name) ? changeables[name] : undefined
    const number = Number(value)
    const fits =
      known !== undefined &&
      number >= known.from &&
      number <= known.to &&
      (!known.whole || Number.isInteger(number)) &&
      change[known.key] === undefined
    if (!fits) return { ok: false, problems: [fault('option-what-if', '', { value: part })] }
    change[known.key] = number
  }
  return { ok: true, value: change }
}
