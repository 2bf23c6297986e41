/** Reads the fields of a form: each value checked, what is wrong kept by field. */
import { type Day, dayIso, plusDays, plusYears, readDay } from '../../breeding/day.ts'
import type { NewFact } from '../../breeding/facts.ts'
import { fault, type Problem } from '../../breeding/problem.ts'
import type { HerdSetting, Reading, Setting, Values } from './form.ts'

const months = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
]
/** Text of one field, characters. */
const LONGEST = 500
/** Nothing a herd still asks about is older, or planned further ahead: such a year is a slip of the hand. */
const YEARS_BACK = 50
const YEARS_AHEAD = 5
/** Controls and line separators: nobody types them, a paste may bring them. */
const hidden = /[\p{Cc}\u2028\u2029]/u

/**
 * A day as people type it: `2026-05-28`, `28 May`, `28 may 2026`, `today`, `yesterday`. Digits alone with a slash
 * are not read: day and month could be either.
 *
 * @param today decides the year where none is typed: the last such day that is not after today
 * @example readTypedDay('28 May', isoDay('2026-06-01')) // the day of 2026-05-28
 */
export function readTypedDay(text: string, today: Day, ahead = false): Day | undefined {
  const typed = text.trim().toLowerCase()
  if (typed === 'today') return today
  if (typed === 'yesterday') return plusDays(today, -1)
  if (typed === 'tomorrow') return plusDays(today, 1)
  const iso = readDay(typed)
  if (iso !== undefined) return iso
  const [, dayText, monthText, yearText] = /^(\d{1,2})\.? *([a-z]{3,9})\.?(?: +(\d{4}))?$/.exec(typed) ?? []
  const month = monthText === undefined ? -1 : months.findIndex((name) => name.startsWith(monthText))
  if (dayText === undefined || month < 0) return undefined
  const inYear = (year: number): Day | undefined =>
    readDay([year, String(month + 1).padStart(2, '0'), dayText.padStart(2, '0')].join('-'))
  if (yearText !== undefined) return inYear(Number(yearText))
  const year = Number(dayIso(today).slice(0, 4))
  const found = [year + 1, year, year - 1].map(inYear).filter((day) => day !== undefined)
  return ahead
    ? found.toReversed().find((day) => day >= today)
    : (found.find((day) => day <= today) ?? inYear(year))
}

/** A time as people type it: `05:41`, `541`, `0541`, `5:41`, `morning`, `evening`. */
export function readTypedTime(text: string): string | undefined {
  const typed = text.trim().toLowerCase()
  for (const session of ['morning', 'evening']) if (typed !== '' && session.startsWith(typed)) return session
  const [, hours, minutes] = /^(\d{1,2})[:.]?(\d{2})$/.exec(typed) ?? []
  if (hours === undefined || minutes === undefined || Number(hours) > 23 || Number(minutes) > 59)
    return undefined
  return `${hours.padStart(2, '0')}:${minutes}`
}

/** Reads one form; the first problem of a field stays. */
export class FieldReader {
  readonly #values: Values
  readonly #setting: HerdSetting & Partial<Pick<Setting, 'animal'>>
  readonly #wrong: Record<string, Problem> = {}

  constructor(values: Values, setting: HerdSetting & Partial<Pick<Setting, 'animal'>>) {
    this.#values = values
    this.#setting = setting
  }

  /** Says what is wrong with a field. */
  refuse(field: string, code: string, values?: Problem['values']): void {
    this.#wrong[field] ??= fault(code, field, values)
  }

  /** The text of a field without spaces around it; undefined where it is empty. */
  text(field: string, required = false): string | undefined {
    const text = (this.#values[field] ?? '').trim()
    if (text.length > LONGEST) this.refuse(field, 'form-too-long', { most: LONGEST, have: text.length })
    if (hidden.test(text)) this.refuse(field, 'form-hidden')
    if (text === '' && required) this.refuse(field, 'form-missing')
    return text === '' ? undefined : text
  }

  /** A whole number, or one in steps. */
  number(field: string, min: number, max: number, step = 1): number | undefined {
    const text = this.text(field)
    if (text === undefined) return undefined
    const value = /^-?\d+(?:[.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : Number.NaN
    if (Number.isNaN(value)) this.refuse(field, 'form-not-a-number', { value: text, min, max })
    else if (value < min || value > max) this.refuse(field, 'form-out-of-range', { value: text, min, max })
    else if (Math.abs(Math.round(value / step) - value / step) > 1e-6)
      this.refuse(field, step === 1 ? 'form-whole' : 'form-step', { value: text, step })
    return value
  }

  /** A day that has come: not after today; of an animal, not before her birth. */
  date(field = 'date'): string {
    const text = this.text(field, true)
    const { now, animal } = this.#setting
    const day = text === undefined ? undefined : readTypedDay(text, now.day)
    if (text !== undefined && day === undefined) this.refuse(field, 'form-not-a-date', { value: text })
    if (day !== undefined && day > now.day) this.refuse(field, 'form-future', { date: dayIso(day) })
    const born = animal?.born
    if (day !== undefined && born !== undefined && day < born)
      this.refuse(field, 'form-before-birth', { date: dayIso(day), born: dayIso(born) })
    this.#notTooEarly(field, day)
    return day === undefined ? '' : dayIso(day)
  }

  #notTooEarly(field: string, day: Day | undefined): void {
    if (day !== undefined && day < plusYears(this.#setting.now.day, -YEARS_BACK))
      this.refuse(field, 'form-too-early', { years: YEARS_BACK })
  }

  /** A day from another on, that may lie ahead, by five years at most. */
  dateFrom(field: string, from: string): string | undefined {
    const text = this.text(field)
    if (text === undefined) return undefined
    const day = readTypedDay(text, this.#setting.now.day, true)
    if (day === undefined) this.refuse(field, 'form-not-a-date', { value: text })
    else if (from !== '' && dayIso(day) < from) this.refuse(field, 'form-before', { date: dayIso(day), from })
    else if (day > plusYears(this.#setting.now.day, YEARS_AHEAD))
      this.refuse(field, 'form-too-far', { years: YEARS_AHEAD })
    this.#notTooEarly(field, day)
    return day === undefined ? undefined : dayIso(day)
  }

  /** A time of that day; today's not yet to come. */
  time(date: string, field = 'time'): string | undefined {
    const text = this.text(field)
    if (text === undefined) return undefined
    const time = readTypedTime(text)
    const { now } = this.#setting
    if (time === undefined) this.refuse(field, 'form-not-a-time', { value: text })
    else if (date === dayIso(now.day) && /^\d/.test(time) && time > now.time)
      this.refuse(field, 'form-time-ahead', { value: time, now: now.time })
    return time
  }

  /** One of the choices. */
  choice<C extends string>(field: string, choices: readonly C[], required = false): C | undefined {
    const text = this.text(field, required)
    const chosen = choices.find((choice) => choice === text)
    if (text !== undefined && chosen === undefined)
      this.refuse(field, 'form-not-a-choice', { value: text, choices: choices.join(', ') })
    return chosen
  }

  /** The facts, or what is wrong. */
  result(facts: () => readonly NewFact[]): Reading {
    return Object.keys(this.#wrong).length > 0 ? { wrong: this.#wrong } : { facts: facts() }
  }
}

/** Fields that have a value; the rest is left out of a fact. */
export const known = <T extends Record<string, unknown>>(fields: T): { [K in keyof T]?: NonNullable<T[K]> } =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: NonNullable<T[K]>
  }
