/** Pieces of a page in Markdown. */

/** A text within a cell of a table. */
const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ')

/**
 * A table.
 *
 * @example table(['Code', 'What'], [['due', 'old enough']])
 */
export const table = (head: readonly string[], rows: ReadonlyArray<readonly string[]>): string =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.map(cell).join(' | ')} |\n`).join('')

/** A word as the program writes it. */
export const code = (text: string): string => `\`${text}\``

/** A text with a capital letter. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** A page: its title, a line that says that it is made, and its parts. */
export const page = (title: string, ...parts: readonly string[]): string =>
  `# ${title}\n\n<!-- Made by "npm run docs" from the program's own tables: change those. -->\n\n${parts.join('\n')}`
