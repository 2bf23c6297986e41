/** Words of the season's figures; what those of the JSON output are called stands in source/words/figures.ts. */
import type { Counts, FigureName } from '../../../breeding/figures/behind.ts'
import type { FigureGroup } from '../../../morning/season/figures.ts'
import { counted } from '../../../words/counted.ts'
import { type FigureName as FigureLabel, figureWords, intervalNames } from '../../../words/figures.ts'

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

export const figureTableWords = {
  intervalMeans: (low: number, high: number): string =>
    `By chance alone such a herd could lie anywhere from ${Math.round(low)} to ${Math.round(high)} % (19 times in 20).`,
  notKnownYet: (many: number): string => `${counted(many, 'is', 'are')} not known yet.`,
  aimFrom: (target: number, source: string): string => `Aim: ${target} % (${source}).`,
  from: (source: string): string => `Source: ${source}.`,
  columns: { of: 'counted', interval: '19 in 20' },
  services: (many: number): string => counted(many, 'service'),
  meanDays: (mean: number, median: number): string =>
    `mean ${Math.round(mean)} days, half by ${Math.round(median)}`,
  halfBy: (median: number): string => `half by ${Math.round(median)} days`,
  perPregnancy: (services: number, pregnancies: number, ratio: number): string =>
    `${services} services with a result for ${counted(pregnancies, 'pregnancy', 'pregnancies')}: ${ratio.toFixed(2)} each`,
  perPregnancyShort: (ratio: number): string => `${ratio.toFixed(2)} services a pregnancy`,
  ratio: (ratio: number): string =>
    `For each two cycles apart there are ${ratio.toFixed(1)} one cycle apart: few mean that first returns are missed.`,
  intervalShare:
    'The best quarter of UK herds has 6 % of 2-17 days, 40 % of 18-24, 16 % of 25-35, 19 % of 36-48 and 19 % longer (Remnant, University of Nottingham, 2019).',
} as const
