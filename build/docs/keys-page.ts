import type { Slip } from '../../source/morning/desk.ts'
import type { Place } from '../../source/morning/place.ts'
import { type Binding, DIGITS } from '../../source/screens/binding.ts'
import { always } from '../../source/screens/keys/moving.ts'
import { screens } from '../../source/screens/keys/screens.ts'
import { slips } from '../../source/screens/keys/slips.ts'
import { keyNames, keyWords } from '../../source/screens/words/keys.ts'
import { code, page, table } from './markdown.ts'

const titles: Readonly<Record<Place['at'], string>> = {
  'morning-list': 'The morning list',
  animal: "An animal's page",
  ahead: 'The days ahead',
  scanning: 'The scanning visit',
  season: 'The season',
  straws: 'The straws',
  bulls: 'The bulls',
  'turn-out': 'Bull in, bull out',
  'set-up': 'Set-up',
  help: 'The help',
}

const slipTitles: Readonly<Record<Slip['is'], string>> = {
  go: 'Which screen? (after `g`)',
  form: 'A form',
  menu: 'What to record? (after `m`)',
  question: 'A question',
  search: 'Finding by name (after `/`)',
  day: 'Which day? (after `d`)',
  initials: 'Whose initials? (after `i`)',
  opening: 'The first slip of the day',
  copy: 'Saving a copy (after `S`)',
  older: 'Saving over an older copy (after `A`)',
  notice: 'All that is said (after `!`)',
  leaving: 'Leaving although something is not saved',
}

const keysOf = ({ keys }: Binding): string =>
  keys.length === DIGITS.length
    ? (keyNames.digits ?? '')
    : keys
        .map((key) => (key === 'letters' ? (keyNames[key] ?? key) : code(keyNames[key] ?? key)))
        .join(' or ')

const rows = (bindings: readonly Binding[]): string =>
  table(
    ['Key', 'What it does'],
    bindings.map((binding) => [keysOf(binding), keyWords[binding.name].help]),
  )

const parts = <Name extends string>(
  headings: Readonly<Record<Name, string>>,
  bindings: Readonly<Record<Name, readonly Binding[]>>,
): string =>
  (Object.keys(headings) as Name[])
    .map((name) => `## ${headings[name]}\n\n${rows(bindings[name])}`)
    .join('\n')

/** Every key of every screen and slip. */
export const keysPage = (): string =>
  page(
    'Keys',
    `The foot of the screen shows the keys of most use now, \`?\` all of a screen. Capital letters are typed with Shift. A key
that would do nothing says why.
`,
    parts(titles, screens),
    `## On top of a screen

What lies on top takes all keys until it is answered.
`,
    parts(slipTitles, slips).replaceAll(/^## /gm, '### '),
    `## Always\n\n${rows(always)}`,
  )
