/** Keys of this screen besides moving about, help and leaving. The foot shows those that the line being typed waits for. */
import { type Desk, placeOf } from '../../morning/desk.ts'
import type { ScanningPlace } from '../../morning/place.ts'
import type { ScanningAct } from '../../morning/places/scanning.ts'
import { scanLines } from '../../morning/scanning/lines.ts'
import { type Binding, DIGITS, plain } from '../binding.ts'
import type { KeyName } from '../input/split.ts'
import { type KeyMeaning, keyWords } from '../words/keys.ts'
import { scanningWords } from '../words/scanning.ts'

type More = Pick<Binding, 'group' | 'foot' | 'label'>

const here = (name: KeyMeaning, keys: readonly KeyName[], act: ScanningAct, more: More = {}): Binding =>
  plain(name, keys, { do: 'here', on: 'scanning', act }, more)

const shownPlace = (desk: Desk): ScanningPlace | undefined => {
  const place = placeOf(desk)
  return place.at === 'scanning' ? place : undefined
}

/** A key that the foot shows while the line is in a certain state. */
const shownWhile =
  (name: KeyMeaning, fits: (place: ScanningPlace) => boolean): NonNullable<Binding['label']> =>
  (desk) => {
    const place = shownPlace(desk)
    return place !== undefined && fits(place) ? keyWords[name].label : ''
  }

const result = (
  name: 'scan-in-calf' | 'scan-empty' | 'scan-unsure',
  key: KeyName,
  as: 'pregnant' | 'empty' | 'unsure',
): Binding =>
  here(
    name,
    [key],
    { is: 'result', result: as },
    {
      group: 'record',
      foot: 2,
      label: shownWhile(name, ({ entry }) => entry.typed !== '' && entry.result !== as),
    },
  )

/** What Enter does: records; on another line, where nothing is typed, it takes that one up. */
const enterLabel: NonNullable<Binding['label']> = (desk) => {
  const place = shownPlace(desk)
  if (place === undefined) return undefined
  const { entry, pointer } = place
  if (entry.typed !== '') return entry.result === undefined ? '' : undefined
  if (pointer === 0) return ''
  return scanLines(desk, place)[pointer - 1]?.is === 'kept' ? scanningWords.settle : scanningWords.correct
}

export const scanningKeys: readonly Binding[] = [
  {
    name: 'scan-number',
    keys: DIGITS,
    does: (_desk, digits) => ({ do: 'here', on: 'scanning', act: { is: 'type', digits } }),
    group: 'record',
    foot: 0,
    label: shownWhile('scan-number', ({ entry }) => entry.typed === ''),
  },
  here('scan-enter', ['enter'], { is: 'enter' }, { group: 'record', foot: 1, label: enterLabel }),
  result('scan-in-calf', 'p', 'pregnant'),
  result('scan-empty', 'e', 'empty'),
  result('scan-unsure', 'u', 'unsure'),
  here(
    'scan-twins',
    ['t'],
    { is: 'twins' },
    {
      group: 'record',
      foot: 3,
      label: shownWhile('scan-twins', ({ entry }) => entry.result === 'pregnant'),
    },
  ),
  here('rub', ['backspace', 'delete'], { is: 'rub' }),
  here(
    'scan-keep',
    ['k'],
    { is: 'keep' },
    {
      group: 'record',
      foot: 4,
      label: shownWhile('scan-keep', ({ entry }) => entry.result !== undefined),
    },
  ),
  here(
    'scan-strike',
    ['x'],
    { is: 'strike' },
    {
      group: 'record',
      foot: 5,
      label: shownWhile('scan-strike', ({ pointer }) => pointer > 0),
    },
  ),
  plain('undo', ['z'], { do: 'undo' }, { group: 'record', foot: 6 }),
  here('scan-method', ['m'], { is: 'method' }, { group: 'more', foot: 7 }),
  here('scan-day-before', [','], { is: 'day', by: -1 }, { group: 'day' }),
  here('scan-day-after', ['.'], { is: 'day', by: 1 }, { group: 'day' }),
  here('back', ['esc'], { is: 'back' }, { group: 'move', foot: 9 }),
]
