/** The one table of commands: parsing, help, the manual page and the completion are made from it. */
import type { Argument, Command, Option } from './command.ts'

const FILE: Argument = { name: 'FILE', help: 'the herd file' }
const date: Option = {
  name: 'date',
  value: 'D',
  help: 'the day, as 2026-05-28; without it today in the time zone of the farm',
}
const json: Option = { name: 'json', help: 'print JSON' }

export const commands: readonly Command[] = [
  {
    name: 'list',
    summary: 'Print the morning list of a day',
    args: [FILE],
    options: [date, json, { name: 'csv', help: 'print CSV, one row a line' }],
    examples: ['list herd.json', 'list herd.json --date 2026-05-28 --json'],
    load: () => import('./list.ts'),
  },
  {
    name: 'animal',
    summary: 'Print what is known of one animal',
    args: [FILE, { name: 'NUMBER', help: 'her number' }],
    options: [date, json],
    examples: ['animal herd.json 412'],
    load: () => import('./animal.ts'),
  },
  {
    name: 'version',
    summary: 'Print the version of the program, of the file format and of the JSON output',
    args: [],
    options: [],
    examples: ['version'],
    load: () => import('./version.ts'),
  },
  {
    name: 'help',
    summary: 'Explain a command',
    args: [{ name: 'COMMAND', help: 'the command to explain', optional: true }],
    options: [],
    examples: ['help import'],
    load: () => import('./help.ts'),
  },
]

/** The command of that name, or undefined. */
export const commandNamed = (name: string): Command | undefined =>
  commands.find((command) => command.name === name)
