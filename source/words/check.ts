/** Sentences about what does not fit in a herd. Each is a notice: the herd works as usual. */
import { plainDate } from './plain-date.ts'
import { safeText } from './safe.ts'
import type { Sentences, Values } from './sentences.ts'

const text = (values: Values, name: string): string => safeText(String(values[name] ?? ''))
const day = (values: Values, name: string): string => plainDate(text(values, name))

export const checkSentences: Sentences = {
  'calvings-too-close': (values) =>
    `calved on ${day(values, 'first')} and ${text(values, 'days')} days later, on ${day(values, 'second')}. Correct one of them.`,
  'calving-too-young': (values) =>
    `calved on ${day(values, 'date')}, ${text(values, 'days')} days old. Correct the calving or the birth.`,
  'fact-after-leaving': (values) =>
    `${text(values, 'kind')} on ${day(values, 'date')}, after leaving the herd on ${day(values, 'left')}. Correct one of them.`,
  'fact-before-birth': (values) =>
    `${text(values, 'kind')} on ${day(values, 'date')}, before the birth on ${day(values, 'born')}. Correct one of them.`,
  'fact-on-male': (values) =>
    `${text(values, 'kind')} on ${day(values, 'date')} of a male. Correct the sex, or take the fact back.`,
  'sire-is-female': 'the sire {parent} is recorded as a female. Correct one of the two.',
  'dam-is-male': 'the dam {parent} is recorded as a male. Correct one of the two.',
  'pedigree-loop':
    'the parents lead back to where they began: {animals}. Correct a parent of one; until then their parents count as unknown.',
  'pedigree-same-parents':
    '{parent} is given as sire and as dam. Correct one of the two; until then both count as unknown.',
  'pedigree-both-roles':
    'given as the sire of {sireOf} and as the dam of {damOf}. Correct one of them; until then the parents of both count as unknown.',
  'animal-without-block': 'no block is known, so she stands on no list but Take care. Give her one.',
  'ear-tag-odd': 'the check digit of ear tag {id} does not fit its numbers. Read the tag again.',
  'electronic-odd':
    'the electronic number {id} is not of 15 digits, or its last twelve are too large. Read the tag again.',
  'international-odd':
    'the international ID {id} is not of 19 characters: breed 3, country 3, sex M or F, number 12.',
  'international-sex': 'the international ID {id} is of the other sex. Correct one of the two.',
}
