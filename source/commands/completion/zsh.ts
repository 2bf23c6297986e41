import type { Argument, Command, Option, Takes } from '../command.ts'
import { wordsFor } from './offered.ts'

/** Text within single quotes, where a colon or a bracket would end a part. */
const text = (words: string): string => words.replace(/[\\:[\]]/g, '\\$&').replaceAll("'", `'\\''`)

const action = (takes: Takes | undefined, commands: readonly Command[]): string => {
  if (takes === 'file') return '_files'
  if (takes === 'folder') return '_files -/'
  const words = wordsFor(takes, commands)
  return words === undefined ? ' ' : `(${words.join(' ')})`
}

const value = (option: Option): string =>
  option.value === undefined ? '' : `:${text(option.value)}:${action(option.takes, [])}`

const optionSpec = (option: Option): string[] =>
  option.short === undefined
    ? [`'--${option.name}[${text(option.help)}]${value(option)}'`]
    : [`--${option.name}`, `-${option.short}`].map(
        (word) => `'(--${option.name} -${option.short})${word}[${text(option.help)}]${value(option)}'`,
      )

const argumentSpec = (argument: Argument, index: number, commands: readonly Command[]): string =>
  `'${index + 1}:${argument.optional === true ? ':' : ''}${text(argument.name)}:${action(argument.takes, commands)}'`

const commandCase = (command: Command, commands: readonly Command[]): string => {
  const specs = [
    `'(- *)'{-h,--help}'[print this help]'`,
    ...command.options.flatMap(optionSpec),
    ...command.args.map((argument, index) => argumentSpec(argument, index, commands)),
  ]
  return `        ${command.name})\n          _arguments ${specs.join(' \\\n            ')} ;;`
}

/**
 * The completion for zsh.
 *
 * @param commands the table of commands
 */
export const zshScript = (commands: readonly Command[]): string =>
  `#compdef dawnlist
# Completion of dawnlist for zsh, below compinit: source <(dawnlist completion zsh)
_dawnlist() {
  local context state state_descr line
  typeset -A opt_args
  local -a commands=(
${commands.map(({ name, summary }) => `    '${name}:${text(summary)}'`).join('\n')}
  )
  _arguments -C '(- *)'{-h,--help}'[name all commands]' '(- *)--version[print the versions]' \\
    '1: :->command' '*:: :->words'
  case $state in
    command)
      _describe -t commands command commands
      _files ;;
    words)
      case $words[1] in
${commands.map((command) => commandCase(command, commands)).join('\n')}
      esac ;;
  esac
}
if [[ $funcstack[1] == _dawnlist ]]; then _dawnlist "$@"; else compdef _dawnlist dawnlist; fi
`
