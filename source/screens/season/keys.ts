/** Keys of the season besides moving about, help and leaving. */
import { type Desk, placeOf } from '../../morning/desk.ts'
import type { SeasonPlace } from '../../morning/place.ts'
import type { SeasonAct } from '../../morning/places/season.ts'
import type { Decision } from '../../morning/season/decide.ts'
import { type Binding, plain } from '../binding.ts'
import type { KeyName } from '../input/split.ts'
import { numberKeys, orHerPage } from '../number-keys.ts'
import type { KeyMeaning } from '../words/keys.ts'
import { enterWords } from '../words/season/shared.ts'

const here = (act: SeasonAct) => ({ do: 'here', on: 'season', act }) as const

const shown = (desk: Desk): SeasonPlace | undefined => {
  const place = placeOf(desk)
  return place.at === 'season' ? place : undefined
}

/** What Enter does on the part that is open; nothing where it does nothing. */
function enterLabel(desk: Desk): string {
  const place = shown(desk)
  if (place === undefined) return ''
  if (place.open !== undefined) return enterWords.animal
  return enterWords[place.part]
}

/** Only on the part of late calvers and empties. */
const ofEmpties: Binding['label'] = (desk) => (shown(desk)?.part === 'empties' ? undefined : '')

const decision = (name: KeyMeaning, key: KeyName, decided: Decision, foot: number): Binding =>
  plain(name, [key], here({ is: 'decide', decision: decided }), { group: 'record', foot, label: ofEmpties })

const inForecast = (label: string) => (desk: Desk) => (shown(desk)?.part === 'forecast' ? label : '')

export const seasonKeys: readonly Binding[] = [
  orHerPage(
    plain('look-into', ['enter'], here({ is: 'enter' }), { group: 'move', foot: 1, label: enterLabel }),
  ),
  plain('try-more', ['right'], here({ is: 'turn', by: 1 }), {
    group: 'move',
    foot: 2,
    label: inForecast(enterWords.turn),
  }),
  plain('try-less', ['left'], here({ is: 'turn', by: -1 }), { group: 'move' }),
  plain('as-planned', ['x'], here({ is: 'as-planned' }), {
    group: 'move',
    foot: 3,
    label: inForecast(enterWords.asPlanned),
  }),
  decision('decide-block', 'a', 'block', 2),
  decision('decide-bar', 'd', 'bar', 2),
  decision('decide-bull', 't', 'to-bull', 2),
  plain('next-part', ['tab'], here({ is: 'part', by: 1 }), { group: 'move', foot: 3 }),
  plain('previous-part', ['shift+tab'], here({ is: 'part', by: -1 }), { group: 'move' }),
  plain('other-block', ['b'], here({ is: 'block' }), { group: 'move', foot: 4 }),
  ...numberKeys,
  {
    name: 'back',
    keys: ['esc'],
    does: (desk) =>
      shown(desk)?.open !== undefined && desk.typed === '' ? here({ is: 'close' }) : { do: 'back' },
    group: 'move',
    foot: 3,
  },
]
