/** The depth of liquid nitrogen in a flask. */
import { HERD } from '../../breeding/facts.ts'
import { nitrogenLevels } from '../../breeding/straws/nitrogen.ts'
import { stockOn } from '../../breeding/straws/stock.ts'
import type { HerdForm, HerdSetting, Pick } from './form.ts'
import { FieldReader, known } from './reader.ts'

/** Deepest flask, cm. */
const DEEPEST = 200

/** Flasks that have been named, in readings or by the straws in them. */
function flaskPicks({ book, now }: HerdSetting): readonly Pick[] {
  const measured = nitrogenLevels(book, now.day).map(({ flask }) => flask)
  const holding = stockOn(book, now.day).lots.map(({ flask }) => flask)
  const flasks = new Set([...measured, ...holding].filter((flask) => flask !== undefined))
  return [...flasks].map((flask) => ({ fills: { flask } }))
}

export const nitrogenForm: HerdForm = {
  name: 'nitrogen',
  fields: (setting) => [
    { name: 'depth', input: 'number' },
    { name: 'flask', input: 'pick', picks: flaskPicks(setting), open: true, optional: true },
    { name: 'time', input: 'time', optional: true },
    { name: 'date', input: 'date' },
  ],
  begin: (setting) => ({
    depth: '',
    flask: flaskPicks(setting)[0]?.fills.flask ?? '',
    time: setting.now.time,
    date: setting.date,
  }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    read.text('depth', true)
    const depthCm = read.number('depth', 0, DEEPEST, 0.5)
    const flask = read.text('flask')
    const date = read.date()
    const time = read.time(date)
    return read.result(() => [
      { kind: 'nitrogen', about: HERD, date, ...known({ time, flask }), depthCm: depthCm as number },
    ])
  },
}
