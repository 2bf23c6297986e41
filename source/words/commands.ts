/** Sentences of the command line. */
import type { Sentences } from './sentences.ts'

export const commandSentences: Sentences = {
  'command-unknown':
    'There is no command "{command}". To see them all: dawnlist help. A herd file of that name: dawnlist ./{command}.',
  'option-unknown': '{command} has no option {option}. See: dawnlist {command} --help.',
  'option-value': '{option} needs a value: {option} {value}.',
  'option-no-value': '{option} takes no value; "{value}" was given.',
  'option-twice': '{option} was given twice.',
  'option-missing': '{command} needs --{option} {value}. See: dawnlist {command} --help.',
  'option-date': '"{value}" is not a date of the calendar. Write it as 2026-05-28.',
  'argument-missing': '{command} needs {argument}. See: dawnlist {command} --help.',
  'argument-extra': '{command} does not know what to do with "{word}". See: dawnlist {command} --help.',
}
