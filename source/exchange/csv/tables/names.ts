/** The tables of a herd, in the order in which they are read. */
export const tableNames = ['policy', 'seasons', 'animals', 'facts', 'straws', 'stock'] as const
export type TableName = (typeof tableNames)[number]
