/** facts.csv: what happened to each animal. */
import type { AnimalFact } from '../../../breeding/facts.ts'
import { calfSexes, choice, date, decimal, text, timeOfDay, whole, word, yesNo } from '../cells.ts'
import { column, required } from '../columns.ts'
import { order, strawKinds } from './straws.ts'

/** What a kind of fact needs, what else it may have, and whether it happens at most once a day. */
interface FactKindColumns {
  readonly needs: readonly string[]
  readonly may: readonly string[]
  /** What is taken where nothing is said. */
  readonly standard?: Readonly<Record<string, unknown>>
  readonly onceADay?: true
}

const nothing = { needs: [], may: [] }

export const factKinds: Readonly<Record<AnimalFact['kind'], FactKindColumns>> = {
  heat: { needs: [], may: ['how', 'certainty', 'signs'], standard: { how: 'other', certainty: 'sure' } },
  looked: { ...nothing, onceADay: true },
  service: {
    needs: [],
    may: ['sire', 'straw', 'batch', 'inseminator', 'natural', 'session', 'proposedSire', 'proposedStraw'],
  },
  check: {
    needs: ['method', 'result'],
    may: ['method', 'result', 'foetalAge', 'foetuses', 'serviceDate'],
    onceADay: true,
  },
  examined: { needs: [], may: ['finding', 'treatment', 'serveOn', 'session'], onceADay: true },
  calving: { needs: [], may: ['ease', 'calves', 'dead', 'calfSex'], onceADay: true },
  loss: { ...nothing, onceADay: true },
  bar: { needs: [], may: ['reason'] },
  unbar: { needs: [], may: ['reason'] },
  'to-bull': { ...nothing, onceADay: true },
  'with-bull': { needs: [], may: ['bull'] },
  'from-bull': { needs: [], may: ['bull'] },
  hold: { needs: [], may: ['until', 'reason'] },
  score: { needs: ['condition'], may: ['condition'], onceADay: true },
  dry: { ...nothing, onceADay: true },
  block: { needs: ['block'], may: ['block'], onceADay: true },
  left: { needs: [], may: ['reason'], onceADay: true },
  note: { needs: ['note'], may: ['note'] },
}

export const factColumns = [
  required(column('number', word)),
  required(column('date', date)),
  column('time', timeOfDay),
  required(column('fact', choice(Object.keys(factKinds)), 'kind')),
  column('how', choice(['activity', 'standing', 'paint', 'mucus', 'other'])),
  column('certainty', choice(['sure', 'suspect'])),
  column('signs', text),
  column('sire', word),
  column('kind', choice(strawKinds), 'straw'),
  column('batch', word),
  column('by', word, 'inseminator'),
  column('natural', yesNo),
  column('proposed_sire', word, 'proposedSire'),
  column('proposed_kind', choice(strawKinds), 'proposedStraw'),
  column('method', choice(['ultrasound', 'hand', 'milk', 'blood'])),
  column('result', choice(['pregnant', 'empty', 'unsure'])),
  column('foetal_age', whole(20, 290), 'foetalAge'),
  column('foetuses', whole(1, 5)),
  column('service_date', date, 'serviceDate'),
  column('finding', text),
  column('treatment', text),
  column('serve_on', date, 'serveOn'),
  column('session', choice(['morning', 'evening'])),
  column('ease', whole(1, 5)),
  column('calves', whole(1, 5)),
  column('dead', whole(0, 5)),
  column('calf_sex', calfSexes, 'calfSex'),
  column('bull', word),
  column('until', date),
  column('reason', text),
  column('condition', decimal(1, 5, 0.25)),
  column('block', word),
  column('note', text),
  order,
  column('id', word),
]
