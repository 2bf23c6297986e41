/** Words of the season's screen; what figures and changes are called stands in source/words/season.ts. */

import type { LastChance, TimeLeft } from '../../breeding/ahead/last-chances.ts'
import type { Day } from '../../breeding/day.ts'
import type { Counts, FigureName } from '../../breeding/figures/behind.ts'
import type { EmptyReason } from '../../breeding/figures/probably-empty.ts'
import type { SeasonPart } from '../../morning/place.ts'
import type { FigureGroup } from '../../morning/season/figures.ts'
import type { Question } from '../../morning/season/questions.ts'
import type { Knob } from '../../morning/season/tries.ts'
import { counted } from '../../words/counted.ts'
import { safeText } from '../../words/safe.ts'
import {
  type FigureName as FigureLabel,
  figureWords,
  intervalNames,
  lastChanceReasons,
} from '../../words/season.ts'

const percent = (share: number | undefined): string => (share === undefined ? '' : `${Math.round(share)} %`)

export const seasonParts: Readonly<Record<SeasonPart, string>> = {
  answers: 'answers',
  figures: 'figures',
  pictures: 'pictures',
  forecast: 'forecast',
  empties: 'empties',
  earlier: 'earlier',
}

export const questionWords: Readonly<Record<Question, string>> = {
  pace: 'Are we on pace?',
  ai: 'Is the AI working?',
  empties: 'Who is probably empty?',
  bulls: 'How many bulls, and when?',
  'another-week': 'What would another week of AI bring?',
}

const labels: Readonly<Partial<Record<FigureName['of'], FigureLabel>>> = {
  submission: 'submission_21_days',
  'submission-ready': 'submission_21_days_ready',
  'heat-detection': 'heats_seen_24_days',
  conception: 'conception',
  'six-weeks': 'in_calf_six_weeks',
  'in-calf': 'in_calf',
  empty: 'not_in_calf',
}
const labelOf = (name: FigureName): FigureLabel | undefined => {
  if (name.of === 'non-return') return name.days === 24 ? 'non_return_24_days' : 'non_return_56_days'
  if (name.of === 'calved-by') return name.day === 21 ? 'calved_by_day_21' : 'calved_by_day_42'
  return labels[name.of]
}

/** What a figure is called. */
export function figureLabel(name: FigureName): string {
  const label = labelOf(name)
  if (label !== undefined) return figureWords[label].label
  if (name.of === 'interval') return intervalNames[name.class]
  return name.of === 'left' ? 'Left before a result' : 'Calving to first service'
}

/** What a figure counts, in a sentence. */
export function figureMeaning(name: FigureName): string {
  const label = labelOf(name)
  if (label !== undefined) return figureWords[label].meaning
  if (name.of === 'interval') return 'Days between two services of an animal, of all such days in the season.'
  return name.of === 'left'
    ? 'Left the herd before anything was known of her: she counts neither as in calf nor as empty.'
    : 'Days from calving to the first service by AI of the season, of the cows that had one.'
}

/** Who stands in each group of a figure's list. */
export const countsWords: Readonly<Record<FigureName['of'], Partial<Record<Counts, string>>>> = {
  submission: { yes: 'Served', no: 'Not served' },
  'submission-ready': { yes: 'Served', no: 'Not served' },
  'heat-detection': { yes: 'Seen', no: 'Not seen' },
  conception: { yes: 'Held', no: 'Failed', unknown: 'Not known yet' },
  'non-return': { yes: 'Not back', no: 'Came back' },
  interval: { yes: 'Served again' },
  'six-weeks': { yes: 'In calf', no: 'Not in calf by then', unknown: 'Not known yet' },
  'in-calf': { yes: 'In calf', no: 'Not in calf', unknown: 'Not known yet' },
  empty: { yes: 'Found empty', no: 'In calf or left', unknown: 'Not known yet' },
  left: { yes: 'Left' },
  'calved-by': { yes: 'Calved by then', no: 'Calved later', unknown: 'Still to calve' },
  'first-service': { yes: 'Served' },
}

export const groupWords: Readonly<Record<Exclude<FigureGroup['of'], 'conception-by'>, string>> = {
  pace: 'Pace',
  ai: 'AI',
  'in-calf': 'In calf',
  returns: 'Days between two services',
  calving: 'Calving before the season',
}

export const emptyWords: Readonly<Record<EmptyReason, string>> = {
  'checked-empty': 'Checked empty, not served since',
  'came-back': 'Came back, not served again',
  doubtful: 'Unsure at the check, or doubtful by her days',
  'not-served': 'Not served',
  'with-bull': 'Not in calf by AI, with the bull',
}

type InWords = (day: Day) => string

/**
 * Until when an animal can still be served in this block, else where she can be.
 *
 * @param day puts a day into words
 * @example timeLeftWords({ lastAi, last }, dayAndMonth) // 'AI to 11 Jun, bull to 2 Jul'
 */
export function timeLeftWords({ lastAi, last }: TimeLeft, day: InWords): string {
  if (lastAi === undefined) return last === undefined ? '' : `bull to ${day(last)}`
  return last === undefined || lastAi === last
    ? `AI to ${day(lastAi)}`
    : `AI to ${day(lastAi)}, bull to ${day(last)}`
}

/**
 * What a late calver or an empty can still come to, and why she is on the list.
 *
 * @example lastChanceWords(one, dayAndMonth) // 'bull to 2 Jul; due 20 May, ready 1 Jul'
 */
export function lastChanceWords(one: LastChance, day: InWords): string {
  const { reason, calves, readyFrom, last, otherBlock, standing } = one
  const found = standing.lastCheck?.day
  const when = calves ?? (reason === 'empty' ? found : undefined)
  const why = `${lastChanceReasons[reason]}${when === undefined ? '' : ` ${day(when)}`}`
  if (last !== undefined)
    return `${timeLeftWords(one, day)}; ${why}${readyFrom === undefined ? '' : `, ready ${day(readyFrom)}`}`
  return otherBlock === undefined
    ? `no more here, no other block: cull; ${why}`
    : `${safeText(otherBlock.block)} from ${day(otherBlock.matingStart)}, or cull; ${why}`
}

export const knobWords: Readonly<Record<Knob, string>> = {
  aiWeeks: 'Weeks of AI',
  heatSeen: 'Heats seen',
  cowConception: 'Services that hold',
  bulls: 'Working bulls',
}

/** What Enter and the arrows do on each part. */
export const enterWords = {
  answers: 'look into it',
  figures: 'its animals',
  pictures: '',
  forecast: 'try it',
  empties: 'her page',
  earlier: '',
  animal: 'her page',
  turn: 'turn',
  asPlanned: 'as planned',
} as const

export const seasonWords = {
  season: (block: string, start: string): string => `${block}, from ${start}`,
  noSeason: 'No season is set up yet: E under G sets one up.',
  reckoning: 'reckoning',
  reckoningAnew: 'reckoning anew',
  over: 'The season is over: nothing lies ahead.',
  of: (one: number, all: number): string => `${one} of ${all}`,
  percent,
  interval: (low: number | undefined, high: number | undefined): string =>
    low === undefined || high === undefined ? '' : `${Math.round(low)}-${Math.round(high)}`,
  intervalMeans: (low: number, high: number): string =>
    `By chance alone such a herd could lie anywhere from ${Math.round(low)} to ${Math.round(high)} % (19 times in 20).`,
  notKnown: (many: number): string => (many === 0 ? '' : `${many} not known`),
  notKnownYet: (many: number): string => `${counted(many, 'is', 'are')} not known yet.`,
  aim: (target: number | undefined): string => (target === undefined ? '' : `aim ${target} %`),
  aimFrom: (target: number, source: string): string => `Aim: ${target} % (${source}).`,
  from: (source: string): string => `Source: ${source}.`,
  columns: { of: 'counted', interval: '19 in 20' },
  animals: (many: number): string => counted(many, 'animal'),
  services: (many: number): string => counted(many, 'service'),
  meanDays: (mean: number, median: number): string =>
    `mean ${Math.round(mean)} days, half by ${Math.round(median)}`,
  halfBy: (median: number): string => `half by ${Math.round(median)} days`,
  noneYet: 'none yet',
  perPregnancy: (services: number, pregnancies: number, ratio: number): string =>
    `${services} services with a result for ${counted(pregnancies, 'pregnancy', 'pregnancies')}: ${ratio.toFixed(2)} each`,
  perPregnancyShort: (ratio: number): string => `${ratio.toFixed(2)} services a pregnancy`,
  ratio: (ratio: number): string =>
    `For each two cycles apart there are ${ratio.toFixed(1)} one cycle apart: few mean that first returns are missed.`,
  intervalShare:
    'The best quarter of UK herds has 6 % of 2-17 days, 40 % of 18-24, 16 % of 25-35, 19 % of 36-48 and 19 % longer (Remnant, University of Nottingham, 2019).',
  /** Pace. */
  servedOf: (served: number, all: number, share: string): string => `${served} of ${all} served (${share})`,
  paceNow: (aim: string, short: number): string =>
    short > 0 ? `Aim by now ${aim}: ${counted(short, 'animal')} short of it.` : `Aim by now ${aim}: on pace.`,
  paceEnd: (aim: string, short: number): string =>
    short > 0
      ? `Aim in three weeks ${aim}: ${counted(short, 'animal')} short of it.`
      : `Aim in three weeks ${aim}: reached.`,
  ofThoseReady: (served: number, all: number): string =>
    `Of those that had calved long enough ago ${served} of ${all}.`,
  begins: (date: string): string => `Mating begins ${date}.`,
  seenBefore: (seen: number, all: number, share: string): string =>
    `${seen} of ${all} seen on heat so far (${share}); aim 75 % ten days before, 85 % at the start (common practice).`,
  /** AI. */
  noResult: (services: number): string =>
    services === 0
      ? 'No service yet.'
      : `${counted(services, 'service')}, none with a result yet: results count from 42 days on.`,
  heldOf: (held: number, all: number, share: string, interval: string): string =>
    `${held} of ${all} services with a result held (${share}, ${interval} by chance).`,
  notBack: (notBack: number, all: number, share: string, expected: string): string =>
    `${notBack} of ${all} services older than 24 days did not come back (${share}); about ${expected} is usual for such straws here.`,
  sixWeeksAhead: (middle: number, low: number, high: number, all: number, share: string): string =>
    `Ahead: ${middle} of ${all} in calf in six weeks (${share}), ${low} to ${high} at least 8 times in 10; aim 78 %.`,
  sixWeeksKnown: (inCalf: number, all: number, share: string, unknown: number): string =>
    `In calf in six weeks ${inCalf} of ${all} (${share})${unknown === 0 ? '' : `, ${unknown} not known yet`}; aim 78 %.`,
  /** Empties. */
  emptyCounts: (parts: readonly string[]): string => `${parts.join(', ')}.`,
  emptyCount: {
    'checked-empty': (many: number): string => `${many} checked empty`,
    'came-back': (many: number): string => `${many} came back`,
    doubtful: (many: number): string => `${many} doubtful`,
    'not-served': (many: number): string => `${many} not served`,
    'with-bull': (many: number): string => `${many} not in calf by AI, with the bull`,
  } satisfies Record<EmptyReason, (many: number) => string>,
  noEmpties: 'Nobody is more likely empty than in calf.',
  emptiesAhead: (middle: number, low: number, high: number, all: number): string =>
    `Ahead: ${middle} of ${all} empty at the final check, ${low} to ${high} at least 8 times in 10.`,
  emptyEnd: (empty: number, all: number, unknown: number): string =>
    `Found empty ${empty} of ${all}${unknown === 0 ? '' : `, ${unknown} not known`}.`,
  chance: (chance: number): string => `${Math.round(100 * chance)} in 100 in calf`,
  lastChances: 'Little or no time left in this block',
  servedTo: (date: string): string => `to ${date}`,
  toDecide: (animals: number, decided: number): string =>
    `${counted(animals, 'animal')}${decided === 0 ? '' : `, ${decided} decided`}`,
  decided: (what: string, date: string): string => `${what}, ${date}`,
  /** Bulls. */
  bullsNeeded: (needed: number, date: string, high: number, onHand: number): string =>
    `${counted(needed, 'bull')} from ${date} for up to ${high} open animals; ${onHand} on hand${needed > onHand ? `: ${needed - onHand} short` : ''}.`,
  bullsNow: (needed: number, high: number, onHand: number): string =>
    `${counted(needed, 'bull')} for up to ${high} open animals; ${onHand} on hand.`,
  noBullWeeks: 'No bull weeks are planned.',
  /** Another week. */
  aiIsOver: 'The AI weeks are over.',
  cannotGoOn: 'AI cannot go on: the bull’s last day comes first.',
  anotherWeek: (parts: readonly string[]): string =>
    `${parts.map((part, index) => (index === 0 ? part : part.charAt(0).toLowerCase() + part.slice(1))).join('; ')}.`,
  change: (name: string, before: number, after: number): string =>
    before === after ? `${name} ${before} as planned` : `${name} from ${before} to ${after}`,
  /** Forecast. */
  aheadOf: (animals: number, ai: string, bull: string | undefined): string =>
    bull === undefined
      ? `${animals} animals, AI to ${ai}`
      : `${animals} animals, AI to ${ai}, bull to ${bull}`,
  likely: 'likely',
  band: 'at least 8 in 10',
  bandShort: '8 in 10',
  ahead: {
    sixWeeks: 'In calf in six weeks',
    open: 'Open at turn-out',
    openNow: 'Open now',
    empty: 'Empty at the end',
    bulls: 'Bulls needed',
    conventional: 'Conventional straws',
    sexed: 'Sexed straws',
    beef: 'Beef straws',
    straws: 'Straws',
    heifers: 'Heifer calves',
  },
  planned: 'As planned',
  whatIf: 'What if',
  if: 'if',
  whatIfIs: (change: string): string => `If: ${change}`,
  worth: 'Changes worth a look',
  knobTold:
    'Try a change and see it beside the plan: nothing is recorded. AI longer or shorter gives or takes weeks of the bull; his last day stays. Services that hold: of cows to conventional straws; the others move with them.',
  knobHint: 'Left and Right turn it',
  turnedFrom: (plan: string): string => `planned ${plan}`,
  assumptions: 'What it rests on',
  shortSix: 'six weeks',
  shortEmpty: 'empty',
  to: (low: number, high: number): string => (low === high ? String(low) : `${low} to ${high}`),
  /** Pictures. */
  curve: 'In calf by day of the season',
  curveKnown: 'known',
  curveAhead: 'expected',
  curveBand: '19 in 20, ahead 8 in 10',
  curveAim: 'aim 78 % in six weeks',
  curveLater: 'The curve ends where too much is not known; ahead of it stands the forecast.',
  pace: 'Served by day of the first three weeks',
  paceServed: 'served',
  paceAim: 'aim',
  noPace: 'Mating has not begun.',
  calvedWeeks: 'Calving before the season, by week',
  calvedTo: (date: string): string => `planned start ${date}`,
  week: (week: number): string => `week ${week}`,
  calvingsAhead: 'Calvings to come from this season, by week',
  cumulative: (share: number): string => `${Math.round(share)} %`,
  returns: 'Days between two services',
  none: 'Nothing yet.',
  today: 'today',
  aiEnds: 'AI ends',
  bullOut: 'bull out',
  start: 'start',
  /** Earlier. */
  earlier: 'This season and those before',
  noEarlier: 'No earlier season of this block is on record.',
  cohort: 'Animals',
  toDate: 'so far',
} as const
