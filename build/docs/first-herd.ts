/** The small herd of docs/first-morning.md: its tables, and the list that the page says they make. */

/** A fenced block of a page that follows a line with its name in bold: `**animals.csv**`. */
const block = (page: string, name: string): string => {
  const found = new RegExp(
    `^\\*\\*${name.replace('.', '\\.')}\\*\\*[^\\n]*\\n+\`\`\`\\w*\\n([\\s\\S]*?)^\`\`\`$`,
    'm',
  ).exec(page)
  if (found?.[1] === undefined) throw new Error(`the page shows no ${name}`)
  return found[1]
}

export const tableNames = ['animals', 'facts', 'straws', 'seasons'] as const

/**
 * What the page shows.
 *
 * @param page text of docs/first-morning.md
 * @returns the tables by the names of their files, and the list that must come of them
 */
export const firstHerd = (page: string) => ({
  tables: tableNames.map((name) => [`${name}.csv`, block(page, `${name}.csv`)] as const),
  list: block(page, 'The list'),
})
