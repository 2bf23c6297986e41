/** Her wait drawn to scale: days since the last service or heat, the days on which a return is likely, today. */

import { checkCountsFrom } from '../../breeding/pregnancy.ts'
import { returned } from '../../breeding/questions.ts'
import { bit, type Line } from '../line.tsx'
import { widthOf } from '../width.ts'
import { animalWords } from '../words/animal.ts'
import type { About } from './about.ts'

/** Days that the ruler shows. */
const LENGTH = 48
/** The second round of returns. */
const SECOND = { from: 36, to: 48 } as const

/**
 * Three lines: what the marks are, the ruler, and today below it. Empty where she waits for nothing.
 *
 * @example
 * // served          18-24     check 30
 * // |-----------------=======-----+-----============
 * //                      ^ day 21
 */
export function cycleRuler({ standing, desk, cells, theme }: About): Line[] {
  const { policy } = desk.book
  const { lastService, latestSureHeat, inCalf, today } = standing
  const back = returned(standing, policy.watchFrom)
  const from = lastService !== undefined && !back ? lastService.day : latestSureHeat?.day
  if (inCalf || from === undefined || today - from > LENGTH || today < from) return []
  const served = lastService?.day === from
  const { signs } = theme
  const scale = Math.min(1, (cells - 2) / LENGTH)
  const at = (day: number): number => Math.round(day * scale)
  const check = served ? checkCountsFrom(policy.checkMethod, standing.maiden, policy) : undefined
  const likely = (cell: number): boolean =>
    (cell >= at(policy.watchFrom) && cell <= at(policy.watchTo)) ||
    (cell >= at(SECOND.from) && cell <= at(SECOND.to))
  const line: Line = Array.from({ length: at(LENGTH) + 1 }, (_, cell) => {
    if (cell === 0) return bit(signs.margin, 'rule')
    if (check !== undefined && cell === at(check)) return bit(signs.dot, 'strong')
    return likely(cell) ? bit(signs.risen, 'light') : bit(signs.rule, 'rule')
  })
  const marks = served ? animalWords.served : animalWords.heat
  const window = `${policy.watchFrom}-${policy.watchTo}`
  const checked = check === undefined ? '' : animalWords.checkFrom(check)
  const gap = (text: string, to: number): string => ' '.repeat(Math.max(1, to - widthOf(text)))
  const first = `${marks}${gap(marks, at(policy.watchFrom))}${window}`
  const labels = checked === '' ? first : `${first}${gap(first, at(check ?? 0))}${checked}`
  const now = today - from
  return [
    [bit(labels, 'faint')],
    merged(line),
    [bit(' '.repeat(at(now))), bit(signs.more.above, 'light'), bit(` ${animalWords.day(now)}`)],
  ]
}

/** Neighbouring bits of one tone as one. */
function merged(line: Line): Line {
  const bits: { text: string; tone?: Line[number]['tone'] }[] = []
  for (const one of line) {
    const last = bits.at(-1)
    if (last !== undefined && last.tone === one.tone) last.text += one.text
    else bits.push({ ...one })
  }
  return bits as Line
}
