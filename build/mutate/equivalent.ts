/** Mutants that change nothing that can be seen, each with the reason. They do not count. */
export interface Equivalent {
  readonly file: string
  /** The line with what is changed between « and », and what it becomes, as the list of survivors shows them. */
  readonly at: string
  readonly becomes: readonly string[]
  readonly why: string
}

export const equivalents: readonly Equivalent[] = []
