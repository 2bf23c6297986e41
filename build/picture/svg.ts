/** A screen of the terminal as a picture, without a font of its own: it is read on light and on dark pages. */
import type { Cell } from './cell.ts'

const width = 8.4
const height = 18
const edge = 14

/** The terminal's colours on paper by day and at night: text, red, green, yellow, magenta, cyan, faint. */
const colours = [
  ['text', '#2b2622', '#e9e2d8'],
  ['red', '#b3261e', '#ff8f80'],
  ['green', '#2f6b2f', '#8fce8f'],
  ['yellow', '#855c00', '#f0c04a'],
  ['magenta', '#96306c', '#e08ac0'],
  ['cyan', '#00616f', '#7fd0e0'],
  ['faint', '#6a6258', '#a89f95'],
] as const

const names: Readonly<Record<number, string>> = { 1: 'red', 2: 'green', 3: 'yellow', 5: 'magenta', 6: 'cyan' }

const style = (): string => {
  const rules = (column: 1 | 2) => colours.map((colour) => `.${colour[0]}{fill:${colour[column]}}`).join('')
  return `text{font:14px ui-monospace,Menlo,Consolas,'DejaVu Sans Mono',monospace;white-space:pre}.bold{font-weight:700}.line{text-decoration:underline}.paper{fill:#fbf7ef;stroke:#d9cfbf}${rules(1)}@media(prefers-color-scheme:dark){.paper{fill:#1b1720;stroke:#453d4d}${rules(2)}}`
}

const classOf = ({ colour, bold, faint, underlined }: Cell): string =>
  [
    names[colour % 8] !== undefined && colour >= 0 ? names[colour % 8] : faint ? 'faint' : 'text',
    ...(bold ? ['bold'] : []),
    ...(underlined ? ['line'] : []),
  ].join(' ')

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')

/** The runs of one look within a line; each is held to its cells, whatever the font. */
function lineText(cells: readonly Cell[], row: number): string {
  const y = edge + (row + 0.75) * height
  let texts = ''
  for (let from = 0; from < cells.length; ) {
    const first = cells[from] as Cell
    let to = from + 1
    while (to < cells.length && classOf(cells[to] as Cell) === classOf(first)) to += 1
    const text = cells
      .slice(from, to)
      .map((cell) => (cell.text === '' ? ' ' : cell.text))
      .join('')
    const kept = text.trimEnd()
    const lead = kept.length - kept.trimStart().length
    const shown = kept.slice(lead)
    if (shown !== '') {
      const x = edge + (from + lead) * width
      texts += `<text class="${classOf(first)}" x="${x.toFixed(1)}" y="${y}" textLength="${(shown.length * width).toFixed(1)}" lengthAdjust="spacingAndGlyphs">${escaped(shown)}</text>\n`
    }
    from = to
  }
  return texts
}

/**
 * The picture.
 *
 * @param screen its cells, line by line, @param title what it shows, for who cannot see it
 */
export function pictureOf(screen: ReadonlyArray<readonly Cell[]>, title: string): string {
  const columns = screen[0]?.length ?? 0
  const [wide, high] = [columns * width + 2 * edge, screen.length * height + 2 * edge]
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}" height="${high}" viewBox="0 0 ${wide} ${high}" role="img">
<title>${escaped(title)}</title>
<style>${style()}</style>
<rect class="paper" x=".5" y=".5" width="${wide - 1}" height="${high - 1}" rx="8"/>
${screen.map(lineText).join('')}</svg>
`
}
