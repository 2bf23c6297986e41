/** The four numbers of a season that are read from across the room. */
import type { Figure } from '../../breeding/figures/figure.ts'
import type { SeasonContent } from './content.ts'
import { isExpected } from './expected.ts'

export interface Tile {
  readonly title: string
  readonly big: string
  readonly unit: string
  readonly lines: readonly string[]
}

const whole = (value: number | undefined): string => (value === undefined ? '-' : String(Math.round(value)))

const counted = ({ numerator, denominator }: Figure): string => `${numerator} of ${denominator}`

/**
 * The four numbers. While the season is on, six weeks and empties are those to be expected.
 *
 * @example tilesOf(content)[0] // { title: 'Served in three weeks', big: '72', unit: ' %', ... }
 */
export function tilesOf({ view, earlier }: SeasonContent): readonly Tile[] {
  const { figures, forecast, s } = view
  const before = view.earlier[0]
  const last = (percent: number | undefined): string[] =>
    before === undefined || percent === undefined ? [] : [`${earlier[0]}: ${whole(percent)} %`]
  const served: Tile = {
    title: 'Served in three weeks',
    big: s <= 0 ? '-' : whole(figures.submission.all.percent),
    unit: s <= 0 ? '' : ' %',
    lines: [
      ...(s <= 0 ? [] : [`${counted(figures.submission.all)}${s <= 20 ? ' so far' : ''}`]),
      'aim 90 %',
      ...last(before?.submission.all.percent),
    ],
  }
  const held: Tile = {
    title: 'Services that held',
    big: whole(figures.conception.percent),
    unit: figures.conception.percent === undefined ? '' : ' %',
    lines: [
      figures.conception.denominator === 0 ? 'no result yet' : counted(figures.conception),
      ...last(before?.conception.percent),
    ],
  }
  const six = figures.inCalf.sixWeeks
  const empty = figures.inCalf.empty
  if (forecast === undefined || !isExpected(view))
    return [
      served,
      held,
      {
        title: 'In calf in six weeks',
        big: whole(six.percent),
        unit: ' %',
        lines: [`${counted(six)}${unknownOf(six)}`, 'aim 78 %', ...last(before?.inCalf.sixWeeks.percent)],
      },
      {
        title: 'Found empty',
        big: whole(empty.percent),
        unit: ' %',
        lines: [`${counted(empty)}${unknownOf(empty)}`, ...last(before?.inCalf.empty.percent)],
      },
    ]
  const { animals, inCalfSixWeeks, emptyAtEnd } = forecast
  const share = (count: number): string => whole(animals === 0 ? undefined : (100 * count) / animals)
  return [
    served,
    held,
    {
      title: 'In calf in six weeks, expected',
      big: share(inCalfSixWeeks.middle),
      unit: ' %',
      lines: [
        `${share(inCalfSixWeeks.low)}-${share(inCalfSixWeeks.high)} %, known so far ${six.numerator}`,
        'aim 78 %',
        ...last(before?.inCalf.sixWeeks.percent),
      ],
    },
    {
      title: 'Empty at the final check, expected',
      big: share(emptyAtEnd.middle),
      unit: ' %',
      lines: [
        `${share(emptyAtEnd.low)}-${share(emptyAtEnd.high)} %, or ${emptyAtEnd.low}-${emptyAtEnd.high} animals`,
        ...last(before?.inCalf.empty.percent),
      ],
    },
  ]
}

const unknownOf = ({ unknown }: Figure): string => (unknown === 0 ? '' : `, ${unknown} not known`)
