/** Keys that record, and that take back. */

import type { Action } from '../../morning/action.ts'
import type { Desk } from '../../morning/desk.ts'
import { subjectOf } from '../../morning/subject.ts'
import { type Binding, plain } from '../binding.ts'
import type { KeyName } from '../input/split.ts'
import { type KeyMeaning, usualWords } from '../words/keys.ts'

const usualLabel = (desk: Desk): string | undefined => {
  const her = subjectOf(desk)
  return her.whyNot === undefined && her.row !== undefined ? usualWords[her.row.section] : undefined
}

const form = (
  name: KeyMeaning,
  key: KeyName,
  action: Omit<Action & { do: 'form' }, 'do'>,
  more: Pick<Binding, 'group' | 'foot'> = { group: 'more' },
): Binding => plain(name, [key], { do: 'form', ...action }, more)

/** Keys that record, about the row pointed at, the number just typed or the page that is open. */
export const recording: readonly Binding[] = [
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
  form('block', 'M', { form: 'block' }),
  form('bar', 'X', { form: 'bar' }),
  form('calving', 'C', { form: 'calving' }),
  form('loss', 'L', { form: 'loss' }),
  form('dry', 'D', { form: 'dry' }),
  form('left', 'G', { form: 'left' }),
]

export const takingBack: readonly Binding[] = [
  plain('undo', ['u'], { do: 'undo' }, { group: 'record', foot: 5 }),
  plain('redo', ['r'], { do: 'redo' }, { group: 'record' }),
]
