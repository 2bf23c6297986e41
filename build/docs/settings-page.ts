import { type Policy, type Setting, settings } from '../../source/breeding/policy.ts'
import { settingWords, valueWords } from '../../source/screens/words/set-up.ts'
import { code, page, table } from './markdown.ts'

/** What a setting may be: `20 to 120 days`. */
function range({ choices, unit, min = 0, max = 0 }: Setting): string {
  if (choices !== undefined) return choices.map(code).join(', ')
  if (unit === 'yes-no') return 'yes, no'
  return `${unit === 'share' ? valueWords(min, unit) : min} to ${valueWords(max, unit)}`
}

/** Every setting of the policy: what it means, what it may be, and where the standard comes from. */
export const settingsPage = (): string =>
  page(
    'Settings',
    `Every number of the rules that a farm can change, on the screen under \`g\` then \`e\` (set-up, Policy) or with
\`dawnlist import FILE --policy policy.csv --write\`. In that file a share is written as a number from 0 to 1. A setting
that you have not changed follows the standard here. What is yours is marked so on the screen, and \`x\` puts it back.
`,
    table(
      ['Setting', 'In policy.csv', 'Standard', 'Can be', 'What it does', 'Where the standard comes from'],
      settings.map((setting) => [
        settingWords[setting.key as keyof Policy].name,
        code(setting.key),
        valueWords(setting.standard, setting.unit),
        range(setting),
        settingWords[setting.key as keyof Policy].meaning,
        setting.source,
      ]),
    ),
  )
