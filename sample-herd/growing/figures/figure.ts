/** One figure of the invented herd, and how it is written down. */

/** One figure: counted in the herd, and published. */
export interface Figure {
  readonly name: string
  readonly counted: number
  readonly of: number
  /** Percent, or days where `of` counts animals. */
  readonly published: string
  readonly source: string
}

/** One line a figure: what was counted, and what is published. */
export const figureLine = (figure: Figure): string =>
  `${figure.name.padEnd(58)} ${String(figure.counted).padStart(4)} of ${String(figure.of).padStart(4)} ${percent(figure).padStart(6)}   published: ${figure.published}`

const percent = ({ counted, of }: Figure): string =>
  of === 0 ? '-' : `${((100 * counted) / of).toFixed(1)} %`
