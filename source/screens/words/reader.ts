/** Words that stand in the place of signs for a screen reader. */
export const readerWords = {
  toDo: 'to do',
  done: 'done',
  here: 'field: ',
  pointed: 'Here: ',
  marked: 'marked',
  notMarked: 'not marked',
  place: (row: number, rows: number): string => `Row ${row} of ${rows}: `,
  warning: (phrase: string): string => `warning: ${phrase}`,
  keys: (keys: string): string => `Keys: ${keys}.`,
} as const
