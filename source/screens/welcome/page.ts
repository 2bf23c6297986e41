/** The first screen as lines. */
import { type Welcome, welcomeChoices } from '../../morning/welcome.ts'
import { asciiLine, bit, cutLine, type Line } from '../line.tsx'
import type { Size } from '../size.ts'
import { fieldsOf } from '../slips/form.ts'
import { title } from '../slips/title.ts'
import type { Theme } from '../theme.ts'
import { wrap } from '../width.ts'
import { formTitles } from '../words/forms.ts'
import { welcomeWords } from '../words/welcome.ts'

interface WelcomePage {
  readonly lines: readonly Line[]
  /** Furthest that the report can be moved, in lines. */
  readonly most: number
}

/** Exactly as many lines as the screen has rows. */
export function welcomePage(welcome: Welcome, size: Size, theme: Theme): WelcomePage {
  const cells = size.columns
  const text = (words: string, tone: 'plain' | 'faint' | 'care' = 'plain'): Line[] =>
    wrap(words, cells - 2, 6, theme.signs.cut).map((line) => [bit(` ${line}`, tone)])
  const head: Line[] = [
    [bit(` ${welcomeWords.title}`, 'heading')],
    ...text(welcomeWords.job),
    [bit(theme.signs.rule.repeat(cells), 'rule')],
  ]
  const wrong = welcome.wrong.flatMap((sentence) => text(`${theme.signs.warning} ${sentence}`, 'care'))
  const foot = (keys: string): Line => [bit(` ${keys}`, 'key')]
  const filled = (lines: readonly Line[], keys: string): readonly Line[] => {
    const room = Math.max(0, size.rows - 1)
    const shown = lines.slice(0, room)
    const rows = [...shown, ...Array.from({ length: room - shown.length }, (): Line => []), foot(keys)]
    return rows.map((line) => cutLine(theme.ascii ? asciiLine(line) : line, cells, theme.signs.cut))
  }
  if (welcome.report !== undefined) {
    const lines = welcome.report.flatMap((line) => text(line))
    const room = Math.max(1, size.rows - head.length - wrong.length - 3)
    const most = Math.max(0, lines.length - room)
    const page = [
      ...head,
      title(welcomeWords.report, cells, theme),
      ...lines.slice(Math.min(welcome.top, most), Math.min(welcome.top, most) + room),
      ...wrong,
      ...text(welcomeWords.agree, 'faint'),
    ]
    return { lines: filled(page, welcomeWords.keys.report), most }
  }
  if (welcome.form !== undefined) {
    const page = [
      ...head,
      title(formTitles[welcome.form.name], cells, theme),
      ...fieldsOf(welcome.form, cells, theme),
      [],
      ...(wrong.length > 0 ? wrong : text(welcomeWords.zone, 'faint')),
    ]
    return { lines: filled(page, welcomeWords.keys.form), most: 0 }
  }
  const choices = welcomeChoices.flatMap((choice, index): Line[] => {
    const { label, more } = welcomeWords.choices[choice]
    const pointed = index === welcome.pointer
    return [
      [bit(pointed ? `${theme.signs.pointer} ` : '  ', 'light'), bit(label, pointed ? 'pointed' : 'plain')],
      [bit(`  ${more}`, 'faint')],
      [],
    ]
  })
  const page = [...head, [], ...choices, ...wrong, ...text(welcomeWords.local, 'faint')]
  return { lines: filled(page, welcomeWords.keys.choose), most: 0 }
}
