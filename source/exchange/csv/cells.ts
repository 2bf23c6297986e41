/** What can stand in a cell: how each sort of value is read and written. Empty cells never come here. */
import type { Problem } from '../../breeding/problem.ts'
import { type DateForm, dateForms, isOtherForm, readDate } from './date-forms.ts'

/** Longest text of one cell, characters; the herd file takes no longer one. */
export const textLimit = 10_000

/** The value of a cell, or the code of what is wrong and the values of its sentence. */
export type Read<T> =
  | { readonly value: T }
  | { readonly refused: string; readonly values: NonNullable<Problem['values']> }

export interface Cell<T = unknown> {
  /**
   * @param text not empty
   * @param form how dates are written beside YYYY-MM-DD
   */
  read(text: string, form?: DateForm): Read<T>
  write(value: T): string
  /** The cell holds a date, or dates. */
  readonly isDate?: true
}

const refused = (code: string, values: NonNullable<Problem['values']>): Read<never> => ({
  refused: code,
  values,
})

/** Words of the farm's own, kept as they are: notes, findings, reasons. */
export const text: Cell<string> = {
  read: (cell) => (cell.length > textLimit ? refused('cell-long', { limit: textLimit }) : { value: cell }),
  write: (value) => value,
}

/** A number of an animal, a code, a name: spaces around it do not count. */
export const word: Cell<string> = {
  read: (cell) => text.read(cell.trim()),
  write: (value) => value,
}

/** One of some words; capitals and spaces do not matter (`To bull` is `to-bull`). */
export function choice<T extends string>(choices: readonly T[]): Cell<T> {
  return {
    read: (cell) => {
      const plain = cell
        .trim()
        .toLowerCase()
        .replace(/[\s_]+/g, '-')
      const found = choices.find((each) => each.toLowerCase() === plain)
      return found === undefined
        ? refused('cell-choice', { value: cell, choices: choices.join(', ') })
        : { value: found }
    },
    write: (value) => value,
  }
}

/** A whole number from..to. */
export function whole(from: number, to: number): Cell<number> {
  return {
    read: (cell) => {
      const value = /^\d{1,9}$/.test(cell.trim()) ? Number(cell) : Number.NaN
      return value >= from && value <= to ? { value } : refused('cell-whole', { value: cell, from, to })
    },
    write: String,
  }
}

/** A number from..to in steps; `3,25` is understood as `3.25`. */
export function decimal(from: number, to: number, step?: number): Cell<number> {
  return {
    read: (cell) => {
      const plain = cell.trim().replace(',', '.')
      const value = /^\d{1,9}(\.\d{1,17})?$/.test(plain) ? Number(plain) : Number.NaN
      const fits = value >= from && value <= to && (step === undefined || Number.isInteger(value / step))
      if (fits) return { value }
      return step === undefined
        ? refused('cell-decimal', { value: cell, from, to })
        : refused('cell-steps', { value: cell, from, to, step })
    },
    write: String,
  }
}

const yesWords = ['yes', 'y', 'true', '1']
const noWords = ['no', 'n', 'false', '0']

export const yesNo: Cell<boolean> = {
  read: (cell) => {
    const plain = cell.trim().toLowerCase()
    if (yesWords.includes(plain)) return { value: true }
    return noWords.includes(plain) ? { value: false } : refused('cell-yes-no', { value: cell })
  },
  write: (value) => (value ? 'yes' : 'no'),
}

/** What spreadsheets put behind a date that has no time. */
const midnight = /[ T]0?0:00(:00(\.0+)?)?$/

/** A date of the calendar, with a midnight behind it or without. Another form than YYYY-MM-DD is offered with what it would mean. */
export const date: Cell<string> = {
  read: (cell, form) => {
    const plain = cell.trim().replace(midnight, '')
    const value = readDate(plain, form)
    if (value !== undefined) return { value }
    if (form !== undefined || !isOtherForm(plain)) return refused('cell-date', { value: cell })
    const [dayFirst, monthFirst] = dateForms.map((each) => readDate(plain, each) ?? '')
    return dayFirst === '' && monthFirst === ''
      ? refused('cell-date', { value: cell })
      : refused('cell-date-form', { value: cell, dayFirst: dayFirst ?? '', monthFirst: monthFirst ?? '' })
  },
  write: (value) => value,
  isDate: true,
}

/** Dates with spaces between them. */
export const dates: Cell<readonly string[]> = {
  read: (cell, form) => {
    const found: string[] = []
    for (const each of cell.trim().split(/\s+/)) {
      const read = date.read(each, form)
      if (!('value' in read)) return read
      found.push(read.value)
    }
    return { value: found }
  },
  write: (value) => value.join(' '),
  isDate: true,
}

/** `HH:MM`, `morning` or `evening`; `5:30` is understood as `05:30`. */
export const timeOfDay: Cell<string> = {
  read: (cell) => {
    const plain = cell.trim().toLowerCase()
    const value = /^\d:/.test(plain) ? `0${plain}` : plain
    return /^(([01]\d|2[0-3]):[0-5]\d|morning|evening)$/.test(value)
      ? { value }
      : refused('cell-time', { value: cell })
  },
  write: (value) => value,
}

/** Sexes of the calves, a letter each: `F`, `FM`. */
export const calfSexes: Cell<string> = {
  read: (cell) => {
    const value = cell.trim().toUpperCase()
    return /^[FM]{1,5}$/.test(value) ? { value } : refused('cell-calf-sex', { value: cell })
  },
  write: (value) => value,
}
