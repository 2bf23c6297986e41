/** Keys of this screen besides moving about, help and leaving. */
import { placeOf } from '../../morning/desk.ts'
import type { ScanningAct } from '../../morning/places/scanning.ts'
import { type Binding, DIGITS, plain } from '../binding.ts'
import type { KeyName } from '../input/split.ts'
import type { KeyMeaning } from '../words/keys.ts'
import { scanningWords } from '../words/scanning.ts'

const here = (
  name: KeyMeaning,
  keys: readonly KeyName[],
  act: ScanningAct,
  more: Pick<Binding, 'group' | 'foot' | 'label'> = {},
): Binding => plain(name, keys, { do: 'here', on: 'scanning', act }, more)

/** What Enter does where the line is empty and the pointer is on another. */
const enterLabel: Binding['label'] = (desk) => {
  const place = placeOf(desk)
  if (place.at !== 'scanning' || place.entry.typed !== '' || place.pointer === 0) return undefined
  return place.pointer <= place.kept.length ? scanningWords.settle : scanningWords.correct
}

export const scanningKeys: readonly Binding[] = [
  {
    name: 'number',
    keys: DIGITS,
    does: (_desk, digits) => ({ do: 'here', on: 'scanning', act: { is: 'type', digits } }),
    group: 'record',
  },
  here('scan-in-calf', ['p'], { is: 'result', result: 'pregnant' }, { group: 'record', foot: 1 }),
  here('scan-empty', ['e'], { is: 'result', result: 'empty' }, { group: 'record', foot: 1 }),
  here('scan-unsure', ['u'], { is: 'result', result: 'unsure' }, { group: 'record', foot: 1 }),
  here('scan-twins', ['t'], { is: 'twins' }, { group: 'record', foot: 2 }),
  here('scan-enter', ['enter'], { is: 'enter' }, { group: 'record', foot: 3, label: enterLabel }),
  here('rub', ['backspace', 'delete'], { is: 'rub' }),
  plain('undo', ['z'], { do: 'undo' }, { group: 'record', foot: 4 }),
  here('scan-strike', ['x'], { is: 'strike' }, { group: 'record', foot: 6 }),
  here('scan-keep', ['k'], { is: 'keep' }, { group: 'record', foot: 5 }),
  here('scan-method', ['m'], { is: 'method' }, { group: 'more', foot: 7 }),
  here('scan-day-before', [','], { is: 'day', by: -1 }, { group: 'day' }),
  here('scan-day-after', ['.'], { is: 'day', by: 1 }, { group: 'day' }),
  here('back', ['esc'], { is: 'back' }, { group: 'move', foot: 9 }),
]
