/** Forms of health: examined by the vet, health hold, body condition, note. */
import type { SessionName } from '../../breeding/facts.ts'
import type { Form } from './form.ts'
import { FieldReader, known } from './reader.ts'

const sessions: readonly (SessionName | '')[] = ['', 'morning', 'evening']

export const examinedForm: Form = {
  name: 'examined',
  fields: () => [
    { name: 'finding', input: 'text', optional: true },
    { name: 'treatment', input: 'text', optional: true },
    { name: 'serve-on', input: 'date', optional: true, ahead: true },
    { name: 'session', input: 'choice', choices: sessions, optional: true },
    { name: 'date', input: 'date' },
  ],
  begin: ({ date }) => ({ finding: '', treatment: '', 'serve-on': '', session: '', date }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const finding = read.text('finding')
    const treatment = read.text('treatment')
    const date = read.date()
    const serveOn = read.dateFrom('serve-on', date)
    const session = read.choice('session', sessions)
    if (session !== undefined && session !== '' && serveOn === undefined)
      read.refuse('serve-on', 'form-session-without-date')
    return read.result(() => [
      {
        kind: 'examined',
        about: setting.animal.id,
        date,
        ...known({ finding, treatment, serveOn, session: session === '' ? undefined : session }),
      },
    ])
  },
}

export const holdForm: Form = {
  name: 'hold',
  fields: () => [
    { name: 'until', input: 'date', optional: true, ahead: true },
    { name: 'reason', input: 'text', optional: true },
    { name: 'date', input: 'date' },
  ],
  begin: ({ date }) => ({ until: '', reason: '', date }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const date = read.date()
    const until = read.dateFrom('until', date)
    const reason = read.text('reason')
    return read.result(() => [{ kind: 'hold', about: setting.animal.id, date, ...known({ until, reason }) }])
  },
}

export const scoreForm: Form = {
  name: 'score',
  fields: () => [
    { name: 'condition', input: 'number' },
    { name: 'date', input: 'date' },
  ],
  begin: ({ date }) => ({ condition: '', date }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    read.text('condition', true)
    const condition = read.number('condition', 1, 5, 0.25)
    const date = read.date()
    return read.result(() => [
      { kind: 'score', about: setting.animal.id, date, condition: condition as number },
    ])
  },
}

export const noteForm: Form = {
  name: 'note',
  fields: () => [
    { name: 'note', input: 'text' },
    { name: 'date', input: 'date' },
  ],
  begin: ({ date }) => ({ note: '', date }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const note = read.text('note', true)
    const date = read.date()
    return read.result(() => [{ kind: 'note', about: setting.animal.id, date, note: note as string }])
  },
}
