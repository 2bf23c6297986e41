/** Forms of her life in the herd: calving, loss, dried off, moved to another block, do not breed and lifted, left the herd. */
import { blockPicks } from './blocks.ts'
import type { Form, FormName } from './form.ts'
import { FieldReader, known } from './reader.ts'

/** Calves of one calving. */
const MOST_CALVES = 5

export const calvingForm: Form = {
  name: 'calving',
  fields: () => [
    { name: 'ease', input: 'choice', choices: ['', '1', '2', '3', '4', '5'], optional: true },
    { name: 'calf-sex', input: 'text', optional: true },
    { name: 'calves', input: 'number', optional: true },
    { name: 'dead', input: 'number', optional: true },
    { name: 'time', input: 'time', optional: true },
    { name: 'date', input: 'date' },
  ],
  begin: ({ date }) => ({ ease: '', 'calf-sex': '', calves: '1', dead: '0', time: '', date }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const ease = read.number('ease', 1, 5)
    const calves = read.number('calves', 1, MOST_CALVES)
    const dead = read.number('dead', 0, MOST_CALVES)
    const calfSex = read.text('calf-sex')?.toUpperCase().replaceAll(/[\s,]/g, '')
    const date = read.date()
    const time = read.time(date)
    if (dead !== undefined && dead > (calves ?? 1))
      read.refuse('dead', 'form-more-dead', { dead, calves: calves ?? 1 })
    if (calfSex !== undefined && !/^[FM]+$/.test(calfSex)) read.refuse('calf-sex', 'form-calf-sex')
    else if (calfSex !== undefined && calfSex.length !== (calves ?? 1))
      read.refuse('calf-sex', 'form-calf-count', { letters: calfSex.length, calves: calves ?? 1 })
    return read.result(() => [
      {
        kind: 'calving',
        about: setting.animal.id,
        date,
        ...known({ time, ease, calves, dead: dead === 0 ? undefined : dead, calfSex }),
      },
    ])
  },
}

/** A form that asks for the date alone. */
const dateOnly = (name: 'loss' | 'dry' | 'to-bull'): Form => ({
  name,
  fields: () => [{ name: 'date', input: 'date' }],
  begin: ({ date }) => ({ date }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const date = read.date()
    return read.result(() => [{ kind: name, about: setting.animal.id, date }])
  },
})
export const lossForm = dateOnly('loss')
export const dryForm = dateOnly('dry')
export const toBullForm = dateOnly('to-bull')

export const blockForm: Form = {
  name: 'block',
  fields: ({ book }) => [
    { name: 'block', input: 'pick', picks: blockPicks(book) },
    { name: 'date', input: 'date' },
  ],
  begin: ({ book, date, standing }) => ({
    block:
      blockPicks(book).find(({ fills }) => fills.block !== standing.block)?.fills.block ??
      standing.block ??
      '',
    date,
  }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const block = read.text('block', true) ?? ''
    const date = read.date()
    // A block without a season or another animal would take her off every list.
    if (block !== '' && !blockPicks(setting.book).some(({ fills }) => fills.block === block))
      read.refuse('block', 'form-no-such-block', { block })
    return read.result(() => [{ kind: 'block', about: setting.animal.id, date, block }])
  },
}

const withReason = (name: FormName & ('bar' | 'unbar' | 'left')): Form => ({
  name,
  fields: () => [
    { name: 'reason', input: 'text', optional: true },
    { name: 'date', input: 'date' },
  ],
  begin: ({ date }) => ({ reason: '', date }),
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const reason = read.text('reason')
    const date = read.date()
    return read.result(() => [{ kind: name, about: setting.animal.id, date, ...known({ reason }) }])
  },
})
export const barForm = withReason('bar')
export const unbarForm = withReason('unbar')
export const leftForm = withReason('left')
