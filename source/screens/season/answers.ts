/** The five questions of a season and an answer to each, in words and with a bar; Enter looks into one. */
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import { figuresShown, forecastShown } from '../../morning/places/season.ts'
import { type Question, questions } from '../../morning/season/questions.ts'
import { bit, type Line } from '../line.tsx'
import { type PointedLine, pointedPage, type Room } from '../page-lines.ts'
import { barOf } from '../picture.ts'
import { paragraph, pointable } from '../text.ts'
import type { Theme } from '../theme.ts'
import { questionWords } from '../words/season/answers.ts'
import { pictureWords } from '../words/season/pictures.ts'
import { seasonWords } from '../words/season/shared.ts'
import {
  type Answer,
  aiAnswer,
  anotherWeekAnswer,
  bullsAnswer,
  emptiesAnswer,
  paceAnswer,
} from './answer-words.ts'
import { curvePicture, legendLines } from './curve.ts'
import { type DrawPart, reckoningPage } from './part.ts'

/** Rows of the curve beside the answers. */
const ROWS = 11

export const answersPage: DrawPart = (part) => {
  const { desk, place, room, kept } = part
  const view = figuresShown(desk, place)?.view
  if (view === undefined) return reckoningPage(part)
  const ahead = forecastShown(desk, place)?.view
  const lines = questions.flatMap((question) => answerLines(question, answerOf(question, view, ahead), room))
  const { beside, theme } = room
  return {
    ...pointedPage(lines, place.pointer, room, kept),
    beside: beside === 0 ? [] : pictured(view, ahead, beside, theme),
  }
}

/** The curve beside the answers, where there is room. */
const pictured = (
  view: SeasonView,
  ahead: SeasonView | undefined,
  cells: number,
  theme: Theme,
): readonly Line[] => [
  [bit(pictureWords.curve, 'heading')],
  ...curvePicture(view, ahead, cells, ROWS, theme),
  ...legendLines(cells, theme),
]

/** The answer to a question; undefined while it is being reckoned. */
function answerOf(question: Question, view: SeasonView, ahead: SeasonView | undefined): Answer | undefined {
  switch (question) {
    case 'pace':
      return paceAnswer(view)
    case 'ai':
      return aiAnswer(view, ahead)
    case 'empties':
      return emptiesAnswer(view, ahead)
    case 'bulls':
      return bullsAnswer(ahead)
    case 'another-week':
      return anotherWeekAnswer(ahead)
  }
}

function answerLines(question: Question, answer: Answer | undefined, { cells, theme }: Room): PointedLine[] {
  const said: Line[] =
    answer === undefined
      ? [[bit(`    ${seasonWords.reckoning}${theme.signs.cut}`, 'faint')]]
      : answer.says.flatMap(({ text, tone }) =>
          paragraph(text, cells - 6, theme, tone).map((line): Line => [bit('    '), ...line]),
        )
  const bar = answer?.bar
  const drawn: Line[] =
    bar === undefined
      ? []
      : [
          [
            bit('    '),
            ...barOf(bar, 100, Math.min(50, cells - 16), theme),
            bit(` ${seasonWords.aim(Math.round(bar.aim))}`, 'faint'),
          ],
        ]
  const below = [...said, ...drawn]
  const head = pointable([bit(questionWords[question], 'heading')], theme)
  return [{ ...head, after: below.length }, ...below.map((line) => ({ line }))]
}
