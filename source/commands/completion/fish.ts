import type { Command, Option, Takes } from '../command.ts'
import { isPath, wordsFor } from './offered.ts'

const quoted = (words: string): string => `'${words.replace(/['\\]/g, '\\$&')}'`

/** What follows: a file of the shell's own choice, one of some words, or nothing that could be offered. */
function follows(takes: Takes | undefined): string {
  if (isPath(takes)) return '-r -F'
  const words = wordsFor(takes, [])
  return words === undefined ? '-x' : `-x -a ${quoted(words.join(' '))}`
}

function optionLine(command: Command, option: Option): string {
  const words = [
    `complete -c dawnlist -n '__fish_seen_subcommand_from ${command.name}'`,
    `-l ${option.name}`,
    ...(option.short === undefined ? [] : [`-s ${option.short}`]),
    ...(option.value === undefined ? [] : [follows(option.takes)]),
    `-d ${quoted(option.help)}`,
  ]
  return words.join(' ')
}

const argumentLines = (command: Command, commands: readonly Command[]): string[] =>
  command.args.flatMap(({ takes, help }) => {
    const words = wordsFor(takes, commands)
    return words === undefined
      ? []
      : [
          `complete -c dawnlist -n '__fish_seen_subcommand_from ${command.name}' -f -a ${quoted(words.join(' '))} -d ${quoted(help)}`,
        ]
  })

/**
 * The completion for fish.
 *
 * @param commands the table of commands
 */
export const fishScript = (commands: readonly Command[]): string =>
  `# Completion of dawnlist for fish: dawnlist completion fish > ~/.config/fish/completions/dawnlist.fish
complete -c dawnlist -s h -l help -d 'print help'
complete -c dawnlist -n __fish_use_subcommand -l version -d 'print the versions'
${commands
  .map(
    ({ name, summary }) => `complete -c dawnlist -n __fish_use_subcommand -a ${name} -d ${quoted(summary)}`,
  )
  .join('\n')}
${commands
  .flatMap((command) => [
    ...command.options.map((option) => optionLine(command, option)),
    ...argumentLines(command, commands),
  ])
  .join('\n')}
`
