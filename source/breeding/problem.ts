/**
 * What is wrong, as data: a code, where it stands and the values that matter. The words are made at the edge,
 * from one table (source/words/index.ts), so that the rules know no language.
 *
 * A *fault* cannot be worked with (not readable, damaged, newer) and nothing is written over it.
 * A *notice* is shown, and the herd works as usual.
 */
export interface Problem {
  readonly code: string
  readonly severity: 'fault' | 'notice'
  /** File, and within it a line (`herd.json:12`) or a path of fields (`facts[3].date`); empty where none fits. */
  readonly path: string
  /** Number of the animal it is about, where it is about one. */
  readonly animal?: string
  readonly values?: Readonly<Record<string, string | number>>
}

/** A result that may be refused: the value, or the problems that stand against it. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] }

export const fault = (code: string, path: string, values?: Problem['values'], animal?: string): Problem => ({
  code,
  severity: 'fault',
  path,
  ...(animal === undefined ? {} : { animal }),
  ...(values === undefined ? {} : { values }),
})

export const notice = (code: string, path: string, values?: Problem['values'], animal?: string): Problem => ({
  ...fault(code, path, values, animal),
  severity: 'notice',
})
