import type { Argument, Command, Option } from '../../source/commands/command.ts'
import { usageOf } from '../../source/commands/help-text.ts'
import { commands } from '../../source/commands/table.ts'
import { versions } from '../../source/commands/version.ts'

/** Text that the formatter takes as it is. */
const plain = (text: string): string =>
  text
    .replaceAll('\\', '\\e')
    .replaceAll('-', '\\-')
    .replaceAll('’', "'")
    .replace(/^([.'])/gm, '\\&$1')

const bold = (text: string): string => `\\fB${plain(text)}\\fR`
const slanted = (text: string): string => `\\fI${plain(text)}\\fR`

const item = (name: string, help: string): string => `.TP\n${name}\n${plain(help)}\n`

const argument = ({ name, help }: Argument): string => item(slanted(name), help)

const option = ({ name, short, value, help }: Option): string => {
  const words = [...(short === undefined ? [] : [bold(`-${short}`)]), bold(`--${name}`)].join(', ')
  return item(value === undefined ? words : `${words} ${slanted(value)}`, help)
}

const section = (command: Command): string =>
  [
    `.SS ${command.name}\n`,
    `${plain(command.summary)}.\n`,
    `.PP\n.nh\n.ad l\n${plain(usageOf(command))}\n.ad b\n.hy\n`,
    ...(command.details ?? []).map((paragraph) => `.PP\n${plain(paragraph)}\n`),
    ...command.args.map(argument),
    ...command.options.map(option),
    `.PP\nExamples:\n.PP\n.nf\n.RS\n${command.examples.map((example) => plain(`dawnlist ${example}\n`)).join('')}.RE\n.fi\n`,
  ].join('')

const items = (rows: ReadonlyArray<readonly [string, string]>): string =>
  rows.map(([name, help]) => item(bold(name), help)).join('')

/** The manual page, in the macros of man(7). */
export const manPage = (): string =>
  `.\\" Made by "npm run docs" from the table of commands: change that.
.TH DAWNLIST 1 "" "dawnlist ${versions.program}" "User Commands"
.SH NAME
dawnlist \\- the morning breeding list of a block\\-calving dairy herd
.SH SYNOPSIS
.B dawnlist
.RI [ FILE ]
.br
.B dawnlist
.I COMMAND
.RI [ words ]
.SH DESCRIPTION
dawnlist opens full\\-screen on the herd file that is named and shows whom to serve, watch, check, leave to the bull or
show the vet today. What is ticked is saved in that file. Where there is no terminal to draw on, the list is printed.
It is a reminder, not advice: local law and your vet come first. No bull is safe.
.SH COMMANDS
${commands.map(section).join('')}.SS Every command
${item(`${bold('-h')}, ${bold('--help')}`, 'print the help of the command')}.SH EXIT STATUS
${items([
  ['0', 'done'],
  ['1', 'a problem in data or file'],
  ['2', 'wrong usage'],
  ['130', 'after Ctrl+C'],
])}.SH ENVIRONMENT
${items([
  ['NO_COLOR', 'set to anything: no colours'],
  ['DAWNLIST_SCREEN_READER', 'set to 1: a few lines of text for a screen reader in the place of the screen'],
  ['TERM', 'dumb: no screen is drawn; linux: ASCII characters only'],
  ['LC_ALL, LC_CTYPE, LANG', 'set, and not UTF-8: ASCII characters only'],
  ['XDG_DATA_HOME', 'the folder that holds the copy of the sample herd, ~/.local/share where it is not set'],
])}.SH FILES
${items([
  ['herd.json', 'a herd file, under any name: one JSON file, one fact a line'],
  ['backups', 'the folder beside it with a copy of each day, as it was before that day was first saved'],
  ['herd.archive-DATE.json', 'the herd as it was when seasons were archived, to be read only'],
])}`
