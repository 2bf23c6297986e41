/** The one table of commands: parsing, help, the manual page and the completion are made from it. */
import type { Argument, Command, Option } from './command.ts'
import { shells } from './completion/shells.ts'

const FILE: Argument = { name: 'FILE', help: 'the herd file', takes: 'file' }
const date: Option = {
  name: 'date',
  value: 'D',
  help: 'the day, as 2026-05-28; without it today in the time zone of the farm',
}
const by: Option = { name: 'by', value: 'INITIALS', help: 'who records' }
const replace: Option = { name: 'replace', help: 'replace files that are there and hold something else' }
const json: Option = { name: 'json', help: 'print JSON' }

export const commands: readonly Command[] = [
  {
    name: 'open',
    summary: 'Open the full screen',
    details: [
      'This is what happens without a command: dawnlist FILE. Where there is no terminal to draw on, the morning list is printed instead. Colours are left out under NO_COLOR. With DAWNLIST_SCREEN_READER=1 the screen is a few lines of text for a screen reader.',
    ],
    args: [{ ...FILE, optional: true }],
    options: [by, { name: 'ascii', help: 'draw with ASCII characters only' }],
    examples: ['herd.json', 'open herd.json --by MK'],
    load: () => import('./open.ts'),
  },
  {
    name: 'demo',
    summary: 'Open the sample herd on a morning of its fourth week of AI',
    details: [
      'A copy of an invented herd is kept in your own data folder, and stays as you leave it. Its day is always Thu 28 May 2026.',
    ],
    args: [],
    options: [
      { name: 'fresh', help: 'begin again with an untouched copy' },
      { name: 'ascii', help: 'draw with ASCII characters only' },
    ],
    examples: ['demo', 'demo --fresh'],
    load: () => import('./demo.ts'),
  },
  {
    name: 'list',
    summary: 'Print the morning list of a day',
    args: [FILE],
    options: [
      date,
      json,
      { name: 'csv', help: 'print CSV, one row a line' },
      { name: 'known-then', help: 'the list as it was known at the end of its day, later records left out' },
    ],
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
    name: 'sheet',
    summary: 'Make the sheet of a day to print and pin up',
    details: [
      'HTML of A4 pages, which a browser prints without a network; with --text plain text of 80 columns and 66 lines a page. Without -o it goes to standard output.',
    ],
    args: [FILE],
    options: [
      date,
      { name: 'text', help: 'plain text instead of HTML' },
      { name: 'out', short: 'o', value: 'OUT', help: 'the file to write', takes: 'file' },
      replace,
    ],
    examples: ['sheet herd.json -o sheet.html', 'sheet herd.json --text'],
    load: () => import('./sheet.ts'),
  },
  {
    name: 'draft',
    summary: 'Print the numbers of the animals to draft at the parlour exit',
    details: [
      'One number a line: who is to be served today, who must be looked at before that, who is to be checked. Ticked rows are left out.',
    ],
    args: [FILE],
    options: [
      date,
      {
        name: 'electronic',
        help: 'print electronic numbers; who has none is named, and the status is 1',
      },
      {
        name: 'session',
        value: 'MILKING',
        help: 'morning or evening: only for that milking',
        takes: ['morning', 'evening'],
      },
      { name: 'vet', help: 'also the animals that wait for the vet' },
    ],
    examples: ['draft herd.json', 'draft herd.json --electronic --session evening'],
    load: () => import('./draft.ts'),
  },
  {
    name: 'season',
    summary: 'Print the figures of a season and what lies ahead of it',
    details: [
      'Each share comes with its counts, its 95 % interval and what is not known yet; earlier seasons of the block stand beside it. The season ahead is a forecast from the facts before the day: middle and range for animals in calf, open and empty, straws and heifer calves, with what it rests on.',
      'Without --block the block that is bred now, else the one that is next.',
      '--what-if shows the season ahead with a change of the plan: ai-weeks=+1 (one week of AI more, the last day with the bull stays), heat-seen=0.8, conception=0.6 (of cows, to conventional straws), bulls=3; several with commas between.',
    ],
    args: [FILE],
    options: [
      { name: 'block', value: 'B', help: 'the block' },
      date,
      json,
      { name: 'html', value: 'OUT', help: 'write a page to print and hang up', takes: 'file' },
      { name: 'replace', help: 'replace a page that is there and holds something else' },
      { name: 'what-if', value: 'CHANGES', help: 'the season ahead with these changes' },
    ],
    examples: [
      'season herd.json',
      'season herd.json --block autumn --json',
      'season herd.json --html season.html',
      'season herd.json --what-if ai-weeks=-1,bulls=3',
    ],
    load: () => import('./season.ts'),
  },
  {
    name: 'check',
    summary: 'Hold a herd file against the rules of its format and against itself',
    details: [
      'Tells of facts that contradict each other, animals without a block, odd ear tags, and copies of the herd beside it that hold more, one a line; the status is 1 where there is any.',
    ],
    args: [FILE],
    options: [
      {
        name: 'accept-edits',
        help: 'take over a file that was edited by hand, where it is valid; a copy of it as edited is kept',
      },
      {
        name: 'merge',
        value: 'COPY',
        help: 'add what a copy of this herd holds beyond it; the copy stays as it is',
        takes: 'file',
      },
    ],
    examples: ['check herd.json', 'check herd.json --accept-edits'],
    load: () => import('./check.ts'),
  },
  {
    name: 'restore',
    summary: 'Put a day copy in the place of a herd file that is missing or damaged',
    details: [
      'Without --from the newest copy that is whole is taken. What can still be read in the damaged file is added, and the file as it was is kept.',
    ],
    args: [FILE],
    options: [{ name: 'from', value: 'BACKUP', help: 'the copy to take', takes: 'file' }],
    examples: ['restore herd.json', 'restore herd.json --from backups/herd.2026-05-28.json'],
    load: () => import('./restore.ts'),
  },
  {
    name: 'archive',
    summary: 'Close seasons older than two years into a file beside the herd',
    details: [
      'A trial unless --write is given: it tells how many facts would go. The file is the whole herd as it stands, to be read only: the mornings, pages and figures of the past are printed from it. From the herd go heats, services, checks and the like of cycles that a calving closed before the oldest season kept, and of animals that left before it. Records, calvings, losses, blocks and bars stay, and services that the stock of straws still rests on.',
      'The lists, straws, forecast and figures of live seasons are the same before and after. Copies of the herd on other computers do not bring back what went.',
    ],
    args: [FILE],
    options: [by, { name: 'write', help: 'write the file, and take the facts out of the herd' }],
    examples: ['archive herd.json', 'archive herd.json --write --by MK'],
    load: () => import('./archive.ts'),
  },
  {
    name: 'new',
    summary: 'Make the file of a new herd',
    details: ['A file that is there already is never touched.'],
    args: [{ name: 'FILE', help: 'the file to make', takes: 'file' }],
    options: [
      { name: 'farm', value: 'NAME', required: true, help: 'name of the farm' },
      { name: 'zone', value: 'IANA', required: true, help: 'its time zone, as Europe/Dublin' },
      { name: 'milkings', value: 'TIMES', help: 'one or two times, 05:30,15:30 where nothing is said' },
      by,
    ],
    examples: ["new herd.json --farm 'Long Acre' --zone Europe/Dublin --milkings 05:30,15:30"],
    load: () => import('./new.ts'),
  },
  {
    name: 'import',
    summary: 'Read CSV files, or ICAR ADE events, into a herd',
    details: [
      'A trial unless --write is given: it tells what is new, known, changed and refused, each refused row with line, column and reason. --write records all good rows in one save. The status is 1 where a row was refused. Reading a file twice adds nothing.',
      'Columns that must be there: animals number; facts number, date, fact; straws sire, kind, count; stock date, what; seasons block, mating_start, ai_weeks, bull_weeks. docs/exchange.md lists the others, and export of the sample herd shows them all. Usual other names are understood and shown.',
    ],
    args: [FILE],
    options: [
      { name: 'animals', value: 'A', help: 'CSV file of animals', takes: 'file' },
      { name: 'facts', value: 'F', help: 'CSV file of what happened to them', takes: 'file' },
      { name: 'straws', value: 'S', help: 'CSV file of straws counted in the flask', takes: 'file' },
      {
        name: 'stock',
        value: 'K',
        help: 'CSV file of straws delivered and spoiled, and of nitrogen',
        takes: 'file',
      },
      { name: 'seasons', value: 'M', help: 'CSV file of mating seasons', takes: 'file' },
      { name: 'policy', value: 'P', help: 'CSV file of settings', takes: 'file' },
      {
        name: 'ade',
        value: 'J',
        help: 'ICAR ADE JSON, a file or a folder of them, or - for standard input, instead of CSV files',
        takes: 'file',
      },
      {
        name: 'dates',
        value: 'FORM',
        help: 'how dates are written beside 2026-05-28: day-first (28/05/2026) or month-first (05/28/2026)',
        takes: ['day-first', 'month-first'],
      },
      by,
      { name: 'write', help: 'record the rows that are not refused' },
      { name: 'merge-older', help: 'record even where an older copy of the herd was put in its place' },
    ],
    examples: [
      'import herd.json --animals animals.csv --facts facts.csv',
      'import herd.json --facts facts.csv --dates day-first --by MK --write',
      'import herd.json --ade events.json --write',
    ],
    load: () => import('./import.ts'),
  },
  {
    name: 'export',
    summary: 'Write a herd as CSV files, as ICAR ADE events, or its key dates as a calendar',
    details: [
      'animals.csv, facts.csv, straws.csv, stock.csv, seasons.csv, and policy.csv with the settings that the farm has changed. Read into a new herd with the same farm they make the same lists on every date.',
    ],
    args: [FILE],
    options: [
      {
        name: 'to',
        value: 'FOLDER',
        required: true,
        help: 'the folder; it is made where it is missing',
        takes: 'folder',
      },
      { name: 'ade', help: 'ICAR ADE JSON, a file a kind of event, instead' },
      { name: 'ics', help: 'key dates for a calendar, as key-dates.ics, instead' },
      { ...date, help: `with --ics: ${date.help}` },
      replace,
    ],
    examples: ['export herd.json --to tables', 'export herd.json --to calendar --ics'],
    load: () => import('./export.ts'),
  },
  {
    name: 'completion',
    summary: 'Print what a shell needs to complete the words of dawnlist',
    details: [
      'Bash: put  source <(dawnlist completion bash)  into ~/.bashrc. Zsh: the same with zsh, below compinit, in ~/.zshrc. Fish: dawnlist completion fish > ~/.config/fish/completions/dawnlist.fish',
    ],
    args: [{ name: 'SHELL', help: shells.join(', '), takes: shells }],
    options: [],
    examples: shells.map((shell) => `completion ${shell}`),
    load: () => import('./completion.ts'),
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
    args: [{ name: 'COMMAND', help: 'the command to explain', optional: true, takes: 'command' }],
    options: [],
    examples: ['help import'],
    load: () => import('./help.ts'),
  },
]

/** The command of that name, or undefined. */
export const commandNamed = (name: string): Command | undefined =>
  commands.find((command) => command.name === name)
