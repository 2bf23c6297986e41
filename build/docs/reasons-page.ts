import { isoDay } from '../../source/breeding/day.ts'
import type { NotOnList } from '../../source/breeding/not-on-list.ts'
import { standardPolicy } from '../../source/breeding/policy.ts'
import { reasonsOf, sections, warnings } from '../../source/breeding/sections.ts'
import { usualWords } from '../../source/screens/words/keys.ts'
import { cautions, cautionsOf } from '../../source/words/cautions.ts'
import { reasonWords, sectionNames, warningWords } from '../../source/words/list.ts'
import { notOnListCodes, notOnListPhrase, notOnListSentence } from '../../source/words/not-on-list.ts'
import { strawReasonWords } from '../../source/words/straws.ts'
import { capital, code, page, table } from './markdown.ts'

const section = (name: (typeof sections)[number], index: number): string =>
  `## ${index + 1}. ${sectionNames[name]}

\`${name}\`. \`Space\`: ${usualWords[name]}.${cautionsOf[name].map((caution) => ` **${capital(cautions[caution].short)}.**`).join('')}

${table(
  ['On the list', 'Code', 'Why, and what to do'],
  reasonsOf[name].map((reason) => [
    reasonWords[reason].phrase,
    code(reason),
    reasonWords[reason].sentence(standardPolicy),
  ]),
)}`

/** A reason with days of the sample herd's season, as one would read it. */
const sample = (name: NotOnList['code']): NotOnList => {
  const [on, from, to] = ['2026-06-10', '2026-06-04', '2026-06-10'].map(isoDay)
  return {
    code: name,
    on,
    from,
    to,
    due: isoDay('2027-02-18'),
    days: 14,
    watchFrom: from,
    checkFrom: to,
    ready: from,
  } as NotOnList
}

/** Sections, reasons and warnings of the list, why an animal is not on it, and why a straw is proposed. */
export const reasonsPage = (): string =>
  page(
    'What the list says, and why',
    `Every section, reason and warning, with its sentence as it stands beside the list, and the code of \`list --json\`. The
numbers are those of a farm that has changed no [setting](settings.md). How they are worked out, and from which sources:
[rules](rules.md). An animal stands in one section only, the first that fits. Where several reasons of that section hold,
the first in the table stands in her row and the others on her page.
`,
    sections.map(section).join('\n'),
    `## Warnings

They stand behind a \`!\` in her row, and in \`list --json\` under \`warnings\`.

${table(
  ['On the list', 'Code', 'What to do'],
  warnings.map((warning) => [
    warningWords[warning].phrase,
    code(warning),
    warningWords[warning].sentence(standardPolicy),
  ]),
)}`,
    `## Why she is not on the list

Who types a number that has no row is told why, with her own days in place of these.

${table(
  ['In short', 'Code', 'In full'],
  notOnListCodes.map((name) => [notOnListPhrase(sample(name)), code(name), notOnListSentence(sample(name))]),
)}`,
    `## Why this straw

On the animal's page, in the form of a service and in \`dawnlist animal\`. Numbers stand in the place of words in braces.

${table(
  ['Code', 'Sentence'],
  Object.entries(strawReasonWords).map(([name, words]) => [code(name), words]),
)}`,
  )
