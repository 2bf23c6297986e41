/** Words of the straws' screen. */

import type { StrawKind } from '../../breeding/facts.ts'
import { counted } from '../../words/counted.ts'

export const strawsWords = {
  supply: 'Will they last',
  columns: { left: 'left', needed: 'needed', band: 'at least 8 in 10', bandShort: '8 in 10' },
  until: (date: string): string => `until ${date}, the last day of AI`,
  noAi: 'no AI is on or begins soon',
  reckoning: 'reckoning what is needed',
  reckoningAnew: 'reckoning anew',
  to: (low: number, high: number): string => `${low} to ${high}`,
  enough: 'enough',
  notNeeded: 'not needed any more',
  none: 'none left',
  order: (missing: number, by: string | undefined, out: boolean): string =>
    out
      ? `none left: order ${missing} now`
      : by === undefined
        ? `order ${missing} to be sure`
        : `order ${missing} before ${by}`,
  heifers: (
    wanted: number,
    expected: number,
    { low, high }: { readonly low: number; readonly high: number },
    more: number,
    over: boolean,
  ): string =>
    expected >= wanted
      ? `The dairy straws used so far should bring the ${wanted} heifers wanted (${low} to ${high}, 8 times in 10).`
      : `Of ${wanted} heifers wanted the dairy straws used so far should bring ${expected} (${low} to ${high}, 8 times in 10): short by what ${counted(more, 'sexed straw')} in cows would bring${over ? ', and their days are over' : ''}.`,
  nitrogen: 'Nitrogen',
  noNitrogen: 'No depth is on record: N records one.',
  oneFlask: 'the flask',
  depth: (cm: number): string => `${cm} cm`,
  measured: (date: string): string => `measured ${date}`,
  falls: (cm: number): string => `falls ${cm.toFixed(1)} cm a day`,
  orderOn: (date: string): string => `order by ${date}`,
  levels: (order: number, alarm: number): string =>
    `Order at ${order} cm; at ${alarm} cm fill it the same day.`,
  readings: 'Readings, newest first',
  toList: 'the list',
  odd: 'To look into',
  flask: (name: string | undefined): string => (name === undefined ? 'No flask named' : `Flask ${name}`),
  straws: (many: number): string => counted(many, 'straw'),
  canister: (name: string | undefined): string => (name === undefined ? '' : `canister ${name}`),
  batch: (name: string | undefined): string => (name === undefined ? '' : `batch ${name}`),
  lotsUsedUp: (many: number): string => `${counted(many, 'lot is', 'lots are')} used up`,
  usedUp: 'Used up',
  left: (many: number): string => `${many} left`,
  counted: (date: string): string => `counted ${date}`,
  neverCounted: 'never counted',
  nothing: 'No straws are on record: D records a delivery, C a count.',
  easy: 'easy calving',
  notEasy: 'not easy calving',
  gestation: (days: number): string => `calves come after ${days} days`,
  used: (used: number, all: number, share: number, limit: number): string =>
    `Used for ${used} of ${counted(all, 'service')} this season (${share} %; a team: at most ${limit} %).`,
  history: 'What happened to them',
  serving: 'Serving card',
  moved: {
    'stock-take': (many: number): string => `${many} counted`,
    delivery: (many: number): string => `${many} delivered`,
    spoiled: (many: number): string => `${many} spoiled`,
    service: (number: string): string => `served ${number}`,
  },
} as const

/** Names of kinds in a table. */
export const kindNames: Readonly<Record<StrawKind, string>> = {
  conventional: 'conventional',
  sexed: 'sexed',
  beef: 'beef',
}
