/** Words of the season's five questions and their answers. */
import type { EmptyReason } from '../../../breeding/figures/probably-empty.ts'
import type { Question } from '../../../morning/season/questions.ts'
import { counted } from '../../../words/counted.ts'

export const questionWords: Readonly<Record<Question, string>> = {
  pace: 'Are we on pace?',
  ai: 'Is the AI working?',
  empties: 'Who is probably empty?',
  bulls: 'How many bulls, and when?',
  'another-week': 'What would another week of AI bring?',
}

export const answerWords = {
  servedOf: (served: number, all: number, share: string): string => `${served} of ${all} served (${share})`,
  paceNow: (aim: string, short: number): string =>
    short > 0 ? `Aim by now ${aim}: ${counted(short, 'animal')} short of it.` : `Aim by now ${aim}: on pace.`,
  paceEnd: (aim: string, short: number): string =>
    short > 0
      ? `Aim in three weeks ${aim}: ${counted(short, 'animal')} short of it.`
      : `Aim in three weeks ${aim}: reached.`,
  ofThoseReady: (served: number, all: number): string =>
    `Of those that had calved long enough ago ${served} of ${all}.`,
  seenBefore: (seen: number, all: number, share: string): string =>
    `${seen} of ${all} seen on heat so far (${share}); aim 75 % ten days before, 85 % at the start (common practice).`,
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
  emptyCounts: (parts: readonly string[]): string => `${parts.join(', ')}.`,
  emptyCount: {
    'checked-empty': (many: number): string => `${many} checked empty`,
    'came-back': (many: number): string => `${many} came back`,
    doubtful: (many: number): string => `${many} doubtful`,
    'not-served': (many: number): string => `${many} not served`,
    'with-bull': (many: number): string => `${many} not in calf by AI, with the bull`,
  } satisfies Record<EmptyReason, (many: number) => string>,
  emptiesAhead: (middle: number, low: number, high: number, all: number): string =>
    `Ahead: ${middle} of ${all} empty at the final check, ${low} to ${high} at least 8 times in 10.`,
  emptyEnd: (empty: number, all: number, unknown: number): string =>
    `Found empty ${empty} of ${all}${unknown === 0 ? '' : `, ${unknown} not known`}.`,
  bullsNeeded: (needed: number, date: string, high: number, onHand: number): string =>
    `${counted(needed, 'bull')} from ${date} for up to ${high} open animals; ${onHand} on hand${needed > onHand ? `: ${needed - onHand} short` : ''}.`,
  bullsNow: (needed: number, high: number, onHand: number): string =>
    `${counted(needed, 'bull')} for up to ${high} open animals; ${onHand} on hand.`,
  noBullWeeks: 'No bull weeks are planned.',
  aiIsOver: 'The AI weeks are over.',
  cannotGoOn: 'AI cannot go on: the bull’s last day comes first.',
  anotherWeek: (parts: readonly string[]): string =>
    `${parts.map((part, index) => (index === 0 ? part : part.charAt(0).toLowerCase() + part.slice(1))).join('; ')}.`,
  change: (name: string, before: number, after: number): string =>
    before === after ? `${name} ${before} as planned` : `${name} from ${before} to ${after}`,
} as const
