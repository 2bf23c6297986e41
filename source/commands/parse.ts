/** Turns typed words into what a command is given, by the table of commands. */
import { parseArgs } from 'node:util'
import { fault, type Outcome, type Problem } from '../breeding/problem.ts'
import type { Command, Given } from './command.ts'

/** `--help` and `-h` are understood by every command. */
const help = { type: 'boolean', short: 'h' } as const

/**
 * Reads the words after a command's name.
 *
 * @returns what was given, or the problems of the usage: option-unknown, option-value, option-twice,
 *   option-missing, argument-missing, argument-extra
 * @example parse(commandNamed('list'), ['herd.json', '--json']) // args { FILE: 'herd.json' }, switches { json }
 */
export function parse(command: Command, words: readonly string[]): Outcome<Given> {
  const { tokens } = parseArgs({
    args: [...words],
    strict: false,
    tokens: true,
    allowPositionals: true,
    options: {
      help,
      ...Object.fromEntries(
        command.options.map((option) => [
          option.name,
          {
            type: option.value === undefined ? ('boolean' as const) : ('string' as const),
            ...(option.short === undefined ? {} : { short: option.short }),
          },
        ]),
      ),
    },
  })
  const problems: Problem[] = []
  const positional: string[] = []
  const options: Record<string, string> = {}
  const switches = new Set<string>()
  for (const token of tokens) {
    if (token.kind === 'positional') positional.push(token.value)
    if (token.kind !== 'option') continue
    const option = command.options.find(({ name }) => name === token.name)
    if (option === undefined) {
      if (token.name === 'help') switches.add('help')
      else problems.push(fault('option-unknown', '', { command: command.name, option: token.rawName }))
    } else if (option.value === undefined) {
      if (token.value === undefined) switches.add(option.name)
      else problems.push(fault('option-no-value', '', { option: token.rawName, value: token.value }))
    } else if (token.value === undefined || (!token.inlineValue && token.value.startsWith('--'))) {
      problems.push(fault('option-value', '', { option: token.rawName, value: option.value }))
    } else if (options[option.name] !== undefined) {
      problems.push(fault('option-twice', '', { option: token.rawName }))
    } else options[option.name] = token.value
  }
  if (switches.has('help')) return { ok: true, value: { args: {}, options, switches } }
  const args: Record<string, string> = {}
  for (const [place, argument] of command.args.entries()) {
    const word = positional[place]
    if (word !== undefined) args[argument.name] = word
    else if (argument.optional !== true)
      problems.push(fault('argument-missing', '', { command: command.name, argument: argument.name }))
  }
  for (const word of positional.slice(command.args.length))
    problems.push(fault('argument-extra', '', { command: command.name, word }))
  for (const option of command.options)
    if (option.required === true && options[option.name] === undefined)
      problems.push(
        fault('option-missing', '', {
          command: command.name,
          option: option.name,
          value: option.value ?? '',
        }),
      )
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: { args, options, switches } }
}
