/** Which screens there are, and what each remembers while it lies open. Data only. */
import type { Day } from '../breeding/day.ts'
import type { Change } from '../breeding/forecast/what-if.ts'

/** A screen of lines with a pointer on one of those that can be pointed at. */
interface Pointed {
  readonly pointer: number
}

export type MorningListPlace = { readonly at: 'morning-list' }
export type AnimalPlace = Pointed & { readonly at: 'animal'; readonly animal: string }
export type HelpPlace = { readonly at: 'help'; readonly top: number }
/** The next two weeks, the best scanning days, the key dates. */
export type AheadPlace = Pointed & {
  readonly at: 'ahead'
  /** Block that a scanning visit is planned for. */
  readonly block: string | undefined
}
/** Parts of the season's screen. */
export const seasonParts = ['answers', 'figures', 'pictures', 'forecast', 'empties', 'earlier'] as const
export type SeasonPart = (typeof seasonParts)[number]
/** The season of a block; `open` is the figure whose animals are listed; `change` what is tried out in the forecast. */
export type SeasonPlace = Pointed & {
  readonly at: 'season'
  readonly block: string | undefined
  readonly part: SeasonPart
  readonly open: string | undefined
  readonly change: Change
}
/** Flasks, stock, needs, nitrogen. */
export type StrawsPlace = Pointed & {
  readonly at: 'straws'
  /** First line of what is told of the line pointed at, where that is the page; undefined while the list is. */
  readonly top: number | undefined
  /** Lots that are used up are listed too. */
  readonly usedUp: boolean
}
/** Bulls needed and on hand, services seen. */
export type BullsPlace = Pointed & { readonly at: 'bulls' }
/** The scanning visit: one number after another, in the order of the crush. */
export type ScanningPlace = Pointed & {
  readonly at: 'scanning'
  readonly day: Day
  readonly typed: string
  /** Numbers that were read and fit no animal; kept until they are settled. */
  readonly unmatched: readonly string[]
}
/** The move to the bull weeks of a block, and out of them. */
export type TurnOutPlace = Pointed & {
  readonly at: 'turn-out'
  readonly block: string
  readonly what: 'in' | 'out'
  readonly day: Day
  /** Animals taken off the list by hand. */
  readonly without: readonly string[]
}
/** Farm, seasons, policy, animals. */
export const setUpParts = ['farm', 'seasons', 'policy', 'animals'] as const
export type SetUpPart = (typeof setUpParts)[number]
export type SetUpPlace = Pointed & { readonly at: 'set-up'; readonly part: SetUpPart }

export type Place =
  | MorningListPlace
  | AnimalPlace
  | HelpPlace
  | AheadPlace
  | SeasonPlace
  | StrawsPlace
  | BullsPlace
  | ScanningPlace
  | TurnOutPlace
  | SetUpPlace

/** The screens that have a file of their own in places/ and pages/. */
export type OwnPlace = Exclude<Place, MorningListPlace | AnimalPlace | HelpPlace>
