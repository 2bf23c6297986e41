import type { CorrectionFact, NewFact } from '../../../breeding/facts.ts'

/** The correction that puts a fact in the place of another: it carries the date of the one it voids. */
export const correctionOf = (
  fact: { readonly id: string; readonly about: string; readonly date: string },
  replacement: NewFact,
): NewFact<CorrectionFact> => ({
  about: fact.about,
  date: fact.date,
  kind: 'correction',
  voids: fact.id,
  ...(replacement.id === undefined ? {} : { with: replacement.id }),
})
