/** A form as lines: one for each field, the field that keys go to marked, what is wrong below it. */
import { isoDay, readDay } from '../../breeding/day.ts'
import { settingOf } from '../../breeding/policy.ts'
import { volumeOf } from '../../breeding/straws/stock.ts'
import { thawingCard } from '../../breeding/straws/thawing.ts'
import type { Desk } from '../../morning/desk.ts'
import { type OpenForm, pickOf } from '../../morning/forms/edit.ts'
import type { Field } from '../../morning/forms/form.ts'
import { isForHerd } from '../../morning/forms/forms.ts'
import { readTypedDay } from '../../morning/forms/reader.ts'
import { strawKinds } from '../../morning/forms/service.ts'
import { cautions } from '../../words/cautions.ts'
import { dateInWords, shortDate } from '../../words/dates.ts'
import { factWords } from '../../words/facts.ts'
import { safeText } from '../../words/safe.ts'
import { strawWhy, thawingLine } from '../../words/straws.ts'
import { animalTitle } from '../frame/animal-title.ts'
import { type Bit, bit, type Line } from '../line.tsx'
import { windowFrom } from '../size.ts'
import type { Theme } from '../theme.ts'
import { cut, endOf, fill, wrap } from '../width.ts'
import { cautionOfForm } from '../words/cautions.ts'
import { choiceNames, fieldNames, formTitles, formWords, questionWords, wrongWord } from '../words/forms.ts'
import { rangeWords, settingWords, unitWords, valueWords } from '../words/set-up.ts'
import { title } from './title.ts'

const LABEL = 15
const MOST_WHY = 2
const MOST_WRONG = 3

/** The lines of an open form; with less room than it needs, a window around the field that keys go to. */
export function formLines(
  desk: Desk,
  form: OpenForm,
  cells: number,
  most: number,
  theme: Theme,
): readonly Line[] {
  const about = isForHerd(form) ? herdAbout(form) : `: ${animalTitle(desk, form.setting.animal)}`
  const head = title(`${formTitles[form.name]}${about}`, cells, theme)
  const fields = form.fields.flatMap((field, index) =>
    fieldLines(form, field, index === form.at, cells, theme),
  )
  const foot = footLines(form, cells, theme)
  const was = wasLines(form, cells, theme)
  const fit = most - 1 - was.length - fields.length - foot.length
  const why = strawWhyLines(form, cells, theme, fit)
  const room = Math.max(1, most - 1 - was.length - foot.length - why.length)
  const top = windowFrom(
    0,
    fields.findIndex((line) => line.at),
    fields.length,
    room,
  )
  return [head, ...was, ...fields.slice(top, top + room).map((one) => one.line), ...why, ...foot]
}

const settingIn = ({ name, setting }: OpenForm) =>
  name === 'setting' && 'about' in setting ? settingOf(setting.about ?? '') : undefined
const unitOf = (form: OpenForm): string => {
  const setting = settingIn(form)
  return setting === undefined ? '' : unitWords(setting.unit)
}

/** What a form about the herd changes, where it changes something. */
function herdAbout(form: OpenForm): string {
  const key = settingIn(form)?.key
  return key === undefined ? '' : `: ${settingWords[key].name}`
}

/** What is on record, where a fact is changed. */
const wasLines = ({ changes }: OpenForm, cells: number, theme: Theme): readonly Line[] =>
  changes === undefined
    ? []
    : [
        [
          bit(
            ` ${fill(formWords.was(factWords(changes), shortDate(isoDay(changes.date))), cells - 2, theme.signs.cut)}`,
            'faint',
          ),
        ],
      ]

/** The fields of a form about the herd, without head and foot. */
export const fieldsOf = (form: OpenForm, cells: number, theme: Theme): readonly Line[] =>
  form.fields.flatMap((field, index) =>
    fieldLines(form, field, index === form.at, cells, theme).map((one) => one.line),
  )

interface FieldLine {
  readonly line: Line
  readonly at: boolean
}

function fieldLines(form: OpenForm, field: Field, at: boolean, cells: number, theme: Theme): FieldLine[] {
  const { signs } = theme
  const value = form.values[field.name] ?? ''
  const wrong = form.wrong[field.name]
  const label = fill(fieldNames[field.name] ?? field.name, LABEL, signs.cut)
  const shown = shownValue(form, field, value)
  // One cell for the caret, one of air.
  const room = cells - LABEL - 5
  const line: Bit[] = [
    bit(at ? ` ${signs.pointer} ` : '   ', 'light'),
    bit(label, at ? 'strong' : 'plain'),
    bit(
      at && field.input !== 'choice' ? endOf(shown.text, room, signs.cut) : cut(shown.text, room, signs.cut),
      at ? 'entry' : 'plain',
    ),
    ...(at && field.input !== 'choice' ? [bit(signs.caret, 'light')] : []),
    ...(shown.beside === '' ? [] : [bit(`  ${shown.beside}`, 'faint')]),
  ]
  const lines: FieldLine[] = [{ line, at }]
  if (wrong !== undefined)
    for (const [index, text] of wrap(wrongWord(wrong), cells - LABEL - 5, MOST_WRONG, signs.cut).entries()) {
      const sign = index === 0 ? signs.warning : ' '
      lines.push({ line: [bit(' '.repeat(LABEL + 3)), bit(`${sign} ${text}`, 'wrong')], at: false })
    }
  return lines
}

/** What stands in a field, and what is said beside it. */
function shownValue(form: OpenForm, field: Field, value: string): { text: string; beside: string } {
  switch (field.input) {
    case 'choice': {
      const day = field.name === 'service-date' ? readDay(value) : undefined
      if (field.name === 'service-date' && day === undefined)
        return { text: formWords.programFinds, beside: '' }
      return {
        text:
          day === undefined ? (choiceNames[value] ?? safeText(valueWords(value, 'choice'))) : shortDate(day),
        beside: '',
      }
    }
    case 'date': {
      const { now } = form.setting
      if (value === '') return { text: '', beside: field.name === 'until' ? formWords.endless : '' }
      const day =
        readDay(value) === undefined ? readTypedDay(value, now.day, field.ahead === true) : isoDay(value)
      const words = day === undefined ? '' : dateInWords(day)
      return readDay(value) === undefined
        ? { text: safeText(value), beside: words }
        : { text: words, beside: '' }
    }
    case 'pick': {
      const pick = pickOf(field, value)
      if (field.picks?.length === 0 || value === '') return { text: safeText(value), beside: '' }
      if (pick === undefined)
        return { text: safeText(value), beside: field.name !== 'sire' ? '' : formWords.notInFlask }
      const whole = safeText(pick.fills[field.name] ?? '')
      const exact = field.picks?.find((one) =>
        Object.entries(one.fills).every(([name, text]) => (form.values[name] ?? '') === text),
      )
      const { left, inbreeding } = exact ?? pick
      const beside = [
        whole === safeText(value) ? '' : whole,
        left === undefined ? '' : formWords.left(left),
        inbreeding === undefined ? '' : formWords.inbreeding(inbreeding),
      ]
      return { text: safeText(value), beside: beside.filter((part) => part !== '').join(', ') }
    }
    default:
      return { text: safeText(value), beside: settingIn(form) === undefined ? '' : unitOf(form) }
  }
}

/** Why the straw in the form stands where it stands for her, and how it is thawed, as far as there is room. */
function strawWhyLines(
  { fields, values, setting }: OpenForm,
  cells: number,
  theme: Theme,
  most: number,
): readonly Line[] {
  const field = fields.find(({ picks }) => picks?.some(({ reasons }) => reasons !== undefined))
  const pick = field?.picks?.find(({ fills }) => fills.sire === values.sire && fills.kind === values.kind)
  const kind = strawKinds.find((one) => one === values.kind)
  if (pick?.reasons === undefined || kind === undefined || most <= 0) return []
  const card = thawingCard(kind, volumeOf(setting.book, values.sire ?? '', kind))
  const why = wrap(strawWhy({ reasons: pick.reasons }), cells - 4, MOST_WHY, theme.signs.cut)
  const said = [...why.slice(0, most - 1), cut(thawingLine(card), cells - 4, theme.signs.cut)]
  return said.map((text) => [bit(`   ${text}`, 'faint')])
}

/** The danger to confirm, else the caution of the form. */
function footLines(form: OpenForm, cells: number, theme: Theme): readonly Line[] {
  if (form.danger !== undefined) {
    const number = isForHerd(form) ? '' : safeText(form.setting.animal.number)
    const text = questionWords(form.danger, { number, count: 1 })
    return wrap(text, cells - 4, 3, theme.signs.cut).map((line, index) => [
      bit(index === 0 ? ` ${theme.signs.warning} ${line}` : `   ${line}`, 'care'),
    ])
  }
  const setting = settingIn(form)
  if (setting !== undefined) {
    const range = rangeWords(setting)
    const text = `${settingWords[setting.key].meaning}${range === '' ? '' : ` ${range}.`}`
    return wrap(text, cells - 4, 3, theme.signs.cut).map((line) => [bit(`   ${line}`, 'faint')])
  }
  const caution = cautionOfForm[form.name]
  return caution === undefined ? [] : [[bit(` ${theme.signs.warning} ${cautions[caution].short}`, 'care')]]
}
