/** Words of the bulls' screen. */
import { capital } from '../../words/capital.ts'
import { counted } from '../../words/counted.ts'

const inDays = (days: number): string =>
  days === 0 ? 'today' : days === 1 ? 'tomorrow' : days > 0 ? `in ${days} days` : `${-days} days ago`

export const bullsWords = {
  block: (block: string): string => `${capital(block)} block`,
  weeks: (from: string, to: string): string => `With the cows ${from} to ${to}.`,
  begins: (days: number): string => `turn-out ${inDays(days)}`,
  isIn: (to: string): string => `bull in until ${to}`,
  isOut: (on: string): string => `bull out since ${on}`,
  reckoning: 'reckoning how many are needed',
  needed: (needed: number, onHand: number): string =>
    `${counted(needed, 'bull')} needed, ${onHand} on hand${needed > onHand ? `: ${needed - onHand} short` : ''}`,
  nothingOpen: 'no bull needed: nothing will be open',
  over: 'the bull weeks are over',
  why: (high: number, perBull: number, isIn: boolean): string =>
    `For ${high} animals not in calf ${isIn ? 'now' : 'at turn-out'}, the high end of the forecast, ${perBull} to a bull.`,
  band: (middle: number, low: number, high: number): string =>
    `Likely ${middle}; at least 8 in 10: ${low} to ${high}.`,
  least: 'Never fewer than two with a group: one lame bull must not cost the season.',
  young: (needed: number, perBull: number): string =>
    `Of young bulls, under two years: ${needed}, ${perBull} to a bull.`,
  rest: (needed: number): string => `Where half of them rest while the others work: ${needed}.`,
  resting: 'Half of them rest while the others work: that is counted in.',
  sound: (date: string, days: number): string => `Soundness and feet seen to by ${date} (${inDays(days)}).`,
  onFarm: (date: string, days: number): string => `On the farm by ${date} (${inDays(days)}).`,
  source:
    'Bulls to cows: Managing your working bulls, 2019 (NZ levy body); young bulls: agriland.ie (Teagasc). Soundness 60 days before: SRUC, Irish Farmers Journal.',
  onHand: 'Bulls',
  none: 'No bull is on record here: a bull is an animal marked as ready, or one named where he was put with a cow.',
  noBlocks: 'No block has bull weeks now.',
  unnamed: 'no bull named',
  notHere: 'not on hand',
  onHold: 'on hold',
  youngBull: 'young',
  age: (days: number): string =>
    days < 730 ? `${Math.floor(days / 30.44)} months` : `${Math.floor(days / 365.25)} years`,
  ageUnknown: 'age not known',
  atTurnOut: (age: string): string => `${age} at turn-out`,
  with: (many: number): string => (many === 0 ? '' : `with ${many}`),
  runsWith: (many: number): string => `Runs with ${counted(many, 'animal')}.`,
  examined: (date: string): string => `Examined by the vet ${date}.`,
  notExamined: 'No examination is on record: have soundness and feet seen to, and note it on his page.',
  seen: (all: number, returned: number): string =>
    all === 0 ? '' : returned === 0 ? counted(all, 'service') : `${returned} of ${all} came back`,
  services: (all: number, returned: number, held: number, unknown: number): string =>
    `${counted(all, 'service')} seen this season: ${returned} came back, ${held} in calf, ${unknown} not known yet.`,
  noServices: 'None of his services was seen this season.',
  doubt: (returned: number, all: number, inHundred: string): string =>
    `${returned} of ${counted(all, 'service')} came back. A sound bull would show that in ${inHundred} of 100 seasons: have him checked, and let another bull follow.`,
  newest: 'Services, newest first',
  ends: { held: 'in calf', failed: 'came back or empty', unknown: 'not known yet' },
} as const
