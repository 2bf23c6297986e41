/** A mutant that changes nothing that can be seen, with the reason. It does not count. */
export interface Equivalent {
  readonly file: string
  /** The line with what is changed between « and », and what it becomes, as the list of survivors shows them. */
  readonly at: string
  readonly becomes: readonly string[]
  readonly why: string
}
