/** The state of the screen as a whole: the herd, the list shown, what lies on top of it. Never changed in place. */
import { type AnimalRecord, type HerdBook, openBook } from '../breeding/book.ts'
import { type Day, dayIso } from '../breeding/day.ts'
import { type Fact, HERD, type NewFact } from '../breeding/facts.ts'
import type { Row } from '../breeding/list.ts'
import { standingOn } from '../breeding/standing.ts'
import { foundByNumber } from './find.ts'
import type { OpenForm } from './forms/edit.ts'
import type { HerdSetting, Setting } from './forms/form.ts'
import { type History, historyOf } from './history.ts'
import { listNow } from './list-now.ts'
import { because, type Message } from './message.ts'
import type { Now } from './now.ts'
import { type Page, pageOf, rowAt, rowOf } from './page.ts'
import type { OwnPlace, Place } from './place.ts'
import { allSaved, type Saving } from './saving.ts'

/** What lies on top of a screen and takes the keys. */
export type Slip =
  | { readonly is: 'form'; readonly form: OpenForm }
  /** Facts that are recorded when confirmed. */
  | {
      readonly is: 'question'
      readonly code: string
      readonly facts: readonly NewFact[]
      readonly said: Message
      /** The screen shown as it is once they are recorded, where that is another. */
      readonly after?: OwnPlace
    }
  /** What can be recorded about her. */
  | { readonly is: 'menu' }
  /** `wrong`: code of what is the matter with the day typed. */
  | { readonly is: 'day'; readonly text: string; readonly wrong?: 'no-date' | 'move-outside-season' }
  /** `fresh`: the first character typed replaces what stands there. */
  | { readonly is: 'initials'; readonly text: string; readonly fresh: boolean }
  /** Cautions of the day in full, once a day, and who is recording. */
  | { readonly is: 'opening'; readonly text: string; readonly fresh: boolean; readonly top: number }
  /** Facts are not saved: leave all the same? */
  | { readonly is: 'leaving' }
  /** An older copy of the herd stands in the place of the file: save over it? */
  | { readonly is: 'older' }
  /** Where to save a copy of the whole herd. */
  | { readonly is: 'copy'; readonly text: string }
  /** All that was said, where its lines are too short. */
  | { readonly is: 'notice'; readonly top: number }
  | { readonly is: 'search'; readonly text: string; readonly at: number }
  /** Which screen to go to. */
  | { readonly is: 'go' }

export interface Desk {
  /** Every fact in order of recording. */
  readonly log: readonly Fact[]
  readonly book: HerdBook
  readonly history: History
  /** Facts of the log that the list shows as ticks, and that are not in the book and the history yet. */
  readonly unsettled: readonly Fact[]
  readonly now: Now
  readonly saving: Saving
  /** Initials of who records. */
  readonly by: string | undefined
  readonly page: Page
  /** The screens that lie open, the one shown last; the first is the morning list. */
  readonly places: readonly Place[]
  readonly slip: Slip | undefined
  /** Digits of a number that is being typed. */
  readonly typed: string
  readonly said: Message | undefined
  /** The user has left, and what was recorded is still being saved. */
  readonly leaving?: true
  /** The book that was reckoned last; see reckoning.ts. */
  readonly reckoned?: HerdBook
}

/**
 * The desk as it is when the program opens: the morning list of today.
 *
 * @param log every fact of the herd in order of recording, @param now the moment of opening
 * @param by initials, where they are known
 * @example openDesk(log, { day: isoDay('2026-05-28'), time: '05:15' }, undefined).page.list.day
 */
export function openDesk(log: readonly Fact[], now: Now, by: string | undefined): Desk {
  const book = openBook(log)
  return {
    log,
    book,
    history: historyOf(log),
    unsettled: [],
    now,
    saving: allSaved,
    by,
    page: pageOf(listNow(book, now.day), book, undefined),
    places: [{ at: 'morning-list' }],
    slip: firstSlip(log, now, by),
    typed: '',
    said: undefined,
  }
}

/**
 * What lies on the list when the program opens: the cautions in full, once a day; later that day who is recording,
 * where that is not known.
 */
function firstSlip(log: readonly Fact[], now: Now, by: string | undefined): Slip | undefined {
  const last = log.findLast((fact) => fact.by !== undefined && fact.action !== undefined)?.by
  const text = by ?? last ?? ''
  const today = dayIso(now.day)
  const begun = log.some((fact) => fact.action !== undefined && fact.about !== HERD && fact.date === today)
  if (!begun) return { is: 'opening', text, fresh: true, top: 0 }
  return by === undefined ? { is: 'initials', text, fresh: true } : undefined
}

/** The desk with the list of another day. */
export const withDay = (desk: Desk, day: Day): Desk => ({
  ...desk,
  page: pageOf(listNow(desk.book, day), desk.book, { ...desk.page, items: [], pointer: 0 }),
})

/** Whether the list shown is today's. */
export const showsToday = (desk: Desk): boolean => desk.page.list.day === desk.now.day

export const placeOf = (desk: Desk): Place => desk.places[desk.places.length - 1] ?? { at: 'morning-list' }

/** The animal that a key is about, and her row on the list shown; or why there is none. */
export type Subject =
  | { readonly animal: AnimalRecord; readonly row: Row | undefined; readonly whyNot?: undefined }
  | { readonly whyNot: Message }

/** The number being typed, else the animal whose page is open, else the row of the list pointed at; see subject.ts. */
export function subjectOnList(desk: Desk): Subject {
  if (desk.typed !== '') {
    const found = foundByNumber(desk.book, desk.typed)
    if (found.animal === undefined)
      return {
        whyNot: because(found.many === 0 ? 'no-such-number' : 'many-such-tags', {
          typed: desk.typed,
          many: found.many,
        }),
      }
    return subjectFor(desk, found.animal)
  }
  const place = placeOf(desk)
  if (place.at === 'animal') {
    const animal = desk.book.animals.get(place.animal)
    return animal === undefined ? { whyNot: because('no-animal-here') } : subjectFor(desk, animal)
  }
  const row = rowAt(desk.page)
  const item = desk.page.items[desk.page.pointer]
  const id = row?.animal ?? (item?.is === 'fact' ? item.fact.about : undefined)
  const animal = id === undefined ? undefined : desk.book.animals.get(id)
  return animal === undefined ? { whyNot: because('no-animal-here') } : subjectFor(desk, animal)
}

/** An animal as the one that a key is about. */
export const subjectFor = (desk: Desk, animal: AnimalRecord): Subject => ({
  animal,
  row: rowOf(desk.page, animal.id),
})

/** The date that facts are meant for: the day shown, today at the latest. */
export const dateFor = (desk: Desk): string => dayIso(Math.min(desk.page.list.day, desk.now.day) as Day)

/** What forms about the herd as a whole are told. */
export const herdSettingOf = (desk: Desk): HerdSetting => ({
  book: desk.book,
  now: desk.now,
  by: desk.by,
  date: dateFor(desk),
})

/** What forms and the usual thing are told about an animal. */
export const settingOf = (desk: Desk, animal: AnimalRecord, row: Row | undefined): Setting => ({
  ...herdSettingOf(desk),
  animal,
  row,
  rows: desk.page.list.rows,
  standing: standingOn(desk.book, animal, desk.page.list.day),
})
