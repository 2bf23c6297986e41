/** The keys of each slip: what lies on top takes them all. */
import type { Desk, Slip } from '../../morning/desk.ts'
import type { Place } from '../../morning/place.ts'
import { openAhead } from '../../morning/places/ahead.ts'
import { openBulls } from '../../morning/places/bulls.ts'
import { openScanning } from '../../morning/places/scanning.ts'
import { openSeason } from '../../morning/places/season.ts'
import { openSetUp } from '../../morning/places/set-up.ts'
import { openStraws } from '../../morning/places/straws.ts'
import { openTurnOut } from '../../morning/turn-out/opening.ts'
import { type Binding, LETTERS, plain } from '../binding.ts'
import type { KeyName } from '../input/split.ts'
import type { KeyMeaning } from '../words/keys.ts'
import { screenWords } from '../words/screen.ts'
import { recording } from './recording.ts'

const goTo = (name: KeyMeaning, key: KeyName, open: (desk: Desk) => Place): Binding => ({
  name,
  keys: [key],
  does: (desk) => ({ do: 'open', place: open(desk) }),
})

const typing: readonly Binding[] = [
  plain('rub', ['backspace', 'delete'], { do: 'rub' }),
  { name: 'put', keys: [LETTERS], does: (_desk, key) => ({ do: 'put', text: key === 'space' ? ' ' : key }) },
]
/** Left and Right where they do something: a choice, a day, a suggestion. */
const turnLabel: NonNullable<Binding['label']> = ({ slip }) => {
  const field = slip?.is === 'form' ? slip.form.fields[slip.form.at] : undefined
  if (field?.input === 'pick') return (field.picks ?? []).length > 0 ? undefined : ''
  return field?.input === 'choice' || field?.input === 'date' ? undefined : ''
}
const nextLabel: NonNullable<Binding['label']> = ({ slip }) =>
  slip?.is === 'form' && slip.form.fields.length < 2 ? '' : undefined

/** Through a text that is longer than its room. */
const scrolling: readonly Binding[] = [
  {
    name: 'down',
    foot: 2,
    label: (_desk, view) => (view.furthest > 0 ? screenWords.more : ''),
    keys: ['down', 'pagedown'],
    does: (_desk, _key, view) => ({ do: 'scroll', by: 1, most: view.furthest }),
  },
  {
    name: 'up',
    keys: ['up', 'pageup'],
    does: (_desk, _key, view) => ({ do: 'scroll', by: -1, most: view.furthest }),
  },
]
const accept = (name: KeyMeaning): Binding => plain(name, ['enter'], { do: 'accept' }, { foot: 1 })
const cancel = plain('cancel', ['esc'], { do: 'cancel' }, { foot: 2 })

export const slips: Readonly<Record<Slip['is'], readonly Binding[]>> = {
  form: [
    accept('accept'),
    cancel,
    plain('next-field', ['tab', 'down'], { do: 'field', by: 1 }, { foot: 3, label: nextLabel }),
    plain('previous-field', ['shift+tab', 'up'], { do: 'field', by: -1 }),
    plain('turn-on', ['right'], { do: 'turn', by: 1 }, { foot: 4, label: turnLabel }),
    plain('turn-back', ['left'], { do: 'turn', by: -1 }),
    ...typing,
  ],
  question: [
    { ...accept('agree'), keys: ['enter', 'y'] },
    { ...cancel, keys: ['esc', 'n'] },
  ],
  menu: [
    cancel,
    ...recording.filter((binding) => binding.name !== 'look-all').map(({ foot: _foot, ...rest }) => rest),
  ],
  go: [
    goTo('go-ahead', 'a', openAhead),
    goTo('go-season', 's', openSeason),
    goTo('go-scanning', 'v', openScanning),
    goTo('go-straws', 'f', openStraws),
    goTo('go-bulls', 'b', openBulls),
    goTo('go-turn-out', 'm', openTurnOut),
    goTo('go-set-up', 'e', openSetUp),
    cancel,
  ],
  day: [accept('take'), cancel, ...typing],
  initials: [accept('take'), cancel, ...typing],
  leaving: [accept('leave-unsaved'), cancel, plain('copy', ['s'], { do: 'slip', slip: 'copy' }, { foot: 3 })],
  older: [accept('agree'), cancel],
  copy: [accept('take'), cancel, ...typing],
  notice: [plain('back', ['esc', 'enter', '!'], { do: 'cancel' }, { foot: 1 }), ...scrolling],
  opening: [accept('take'), plain('accept', ['esc'], { do: 'accept' }), ...scrolling, ...typing],
  search: [
    accept('take'),
    cancel,
    plain('next-field', ['down', 'tab'], { do: 'field', by: 1 }, { foot: 3 }),
    plain('previous-field', ['up', 'shift+tab'], { do: 'field', by: -1 }),
    ...typing,
  ],
}
