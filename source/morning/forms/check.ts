import { dayIso } from '../../breeding/day.ts'
import type { CheckMethod, CheckResult } from '../../breeding/facts.ts'
import type { Form, Setting } from './form.ts'
import { FieldReader, known } from './reader.ts'

export const checkMethods: readonly CheckMethod[] = ['ultrasound', 'hand', 'milk', 'blood']
const checkResults: readonly CheckResult[] = ['pregnant', 'empty', 'unsure']
/** Foetal age in days. */
const AGE = { least: 20, most: 290 } as const

/** Dates of the services that a pregnant result may name; empty: the program finds the service. */
const serviceDates = ({ standing }: Setting): readonly string[] => [
  '',
  ...standing.services.map((service) => dayIso(service.day)).toReversed(),
]

/** A pregnancy check: its result, how far along, to which service. */
export const checkForm: Form = {
  name: 'check',
  fields: (setting) => [
    { name: 'result', input: 'choice', choices: checkResults },
    { name: 'age', input: 'number', optional: true },
    { name: 'foetuses', input: 'number', optional: true },
    { name: 'service-date', input: 'choice', choices: serviceDates(setting), optional: true },
    { name: 'method', input: 'choice', choices: checkMethods },
    { name: 'date', input: 'date' },
  ],
  begin: ({ book, date }) => ({
    result: 'pregnant',
    age: '',
    foetuses: '',
    'service-date': '',
    method: book.policy.checkMethod,
    date,
  }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const result = read.choice('result', checkResults, true)
    const foetalAge = read.number('age', AGE.least, AGE.most)
    const foetuses = read.number('foetuses', 1, 5)
    const serviceDate = read.choice('service-date', serviceDates(setting))
    const method = read.choice('method', checkMethods, true)
    const date = read.date()
    if (result !== 'pregnant') {
      if (foetalAge !== undefined) read.refuse('age', 'form-only-in-calf')
      if (foetuses !== undefined) read.refuse('foetuses', 'form-only-in-calf')
      if (serviceDate !== undefined && serviceDate !== '')
        read.refuse('service-date', 'form-only-in-calf-service')
    }
    if (serviceDate !== undefined && date !== '' && serviceDate > date)
      read.refuse('service-date', 'form-service-after', { service: serviceDate, date })
    return read.result(() => [
      {
        kind: 'check',
        about: setting.animal.id,
        date,
        method: method as CheckMethod,
        result: result as CheckResult,
        ...known({ foetalAge, foetuses, serviceDate: serviceDate === '' ? undefined : serviceDate }),
      },
    ])
  },
}
