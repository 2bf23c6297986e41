import type { ServiceFact, SessionName, StrawKind } from '../../breeding/facts.ts'
import { daysCalved } from '../../breeding/questions.ts'
import { stockOn } from '../../breeding/straws/stock.ts'
import { strawsOnList } from '../../breeding/straws-on-list.ts'
import { rankingOf } from '../straw-ranking.ts'
import type { Form, Pick, Setting, Values } from './form.ts'
import { FieldReader, known } from './reader.ts'

export const strawKinds: readonly StrawKind[] = ['conventional', 'sexed', 'beef']
const sessions: readonly (SessionName | '')[] = ['', 'morning', 'evening']

/** Straws that can be chosen: the proposed one, then those in the flask as they are ranked for her. */
export function strawPicks({ book, now, row, rows, standing }: Setting): readonly Pick[] {
  const { proposal, ranked } = strawsOnList(book, rows, standing, rankingOf(book, now.day))
  const { lots } = stockOn(book, now.day)
  const batches = new Map<string, { sire: string; kind: string; batch: string; left: number }>()
  for (const lot of lots) {
    const key = [lot.sire, lot.straw, lot.batch ?? ''].join(' ')
    const one = batches.get(key) ?? { sire: lot.sire, kind: lot.straw, batch: lot.batch ?? '', left: 0 }
    batches.set(key, { ...one, left: one.left + lot.left })
  }
  const placeOf = (one: { sire: string; kind: string }): number => {
    if (row?.straw?.sire === one.sire && row.straw.straw === one.kind) return -1
    const place = ranked.findIndex(({ sire, straw }) => sire === one.sire && straw === one.kind)
    return place < 0 ? ranked.length : place
  }
  return [...batches.values()]
    .filter((one) => one.left > 0)
    .map((one) => ({ ...one, place: placeOf(one) }))
    .sort((a, b) => a.place - b.place || b.left - a.left || (a.sire < b.sire ? -1 : 1))
    .map(({ sire, kind, batch, left }) => {
      const known = ranked.find((one) => one.sire === sire && one.straw === kind)
      if (known === undefined) return { fills: { sire, kind, batch }, left }
      const related = known.generations > 0 ? { inbreeding: known.inbreeding } : {}
      const ofKind = kind === proposal.kind ? proposal.reasons.slice(0, 1) : known.reasons.slice(0, 1)
      return {
        fills: { sire, kind, batch },
        left,
        ...related,
        reasons: [...ofKind, ...known.reasons.slice(1)],
      }
    })
}

/** A service by AI: the straw, who served her, when. */
export const serviceForm: Form = {
  name: 'service',
  fields: (setting) => [
    { name: 'sire', input: 'pick', picks: strawPicks(setting) },
    { name: 'kind', input: 'choice', choices: strawKinds },
    { name: 'batch', input: 'text', optional: true },
    { name: 'inseminator', input: 'text', optional: true },
    { name: 'session', input: 'choice', choices: sessions, optional: true },
    { name: 'time', input: 'time', optional: true },
    { name: 'date', input: 'date' },
  ],
  begin: (setting) => {
    const { now, date, row, by } = setting
    const [first] = strawPicks(setting)
    const proposed = row?.straw
    const fromFlask =
      first !== undefined &&
      (proposed === undefined || (first.fills.sire === proposed.sire && first.fills.kind === proposed.straw))
    return {
      sire: proposed?.sire ?? first?.fills.sire ?? '',
      kind: proposed?.straw ?? first?.fills.kind ?? 'conventional',
      batch: fromFlask ? (first.fills.batch ?? '') : '',
      inseminator: by ?? '',
      session: row?.session === 'morning' || row?.session === 'evening' ? row.session : '',
      time: now.time,
      date,
    }
  },
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const sire = read.text('sire', true)
    const straw = read.choice('kind', strawKinds, true)
    const batch = read.text('batch')
    const inseminator = read.text('inseminator')
    const session = read.choice('session', sessions)
    const date = read.date()
    const time = read.time(date)
    return read.result(() => [
      {
        kind: 'service',
        about: setting.animal.id,
        date,
        ...known({ time, sire, straw, batch, inseminator, session: session === '' ? undefined : session }),
        ...proposedInstead(setting, sire, straw),
      } as Omit<ServiceFact, 'id' | 'at'>,
    ])
  },
  danger: serviceDanger,
}

/** The proposed straw, where another was used. */
function proposedInstead({ row }: Setting, sire: string | undefined, straw: string | undefined) {
  const proposed = row?.straw
  if (proposed === undefined || (proposed.sire === sire && proposed.straw === straw)) return {}
  return { proposed }
}

/** Why a service of hers should be thought over once more; undefined where nothing speaks against it. */
export function serviceDanger(values: Values, { standing, row, book, now }: Setting): string | undefined {
  if (standing.inCalf) return 'danger-in-calf'
  const calved = daysCalved(standing)
  if (!standing.maiden && calved !== undefined && calved < book.policy.calvedNever) return 'danger-calved'
  if (standing.onHold) return 'danger-hold'
  if (standing.barred) return 'danger-barred'
  if (standing.chancesUsed >= book.policy.chances) return 'danger-chances'
  if (row?.reasons.includes('short-interval')) return 'danger-short-interval'
  const { ranked } = rankingOf(book, now.day)(standing, undefined)
  if (ranked.find((one) => one.sire === values.sire && one.straw === values.kind)?.needsConfirming)
    return 'danger-related'
  if (row?.warnings.includes('late-return')) return 'danger-late-return'
  if (row?.warnings.includes('unsure')) return 'danger-unsure'
  return undefined
}
