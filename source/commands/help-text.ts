/** The help of the program and of each command, made from the table of commands. */
import type { Argument, Command, Option } from './command.ts'

const width = 78

/** Lines of at most so many characters, broken between words, the second and later ones indented. */
function wrapped(words: readonly string[], indent: number): string {
  const lines: string[] = []
  let line = ''
  for (const word of words) {
    if (line !== '' && indent + line.length + 1 + word.length > width) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  return [...lines, line].join(`\n${' '.repeat(indent)}`)
}

/** Two columns: names, and what they mean. */
function columns(rows: ReadonlyArray<readonly [string, string]>): string {
  const left = Math.max(...rows.map(([name]) => name.length))
  return rows
    .map(([name, help]) => `  ${name.padEnd(left)}  ${wrapped(help.split(' '), left + 4)}\n`)
    .join('')
}

const argumentWord = (argument: Argument): string =>
  argument.optional === true ? `[${argument.name}]` : argument.name

const optionWord = (option: Option): string =>
  option.value === undefined ? `--${option.name}` : `--${option.name} ${option.value}`

const optionHelp = (option: Option): readonly [string, string] => [
  option.short === undefined ? optionWord(option) : `-${option.short}, ${optionWord(option)}`,
  option.help,
]

const usageWords = (command: Command): string[] => [
  'dawnlist',
  command.name,
  ...command.args.map(argumentWord),
  ...command.options.map((option) =>
    option.required === true ? optionWord(option) : `[${optionWord(option)}]`,
  ),
]

/**
 * How a command is typed, on one line.
 *
 * @example usageOf(commandNamed('animal')) // 'dawnlist animal FILE NUMBER [--date D] [--json]'
 */
export const usageOf = (command: Command): string => usageWords(command).join(' ')

/** The help of one command. */
export function helpOf(command: Command): string {
  const parts = [`${command.summary}.\n`, `  ${wrapped(usageWords(command), 4)}\n`]
  for (const paragraph of command.details ?? []) parts.push(`${wrapped(paragraph.split(' '), 0)}\n`)
  const rows = [
    ...command.args.map((argument) => [argument.name, argument.help] as const),
    ...command.options.map(optionHelp),
    ['-h, --help', 'print this help'] as const,
  ]
  parts.push(columns(rows))
  parts.push(`Examples\n${command.examples.map((example) => `  dawnlist ${example}\n`).join('')}`)
  return parts.join('\n')
}

/** The help of the program. */
export const overview = (commands: readonly Command[]): string =>
  [
    'dawnlist: the morning breeding list of a block-calving dairy herd.\n',
    columns(commands.map((command) => [command.name, command.summary] as const)),
    'dawnlist COMMAND --help explains a command.\n',
    'Exit status: 0 done, 1 a problem in data or file, 2 wrong usage, 130 after Ctrl+C.\n',
  ].join('\n')
