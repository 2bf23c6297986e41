/** Words that the parts of the season's screen share. */
import type { SeasonPart } from '../../../morning/place.ts'
import { counted } from '../../../words/counted.ts'

const percent = (share: number | undefined): string => (share === undefined ? '' : `${Math.round(share)} %`)

export const seasonParts: Readonly<Record<SeasonPart, string>> = {
  answers: 'answers',
  figures: 'figures',
  pictures: 'pictures',
  forecast: 'forecast',
  empties: 'empties',
  earlier: 'earlier',
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
  notKnown: (many: number): string => (many === 0 ? '' : `${many} not known`),
  aim: (target: number | undefined): string => (target === undefined ? '' : `aim ${target} %`),
  animals: (many: number): string => counted(many, 'animal'),
  noneYet: 'none yet',
  begins: (date: string): string => `Mating begins ${date}.`,
} as const
