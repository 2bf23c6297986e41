/** The first screen, where no herd is named: the sample herd, a new herd, or a new herd from tables. Pure. */
import { openBook } from '../breeding/book.ts'
import { dayIso } from '../breeding/day.ts'
import type { NewFact } from '../breeding/facts.ts'
import { accept, type OpenForm, openHerdForm, rubIn, toField, turn, typeInto } from './forms/edit.ts'
import type { Values } from './forms/form.ts'
import type { Now } from './now.ts'

export const welcomeChoices = ['sample', 'new-herd', 'new-from-tables'] as const
export type WelcomeChoice = (typeof welcomeChoices)[number]

/** What the user wishes to begin with. */
export type Wish =
  | { readonly is: 'sample' }
  /** The farm as the form read it, and what else it holds: the file, the tables. */
  | { readonly is: 'herd'; readonly farm: NewFact; readonly values: Values; readonly tables: boolean }

export interface Welcome {
  readonly now: Now
  /** Time zone of this computer, to begin with. */
  readonly zone: string
  /** Tables that lie in the folder, by the name of their field: the form begins with them. */
  readonly tables: Values
  readonly pointer: number
  readonly form: OpenForm | undefined
  /** What tables would record, line by line; Enter records it. */
  readonly report: readonly string[] | undefined
  /** First line of the report that is shown. */
  readonly top: number
  /** Sentences that say what went wrong. */
  readonly wrong: readonly string[]
}

export type WelcomeAction =
  | { readonly do: 'move'; readonly by: number; readonly most: number }
  | { readonly do: 'choose' }
  | { readonly do: 'put'; readonly text: string }
  | { readonly do: 'rub' }
  | { readonly do: 'field'; readonly by: 1 | -1 }
  | { readonly do: 'turn'; readonly by: 1 | -1 }
  | { readonly do: 'cancel' }
  | { readonly do: 'wrong'; readonly sentences: readonly string[] }
  | { readonly do: 'report'; readonly lines: readonly string[] }

interface WelcomeStep {
  readonly welcome: Welcome
  /** To begin with, or to try first where tables are read. */
  readonly wish?: Wish
  /** The report was agreed to. */
  readonly record?: true
}

export const openWelcome = (now: Now, zone: string, tables: Values = {}): Welcome => ({
  now,
  zone,
  tables,
  pointer: 0,
  form: undefined,
  report: undefined,
  top: 0,
  wrong: [],
})

/**
 * What an action does.
 *
 * @example actWelcome(openWelcome(now, 'Europe/Dublin'), { do: 'choose' }).wish // { is: 'sample' }
 */
export function actWelcome(welcome: Welcome, action: WelcomeAction): WelcomeStep {
  const { form } = welcome
  const withForm = (changed: OpenForm): WelcomeStep => ({ welcome: { ...welcome, form: changed, wrong: [] } })
  switch (action.do) {
    case 'move': {
      const at = welcome.report === undefined ? 'pointer' : 'top'
      const most = welcome.report === undefined ? welcomeChoices.length - 1 : action.most
      return { welcome: { ...welcome, [at]: Math.max(0, Math.min(most, welcome[at] + action.by)) } }
    }
    case 'put':
      return form === undefined ? { welcome } : withForm(typeInto(form, action.text))
    case 'rub':
      return form === undefined ? { welcome } : withForm(rubIn(form))
    case 'field':
      return form === undefined ? { welcome } : withForm(toField(form, action.by))
    case 'turn':
      return form === undefined ? { welcome } : withForm(turn(form, action.by))
    case 'cancel':
      return {
        welcome:
          welcome.report === undefined
            ? { ...welcome, form: undefined, wrong: [] }
            : { ...welcome, report: undefined, top: 0 },
      }
    case 'wrong':
      return { welcome: { ...welcome, wrong: action.sentences } }
    case 'report':
      return { welcome: { ...welcome, report: action.lines, top: 0, wrong: [] } }
    case 'choose':
      return chosen(welcome)
  }
}

function chosen(welcome: Welcome): WelcomeStep {
  if (welcome.report !== undefined) return { welcome, record: true }
  if (welcome.form !== undefined) {
    const outcome = accept(welcome.form)
    if ('form' in outcome) return { welcome: { ...welcome, form: outcome.form } }
    const { values, name } = welcome.form
    const [farm] = outcome.facts
    return farm === undefined
      ? { welcome }
      : { welcome, wish: { is: 'herd', farm, values, tables: name === 'new-from-tables' } }
  }
  const choice = welcomeChoices[welcome.pointer] ?? 'sample'
  if (choice === 'sample') return { welcome, wish: { is: 'sample' } }
  const { now } = welcome
  const setting = { book: openBook([]), now, by: undefined, date: dayIso(now.day) }
  const values = { zone: welcome.zone, ...(choice === 'new-from-tables' ? welcome.tables : {}) }
  return { welcome: { ...welcome, form: openHerdForm(choice, setting, values, 'farm-name'), wrong: [] } }
}
