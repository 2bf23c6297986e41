/** Form of a season: a new one, or one that is changed: then the old one is voided by the same action. */
import {
  calvingStartFor,
  type Day,
  dayIso,
  isoDay,
  matingStartFor,
  plusDays,
  readDay,
} from '../../breeding/day.ts'
import { HERD, type NewFact, type SeasonFact } from '../../breeding/facts.ts'
import { CLOSING_DAYS, dayOfSeason, PRE_MATING, type Season } from '../../breeding/season.ts'
import { voiding } from '../history.ts'
import { blockPicks } from './blocks.ts'
import type { HerdForm, HerdSetting, Values } from './form.ts'
import { FieldReader, readTypedDay } from './reader.ts'

/** Weeks of AI and of the bull that a new season begins with. */
const USUAL_AI_WEEKS = 6
const USUAL_BULL_WEEKS = 3
const MOST_WEEKS = 20
/** Days from the mating start within which its visits lie: the next season begins then. */
const VISITS_UNTIL = 365

/** The season fact that is changed; undefined for a new season. */
const changedFact = ({ book, about }: HerdSetting): SeasonFact | undefined =>
  book.live.find((fact): fact is SeasonFact => fact.kind === 'season' && fact.id === about)

const plannedStart = (setting: HerdSetting, matingStart: Day): string =>
  dayIso(calvingStartFor(matingStart, setting.book.policy.defaultGestation))

export const seasonForm: HerdForm = {
  name: 'season',
  fields: ({ book }) => [
    {
      name: 'block',
      input: 'pick',
      picks: blockPicks(book),
      open: true,
    },
    { name: 'mating-start', input: 'date', ahead: true },
    { name: 'calving-start', input: 'date', optional: true, ahead: true },
    { name: 'ai-weeks', input: 'number' },
    { name: 'bull-weeks', input: 'number' },
    { name: 'scan-dates', input: 'text', optional: true },
  ],
  begin: (setting) => {
    const fact = changedFact(setting)
    if (fact === undefined) {
      return {
        block: '',
        'mating-start': '',
        'calving-start': '',
        'ai-weeks': String(USUAL_AI_WEEKS),
        'bull-weeks': String(USUAL_BULL_WEEKS),
        'scan-dates': '',
      }
    }
    return {
      block: fact.block,
      'mating-start': fact.matingStart,
      'calving-start': plannedStart(setting, isoDay(fact.matingStart)),
      'ai-weeks': String(fact.aiWeeks),
      'bull-weeks': String(fact.bullWeeks),
      'scan-dates': (fact.scanDates ?? []).join(' '),
    }
  },
  follow: (changed, values, { book, now }) => {
    const typed = readTypedDay(values[changed] ?? '', now.day, true)
    if (typed === undefined) return values
    const { defaultGestation } = book.policy
    if (changed === 'mating-start')
      return { ...values, 'calving-start': dayIso(calvingStartFor(typed, defaultGestation)) }
    return changed === 'calving-start'
      ? { ...values, 'mating-start': dayIso(matingStartFor(typed, defaultGestation)) }
      : values
  },
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const fact = changedFact(setting)
    const block = read.text('block', true) ?? ''
    const matingStart = readMatingStart(read, values, setting, fact)
    read.text('ai-weeks', true)
    read.text('bull-weeks', true)
    const aiWeeks = read.number('ai-weeks', 1, MOST_WEEKS) ?? 0
    const bullWeeks = read.number('bull-weeks', 0, MOST_WEEKS) ?? 0
    const scanDates = readScanDates(read, setting, matingStart)
    const clash = clashing(setting, { block, matingStart, aiWeeks, bullWeeks }, fact)
    if (clash !== undefined) {
      read.refuse('mating-start', 'form-season-overlaps', { start: dayIso(clash.matingStart) })
    }
    return read.result((): readonly NewFact[] => [
      ...(fact === undefined ? [] : [voiding(fact, 'season changed')]),
      {
        kind: 'season',
        about: HERD,
        date: dayIso(setting.now.day),
        block,
        matingStart,
        aiWeeks,
        bullWeeks,
        ...(scanDates.length === 0 ? {} : { scanDates }),
      },
    ])
  },
}

/** The mating start that was typed; where only the planned calving start was changed, the one that follows from it. */
function readMatingStart(
  read: FieldReader,
  values: Values,
  setting: HerdSetting,
  fact: SeasonFact | undefined,
): string {
  const typed = read.dateFrom('mating-start', '')
  const planned = read.dateFrom('calving-start', '')
  const before = fact === undefined ? undefined : plannedStart(setting, isoDay(fact.matingStart))
  const untouched = typed === undefined || typed === fact?.matingStart
  if (planned !== undefined && planned !== before && untouched) {
    return dayIso(matingStartFor(isoDay(planned), setting.book.policy.defaultGestation))
  }
  if (typed === undefined && (values['mating-start'] ?? '').trim() === '') {
    read.refuse('mating-start', 'form-mating-start')
  }
  return typed ?? ''
}

/** Days with a space or comma between, written 2026-06-10 or 10 June. */
function readScanDates(read: FieldReader, { now }: HerdSetting, matingStart: string): readonly string[] {
  const text = read.text('scan-dates')
  if (text === undefined) return []
  const start = readDay(matingStart)
  const days = text
    .split(/\s*[,;]\s*|\s+(?=\d{4}-|\d{1,2} [a-z])/i)
    .filter((part) => part !== '')
    .map((part) => ({ part, day: readTypedDay(part, now.day, true) }))
  for (const { part, day } of days) {
    if (day === undefined) read.refuse('scan-dates', 'form-not-a-visit', { value: part })
    else if (start !== undefined && (day < start + PRE_MATING || day > start + VISITS_UNTIL))
      read.refuse('scan-dates', 'form-visit-outside', {
        date: dayIso(day),
        from: dayIso(plusDays(start, PRE_MATING)),
        to: dayIso(plusDays(start, VISITS_UNTIL)),
      })
  }
  return [...new Set(days.flatMap(({ day }) => (day === undefined ? [] : [dayIso(day)])))].sort()
}

interface Planned {
  readonly block: string
  readonly matingStart: string
  readonly aiWeeks: number
  readonly bullWeeks: number
}

/** Another season of the block that would be live at the same time. */
function clashing(
  setting: HerdSetting,
  planned: Planned,
  changed: SeasonFact | undefined,
): Season | undefined {
  const start = readDay(planned.matingStart)
  if (start === undefined) return undefined
  const end = start + 7 * (planned.aiWeeks + planned.bullWeeks) - 1 + CLOSING_DAYS
  return setting.book.seasons
    .get(planned.block)
    ?.find(
      (season) =>
        season.factId !== changed?.id &&
        start + PRE_MATING <= dayOfSeason(season, season.bullEnd + CLOSING_DAYS) &&
        dayOfSeason(season, PRE_MATING) <= end,
    )
}
