/** The shape of the morning list: its rows, its blocks, the visits ahead. */
import type { Day } from './day.ts'
import type { StrawKind } from './facts.ts'
import type { Phase, Season } from './season.ts'
import type { Reason, Section, Since, Warning } from './sections.ts'
import type { ServingSession } from './session.ts'

export interface Row {
  readonly section: Section
  /** Id of the animal. */
  readonly animal: string
  readonly number: string
  readonly block: string | undefined
  /** Days from what `since` names to the list's day. */
  readonly days: number | undefined
  readonly since: Since | undefined
  /** Share 0-1: of returning today, of being in calf, or of holding to the proposed straw. */
  readonly chance: number | undefined
  readonly session: ServingSession | undefined
  readonly straw: { readonly sire: string; readonly straw: StrawKind } | undefined
  /** Minutes from the list's midnight to the heat that is served, for the order of the work; 0 without one. */
  readonly moment: number
  /** The one that placed her first. */
  readonly reasons: readonly Reason[]
  readonly warnings: readonly Warning[]
  /** take-care only: the section where she would stand without it. */
  readonly also: Section | undefined
  /** Ticked by a fact of the list's day. */
  readonly done: boolean
}

/** A block on the list's day. */
export interface BlockDay {
  readonly block: string
  readonly season: Season
  readonly phase: Phase
  /** Season day. */
  readonly day: number
  /** Last day of the present phase; undefined when closed. */
  readonly closes: Day | undefined
}

/** Animals that wait for the next scanning visit of their block. */
export interface VisitAhead {
  readonly block: string
  readonly visit: Day
  readonly ready: number
}

export interface MorningList {
  readonly day: Day
  readonly blocks: readonly BlockDay[]
  readonly rows: readonly Row[]
  readonly visits: readonly VisitAhead[]
}
