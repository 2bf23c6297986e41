/** How a problem becomes a sentence. */
import type { Problem } from '../breeding/problem.ts'
import { safeText } from './safe.ts'

export type Values = NonNullable<Problem['values']>

/** By code: text with `{name}` where a value stands, or a function of the values where that is not enough. */
export type Sentences = Readonly<Record<string, string | ((values: Values) => string)>>

/**
 * Text with its values filled in, each made harmless for a terminal.
 *
 * @example filled('{count} rows', { count: 3 }) // '3 rows'
 */
export const filled = (text: string, values: Values): string =>
  text.replace(/\{(\w+)\}/g, (gap, name: string) => {
    const value = values[name]
    return value === undefined ? gap : safeText(String(value))
  })
