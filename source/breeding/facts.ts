/**
 * The facts of a herd file. Everything the program knows is a fact: recorded once, never changed, voided by a
 * correction. State is always derived by folding the facts. These types are what stands in the file, field by field.
 */
import type { IsoDate } from './day.ts'

/** Kinds of straw. `sexed` is sexed female dairy, `conventional` is conventional dairy. */
export type StrawKind = 'conventional' | 'sexed' | 'beef'
export type HeatSource = 'activity' | 'standing' | 'paint' | 'mucus' | 'other'
export type Certainty = 'sure' | 'suspect'
export type CheckMethod = 'ultrasound' | 'hand' | 'milk' | 'blood'
export type CheckResult = 'pregnant' | 'empty' | 'unsure'
/** Which milking of the day: its first or its last. */
export type SessionName = 'morning' | 'evening'
/** A wall time `HH:MM`, or the day's first (`morning`) or last (`evening`) milking. */
export type TimeOfDay = string

/** What every fact carries. */
interface Envelope {
  /** Random, unique; the same id with other content is an error. */
  readonly id: string
  /** Id of the animal, or `herd`. */
  readonly about: string
  /** The day it happened on the farm (for a correction: the day of the fact it voids). */
  readonly date: IsoDate
  /** When on that day; absent counts as the day's first milking. */
  readonly time?: TimeOfDay
  /** Initials of who recorded it. */
  readonly by?: string
  /** When it was recorded, an instant in UTC (`2026-05-28T04:15:09.120Z`). */
  readonly at: string
  /** Facts recorded by one action of the user carry one id, so that undo takes them back together. */
  readonly action?: string
}

export interface HeatFact extends Envelope {
  readonly kind: 'heat'
  readonly how: HeatSource
  readonly certainty: Certainty
  readonly signs?: string
}
/** Looked for a return, none seen. */
interface LookedFact extends Envelope {
  readonly kind: 'looked'
}
export interface ServiceFact extends Envelope {
  readonly kind: 'service'
  /** true: a bull's service, `sire` is the bull; absent: AI. */
  readonly natural?: boolean
  readonly sire?: string
  readonly straw?: StrawKind
  readonly batch?: string
  readonly inseminator?: string
  readonly session?: SessionName
  /** The straw that was proposed, where another was used. */
  readonly proposed?: { readonly sire: string; readonly straw: StrawKind }
}
export interface CheckFact extends Envelope {
  readonly kind: 'check'
  readonly method: CheckMethod
  readonly result: CheckResult
  /** Days, 20-290. */
  readonly foetalAge?: number
  /** 1-5. */
  readonly foetuses?: number
  /** Date of the service that it confirms. */
  readonly serviceDate?: IsoDate
}
export interface ExaminedFact extends Envelope {
  readonly kind: 'examined'
  readonly finding?: string
  readonly treatment?: string
  /** Date of a fixed-time service planned by the vet. */
  readonly serveOn?: IsoDate
  readonly session?: SessionName
}
export interface CalvingFact extends Envelope {
  readonly kind: 'calving'
  /** 1 (unassisted) to 5 (surgery). */
  readonly ease?: number
  /** Number of calves, 1-5; absent counts as 1. */
  readonly calves?: number
  /** How many of them were dead. */
  readonly dead?: number
  /** One letter a calf, F or M: `F`, `FM`. */
  readonly calfSex?: string
}
/** A pregnancy lost or aborted. */
interface LossFact extends Envelope {
  readonly kind: 'loss'
}
/** Do not breed. */
export interface BarFact extends Envelope {
  readonly kind: 'bar'
  readonly reason?: string
}
/** Do not breed is lifted. */
interface UnbarFact extends Envelope {
  readonly kind: 'unbar'
  readonly reason?: string
}
/** Left to the sweep bull by hand. */
export interface ToBullFact extends Envelope {
  readonly kind: 'to-bull'
}
export interface WithBullFact extends Envelope {
  readonly kind: 'with-bull'
  readonly bull?: string
}
export interface FromBullFact extends Envelope {
  readonly kind: 'from-bull'
  readonly bull?: string
}
/** Health hold, from its date until a day (included), or until further notice. */
interface HoldFact extends Envelope {
  readonly kind: 'hold'
  readonly until?: IsoDate
  readonly reason?: string
}
/** Body condition score, 1-5 in quarters. */
interface ScoreFact extends Envelope {
  readonly kind: 'score'
  readonly condition: number
}
interface DryFact extends Envelope {
  readonly kind: 'dry'
}
/** Moved to another calving block. */
export interface BlockFact extends Envelope {
  readonly kind: 'block'
  readonly block: string
}
export interface LeftFact extends Envelope {
  readonly kind: 'left'
  readonly reason?: string
}
interface NoteFact extends Envelope {
  readonly kind: 'note'
  readonly note: string
}
/** Voids an earlier fact, and (where it was wrong, not needless) names the one recorded in its place. */
export interface CorrectionFact extends Envelope {
  readonly kind: 'correction'
  readonly voids: string
  readonly with?: string
  readonly reason?: string
}

/** Facts that say what happened to one animal. */
export type AnimalFact =
  | HeatFact
  | LookedFact
  | ServiceFact
  | CheckFact
  | ExaminedFact
  | CalvingFact
  | LossFact
  | BarFact
  | UnbarFact
  | ToBullFact
  | WithBullFact
  | FromBullFact
  | HoldFact
  | ScoreFact
  | DryFact
  | BlockFact
  | LeftFact
  | NoteFact

/** Farm name, time zone and milkings. The latest one counts, whatever its date. */
export interface FarmFact extends Envelope {
  readonly kind: 'farm'
  readonly name: string
  /** IANA time zone, `Europe/Dublin`. */
  readonly zone: string
  /** One or two wall times in order, `["05:30", "15:30"]`. */
  readonly milkings: readonly string[]
}
/** Changes to the policy; settings not named keep their value. See policy.ts. */
export interface PolicyFact extends Envelope {
  readonly kind: 'policy'
  readonly set: Readonly<Record<string, string | number | boolean>>
}
/** One mating season of a block. Of two with the same block and mating start the latest counts. */
export interface SeasonFact extends Envelope {
  readonly kind: 'season'
  readonly block: string
  readonly matingStart: IsoDate
  /** Weeks of AI, 1-20. */
  readonly aiWeeks: number
  /** Weeks with the sweep bull, 0-20. */
  readonly bullWeeks: number
  readonly scanDates?: readonly IsoDate[]
}
/** An animal and what does not change from day to day. `about` is her id; the latest fact about her counts. */
export interface AnimalRecordFact extends Envelope {
  readonly kind: 'animal'
  /** The farm's number, unique among the animals. */
  readonly number: string
  readonly name?: string
  readonly officialId?: string
  readonly electronicId?: string
  readonly internationalId?: string
  readonly sex: 'F' | 'M'
  readonly born?: IsoDate
  readonly breed?: string
  /** Number or international ID of the parent; it need not be in the file. */
  readonly sire?: string
  readonly dam?: string
  readonly block?: string
  /** Calvings before the first calving fact; 0 is a maiden. */
  readonly lactation?: number
  /** A maiden old and heavy enough to be served; a bull that works on the farm. */
  readonly ready?: boolean
  readonly easyCalving?: boolean
  /** Days of gestation of a sire's calves, 260-300. */
  readonly gestationDays?: number
  /** Breeding group: her calves are meant as dairy replacements or as beef. */
  readonly plan?: 'dairy' | 'beef'
}
/** Straws of one sire, kind and batch in one place. */
export interface StrawLot {
  readonly sire: string
  readonly straw: StrawKind
  readonly batch?: string
  readonly flask?: string
  readonly canister?: string
}
/** Counted in the flask: from its date this is the number of the lot. Also tells what is known of the sire. */
export interface StockTakeFact extends Envelope, StrawLot {
  readonly kind: 'stock-take'
  readonly count: number
  readonly sireName?: string
  readonly breed?: string
  readonly volumeMl?: number
  readonly easyCalving?: boolean
  readonly gestationDays?: number
}
export interface DeliveryFact extends Envelope, StrawLot {
  readonly kind: 'delivery'
  readonly count: number
}
export interface SpoiledFact extends Envelope, StrawLot {
  readonly kind: 'spoiled'
  readonly count: number
}
/** Depth of liquid nitrogen in a flask, cm. */
export interface NitrogenFact extends Envelope {
  readonly kind: 'nitrogen'
  readonly flask?: string
  readonly depthCm: number
}

/** Facts that went to a file beside the herd when old seasons were closed; see herd/archive.ts. */
export interface ArchiveFact extends Envelope {
  readonly kind: 'archive'
  /** Every fact that went is dated before this day. Figures of seasons that began before it are in the file. */
  readonly before: IsoDate
  /** Name of the file, in the folder of the herd: the whole herd as it stood. */
  readonly file: string
  /** Ids of the facts that went: no copy of the herd brings them back. */
  readonly took: readonly string[]
}

/**
 * A result of a pregnancy check that could not be recorded as it was read (a number that no animal has, an animal that
 * was not awaited): kept until it is settled or dropped, when a correction voids it. Its date is that of the visit.
 */
export interface KeptResultFact extends Envelope {
  readonly kind: 'kept-result'
  /** The number as it was typed. */
  readonly number: string
  readonly method: CheckMethod
  readonly result: CheckResult
  /** Days, 20-290. */
  readonly foetalAge?: number
  /** 1-5. */
  readonly foetuses?: number
  /** Code of what spoke against it. */
  readonly why: string
}

/** Facts of the herd as a whole: `about` is `herd`, except for an animal's own record. */
export type HerdFact =
  | FarmFact
  | PolicyFact
  | SeasonFact
  | AnimalRecordFact
  | StockTakeFact
  | DeliveryFact
  | SpoiledFact
  | NitrogenFact
  | ArchiveFact
  | KeptResultFact

export type Fact = AnimalFact | HerdFact | CorrectionFact
export type FactKind = Fact['kind']

/** A fact before it is recorded: id, who and when are added by the shell that records it. */
export type NewFact<F extends Fact = Fact> = F extends Fact
  ? Omit<F, 'id' | 'at' | 'by' | 'action'> & { id?: string }
  : never

/** `about` of a fact that concerns the herd and no single animal. */
export const HERD = 'herd'
