/** Words of the hints of the first mornings; `{usual}` stands for the key of that meaning. */
import type { Hint } from '../../morning/hints.ts'

export const hintWords: Readonly<Record<Hint, string>> = {
  'no-season': 'No season yet: {go}, then {go-set-up}, opens Set-up for them.',
  'no-animal': 'No animal yet: {go}, then {go-set-up}, opens Set-up for them.',
  usual: '{usual} records what is named below; {undo} takes it back.',
  heat: 'A heat seen: type her number, then {heat-now}.',
  'look-all': '{look-all} ticks the whole repeat-heat watch at once.',
}
