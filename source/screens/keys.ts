/**
 * The one table of keys. The handler finds in it what a key does, the foot of the screen which keys work now, the
 * help what all of them do; tests press keys by their meaning. Whether a key works now is asked of morning/may.ts.
 */
import { plusDays } from '../breeding/day.ts'
import type { Action } from '../morning/action.ts'
import { type Desk, placeOf, type Slip, subjectOf } from '../morning/desk.ts'
import { moveToOpen, whyNot } from '../morning/may.ts'
import { because, type Message } from '../morning/message.ts'
import type { Place } from '../morning/place.ts'
import { openAhead } from '../morning/places/ahead.ts'
import { openBulls } from '../morning/places/bulls.ts'
import { openScanning } from '../morning/places/scanning.ts'
import { openSeason } from '../morning/places/season.ts'
import { openSetUp } from '../morning/places/set-up.ts'
import { openStraws } from '../morning/places/straws.ts'
import { openTurnOut } from '../morning/places/turn-out.ts'
import { aheadKeys } from './ahead/keys.ts'
import { type Binding, DIGITS, type KeyGroup, noView, plain, type View } from './binding.ts'
import { bullsKeys } from './bulls/keys.ts'
import type { KeyName } from './input/split.ts'
import { scanningKeys } from './scanning/keys.ts'
import { seasonKeys } from './season/keys.ts'
import { setUpKeys } from './set-up/keys.ts'
import { strawsKeys } from './straws/keys.ts'
import { turnOutKeys } from './turn-out/keys.ts'
import { type KeyMeaning, keyNames, keyWords, usualWords } from './words/keys.ts'
import { screenWords } from './words/screen.ts'

export type { Binding, KeyGroup, View } from './binding.ts'

/** Stands for every printed character. */
const LETTERS: KeyName = 'letters'

const usualLabel = (desk: Desk): string | undefined => {
  const her = subjectOf(desk)
  return her.whyNot === undefined && her.row !== undefined ? usualWords[her.row.section] : undefined
}

/** Enter on the move to the bull weeks opens that. */
const openLabel = (desk: Desk): string | undefined =>
  moveToOpen(desk) === undefined ? undefined : keyWords['go-turn-out'].label

const form = (
  name: KeyMeaning,
  key: KeyName,
  action: Omit<Action & { do: 'form' }, 'do'>,
  more: Pick<Binding, 'group' | 'foot'> = { group: 'more' },
): Binding => plain(name, [key], { do: 'form', ...action }, more)

/** Keys that record, about the row pointed at, the number just typed or the page that is open. */
const recording: readonly Binding[] = [
  plain('usual', ['space'], { do: 'usual' }, { group: 'record', foot: 1, label: usualLabel }),
  plain('fill-in', ['f'], { do: 'fill-in' }, { group: 'record', foot: 2 }),
  plain('heat-now', ['h'], { do: 'heat-now' }, { group: 'record', foot: 3 }),
  form(
    'in-calf',
    'p',
    { form: 'check', values: { result: 'pregnant' }, at: 'age' },
    { group: 'record', foot: 8 },
  ),
  form('not-in-calf', 'e', { form: 'check', values: { result: 'empty' }, at: 'age' }, { group: 'record' }),
  plain('look-all', ['l'], { do: 'look-all' }, { group: 'record', foot: 7 }),
  form('service', 's', { form: 'service' }),
  form('heat', 'H', { form: 'heat' }),
  form('check', 'c', { form: 'check' }),
  form('examined', 'v', { form: 'examined' }),
  form('hold', 'o', { form: 'hold' }),
  form('note', 'n', { form: 'note' }),
  form('to-bull', 'b', { form: 'to-bull' }),
  form('with-bull', 'w', { form: 'with-bull' }),
  form('from-bull', 'W', { form: 'from-bull' }),
  form('bull-service', 'B', { form: 'bull-service' }),
  form('score', 'k', { form: 'score' }),
  form('bar', 'X', { form: 'bar' }),
  form('calving', 'C', { form: 'calving' }),
  form('loss', 'L', { form: 'loss' }),
  form('dry', 'D', { form: 'dry' }),
  form('left', 'G', { form: 'left' }),
]

const takingBack: readonly Binding[] = [
  plain('undo', ['u'], { do: 'undo' }, { group: 'record', foot: 5 }),
  plain('redo', ['r'], { do: 'redo' }, { group: 'record' }),
]

const moving: readonly Binding[] = [
  plain('up', ['up'], { do: 'move', by: -1 }, { group: 'move' }),
  plain('down', ['down'], { do: 'move', by: 1 }, { group: 'move' }),
  {
    name: 'page-up',
    keys: ['pageup'],
    does: (_desk, _key, view) => ({ do: 'move', by: 1 - view.rows }),
    group: 'move',
  },
  {
    name: 'page-down',
    keys: ['pagedown'],
    does: (_desk, _key, view) => ({ do: 'move', by: view.rows - 1 }),
    group: 'move',
  },
  plain('first', ['home'], { do: 'move', by: Number.NEGATIVE_INFINITY }, { group: 'move' }),
  plain('last', ['end'], { do: 'move', by: Number.POSITIVE_INFINITY }, { group: 'move' }),
]

const finding: readonly Binding[] = [
  { name: 'number', keys: DIGITS, does: (_desk, digit) => ({ do: 'digit', digit }), group: 'move' },
  plain('rub', ['backspace', 'delete'], { do: 'rub' }),
  plain('open-animal', ['enter'], { do: 'open-animal' }, { group: 'move', foot: 4, label: openLabel }),
  plain('search', ['/'], { do: 'slip', slip: 'search' }, { group: 'move' }),
]

/** To another screen. */
const go = plain('go', ['g'], { do: 'slip', slip: 'go' }, { group: 'move', foot: 8 })

const goTo = (name: KeyMeaning, key: KeyName, open: (desk: Desk) => Place): Binding => ({
  name,
  keys: [key],
  does: (desk) => ({ do: 'open', place: open(desk) }),
})

const anywhere: readonly Binding[] = [
  plain('back', ['esc'], { do: 'back' }, { group: 'move' }),
  plain('help', ['?'], { do: 'open', place: { at: 'help', top: 0 } }, { group: 'program', foot: 6 }),
  plain('copy', ['S'], { do: 'slip', slip: 'copy' }, { group: 'program' }),
  plain('over-older', ['A'], { do: 'slip', slip: 'older' }, { group: 'program', foot: 0 }),
  plain('quit', ['q'], { do: 'leave', how: 'quit' }, { group: 'program', foot: 10 }),
]

/** Work whatever lies on top. */
const always: readonly Binding[] = [
  plain('interrupt', ['ctrl+c'], { do: 'leave', how: 'interrupt' }, { group: 'program' }),
  plain('suspend', ['ctrl+z'], { do: 'leave', how: 'suspend' }, { group: 'program' }),
]

/** Moving about on a page whose pointer the screen knows the end of. */
const movingWithin: readonly Binding[] = moving.map(
  (binding): Binding => ({
    ...binding,
    does: (desk, key, view) => ({ ...binding.does(desk, key, view), most: view.furthest }) as Action,
  }),
)

/** The keys of a screen of its own, and those that every such screen has. */
const own = (keys: readonly Binding[]): readonly Binding[] => {
  const taken = new Set(keys.flatMap((binding) => binding.keys))
  const common = [
    ...movingWithin,
    ...takingBack,
    go,
    ...anywhere.map((binding) => (binding.name === 'back' ? { ...binding, foot: 9 } : binding)),
  ]
  return [...keys, ...common.filter((binding) => !binding.keys.some((key) => taken.has(key)))]
}

const screens: Readonly<Record<Place['at'], readonly Binding[]>> = {
  ahead: own(aheadKeys),
  season: own(seasonKeys),
  straws: own(strawsKeys),
  bulls: own(bullsKeys),
  scanning: own(scanningKeys),
  'turn-out': own(turnOutKeys),
  'set-up': own(setUpKeys),
  'morning-list': [
    ...recording,
    plain('menu', ['m'], { do: 'slip', slip: 'menu' }, { group: 'more', foot: 9 }),
    ...takingBack,
    ...moving,
    plain('next-section', ['tab'], { do: 'section', by: 1 }, { group: 'move' }),
    plain('previous-section', ['shift+tab'], { do: 'section', by: -1 }, { group: 'move' }),
    ...finding,
    plain('unfold', ['O'], { do: 'unfold' }, { group: 'move' }),
    {
      name: 'day-before',
      keys: [','],
      does: (desk) => ({ do: 'day', day: plusDays(desk.page.list.day, -1) }),
      group: 'day',
    },
    {
      name: 'day-after',
      keys: ['.'],
      does: (desk) => ({ do: 'day', day: plusDays(desk.page.list.day, 1) }),
      group: 'day',
    },
    { name: 'today', keys: ['t'], does: (desk) => ({ do: 'day', day: desk.now.day }), group: 'day' },
    plain('some-day', ['d'], { do: 'slip', slip: 'day' }, { group: 'day' }),
    plain('initials', ['i'], { do: 'slip', slip: 'initials' }, { group: 'program' }),
    go,
    ...anywhere,
  ],
  animal: [
    ...recording.filter((binding) => binding.name !== 'look-all'),
    {
      name: 'change-fact',
      keys: ['enter'],
      does: (desk) => (desk.typed === '' ? { do: 'change-fact' } : { do: 'open-animal' }),
      label: (desk) => (desk.typed === '' ? undefined : keyWords['open-animal'].label),
      group: 'record',
      foot: 4,
    },
    plain('void', ['x'], { do: 'void' }, { group: 'record', foot: 3 }),
    plain('menu', ['m'], { do: 'slip', slip: 'menu' }, { group: 'more', foot: 2 }),
    ...takingBack,
    ...moving,
    ...finding.filter((binding) => binding.name !== 'open-animal'),
    plain('initials', ['i'], { do: 'slip', slip: 'initials' }, { group: 'program' }),
    go,
    ...anywhere.map((binding) => (binding.name === 'back' ? { ...binding, foot: 1 } : binding)),
  ],
  help: [
    ...movingWithin,
    plain('back', ['esc', '?', 'enter'], { do: 'back' }, { foot: 1 }),
    plain('quit', ['q'], { do: 'leave', how: 'quit' }, { foot: 2 }),
  ],
}

const typing: readonly Binding[] = [
  plain('rub', ['backspace', 'delete'], { do: 'rub' }),
  { name: 'put', keys: [LETTERS], does: (_desk, key) => ({ do: 'put', text: key === 'space' ? ' ' : key }) },
]
const accept = (name: KeyMeaning): Binding => plain(name, ['enter'], { do: 'accept' }, { foot: 1 })
const cancel = plain('cancel', ['esc'], { do: 'cancel' }, { foot: 2 })

const slips: Readonly<Record<Slip['is'], readonly Binding[]>> = {
  form: [
    accept('accept'),
    cancel,
    plain('next-field', ['tab', 'down'], { do: 'field', by: 1 }, { foot: 3 }),
    plain('previous-field', ['shift+tab', 'up'], { do: 'field', by: -1 }),
    plain('turn-on', ['right'], { do: 'turn', by: 1 }, { foot: 4 }),
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
  'results-kept': [accept('leave-results'), cancel],
  copy: [accept('take'), cancel, ...typing],
  opening: [
    accept('take'),
    plain('accept', ['esc'], { do: 'accept' }),
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
    ...typing,
  ],
  search: [
    accept('take'),
    cancel,
    plain('next-field', ['down', 'tab'], { do: 'field', by: 1 }, { foot: 3 }),
    plain('previous-field', ['up', 'shift+tab'], { do: 'field', by: -1 }),
    ...typing,
  ],
}

/** The bindings that keys go to now. What lies on top takes them all but leaving. */
export const bindingsNow = (desk: Desk): readonly Binding[] => [
  ...(desk.slip === undefined ? screens[placeOf(desk).at] : slips[desk.slip.is]),
  ...always,
]

const isPrinted = (key: KeyName): boolean => key === 'space' || [...key].length === 1

/** The binding of a key, or undefined where the key means nothing here. */
export const bindingOf = (desk: Desk, key: KeyName): Binding | undefined => {
  const now = bindingsNow(desk)
  return (
    now.find((binding) => binding.keys.includes(key)) ??
    (isPrinted(key) ? now.find((binding) => binding.keys.includes(LETTERS)) : undefined)
  )
}

/** Why a binding cannot be used now; undefined where it can. */
export const whyDisabled = (desk: Desk, binding: Binding, view: View): Message | undefined =>
  whyNot(desk, binding.does(desk, binding.keys[0] ?? '', view))

/** What a key means now: an action, or why it does nothing. */
export function meaningOf(desk: Desk, key: KeyName, view: View): Action | Message {
  const binding = bindingOf(desk, key)
  return binding === undefined
    ? because('not-a-key', { key: keyNames[key] ?? key })
    : binding.does(desk, key, view)
}

/** A binding as it is shown: `Space looked, none`. */
export const shown = (desk: Desk, binding: Binding, view: View = noView): { keys: string; label: string } => {
  const [first = ''] = binding.keys
  return {
    keys: binding.keys.length === DIGITS.length ? (keyNames.digits ?? '') : (keyNames[first] ?? first),
    label: binding.label?.(desk, view) ?? keyWords[binding.name].label,
  }
}

/** Bindings for the foot of the screen, the most useful first: those that work now. */
export const footBindings = (desk: Desk, view: View): readonly Binding[] =>
  bindingsNow(desk)
    .filter(
      (binding) =>
        binding.foot !== undefined &&
        binding.label?.(desk, view) !== '' &&
        whyDisabled(desk, binding, view) === undefined,
    )
    .sort((a, b) => (a.foot ?? 0) - (b.foot ?? 0))

/** Every binding of a screen by the part of the help it stands in. */
export const helpBindings = (at: Place['at']): ReadonlyMap<KeyGroup, readonly Binding[]> =>
  Map.groupBy(
    [...screens[at], ...always].filter((binding) => binding.group !== undefined),
    (binding) => binding.group as KeyGroup,
  )
