/** Results that wait to be settled: the entry of a scanning visit kept as a fact of the herd. */
import { dayIso } from '../../breeding/day.ts'
import { type CheckFact, HERD, type KeptResultFact, type NewFact } from '../../breeding/facts.ts'
import { bookNow } from '../book-now.ts'
import type { Desk } from '../desk.ts'
import { known as given } from '../forms/reader.ts'
import { voiding } from '../history.ts'
import { because } from '../message.ts'
import type { ScanningPlace } from '../place.ts'
import { withPlace } from '../places/with-place.ts'
import { recording, refused, type Step } from '../step.ts'
import { ageIsOdd } from './judged.ts'
import { cleared } from './typing.ts'

type Read = Pick<CheckFact, 'result' | 'method' | 'foetalAge' | 'foetuses'>

/** Whether two results say the same. */
export const sameResult = (one: Read, other: Read): boolean =>
  one.result === other.result &&
  one.method === other.method &&
  one.foetalAge === other.foetalAge &&
  (one.foetuses ?? 1) === (other.foetuses ?? 1)

/** The kept result that the entry was taken from. */
export const keptIn = (desk: Desk, { settles }: ScanningPlace): readonly KeptResultFact[] =>
  bookNow(desk).keptResults.filter(({ id }) => id === settles)

/** Keeps the entry as a fact of the herd until it is settled, so that the next animal can come. */
export function keep(desk: Desk, place: ScanningPlace, why: string): Step {
  const { entry, day, method } = place
  if (entry.result === undefined) return refused(desk, 'scan-nothing-to-keep')
  if (ageIsOdd(entry)) return refused(desk, 'scan-age-odd', { age: entry.age })
  const fact: NewFact<KeptResultFact> = {
    kind: 'kept-result',
    about: HERD,
    date: dayIso(day),
    number: entry.typed,
    method,
    result: entry.result,
    ...given({
      foetalAge: entry.age === '' ? undefined : Number(entry.age),
      foetuses: entry.twins ? 2 : undefined,
    }),
    why,
  }
  const before = keptIn(desk, place)
  const said = because('scan-kept', { number: entry.typed })
  const after = withPlace(desk, cleared(place))
  if (before.some((one) => sameKept(one, fact))) return { desk: { ...after, said } }
  return recording(after, [fact, ...before.map((one) => voiding(one, 'read anew'))], said)
}

const sameKept = (one: KeptResultFact, other: NewFact<KeptResultFact>): boolean =>
  one.number === other.number && one.why === other.why && sameResult(one, other)
