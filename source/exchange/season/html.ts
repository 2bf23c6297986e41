/** The season as a page for the wall: A4, dark on white, no network, no script. The first sheet hangs, the second tells. */
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import type { CountForecast } from '../../breeding/forecast/herd.ts'
import { cautions } from '../../words/cautions.ts'
import { tooYoungWords } from '../../words/figures.ts'
import { bandWords } from '../../words/forecast.ts'
import { htmlText as html } from '../html-text.ts'
import { calvingChart, paceChart, portionChart, shareChart } from './bar-charts.ts'
import type { FigureLine, GroupTable, SeasonContent } from './content.ts'
import { curveChart } from './curve-chart.ts'
import { isExpected } from './expected.ts'
import { seasonStyle } from './style.ts'
import { type Tile, tilesOf } from './tiles.ts'

/**
 * The season as HTML.
 *
 * @example seasonHtml(content).startsWith('<!doctype html>') // true
 */
export const seasonHtml = (content: SeasonContent): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${html(`${content.farm}, ${content.title}, ${content.date}`)}</title>
<style>${seasonStyle}</style>
</head>
<body>
${firstPage(content)}
${secondPage(content)}
</body>
</html>
`

const head = (content: SeasonContent): string =>
  `<header><h1>${html(content.farm)}</h1><p class="date">${html(content.date)}</p></header>
<p class="sub"><b>${html(content.title)}</b> &nbsp; ${html(content.phase)} &nbsp; ${content.view.figures.cohort} animals</p>`

function firstPage(content: SeasonContent): string {
  const { view, earlier } = content
  const before = view.earlier[0]
  const ahead = isExpected(view)
  return `<section class="page first">
${head(content)}
<div class="tiles">${tilesOf(content).map(tileHtml).join('')}</div>
<h2>In calf, by the day of conception</h2>
${legend([
  ...(view.figures.inCalf.curve.length > 0 ? [['known', 'known, with its 95 % interval'] as const] : []),
  ...(ahead ? [['expected', `expected; the band holds ${bandWords}`] as const] : []),
  ...(before === undefined ? [] : [['earlier', `season of ${earlier[0]}`] as const]),
])}
${curveChart(view, before)}
<div class="pair"><div><h2>Served in three weeks</h2>
${legend([
  ['known', 'this season'],
  ...(before === undefined ? [] : [['earlier', `season of ${earlier[0]}`] as const]),
])}
${paceChart(view, before)}</div>
<div><h2>Calvings by week from the planned start</h2>
${legend([
  ['full', 'calved'],
  ...(view.figures.calving.weeks.some(({ expected }) => expected >= 0.5)
    ? [['to-come', 'to come'] as const]
    : []),
  ...(view.forecast === undefined ? [] : [['next', 'expected next time'] as const]),
])}
${calvingChart(view)}</div></div>
${isPlanned(content) ? planHtml(content) : returnsHtml(content)}
<p class="foot">${html(footOf(content.view))}</p>
</section>`
}

const footOf = (view: SeasonView): string =>
  [
    !isExpected(view)
      ? ''
      : `A range holds ${bandWords}; what the season ahead rests on stands on the next page.`,
    'What is not known never counts as in calf.',
  ]
    .join(' ')
    .trim()

const legend = (entries: readonly (readonly [style: string, text: string])[]): string =>
  `<p class="legend">${entries.map(([style, text]) => `<span><i class="k-${style}"></i>${html(text)}</span>`).join('')}</p>`

const tileHtml = ({ title, big, unit, lines }: Tile): string =>
  `<div class="tile"><h3>${html(title)}</h3><p class="big">${html(big)}<small>${html(unit)}</small></p>${lines.map((line) => `<p>${html(line)}</p>`).join('')}</div>`

const band = ({ middle, low, high }: CountForecast): string => `${middle} <small>(${low}-${high})</small>`

/** While animals are served the first page shows what if, straws and bulls; then the days between services. */
const isPlanned = ({ view }: SeasonContent): boolean =>
  view.forecast !== undefined && view.s <= view.season.bullEnd

/** What if, straws and bulls. */
function planHtml(content: SeasonContent): string {
  const { changes, bulls, view } = content
  const { forecast } = view
  if (forecast === undefined) return ''
  const rows = changes.map(
    ({ label, forecast: changed }, i) =>
      `<tr${i === 0 ? ' class="plan"' : ''}><td>${html(label)}</td><td>${band(changed.inCalfSixWeeks)}</td><td>${band(changed.emptyAtEnd)}</td><td>${strawsOf(changed)}</td><td>${changed.bullsNeeded}</td></tr>`,
  )
  const straws = (['conventional', 'sexed', 'beef'] as const)
    .filter((kind) => forecast.straws[kind].high > 0)
    .map((kind) => `<p><b>${forecast.straws[kind].low}-${forecast.straws[kind].high}</b> ${kind}</p>`)
  const strawBox =
    straws.length === 0 ? '' : `<h2>Straws still to use</h2><div class="box">${straws.join('')}</div>`
  const bullBox =
    bulls.length === 0
      ? ''
      : `<h2>Sweep bulls</h2><div class="box">${bulls.map((text) => `<p>${html(text)}</p>`).join('')}<p class="caution">${html(cautions.bull.short)}</p></div>`
  return `<div class="uneven"><div><h2>What if <small>the last day with the bull stays</small></h2>
<table><tr><th>plan</th><th>in calf in six weeks</th><th>found empty</th><th>straws</th><th>bulls</th></tr>${rows.join('')}</table></div>
<div>${bullBox}${strawBox}</div></div>`
}

const strawsOf = ({ straws }: SeasonContent['changes'][number]['forecast']): number =>
  Math.round(straws.conventional.expected + straws.sexed.expected + straws.beef.expected)

function returnsHtml({ intervals, view }: SeasonContent): string {
  const { all } = view.figures.returnIntervals
  if (all === 0) return ''
  const rows = intervals.map(
    ({ label, count, meaning }) =>
      `<tr><td>${html(label)}</td><td>${count}</td><td>${portionChart(count / all)}</td><td class="wide">${html(meaning)}</td></tr>`,
  )
  return `<h2>Days between services</h2><table>${rows.join('')}</table>`
}

const restsHtml = ({ assumptions }: SeasonContent): string =>
  assumptions.length === 0
    ? ''
    : `<div class="rests"><h2>What the season ahead rests on</h2><ul>${assumptions.map((text) => `<li>${html(text)}</li>`).join('')}</ul></div>`

function secondPage(content: SeasonContent): string {
  const { lastChances } = content
  const late =
    lastChances.length === 0
      ? ''
      : `<h2>Late calvers and empties</h2>${lastChances
          .map(
            ({ becomes, lines }) =>
              `<p><b>${html(becomes)}</b></p><ul>${lines.map(({ said, numbers }) => `<li>${html(said)}: <b>${html(numbers.join('  '))}</b></li>`).join('')}</ul>`,
          )
          .join('')}`
  return `<section class="page">
${head(content)}
${figureTable(content)}
${isPlanned(content) ? returnsHtml(content) : ''}
${groupsHtml(content)}
${late}
${restsHtml(content)}
</section>`
}

const percentOf = (percent: number | undefined): string =>
  percent === undefined ? '' : `${Math.round(percent)} %`

function figureTable({ figures, earlier, archived }: SeasonContent): string {
  const row = ({ label, meaning, figure, soFar, earlier: before }: FigureLine): string =>
    `<tr><td>${html(label)}</td><td>${figure.numerator} of ${figure.denominator}</td><td><b>${percentOf(figure.percent)}</b></td><td>${soFar ? 'so far' : figure.low === undefined || figure.high === undefined ? '' : `${Math.round(figure.low)}-${Math.round(figure.high)}`}</td><td>${figure.unknown === 0 ? '' : figure.unknown}</td><td>${percentOf(figure.target)}</td>${before.map((percent) => `<td>${percentOf(percent)}</td>`).join('')}<td class="meaning">${html(meaning)}</td></tr>`
  return `<table><tr><th></th><th>count</th><th>share</th><th>95 %</th><th>unknown</th><th>aim</th>${earlier.map((year) => `<th>${html(year)}</th>`).join('')}<th></th></tr>${figures.map(row).join('')}</table>${archived === undefined ? '' : `<p>${html(archived)}</p>`}`
}

function groupsHtml({ groups }: SeasonContent): string {
  const shown = groups.filter(({ rows }) => rows.some(({ figure }) => figure.denominator > 0))
  if (shown.length === 0)
    return groups.some(({ rows }) => rows.length > 0)
      ? `<h2>Services that held</h2><p>${html(tooYoungWords)}</p>`
      : ''
  return `<div class="groups">${shown.map(groupHtml).join('')}</div>`
}

const groupHtml = ({ title, rows }: GroupTable): string =>
  `<div><h2>${html(title)}</h2><table>${rows
    .map(
      ({ label, figure }) =>
        `<tr><td>${html(label)}</td><td>${figure.numerator} of ${figure.denominator}</td><td>${percentOf(figure.percent)}</td><td>${shareChart(figure)}</td></tr>`,
    )
    .join('')}</table></div>`
