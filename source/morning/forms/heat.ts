import type { Certainty, HeatSource } from '../../breeding/facts.ts'
import type { Form } from './form.ts'
import { FieldReader, known } from './reader.ts'

const heatSources: readonly HeatSource[] = ['standing', 'activity', 'paint', 'mucus', 'other']
const certainties: readonly Certainty[] = ['sure', 'suspect']

/** A heat seen: how, how sure, when. */
export const heatForm: Form = {
  name: 'heat',
  fields: () => [
    { name: 'certainty', input: 'choice', choices: certainties },
    { name: 'how', input: 'choice', choices: heatSources },
    { name: 'time', input: 'time', optional: true },
    { name: 'date', input: 'date' },
    { name: 'signs', input: 'text', optional: true },
  ],
  begin: ({ now, date }) => ({
    certainty: 'sure',
    how: 'standing',
    time: now.time,
    date,
    signs: '',
  }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const certainty = read.choice('certainty', certainties, true)
    const how = read.choice('how', heatSources, true)
    const date = read.date()
    const time = read.time(date)
    const signs = read.text('signs')
    return read.result(() => [
      {
        kind: 'heat',
        about: setting.animal.id,
        date,
        how: how as HeatSource,
        certainty: certainty as Certainty,
        ...known({ time, signs }),
      },
    ])
  },
}
