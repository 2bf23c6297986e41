import type { Command } from '../../source/commands/command.ts'
import { helpOf, overview } from '../../source/commands/help-text.ts'
import { commands } from '../../source/commands/table.ts'
import { page } from './markdown.ts'

const block = (text: string): string => `\`\`\`text\n${text.trimEnd()}\n\`\`\`\n`

const section = (command: Command): string => `## ${command.name}\n\n${block(helpOf(command))}`

/** The help of the program and of every command. */
export const commandsPage = (): string =>
  page(
    'Commands',
    `As \`dawnlist --help\` and \`dawnlist COMMAND --help\` print them. Where the program was installed from its source folder
it is called \`./dawnlist\` (on Windows \`dawnlist.cmd\`). Data goes to standard output, messages to standard error, and no
command asks a question where nobody sits before a screen.
`,
    block(overview(commands)),
    commands.map(section).join('\n'),
  )
