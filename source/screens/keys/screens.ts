/** The keys of each screen. */
import { plusDays } from '../../breeding/day.ts'
import { type Desk, placeOf } from '../../morning/desk.ts'
import type { Place } from '../../morning/place.ts'
import { subjectOf } from '../../morning/subject.ts'
import { aheadKeys } from '../ahead/keys.ts'
import { type Binding, plain } from '../binding.ts'
import { bullsKeys } from '../bulls/keys.ts'
import { scanningKeys } from '../scanning/keys.ts'
import { seasonKeys } from '../season/keys.ts'
import { setUpKeys } from '../set-up/keys.ts'
import { strawsKeys } from '../straws/keys.ts'
import { turnOutKeys } from '../turn-out/keys.ts'
import { keyWords } from '../words/keys.ts'
import { screenWords } from '../words/screen.ts'
import { anywhere, finding, go, moving, movingWithin } from './moving.ts'
import { recording, takingBack } from './recording.ts'

/** Only where an animal is pointed at, or her number typed. */
const onAnAnimal: NonNullable<Binding['label']> = (desk) =>
  subjectOf(desk).whyNot === undefined ? undefined : ''
const menu = plain('menu', ['m'], { do: 'slip', slip: 'menu' }, { group: 'more', foot: 9 })

/** What records about an animal, for a screen that lists animals: its foot names the menu alone. */
const aboutAnimals: readonly Binding[] = [
  { ...menu, foot: 2, label: onAnAnimal },
  ...recording
    .filter((binding) => binding.name !== 'look-all')
    .map(({ foot: _foot, ...binding }): Binding => ({ ...binding, group: 'more' })),
]

const LETTER = /^[a-z]$/i

/** A letter of the screen's own: while a number is being typed it records about that animal, as on the list. */
function orAboutNumber(binding: Binding, more: readonly Binding[]): Binding {
  const [key = ''] = binding.keys
  const other = LETTER.test(key) ? more.find(({ keys }) => keys.includes(key)) : undefined
  if (other === undefined) return binding
  return {
    ...binding,
    does: (desk, pressed, view) => (desk.typed === '' ? binding : other).does(desk, pressed, view),
    label: (desk, view) =>
      desk.typed === ''
        ? binding.label?.(desk, view)
        : (other.label?.(desk, view) ?? keyWords[other.name].label),
  }
}

/** Where a screen has much of its own to say in its foot. */
const menuLast = (binding: Binding): Binding => (binding.name === 'menu' ? { ...binding, foot: 8 } : binding)

/** The keys of a screen of its own, and those that every such screen has; `more` where no key of its own takes them. */
const own = (keys: readonly Binding[], more: readonly Binding[] = []): readonly Binding[] => {
  const taken = new Set(keys.flatMap((binding) => binding.keys))
  const here = keys.map((binding) => orAboutNumber(binding, more))
  const common = [
    ...more,
    ...movingWithin,
    ...takingBack,
    go,
    ...anywhere.map((binding) => (binding.name === 'back' ? { ...binding, foot: 9 } : binding)),
  ]
  return [...here, ...common.filter((binding) => !binding.keys.some((key) => taken.has(key)))]
}

/** On her page: what her facts come to is shown in their place. */
const showsMore = (desk: Desk): boolean => {
  const place = placeOf(desk)
  return place.at === 'animal' && place.more !== undefined
}
const moreLabel = (desk: Desk): string | undefined => (showsMore(desk) ? screenWords.herFacts : undefined)

/** Of a page that is longer than its room. */
const moreBelow: NonNullable<Binding['label']> = (_desk, view) => (view.furthest > 0 ? screenWords.more : '')

export const screens: Readonly<Record<Place['at'], readonly Binding[]>> = {
  ahead: own(aheadKeys, aboutAnimals),
  season: own(seasonKeys, aboutAnimals),
  straws: own(strawsKeys),
  bulls: own(bullsKeys, aboutAnimals),
  scanning: own(scanningKeys),
  'turn-out': own(turnOutKeys, aboutAnimals.map(menuLast)),
  'set-up': own(setUpKeys),
  'morning-list': [
    ...recording,
    menu,
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
    plain('known-then', ['T'], { do: 'known-then' }, { group: 'day' }),
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
      label: (desk) => {
        if (desk.typed !== '') return keyWords['open-animal'].label
        return showsMore(desk) ? '' : undefined
      },
      group: 'record',
      foot: 4,
    },
    plain(
      'void',
      ['x'],
      { do: 'void' },
      { group: 'record', foot: 3, label: (desk) => (showsMore(desk) ? '' : undefined) },
    ),
    plain('more-about', ['tab'], { do: 'more-about' }, { group: 'move', foot: 1, label: moreLabel }),
    plain('menu', ['m'], { do: 'slip', slip: 'menu' }, { group: 'more', foot: 2 }),
    ...takingBack,
    ...movingWithin,
    ...finding.filter((binding) => binding.name !== 'open-animal'),
    plain('initials', ['i'], { do: 'slip', slip: 'initials' }, { group: 'program' }),
    go,
    ...anywhere.map((binding) => (binding.name === 'back' ? { ...binding, foot: 1 } : binding)),
  ],
  help: [
    ...movingWithin.map(
      (binding): Binding => (binding.name === 'down' ? { ...binding, foot: 3, label: moreBelow } : binding),
    ),
    plain('back', ['esc', '?', 'enter'], { do: 'back' }, { foot: 1 }),
    plain('quit', ['q'], { do: 'leave', how: 'quit' }, { foot: 2 }),
  ],
}
