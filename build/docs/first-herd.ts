/** The small herd of docs/first-morning.md: its tables, and the list that the page says they make. */

/** The next fenced block of a page behind a name in bold at the beginning of a line: `**animals.csv**`. */
const block = (page: string, name: string): string => {
  const bold = `\n**${name}**`
  const found = /^```\w*\n([\s\S]*?)^```$/m.exec(page.slice(page.indexOf(bold)))
  if (!page.includes(bold) || found?.[1] === undefined) throw new Error(`the page shows no ${name}`)
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
