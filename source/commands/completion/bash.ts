import type { Command, Option } from '../command.ts'
import { isPath, wordsFor } from './offered.ts'

const optionWords = (option: Option): string[] => [
  `--${option.name}`,
  ...(option.short === undefined ? [] : [`-${option.short}`]),
]

/** The words before a value, of some options of all commands: `'sheet --out' | 'sheet -o'`. */
const before = (commands: readonly Command[], which: (option: Option) => boolean): string =>
  commands
    .flatMap((command) =>
      command.options
        .filter((option) => option.value !== undefined && which(option))
        .flatMap(optionWords)
        .map((word) => `'${command.name} ${word}'`),
    )
    .join(' | ')

/** A case for each option whose value is one of some words. */
const valueCases = (command: Command): string[] =>
  command.options.flatMap((option) => {
    const words = wordsFor(option.takes, [])
    return words === undefined
      ? []
      : [`      ${before([{ ...command, options: [option] }], () => true)}) offered='${words.join(' ')}' ;;`]
  })

const optionsCase = (command: Command): string =>
  `          ${command.name}\\ -*) offered='${[...command.options.flatMap(optionWords), '-h', '--help'].join(' ')}' ;;`

const wordsCase = (command: Command, commands: readonly Command[]): string[] =>
  command.args.flatMap(({ takes }) => {
    const words = wordsFor(takes, commands)
    return words === undefined ? [] : [`          ${command.name}\\ *) offered='${words.join(' ')}' ;;`]
  })

/**
 * The completion for bash (3.2 and later). Where it offers nothing, the shell offers names of files.
 *
 * @param commands the table of commands
 */
export const bashScript = (commands: readonly Command[]): string =>
  `# Completion of dawnlist for bash: source <(dawnlist completion bash)
_dawnlist() {
  local word=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD - 1]} command=\${COMP_WORDS[1]} offered= one
  COMPREPLY=()
  if ((COMP_CWORD == 1)); then
    offered='${[...commands.map(({ name }) => name), '--help', '--version'].join(' ')}'
    compopt -o filenames 2>/dev/null
    while IFS= read -r one; do COMPREPLY+=("$one"); done < <(compgen -f -- "$word")
  else
    case "$command $before" in
      ${before(commands, ({ takes }) => isPath(takes))}) ;;
      ${before(commands, ({ takes }) => takes === undefined)}) compopt +o default 2>/dev/null ;;
${commands.flatMap(valueCases).join('\n')}
      *)
        case "$command $word" in
${[...commands.map(optionsCase), ...commands.flatMap((command) => wordsCase(command, commands))].join('\n')}
        esac
        ;;
    esac
  fi
  while IFS= read -r one; do COMPREPLY+=("$one"); done < <(compgen -W "$offered" -- "$word")
}
complete -o default -F _dawnlist dawnlist
`
