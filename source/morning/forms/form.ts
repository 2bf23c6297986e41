/** What a form is: fields with their text, checked as a whole and turned into facts. Data; no words, no screen. */
import type { AnimalRecord, HerdBook } from '../../breeding/book.ts'
import type { NewFact } from '../../breeding/facts.ts'
import type { Row } from '../../breeding/list.ts'
import type { Problem } from '../../breeding/problem.ts'
import type { Standing } from '../../breeding/standing.ts'
import type { StrawReason } from '../../breeding/straws/reason.ts'
import type { Now } from '../now.ts'

/** Kinds of forms: one for each kind of fact about an animal that is recorded by hand. */
export const formNames = [
  'heat',
  'service',
  'check',
  'examined',
  'hold',
  'to-bull',
  'note',
  'block',
  'bar',
  'unbar',
  'calving',
  'loss',
  'left',
  'score',
  'dry',
  'with-bull',
  'from-bull',
  'bull-service',
] as const
export type FormName = (typeof formNames)[number]

/** Kinds of forms about the herd as a whole. */
export const herdFormNames = [
  'delivery',
  'stock-take',
  'spoiled',
  'nitrogen',
  'farm',
  'season',
  'setting',
  'record',
  'new-herd',
  'new-from-tables',
] as const
export type HerdFormName = (typeof herdFormNames)[number]
export type AnyFormName = FormName | HerdFormName

/** Text of each field by its name; empty where nothing is known. */
export type Values = Readonly<Record<string, string>>

/** `pick`: text with suggestions to choose from. */
type Input = 'date' | 'time' | 'choice' | 'pick' | 'number' | 'text'

export interface Field {
  readonly name: string
  readonly input: Input
  /** Of a choice, in order; an empty text stands for "not known". */
  readonly choices?: readonly string[]
  /** Of a pick: what may be chosen, the best first. */
  readonly picks?: readonly Pick[]
  /** Of a pick: something new may be typed, so that nothing is completed; only what is typed whole is recognised. */
  readonly open?: boolean
  readonly optional?: boolean
  /** Of a date: it may lie ahead, so that a day without a year is the next one. */
  readonly ahead?: boolean
}

/** A suggestion: choosing it fills these fields. */
export interface Pick {
  readonly fills: Values
  /** Of straws: how many are left, how inbred her calf would be (share 0-1), why it stands where it stands. */
  readonly left?: number
  readonly inbreeding?: number
  readonly reasons?: readonly StrawReason[]
}

/** What every form knows of the herd while it is open. */
export interface HerdSetting {
  readonly book: HerdBook
  readonly now: Now
  readonly by: string | undefined
  /** The day that the facts are meant for unless changed: the day shown, today at the latest. */
  readonly date: string
  /** What is changed, by its id or name; absent: something new. */
  readonly about?: string
}

/** What a form about an animal knows besides. */
export interface Setting extends HerdSetting {
  readonly animal: AnimalRecord
  /** Her row on the list shown. */
  readonly row: Row | undefined
  /** The rows of that list. */
  readonly rows: readonly Row[]
  /** Her standing on the day shown. */
  readonly standing: Standing
}

/** What the values come to: facts, or what is wrong with which field. */
export type Reading =
  | { readonly facts: readonly NewFact[]; readonly wrong?: undefined }
  | { readonly wrong: Readonly<Record<string, Problem>> }

/** A form: about an animal, or about the herd as a whole. */
export interface Form<S extends HerdSetting = Setting, N extends AnyFormName = FormName> {
  readonly name: N
  readonly fields: (setting: S) => readonly Field[]
  /** What stands in the fields when the form opens. */
  readonly begin: (setting: S) => Values
  readonly read: (values: Values, setting: S) => Reading
  /** What else stands in the form once a field was changed, where one follows from the other. */
  readonly follow?: (changed: string, values: Values, setting: S) => Values
  /** Code of a danger that must be confirmed before these facts are recorded. */
  readonly danger?: (values: Values, setting: S) => string | undefined
}
export type HerdForm = Form<HerdSetting, HerdFormName>
