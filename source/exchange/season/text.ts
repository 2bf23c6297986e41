/** A season as plain text of at most 80 columns, for a pipe, a line printer or a terminal that cannot draw. */
import { bandWords } from '../../words/forecast.ts'
import type { SeasonContent } from './content.ts'
import { changeLines, forecastLines, lastChanceLines } from './text/ahead.ts'
import { wrapped } from './text/columns.ts'
import {
  calvingLines,
  curveLines,
  figureLines,
  groupTables,
  intervalLines,
  paceLines,
} from './text/so-far.ts'

/**
 * The season as lines of text.
 *
 * @example seasonText(seasonContent(view)).split('\n')[1] // 'spring block, mating start Fri 1 May 2026'
 */
export function seasonText(content: SeasonContent): string {
  const { view } = content
  const parts: readonly (readonly string[])[] = [
    [
      `${content.farm}, ${content.date}`,
      content.title,
      content.phase,
      cohortLine(content),
      ...othersLine(content),
    ],
    figureLines(content),
    titled('Pace', paceLines(content)),
    titled(`Season ahead; a range holds ${bandWords}`, forecastLines(content)),
    titled('What if; the last day with the bull stays', changeLines(content)),
    titled(
      'Sweep bulls',
      content.bulls.flatMap((line) => wrapped(line, '  ')),
    ),
    titled('Late calvers and empties', lastChanceLines(content)),
    titled('Days between services', intervalLines(content)),
    ...groupTables(content),
    titled('Known in calf, by the day of conception (95 % interval)', curveLines(content)),
    titled('Calving by week from the planned start', calvingLines(content)),
    titled(
      'What the season ahead rests on',
      content.assumptions.flatMap((line) => wrapped(line, '  ')),
    ),
  ]
  const shown = parts.filter((part) => part.length > 0)
  if (view.forecast === undefined) shown.push(['The season is over: nothing of it lies ahead.'])
  return `${shown.map((part) => part.join('\n')).join('\n\n')}\n`
}

const titled = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [title, ...lines]

const othersLine = ({ others }: SeasonContent): readonly string[] =>
  others.length === 0 ? [] : [`other blocks: ${others.join(', ')}`]

function cohortLine({ view }: SeasonContent): string {
  const { cohort, inCalf } = view.figures
  const left = inCalf.leftBefore === 0 ? '' : `; ${inCalf.leftBefore} left before a result`
  return `${cohort} animals meant for breeding at the mating start${left}`
}
