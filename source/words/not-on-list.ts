/** Why an animal is not on the list: a phrase for a line that says more, a sentence for who asks. */
import type { NotOnList } from '../breeding/not-on-list.ts'
import { shortDate } from './dates.ts'

const ago = (days: number): string => (days === 0 ? 'today' : days === 1 ? 'yesterday' : `${days} days ago`)

interface Words<Reason> {
  readonly phrase: (reason: Reason) => string
  readonly sentence: (reason: Reason) => string
}

const words: { readonly [Code in NotOnList['code']]: Words<Extract<NotOnList, { code: Code }>> } = {
  left: { phrase: () => 'she left the herd', sentence: ({ on }) => `She left the herd on ${shortDate(on)}.` },
  'not-born': { phrase: () => 'not born yet', sentence: () => 'She is not born yet on this day.' },
  bull: {
    phrase: () => 'a bull',
    sentence: () => 'A bull has no row: the bulls have a screen of their own.',
  },
  'no-block': {
    phrase: () => 'she has no block',
    sentence: () => 'She has no block: record one, or her last calving.',
  },
  'not-bred': { phrase: () => 'not to be bred', sentence: () => 'She is not to be bred.' },
  'too-young': {
    phrase: () => 'too young for service',
    sentence: () => 'She is a maiden, and too young for service.',
  },
  'not-ready': {
    phrase: () => 'not marked ready',
    sentence: () => 'She is a maiden, and not marked as ready for service.',
  },
  'no-season': {
    phrase: () => 'her block has no season',
    sentence: () => 'Her block has no season yet: set one up.',
  },
  'season-over': {
    phrase: () => 'her season is over',
    sentence: () => 'The season of her block is over.',
  },
  'season-ahead': {
    phrase: () => 'her season is ahead',
    sentence: ({ from }) => `The season of her block is ahead: watching begins on ${shortDate(from)}.`,
  },
  'in-calf': {
    phrase: () => 'in calf',
    sentence: ({ due }) =>
      due === undefined
        ? 'She is in calf, and nothing is due of her now.'
        : `She is in calf, due ${shortDate(due)}, and nothing is due of her now.`,
  },
  visit: {
    phrase: ({ on }) => `she waits for the scanning visit of ${shortDate(on)}`,
    sentence: ({ on }) => `She waits for the scanning visit of ${shortDate(on)}.`,
  },
  'no-chance-left': {
    phrase: ({ days }) => `served ${ago(days)}, no chance left`,
    sentence: ({ days }) =>
      `She was served ${ago(days)} and may be in calf; her chances are used, and no further straw is for her.`,
  },
  served: {
    phrase: ({ days }) => `served ${ago(days)}`,
    sentence: ({ days, watchFrom }) =>
      `She was served ${ago(days)}: watch for a repeat heat from ${shortDate(watchFrom)} on.`,
  },
  'not-seen-back': {
    phrase: ({ days }) => `served ${ago(days)}, not seen back`,
    sentence: ({ days, checkFrom }) =>
      `She was served ${ago(days)} and not seen back; a check can tell from ${shortDate(checkFrom)} on.`,
  },
  calved: {
    phrase: ({ days }) => `calved ${ago(days)}`,
    sentence: ({ days, ready }) => `She calved ${ago(days)}, and may be served from ${shortDate(ready)} on.`,
  },
  examined: {
    phrase: ({ on }) => `examined on ${shortDate(on)}`,
    sentence: ({ on }) => `She was examined on ${shortDate(on)}: give it three weeks.`,
  },
  'next-heat': {
    phrase: ({ from }) => `next heat likely from ${shortDate(from)}`,
    sentence: ({ from, to }) => `Her next heat is likely from ${shortDate(from)} to ${shortDate(to)}.`,
  },
  'nothing-due': {
    phrase: () => 'nothing is due of her today',
    sentence: () => 'Nothing is due of her today.',
  },
}

/** The words of a code take the reason that has it. */
const wordsOf = <Reason extends NotOnList>({ code }: Reason) => words[code] as unknown as Words<Reason>

/** @example notOnListPhrase({ code: 'served', days: 4, watchFrom }) // 'served 4 days ago' */
export const notOnListPhrase = (reason: NotOnList): string => wordsOf(reason).phrase(reason)

/** @example notOnListSentence({ code: 'not-bred' }) // 'She is not to be bred.' */
export const notOnListSentence = (reason: NotOnList): string => wordsOf(reason).sentence(reason)

/** Every code, in the order of the table. */
export const notOnListCodes = Object.keys(words) as readonly NotOnList['code'][]
