/** The figures of a season as lines that can be pointed at, in groups. */
import type { FigureName } from '../../breeding/figures/behind.ts'
import { type Grouping, groupings } from '../../breeding/figures/conception.ts'
import { type Figure, figureOf } from '../../breeding/figures/figure.ts'
import { intervalClasses } from '../../breeding/figures/returns.ts'
import type { SeasonFigures } from '../../breeding/figures/season-figures.ts'

export interface FigureRow {
  readonly name: FigureName
  /** A share; undefined where the figure is a number or a mean. */
  readonly figure: Figure | undefined
  /** A number, where it is none. */
  readonly count: number | undefined
  /** Days, where it is a mean: the median too. */
  readonly days?: { readonly mean: number; readonly median: number }
}

export type FigureGroup =
  | { readonly of: 'pace' | 'ai' | 'in-calf' | 'returns' | 'calving'; readonly rows: readonly FigureRow[] }
  | { readonly of: 'conception-by'; readonly by: Grouping; readonly rows: readonly FigureRow[] }

const share = (name: FigureName, figure: Figure): FigureRow => ({ name, figure, count: undefined })

/**
 * The groups of figures, in the order of the season's questions.
 *
 * @example figureGroups(figures)[0]?.rows[0]?.figure?.numerator // 116
 */
export function figureGroups(figures: SeasonFigures): readonly FigureGroup[] {
  const { submission, inCalf, calving, returnIntervals, calvingToFirstService } = figures
  const { mean, median, animals } = calvingToFirstService
  return [
    {
      of: 'pace',
      rows: [
        share({ of: 'submission' }, submission.all),
        share({ of: 'submission-ready' }, submission.ready),
        share({ of: 'heat-detection' }, figures.heatDetection),
        {
          name: { of: 'first-service' },
          figure: undefined,
          count: animals,
          ...(mean === undefined || median === undefined ? {} : { days: { mean, median } }),
        },
      ],
    },
    {
      of: 'ai',
      rows: [
        share({ of: 'conception' }, figures.conception),
        share({ of: 'non-return', days: 24 }, figures.nonReturn24),
        share({ of: 'non-return', days: 56 }, figures.nonReturn56),
      ],
    },
    {
      of: 'in-calf',
      rows: [
        share({ of: 'six-weeks' }, inCalf.sixWeeks),
        share({ of: 'in-calf' }, inCalf.all),
        share({ of: 'empty' }, inCalf.empty),
        { name: { of: 'left' }, figure: undefined, count: inCalf.leftBefore },
      ],
    },
    ...groupings.map((by): FigureGroup => {
      const groups = figures.conceptionBy[by]
      const rows = groups.map(({ key, figure }) => share({ of: 'conception', by, key }, figure))
      return { of: 'conception-by', by, rows }
    }),
    {
      of: 'returns',
      rows: intervalClasses.map((one) =>
        share({ of: 'interval', class: one }, figureOf(returnIntervals.counts[one], returnIntervals.all)),
      ),
    },
    {
      of: 'calving',
      rows: [
        share({ of: 'calved-by', day: 21 }, calving.byDay21),
        share({ of: 'calved-by', day: 42 }, calving.byDay42),
      ],
    },
  ].filter((group) => group.rows.length > 0) as readonly FigureGroup[]
}

/** All rows, in order. */
export const figureRows = (figures: SeasonFigures): readonly FigureRow[] =>
  figureGroups(figures).flatMap(({ rows }) => rows)
