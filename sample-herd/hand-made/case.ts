/** A hand-made case: one animal, what happened to her, and the code that she is there to show. */
import { type Day, dayIso, isoDay, plusDays } from '../../source/breeding/day.ts'
import type { AnimalFact, AnimalRecordFact, CheckFact } from '../../source/breeding/facts.ts'
import type { Reason, Warning } from '../../source/breeding/sections.ts'

/** The day of the cases: every code stands on this morning's list. */
export const CASES_DAY: Day = isoDay('2026-05-28')

/** The blocks, each in another phase on that day. */
export const blocks = {
  before: { matingStart: '2026-06-15', aiWeeks: 6, bullWeeks: 3 },
  serving: { matingStart: '2026-04-20', aiWeeks: 8, bullWeeks: 3 },
  bull: { matingStart: '2026-04-10', aiWeeks: 6, bullWeeks: 3 },
  closing: { matingStart: '2026-02-01', aiWeeks: 6, bullWeeks: 3 },
} as const
type BlockName = keyof typeof blocks

type Told<F extends AnimalFact = AnimalFact> = F extends AnimalFact
  ? Omit<F, 'id' | 'about' | 'at' | 'by' | 'action'>
  : never
type Record = Omit<
  AnimalRecordFact,
  'id' | 'about' | 'at' | 'by' | 'action' | 'kind' | 'date' | 'number' | 'name' | 'sex'
>

export interface Case {
  readonly number: string
  /** The case in words, which is her name. */
  readonly name: string
  readonly shows: Reason | Warning
  readonly record: Record
  readonly facts: readonly Told[]
}

/** A date so many days before the day of the cases. */
export const ago = (days: number): string => dayIso(plusDays(CASES_DAY, -days))

/** A cow of a block, known parents, calved so many days ago; what follows are her facts. */
export const cow = (
  number: string,
  shows: Case['shows'],
  name: string,
  block: BlockName,
  calved: number,
  ...facts: readonly Told[]
): Case => ({
  number,
  name,
  shows,
  record: {
    born: '2021-03-01',
    breed: 'Holstein-Friesian',
    sire: 'P1',
    dam: 'P2',
    block,
    lactation: 1,
    plan: 'dairy',
  },
  facts: [{ kind: 'calving', date: ago(calved), ease: 1, calfSex: 'F' }, ...facts],
})

/** The same case with something else in her record. */
export const but = (given: Case, record: Partial<Record>): Case => ({
  ...given,
  record: { ...given.record, ...record },
})

export const heat = (days: number, time = 'morning', certainty: 'sure' | 'suspect' = 'sure'): Told => ({
  kind: 'heat',
  date: ago(days),
  time,
  how: 'standing',
  certainty,
})
export const served = (days: number): Told => ({
  kind: 'service',
  date: ago(days),
  time: '08:00',
  sire: 'K1',
  straw: 'conventional',
  inseminator: 'AB',
  session: 'morning',
})
export const servedByBull = (days: number, sire = 'B1'): Told => ({
  kind: 'service',
  date: ago(days),
  natural: true,
  sire,
})
export const check = (days: number, result: CheckFact['result'], foetalAge?: number): Told => ({
  kind: 'check',
  date: ago(days),
  method: 'ultrasound',
  result,
  ...(foetalAge === undefined ? {} : { foetalAge }),
})
export const fixedTimeToday = (examined: number): Told => ({
  kind: 'examined',
  date: ago(examined),
  finding: 'not cycling',
  treatment: 'device for seven days',
  serveOn: dayIso(CASES_DAY),
  session: 'morning',
})
