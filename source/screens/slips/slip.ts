/** What lies on top of a screen, as lines: a form, a question, what can be recorded, a date, initials, a search. */

import { MOST_HITS } from '../../morning/act/slips.ts'
import { type Desk, placeOf, type Slip } from '../../morning/desk.ts'
import { foundByText } from '../../morning/find.ts'
import { subjectOf } from '../../morning/subject.ts'
import { safeText } from '../../words/safe.ts'
import { animalTitle } from '../frame/animal-title.ts'
import { bindingsNow, shown } from '../keys.ts'
import { type Bit, bit, type Line } from '../line.tsx'
import type { Theme } from '../theme.ts'
import { fill, wrap } from '../width.ts'
import { questionWords } from '../words/forms.ts'
import { keyWords } from '../words/keys.ts'
import { deedWords } from '../words/messages.ts'
import { screenWords } from '../words/screen.ts'
import { formLines } from './form.ts'
import { noticeLines } from './notice.ts'
import { openingLines } from './opening.ts'
import { title } from './title.ts'

/** The lines of what lies on top, its title on a strong line first; none where nothing does. */
export function slipLines(desk: Desk, cells: number, most: number, theme: Theme): readonly Line[] {
  const { slip } = desk
  switch (slip?.is) {
    case undefined:
      return []
    case 'form':
      return formLines(desk, slip.form, cells, most, theme)
    case 'question':
      return [
        title(deedWords(slip.said.facts ?? [], desk), cells, theme),
        ...question(desk, slip, cells, theme),
      ]
    case 'menu':
      return menuLines(desk, cells, theme)
    case 'go':
      return goLines(desk, cells, theme)
    case 'day':
      return [
        title(
          placeOf(desk).at === 'turn-out' ? screenWords.moveDayTitle : screenWords.dayTitle,
          cells,
          theme,
        ),
        entry(slip.text, theme),
        slip.wrong === undefined
          ? [bit(` ${screenWords.dayHint}`, 'faint')]
          : [bit(` ${screenWords.dayWrong[slip.wrong]}`, 'wrong')],
      ]
    case 'leaving':
      return [
        title(screenWords.leavingTitle(desk.saving.waiting), cells, theme),
        ...paragraph(screenWords.leaving, cells, theme, 'care'),
      ]
    case 'older':
      return [
        title(screenWords.olderTitle, cells, theme),
        ...paragraph(screenWords.older, cells, theme, 'care'),
      ]
    case 'copy':
      return [
        title(screenWords.copyTitle, cells, theme),
        entry(slip.text, theme),
        [bit(` ${screenWords.copyHint}`, 'faint')],
      ]
    case 'initials':
      return [title(screenWords.initialsTitle, cells, theme), entry(slip.text, theme)]
    case 'opening':
      return openingLines(desk, slip, cells, most, theme).lines
    case 'notice':
      return noticeLines(desk, slip, cells, most, theme).lines
    case 'search':
      return searchLines(desk, slip, cells, theme)
  }
}

const entry = (text: string, theme: Theme): Line => [
  bit(' '),
  bit(safeText(text), 'entry'),
  bit(theme.signs.caret, 'light'),
]

const paragraph = (text: string, cells: number, theme: Theme, tone: Bit['tone'] = 'plain'): Line[] =>
  wrap(text, cells - 2, 6, theme.signs.cut).map((line) => [bit(` ${line}`, tone)])

function question(desk: Desk, slip: Slip & { is: 'question' }, cells: number, theme: Theme): Line[] {
  const [first] = slip.facts
  const number = safeText(desk.book.animals.get(first?.about ?? '')?.number ?? '')
  const text = questionWords(slip.code, { number, count: slip.facts.length, ...slip.said.values })
  return paragraph(text, cells, theme, slip.code.startsWith('danger') ? 'care' : 'plain')
}

/** All that can be recorded about her, in columns. */
function menuLines(desk: Desk, cells: number, theme: Theme): Line[] {
  const her = subjectOf(desk)
  const who = her.whyNot === undefined ? animalTitle(desk, her.animal) : ''
  const entries = bindingsNow(desk)
    .filter((binding) => binding.group === 'record' || binding.group === 'more')
    .map((binding) => shown(desk, binding))
  const width = 20
  const columns = Math.max(1, Math.floor((cells - 1) / width))
  const rows = Math.ceil(entries.length / columns)
  return [
    title(screenWords.menuTitle(who), cells, theme),
    ...Array.from(
      { length: rows },
      (_, row): Line => [
        bit(' '),
        ...Array.from({ length: columns }, (_, column) => entries[column * rows + row]).flatMap((one) =>
          one === undefined
            ? []
            : [
                bit(fill(one.keys, 6, theme.signs.cut), 'key'),
                bit(fill(one.label, width - 6, theme.signs.cut)),
              ],
        ),
      ],
    ),
  ]
}

/** The screens there are, a letter each. */
function goLines(desk: Desk, cells: number, theme: Theme): Line[] {
  return [
    title(screenWords.goTitle, cells, theme),
    ...bindingsNow(desk)
      .filter((binding) => binding.name.startsWith('go-'))
      .map((binding): Line => {
        const { keys, label } = shown(desk, binding)
        return [
          bit(` ${fill(keys, 3, theme.signs.cut)}`, 'key'),
          bit(fill(label, 20, theme.signs.cut)),
          bit(keyWords[binding.name].help, 'faint'),
        ]
      }),
  ]
}

function searchLines(desk: Desk, slip: Slip & { is: 'search' }, cells: number, theme: Theme): Line[] {
  const hits = foundByText(desk.book, slip.text, MOST_HITS)
  return [
    title(screenWords.searchTitle, cells, theme),
    entry(slip.text, theme),
    ...hits.map(
      (animal, index): Line => [
        bit(index === slip.at ? `${theme.signs.pointer} ` : '  ', 'light'),
        bit(animalTitle(desk, animal), index === slip.at ? 'pointed' : 'plain'),
      ],
    ),
    ...(hits.length === 0 && slip.text !== '' ? [[bit(` ${screenWords.searchNone}`, 'faint')]] : []),
  ]
}
