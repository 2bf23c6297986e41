/** Words of this season beside those before it. */

export const earlierWords = {
  earlier: 'This season and those before',
  noEarlier: 'No earlier season of this block is on record.',
  cohort: 'Animals',
  toDate: 'so far',
} as const
