/** Forms of the bull weeks: with and from the bull, a bull's service. */
import type { HerdBook } from '../../breeding/book.ts'
import type { Form, Pick } from './form.ts'
import { FieldReader, known } from './reader.ts'

/** Bulls that may be chosen: those on the farm, the one named last first. */
export function bullPicks(book: HerdBook): readonly Pick[] {
  const last = book.live.findLast((fact) => fact.kind === 'with-bull' && fact.bull !== undefined)
  const lastBull = last?.kind === 'with-bull' ? last.bull : undefined
  const here = [...book.animals.values()].filter(
    (animal) =>
      animal.record.sex === 'M' && !animal.happenings.some((happening) => happening.fact.kind === 'left'),
  )
  const numbers = new Set([...(lastBull === undefined ? [] : [lastBull]), ...here.map((bull) => bull.number)])
  return [...numbers].map((bull) => ({ fills: { bull } }))
}

const bullForm = (name: 'with-bull' | 'from-bull'): Form => ({
  name,
  fields: ({ book }) => [
    { name: 'bull', input: 'pick', picks: bullPicks(book), optional: true },
    { name: 'date', input: 'date' },
  ],
  begin: ({ book, date }) => ({ bull: bullPicks(book)[0]?.fills.bull ?? '', date }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const bull = read.text('bull')
    const date = read.date()
    return read.result(() => [{ kind: name, about: setting.animal.id, date, ...known({ bull }) }])
  },
  ...(name === 'with-bull'
    ? {
        danger: (_values, { standing, row }) =>
          standing.inCalf
            ? 'danger-bull-in-calf'
            : row?.reasons.includes('keep-from-bull')
              ? 'danger-keep-from-bull'
              : undefined,
      }
    : {}),
})
export const withBullForm = bullForm('with-bull')
export const fromBullForm = bullForm('from-bull')

export const bullServiceForm: Form = {
  name: 'bull-service',
  fields: ({ book }) => [
    { name: 'bull', input: 'pick', picks: bullPicks(book), optional: true },
    { name: 'time', input: 'time', optional: true },
    { name: 'date', input: 'date' },
  ],
  begin: ({ book, now, date }) => ({ bull: bullPicks(book)[0]?.fills.bull ?? '', time: now.time, date }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const sire = read.text('bull')
    const date = read.date()
    const time = read.time(date)
    return read.result(() => [
      { kind: 'service', about: setting.animal.id, date, natural: true, ...known({ time, sire }) },
    ])
  },
}
