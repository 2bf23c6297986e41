/** What is told of the line pointed at: why so many bulls, or what is known of one. */

import type { BullRecord } from '../../breeding/figures/bull-records.ts'
import { bullsNeeded } from '../../breeding/forecast/bulls.ts'
import type { BlockDay } from '../../breeding/list.ts'
import type { BullHere } from '../../morning/bulls-here.ts'
import type { Desk } from '../../morning/desk.ts'
import type { BullsEntry } from '../../morning/places/bulls.ts'
import { forecastOf, knownView } from '../../morning/reckoning.ts'
import { capital } from '../../words/capital.ts'
import { cautions } from '../../words/cautions.ts'
import { dayAndMonth, shortDate } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { paragraph, parted } from '../text.ts'
import type { Theme } from '../theme.ts'
import { fill } from '../width.ts'
import { bullsWords } from '../words/bulls.ts'
import { absence, ageOf } from './state.ts'

/** Services shown. */
const MOST = 8

export function toldLines(desk: Desk, entry: BullsEntry, cells: number, theme: Theme): readonly Line[] {
  const caution = paragraph(cautions.bull.full, cells, theme, 'care')
  return entry.is === 'block'
    ? parted([...blockParts(desk, entry.block, cells, theme), caution])
    : parted([...bullParts(desk, entry.bull, cells, theme), caution])
}

/** What does not stand on the page already, on a few lines below it on a narrow screen. */
export function shortTold(desk: Desk, entry: BullsEntry, cells: number, theme: Theme): readonly Line[] {
  const parts =
    entry.is === 'block'
      ? blockParts(desk, entry.block, cells, theme).slice(2, 3)
      : bullParts(desk, entry.bull, cells, theme).map((part, index) => (index === 0 ? part.slice(1) : part))
  return parts.flat()
}

function blockParts(
  desk: Desk,
  { block, season }: BlockDay,
  cells: number,
  theme: Theme,
): (readonly Line[])[] {
  const say = (text: string): readonly Line[] => paragraph(text, cells, theme)
  const head: Line = [bit(bullsWords.block(safeText(block)), 'strong')]
  const forecast = forecastOf(desk, season)
  const plan = knownView(desk, season, {})?.view.bulls
  if (forecast === undefined || plan === undefined) return [[head]]
  if (desk.page.list.day > plan.last) return [[head, ...say(`${capital(bullsWords.over)}.`)]]
  const { policy } = desk.book
  const { low, middle, high } = forecast.openAtTurnOut
  const half = { open: high, openPerBull: policy.openPerBull, halfRest: true }
  const { day } = desk.page.list
  return [
    [head, ...say(`${bullsWords.needed(plan.needed, plan.onHand)}.`)],
    [
      ...say(bullsWords.why(high, policy.openPerBull, day >= plan.turnOut)),
      ...say(bullsWords.band(middle, low, high)),
      ...say(bullsWords.least),
    ],
    [
      ...say(bullsWords.young(plan.youngNeeded, policy.openPerYoungBull)),
      ...say(policy.bullsRotate ? bullsWords.resting : bullsWords.rest(bullsNeeded(half))),
    ],
    [
      ...say(bullsWords.sound(shortDate(plan.soundnessBy), plan.soundnessBy - day)),
      ...say(bullsWords.onFarm(shortDate(plan.onFarmBy), plan.onFarmBy - day)),
    ],
    paragraph(bullsWords.source, cells, theme, 'faint'),
  ]
}

function bullParts(desk: Desk, bull: BullHere, cells: number, theme: Theme): (readonly Line[])[] {
  const say = (text: string): readonly Line[] => paragraph(text, cells, theme)
  const { record } = bull.animal ?? {}
  const age = ageOf(desk, bull)
  const about = [
    record?.breed === undefined ? '' : safeText(record.breed),
    age === undefined ? bullsWords.ageUnknown : bullsWords.atTurnOut(age),
    absence(bull) ?? '',
  ].filter((part) => part !== '')
  return [
    [
      [
        bit(bull.name === undefined ? bullsWords.unnamed : safeText(bull.name), 'strong'),
        bit(record?.name === undefined ? '' : `  ${safeText(record.name)}`, 'strong'),
      ],
      ...say(`${about.join(', ')}.`),
      ...(bull.with === 0 ? [] : say(bullsWords.runsWith(bull.with))),
      ...(bull.examined === undefined
        ? say(bullsWords.notExamined)
        : say(bullsWords.examined(shortDate(bull.examined)))),
    ],
    bull.records.length === 0
      ? say(bullsWords.noServices)
      : bull.records.flatMap((one) => recordLines(one, cells, theme)),
    servicesOf(bull, theme),
  ]
}

function recordLines(record: BullRecord, cells: number, theme: Theme): readonly Line[] {
  const { services, returned, held, unknown, doubtful, chanceIfSound } = record
  return [
    ...paragraph(bullsWords.services(services.length, returned, held, unknown), cells, theme),
    ...(doubtful
      ? paragraph(
          `${theme.signs.warning} ${bullsWords.doubt(returned, services.length, inHundred(chanceIfSound))}`,
          cells,
          theme,
          'care',
        )
      : []),
  ]
}

const inHundred = (chance: number): string =>
  chance < 0.01 ? 'fewer than 1' : String(Math.round(100 * chance))

function servicesOf(bull: BullHere, theme: Theme): readonly Line[] {
  const newest = bull.records
    .flatMap(({ services }) => services)
    .toReversed()
    .slice(0, MOST)
  if (newest.length === 0) return []
  return [
    [bit(bullsWords.newest, 'heading')],
    ...newest.map(
      ({ service, standing, end }): Line => [
        bit(fill(dayAndMonth(service.day), 8, theme.signs.cut)),
        bit(fill(safeText(standing.animal.number), 7, theme.signs.cut), 'strong'),
        bit(bullsWords.ends[end], end === 'failed' ? 'care' : 'plain'),
      ],
    ),
  ]
}
