/** The shape of the morning list: sections, codes and rows. What each code says stands in words/list.ts. */
import type { Day } from './day.ts'
import type { StrawKind } from './facts.ts'
import { checkWarnings } from './rules/pregnancy-check.ts'
import { serveWarnings } from './rules/serve.ts'
import { bullWarnings } from './rules/sweep-bull.ts'
import type { Phase, Season } from './season.ts'
import type { ServingSession } from './session.ts'
import { strawWarnings } from './straws/straws-of-day.ts'

/** Sections in screen order. An animal stands in at most one. */
export const sections = [
  'take-care',
  'serve',
  'second-service',
  'repeat-heat-watch',
  'pregnancy-check',
  'sweep-bull',
  'no-heat-seen',
  'heat-record',
] as const
export type Section = (typeof sections)[number]

/** Reasons of each section, in the order that they place an animal. */
export const reasonsOf = {
  'take-care': [
    'in-calf-heat',
    'served-in-calf',
    'overdue',
    'calving-unknown',
    'calved-under-30',
    'calved-30-41',
    'short-interval',
    'hold',
    'unserved-heat',
    'no-service-fits',
    'loss',
    'contradiction',
  ],
  serve: ['on-heat', 'fixed-time'],
  'second-service': ['on-heat', 'fixed-time'],
  'repeat-heat-watch': ['since-service', 'since-heat'],
  'pregnancy-check': ['due', 'unsure', 'heat-in-calf', 'served-in-calf', 'confirm', 'final'],
  'sweep-bull': ['chances', 'by-hand', 'late', 'window', 'keep-from-bull'],
  'no-heat-seen': ['cycling-not-seen', 'no-heat-24-days', 'empty', 'at-risk'],
  'heat-record': ['none-seen'],
} as const satisfies Record<Section, readonly string[]>
export type Reason = (typeof reasonsOf)[Section][number]

/** Warnings, each from the rule that gives it. */
export const warnings = [...serveWarnings, ...checkWarnings, ...bullWarnings, ...strawWarnings] as const
export type Warning = (typeof warnings)[number]

export type Since = 'service' | 'heat' | 'calving' | 'loss'

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
