/** The answers of the season's five questions, put into words from what is known. */
import { emptyReasons } from '../../breeding/figures/probably-empty.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import { LAST_DAY, paceTarget } from '../../breeding/figures/submission.ts'
import type { BlockForecast } from '../../breeding/forecast/block.ts'
import { cyclingSeen } from '../../breeding/rules/no-heat-seen.ts'
import { SIX_WEEKS } from '../../breeding/season.ts'
import { emptiesOf } from '../../morning/season/empties.ts'
import { shortDate } from '../../words/dates.ts'
import type { Tone } from '../theme.ts'
import { answerWords } from '../words/season/answers.ts'
import { emptiesWords } from '../words/season/empties.ts'
import { forecastWords } from '../words/season/forecast.ts'
import { seasonWords } from '../words/season/shared.ts'
import { usualNonReturn } from './usual-non-return.ts'

/** What is answered: sentences, and a bar of percent with its aim. */
export interface Answer {
  readonly says: readonly { readonly text: string; readonly tone?: Tone }[]
  readonly bar?: { readonly value: number; readonly expected?: number; readonly aim: number }
}

const share = (part: number, all: number): string =>
  seasonWords.percent(all === 0 ? undefined : (100 * part) / all)

/** Before mating: who has been seen on heat. From then on: who has been served, against the aim of the day. */
export function paceAnswer({ season, figures, counted, s }: SeasonView): Answer {
  if (s <= 0) {
    const open = counted.members.filter(({ now }) => !now.inCalf)
    const seen = open.filter(({ now }) => cyclingSeen(now)).length
    return {
      says: [
        { text: seasonWords.begins(shortDate(season.matingStart)) },
        { text: answerWords.seenBefore(seen, open.length, share(seen, open.length)) },
      ],
      bar: { value: (100 * seen) / Math.max(1, open.length), aim: 85 },
    }
  }
  const { all, ready } = figures.submission
  const over = s > LAST_DAY
  const target = paceTarget(over ? LAST_DAY : s - 1)
  const aim = seasonWords.percent(target)
  const short = Math.ceil((target * all.denominator) / 100 - 1e-9) - all.numerator
  return {
    says: [
      {
        text: `${answerWords.servedOf(all.numerator, all.denominator, seasonWords.percent(all.percent))}. ${over ? answerWords.paceEnd(aim, short) : answerWords.paceNow(aim, short)}`,
        tone: short > 0 ? 'care' : 'good',
      },
      { text: answerWords.ofThoseReady(ready.numerator, ready.denominator) },
    ],
    bar: { value: all.percent ?? 0, aim: target },
  }
}

/** What services with a result say; before there are any, who did not come back; and what is ahead. */
export function aiAnswer(view: SeasonView, ahead: SeasonView | undefined): Answer {
  const { figures, s } = view
  const { conception, nonReturn24, inCalf } = figures
  const services = view.counted.ai.length
  const forecast = ahead?.forecast
  const { sixWeeks } = inCalf
  const isAhead = forecast !== undefined && (s <= SIX_WEEKS + 1 || sixWeeks.unknown > 0)
  const expected = usualNonReturn(view)
  const says = [
    conception.denominator === 0
      ? answerWords.noResult(services)
      : answerWords.heldOf(
          conception.numerator,
          conception.denominator,
          seasonWords.percent(conception.percent),
          `${seasonWords.interval(conception.low, conception.high)} %`,
        ),
    ...(nonReturn24.denominator === 0 || expected === undefined
      ? []
      : [
          answerWords.notBack(
            nonReturn24.numerator,
            nonReturn24.denominator,
            seasonWords.percent(nonReturn24.percent),
            seasonWords.percent(expected),
          ),
        ]),
    ...(isAhead ? [sixWeeksAhead(forecast)] : []),
    ...(s > SIX_WEEKS && sixWeeks.numerator > 0
      ? [
          answerWords.sixWeeksKnown(
            sixWeeks.numerator,
            sixWeeks.denominator,
            seasonWords.percent(sixWeeks.percent),
            sixWeeks.unknown,
          ),
        ]
      : []),
  ]
  const likely = isAhead ? (100 * forecast.inCalfSixWeeks.middle) / Math.max(1, forecast.animals) : 0
  const known = sixWeeks.percent ?? 0
  return {
    says: says.map((text) => ({ text })),
    ...(isAhead || known > 0
      ? { bar: { value: known, expected: Math.max(0, likely - known), aim: 78 } }
      : {}),
  }
}

const sixWeeksAhead = ({ inCalfSixWeeks: { low, middle, high }, animals }: BlockForecast): string =>
  answerWords.sixWeeksAhead(middle, low, high, animals, share(middle, animals))

/** Who is more likely empty than in calf, by reason; then how many will be when the bull is out. */
export function emptiesAnswer(view: SeasonView, ahead: SeasonView | undefined): Answer {
  if (view.s < 0) return { says: [{ text: seasonWords.begins(shortDate(view.season.matingStart)) }] }
  const empties = emptiesOf(view)
  const parts = emptyReasons.flatMap((reason) => {
    const many = empties.filter((one) => one.reason === reason).length
    return many === 0 ? [] : [answerWords.emptyCount[reason](many)]
  })
  const forecast = ahead?.forecast
  const { empty } = view.figures.inCalf
  const end = forecast?.emptyAtEnd
  return {
    says: [
      { text: parts.length === 0 ? emptiesWords.noEmpties : answerWords.emptyCounts(parts) },
      ...(end !== undefined && forecast !== undefined && view.s <= view.season.bullEnd
        ? [{ text: answerWords.emptiesAhead(end.middle, end.low, end.high, forecast.animals) }]
        : [{ text: answerWords.emptyEnd(empty.numerator, empty.denominator, empty.unknown) }]),
    ],
  }
}

/** Bulls at turn-out, or now. */
export function bullsAnswer(ahead: SeasonView | undefined): Answer | undefined {
  if (ahead === undefined) return undefined
  const { season, s, bulls, forecast } = ahead
  if (season.bullEnd <= season.aiEnd) return { says: [{ text: answerWords.noBullWeeks }] }
  if (bulls === undefined || forecast === undefined || s > season.bullEnd)
    return { says: [{ text: seasonWords.over }] }
  const { high } = forecast.openAtTurnOut
  const text =
    s > season.aiEnd
      ? answerWords.bullsNow(bulls.needed, high, bulls.onHand)
      : answerWords.bullsNeeded(bulls.needed, shortDate(bulls.turnOut), high, bulls.onHand)
  return { says: [{ text, tone: bulls.needed > bulls.onHand ? 'care' : 'plain' }] }
}

/** What a week of AI more would change, against the plan. */
export function anotherWeekAnswer(ahead: SeasonView | undefined): Answer | undefined {
  if (ahead === undefined) return undefined
  const { season, s, forecast } = ahead
  if (forecast === undefined || s > season.aiEnd) return { says: [{ text: answerWords.aiIsOver }] }
  if (season.bullEnd <= season.aiEnd) return { says: [{ text: answerWords.cannotGoOn }] }
  if (!ahead.knows({ aiWeeks: 1 })) return undefined
  const longer = ahead.whatIf({ aiWeeks: 1 })
  return longer === undefined ? undefined : { says: [{ text: comparedWords(forecast, longer) }] }
}

/** What changes from one forecast to another, the middles of what counts. */
export function comparedWords(before: BlockForecast, after: BlockForecast): string {
  const { ahead } = forecastWords
  const straws = ({ straws: { conventional, sexed, beef } }: BlockForecast): number =>
    conventional.middle + sexed.middle + beef.middle
  const pairs: readonly (readonly [string, number, number])[] = [
    [ahead.empty, before.emptyAtEnd.middle, after.emptyAtEnd.middle],
    [ahead.open, before.openAtTurnOut.middle, after.openAtTurnOut.middle],
    [ahead.bulls, before.bullsNeeded, after.bullsNeeded],
    [ahead.straws, straws(before), straws(after)],
    [ahead.heifers, before.heiferCalves.middle, after.heiferCalves.middle],
  ]
  return answerWords.anotherWeek(pairs.map(([name, one, other]) => answerWords.change(name, one, other)))
}
