/** The five questions that the season's screen answers, in order, and where each is looked into. */
export const questions = ['pace', 'ai', 'empties', 'bulls', 'another-week'] as const
export type Question = (typeof questions)[number]
