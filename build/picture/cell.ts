/** One place of a terminal's screen. */
export interface Cell {
  readonly text: string
  /** 0-15 of the sixteen colours, -1 the terminal's own. */
  readonly colour: number
  readonly bold: boolean
  readonly faint: boolean
  readonly underlined: boolean
}
