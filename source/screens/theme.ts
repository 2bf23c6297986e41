/**
 * How things look, in one place: tones and signs. Sixteen named colours only, so that the terminal's own palette
 * decides; a colour never says anything that a sign, a word or weight does not say too.
 *
 * The look is a dairy's day-book at first light: ruled paper, a margin for the ticks, and one line under the
 * heading that turns from rose to gold from the left as the morning's work is done.
 */

/** What a piece of text is, never how it is coloured. */
export type Tone =
  | 'plain'
  | 'faint'
  | 'strong'
  | 'heading'
  | 'light'
  | 'rule'
  | 'care'
  | 'good'
  | 'pointed'
  | 'key'
  | 'entry'
  | 'wrong'

/** The properties of an Ink text that a tone stands for. */
interface Look {
  readonly color?: string
  readonly bold?: boolean
  readonly dimColor?: boolean
  readonly underline?: boolean
  readonly inverse?: boolean
}

interface Signs {
  readonly toDo: string
  readonly done: string
  readonly pointer: string
  readonly rule: string
  readonly risen: string
  readonly margin: string
  readonly fold: string
  readonly cut: string
  readonly dash: string
  readonly dot: string
  readonly leads: string
  readonly warning: string
  readonly caret: string
  readonly more: { readonly above: string; readonly below: string }
  /** Of pictures: a bar, what is expected to follow it, a band around a curve, an aim. */
  readonly bar: string
  readonly expected: string
  readonly band: string
  readonly aim: string
}

export interface Theme {
  readonly looks: Readonly<Record<Tone, Look>>
  readonly signs: Signs
  readonly ascii: boolean
}

const weight: Record<Tone, Look> = {
  plain: {},
  faint: { dimColor: true },
  strong: { bold: true },
  heading: { bold: true },
  light: { bold: true },
  rule: {},
  care: { bold: true },
  good: {},
  pointed: { bold: true },
  key: { bold: true },
  entry: { underline: true },
  wrong: { bold: true },
}

const colour: Partial<Record<Tone, string>> = {
  heading: 'magenta',
  light: 'yellow',
  rule: 'magenta',
  care: 'red',
  good: 'green',
  key: 'yellow',
  entry: 'cyan',
  wrong: 'red',
}

const drawn: Signs = {
  toDo: '○',
  done: '●',
  pointer: '►',
  rule: '─',
  risen: '━',
  margin: '│',
  fold: '║',
  cut: '…',
  dash: '–',
  dot: '·',
  leads: '→',
  warning: '!',
  caret: '▁',
  more: { above: '▲', below: '▼' },
  bar: '█',
  expected: '▒',
  band: '░',
  aim: '┼',
}

const plainSigns: Signs = {
  toDo: 'o',
  done: 'x',
  pointer: '>',
  rule: '-',
  risen: '=',
  margin: '|',
  fold: '|',
  cut: '~',
  dash: '-',
  dot: '*',
  leads: '->',
  warning: '!',
  caret: '_',
  more: { above: '^', below: 'v' },
  bar: '#',
  expected: '=',
  band: ':',
  aim: '+',
}

/**
 * The theme for a terminal.
 *
 * @param colours false under NO_COLOR (https://no-color.org): weight and underline stay, colours go
 * @param ascii only characters of ASCII, on request and where the terminal cannot draw others
 * @example themeFor({ colours: true, ascii: false }).looks.care // { bold: true, color: 'red' }
 */
export function themeFor({ colours, ascii }: { colours: boolean; ascii: boolean }): Theme {
  const looks = Object.fromEntries(
    Object.entries(weight).map(([tone, look]) => {
      const color = colours ? colour[tone as Tone] : undefined
      return [tone, color === undefined ? look : { ...look, color }]
    }),
  ) as Record<Tone, Look>
  return { looks, signs: ascii ? plainSigns : drawn, ascii }
}
