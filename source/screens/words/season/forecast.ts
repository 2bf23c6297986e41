/** Words of the season ahead, and of what is tried out beside it. */
import type { Knob } from '../../../morning/season/tries.ts'

export const knobWords: Readonly<Record<Knob, string>> = {
  aiWeeks: 'Weeks of AI',
  heatSeen: 'Heats seen',
  cowConception: 'Services that hold',
  bulls: 'Working bulls',
}

export const forecastWords = {
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
} as const
