/** The usual thing of a section: what one key records of the row pointed at, with sensible values. */
import type { NewFact } from '../breeding/facts.ts'
import type { Row } from '../breeding/list.ts'
import type { Reason } from '../breeding/sections.ts'
import { bullPicks } from './forms/bull.ts'
import type { FormName, Setting } from './forms/form.ts'
import { known } from './forms/reader.ts'
import { serviceDanger, strawPicks } from './forms/service.ts'

/** What the key does: records facts, asks first where there is a danger, or opens a form. */
type Usual = { readonly facts: readonly NewFact[]; readonly danger?: string } | { readonly form: FormName }

/** What a decision asks for: no danger is ticked away with one key. */
const careForms: Readonly<Partial<Record<Reason, FormName>>> = {
  'in-calf-heat': 'check',
  'served-in-calf': 'check',
  overdue: 'calving',
  'calving-unknown': 'calving',
  'unserved-heat': 'service',
  'no-service-fits': 'check',
}

/**
 * The usual thing for a row.
 *
 * @param row the row pointed at, @param setting as a form would be opened with
 * @example usualOf(watchRow, setting) // { facts: [{ kind: 'looked', about: cow, date: '2026-05-28' }] }
 */
export function usualOf(row: Row, setting: Setting): Usual {
  const { now, date, by, book } = setting
  const about = row.animal
  switch (row.section) {
    case 'take-care':
      return { form: careForms[row.reasons[0] as Reason] ?? 'note' }
    case 'serve':
    case 'second-service': {
      if (row.straw === undefined) return { form: 'service' }
      const { sire, straw } = row.straw
      const lot = strawPicks(setting).find((pick) => pick.fills.sire === sire && pick.fills.kind === straw)
      const batch = lot?.fills.batch
      const danger = serviceDanger({ sire, kind: straw }, setting)
      return {
        facts: [
          {
            kind: 'service',
            about,
            date,
            time: now.time,
            sire,
            straw,
            ...known({ batch: batch === '' ? undefined : batch, inseminator: by }),
          },
        ],
        ...known({ danger }),
      }
    }
    case 'repeat-heat-watch':
      return { facts: [{ kind: 'looked', about, date }] }
    case 'pregnancy-check':
      return {
        facts: [{ kind: 'check', about, date, method: book.policy.checkMethod, result: 'pregnant' }],
      }
    case 'sweep-bull': {
      const bull = bullPicks(book)[0]?.fills.bull
      return { facts: [{ kind: 'with-bull', about, date, ...known({ bull }) }] }
    }
    case 'no-heat-seen':
      return { facts: [{ kind: 'examined', about, date }] }
    case 'heat-record':
      return { facts: [{ kind: 'heat', about, date, time: now.time, how: 'standing', certainty: 'sure' }] }
  }
}

/** The form that changes a row's usual thing before it is recorded. */
export function formOf(row: Row): FormName {
  switch (row.section) {
    case 'take-care':
      return careForms[row.reasons[0] as Reason] ?? 'note'
    case 'serve':
    case 'second-service':
      return 'service'
    case 'repeat-heat-watch':
    case 'heat-record':
      return 'heat'
    case 'pregnancy-check':
      return 'check'
    case 'sweep-bull':
      return row.reasons[0] === 'window' ? 'bull-service' : 'with-bull'
    case 'no-heat-seen':
      return 'examined'
  }
}
