/** Which screens there are, and what each remembers while it lies open. Data only. */
import type { Day } from '../breeding/day.ts'
import type { CheckMethod, CheckResult } from '../breeding/facts.ts'
import type { FigureName } from '../breeding/figures/behind.ts'
import type { Change } from '../breeding/forecast/what-if.ts'

/** A screen of lines with a pointer on one of those that can be pointed at. */
interface Pointed {
  readonly pointer: number
}

type MorningListPlace = { readonly at: 'morning-list' }
/** An animal's facts with a pointer on one; `more`: first line of what they come to, where that is shown in their place. */
type AnimalPlace = Pointed & { readonly at: 'animal'; readonly animal: string; readonly more?: number }
type HelpPlace = { readonly at: 'help'; readonly top: number }
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
  readonly open: FigureName | undefined
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
/** A result of the scanning visit as it is being typed. */
export interface ScanEntry {
  /** Digits of the number. */
  readonly typed: string
  readonly result: CheckResult | undefined
  /** Digits of the foetal age in days. */
  readonly age: string
  readonly twins: boolean
}
/** The scanning visit: one number after another, in the order of the crush. Pointer 0 is the line that is typed. */
export type ScanningPlace = Pointed & {
  readonly at: 'scanning'
  readonly day: Day
  readonly method: CheckMethod
  readonly entry: ScanEntry
  /** Where digits go. */
  readonly to: 'number' | 'age'
  /** The first digit replaces what stands there. */
  readonly fresh: boolean
  /** The entry was taken from those kept to be settled: id of that fact. */
  readonly settles: string | undefined
  /** The entry corrects this check. */
  readonly corrects: string | undefined
  /** The visit that is gone back to, while a result of another one is settled. */
  readonly backTo: Pick<ScanningPlace, 'day' | 'method'> | undefined
}
/** The move to the bull weeks of a block, and out of them. */
export type TurnOutPlace = Pointed & {
  readonly at: 'turn-out'
  readonly block: string
  readonly what: 'in' | 'out'
  readonly day: Day
  /** Number of the one bull that comes out, lame or worn out; undefined: all of the block. */
  readonly bull?: string
  /** Ids of animals and bulls taken off by hand. */
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
