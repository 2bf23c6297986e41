/** Form of one setting of the policy. */
import { dayIso } from '../../breeding/day.ts'
import { HERD } from '../../breeding/facts.ts'
import { type Setting as PolicySetting, settingOf } from '../../breeding/policy.ts'
import type { Field, HerdForm, HerdSetting } from './form.ts'
import { FieldReader } from './reader.ts'

const asked = ({ about }: HerdSetting): PolicySetting | undefined =>
  about === undefined ? undefined : settingOf(about)

function fieldOf(setting: PolicySetting | undefined): Field {
  if (setting?.unit === 'yes-no') return { name: 'value', input: 'choice', choices: ['yes', 'no'] }
  if (setting?.unit === 'choice') return { name: 'value', input: 'choice', choices: setting.choices ?? [] }
  return { name: 'value', input: 'number' }
}

/** Shares are typed in percent. */
const perOne = ({ unit }: PolicySetting): number => (unit === 'share' ? 100 : 1)

const asText = (value: string | number | boolean, policy: PolicySetting): string => {
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  return typeof value === 'number' ? String(Number((value * perOne(policy)).toFixed(2))) : value
}

export const settingForm: HerdForm = {
  name: 'setting',
  fields: (setting) => [fieldOf(asked(setting))],
  begin: (setting) => {
    const policy = asked(setting)
    return { value: policy === undefined ? '' : asText(setting.book.policy[policy.key], policy) }
  },
  read: (values, setting) => {
    const read = new FieldReader(values, setting)
    const policy = asked(setting)
    const text = read.text('value', true)
    const number =
      policy?.min === undefined || policy.max === undefined
        ? undefined
        : read.number('value', policy.min * perOne(policy), policy.max * perOne(policy), stepOf(policy))
    const typed = number === undefined || policy === undefined ? undefined : number / perOne(policy)
    const value = policy?.unit === 'yes-no' ? text === 'yes' : policy?.unit === 'choice' ? text : typed
    return read.result(() =>
      policy === undefined || value === undefined
        ? []
        : [{ kind: 'policy', about: HERD, date: dayIso(setting.now.day), set: { [policy.key]: value } }],
    )
  },
}

/** Days, animals and straws are whole; scores come in quarters, shares in hundredths of a percent. */
const stepOf = ({ unit, key }: PolicySetting): number => {
  if (key === 'returnMean' || key === 'returnMeanYoung' || key === 'returnSpread') return 0.1
  return unit === 'share' ? 0.01 : unit === 'score' ? 0.25 : 1
}
