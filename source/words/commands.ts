/** Sentences of the command line. */
import { plainDate } from './plain-date.ts'
import { safeText } from './safe.ts'
import type { Sentences, Values } from './sentences.ts'

const text = (values: Values, name: string): string => safeText(String(values[name] ?? ''))
const day = (values: Values, name: string): string => plainDate(text(values, name))

export const commandSentences: Sentences = {
  'sample-missing': 'is not beside the program. Install dawnlist again: the sample herd comes with it.',
  'program-failed':
    'dawnlist itself has failed, which must not happen. What was shown as saved is safe. Please report the lines below.',
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
  'option-zone': '"{value}" is not a time zone that this computer knows. Write it like Europe/Dublin.',
  'option-milkings': '"{value}" is not one or two times in order. Write it like 05:30,15:30.',
  'option-dates': '"{value}" is no form of dates. Say day-first or month-first.',
  'option-what-if':
    '"{value}" is not a change of the plan. Write it like ai-weeks=+1, heat-seen=0.8, conception=0.6 or bulls=3.',
  'season-none': 'no season is recorded yet. Add one: its mating start makes the season.',
  'season-block': 'no season of a block "{block}" is recorded. There are: {blocks}.',
  'option-json-html': 'give either --json or --html, not both.',
  'completion-shell': 'completion knows no shell "{shell}". There are: {shells}.',
  'option-empty': '--{option} is empty.',
  'option-session': '"{value}" is no milking. Say morning or evening.',
  'out-is-herd': 'this is the herd file itself. Name another file to write.',
  'draft-no-electronic': 'she has no electronic number on record. Draft her by hand, and add the number.',
  'import-ade-alone': 'give either --ade or CSV files, not both.',
  'import-nothing': 'import needs at least one file to read. See: dawnlist import --help.',
  'import-not-saved': 'nothing was recorded.',
  'edits-merge': 'give either --accept-edits or --merge, not both.',
  'export-one': 'give either --ade or --ics, not both.',
  'export-there':
    'the file is there already and holds something else. Take another folder, or add --replace.',
  'archive-there': (values) =>
    `heats, services and checks from before ${day(values, 'before')} are not in this herd any more: they stand in ${text(values, 'archive')}, beside it. What is said here of days before ${day(values, 'day')} may lack them; name that file instead.`,
  'export-archived': (values) =>
    `heats, services and checks from before ${day(values, 'before')} stand in ${text(values, 'archive')}, beside the herd, and are not among these files. Export that file too.`,
  'animal-not-found': 'no animal of this herd has the number "{number}".',
}

/** What `dawnlist version` prints: the program alone on the first line, for scripts. */
export const versionLines = (
  versions: Readonly<Record<'program' | 'file' | 'list' | 'animal' | 'season', string | number>>,
): string =>
  `${versions.program}
herd file: format ${versions.file}
JSON: list ${versions.list}, animal ${versions.animal}, season ${versions.season}
`
