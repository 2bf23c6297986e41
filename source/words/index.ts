/** All sentences of the program: what a problem's code says in words. */
import type { Problem } from '../breeding/problem.ts'
import { checkSentences } from './check.ts'
import { commandSentences } from './commands.ts'
import { exchangeSentences } from './exchange.ts'
import { herdSentences } from './herd.ts'
import { safeText } from './safe.ts'
import { filled, type Sentences } from './sentences.ts'
import { strawSentences } from './straws.ts'

/** Every code that has words. */
export const sentences: Sentences = {
  ...checkSentences,
  ...commandSentences,
  ...exchangeSentences,
  ...herdSentences,
  ...strawSentences,
}

/**
 * A problem in words: where it is, whom it is about, what is wrong and what to do. Harmless for a terminal.
 *
 * @example sentence(fault('option-date', '', { value: '30 Feb' })) // '"30 Feb" is not a date of the calendar. …'
 */
export function sentence(problem: Problem): string {
  const values = { path: problem.path, ...problem.values }
  const known = sentences[problem.code]
  const text =
    known === undefined
      ? [
          problem.code,
          ...Object.entries(problem.values ?? {}).map(([name, value]) => `${name} ${value}`),
        ].join(' ')
      : typeof known === 'string'
        ? filled(known, values)
        : known(values)
  const place = [problem.path, problem.animal === undefined ? '' : `animal ${problem.animal}`]
  return [
    ...place.filter((part) => part !== '').map(safeText),
    known === undefined ? safeText(text) : text,
  ].join(': ')
}
