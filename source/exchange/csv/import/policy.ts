/** policy.csv against the policy on record. */
import { dayIso } from '../../../breeding/day.ts'
import { HERD } from '../../../breeding/facts.ts'
import { mayStand, type Policy, type Setting, settingOf } from '../../../breeding/policy.ts'
import { fault, type Problem } from '../../../breeding/problem.ts'
import { policyColumns } from '../tables/policy.ts'
import type { Herd } from './herd.ts'
import { keyedOutcomes } from './keyed.ts'
import type { RowOutcome } from './outcome.ts'
import type { TableRow } from './rows.ts'

/** Sorts the rows of policy.csv into known, new, changed and refused. */
export function policyOutcomes(rows: readonly TableRow[], herd: Herd): RowOutcome[] {
  return keyedOutcomes(rows.map(plainly), {
    columns: policyColumns,
    keyOf: (given) => String(given.key),
    onRecord: (key) =>
      settingOf(key) === undefined ? undefined : { key, value: written(herd.book.policy, key) },
    against: ({ key, value }, { path }) => unfitSetting(String(key), String(value), path),
    record: ({ key, value }) => {
      const setting = settingOf(String(key)) as Setting
      const set = { [setting.key]: settingValue(setting, String(value)) }
      return [{ fact: { about: HERD, date: dayIso(herd.today), kind: 'policy', set } }]
    },
  })
}

/** A setting as it stands in policy.csv. */
export const written = (policy: Policy, key: string): string => asText(policy[key as keyof Policy])

const asText = (value: string | number | boolean): string =>
  typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value)

/** The row with its value as it would be exported: `0,50` is `0.5`. */
function plainly(row: TableRow): TableRow {
  const setting = settingOf(String(row.given.key))
  if (setting === undefined) return row
  return { ...row, given: { ...row.given, value: asText(settingValue(setting, String(row.given.value))) } }
}

function settingValue(setting: Setting, value: string): string | number | boolean {
  const plain = value.trim().toLowerCase()
  if (setting.unit === 'yes-no') return plain === 'yes' ? true : plain === 'no' ? false : plain
  if (setting.unit === 'choice') return plain
  return /^\d+([.,]\d+)?$/.test(plain) ? Number(plain.replace(',', '.')) : plain
}

function unfitSetting(key: string, value: string, path: string): Problem | undefined {
  const setting = settingOf(key)
  if (setting === undefined) return fault('setting-unknown', path, { column: 'key', key })
  if (mayStand(setting, settingValue(setting, value))) return undefined
  const range =
    setting.unit === 'yes-no'
      ? 'yes, no'
      : setting.unit === 'choice'
        ? (setting.choices ?? []).join(', ')
        : `${setting.min} - ${setting.max} ${setting.unit}`
  return fault('setting-value', path, { column: 'value', key, value, range })
}
