import { wrongWords } from '../../source/screens/words/forms.ts'
import { whys } from '../../source/screens/words/messages.ts'
import { checkSentences } from '../../source/words/check.ts'
import { commandSentences } from '../../source/words/commands.ts'
import { adeSentences, fileSentences, rowSentences } from '../../source/words/exchange.ts'
import { factSentences, openingSentences, savingSentences } from '../../source/words/herd.ts'
import type { Sentences, Values } from '../../source/words/sentences.ts'
import { strawSentences } from '../../source/words/straws.ts'
import { code, page, table } from './markdown.ts'

/** Where a sentence is said: each code stands in one place. */
export const places: ReadonlyArray<readonly [title: string, about: string, sentences: Sentences]> = [
  [
    'When a herd is opened',
    'On the screen and by every command; the file stands before the sentence.',
    openingSentences,
  ],
  [
    'When a herd is saved',
    'On the line above the keys. What is not saved yet is kept and tried again.',
    savingSentences,
  ],
  ['In a herd file that was changed by hand', 'By `dawnlist check`, with the line.', factSentences],
  [
    'Facts that do not fit together',
    'By `dawnlist check`, and some under Take care. The herd works as usual.',
    checkSentences,
  ],
  ['Straws', 'On the straws screen. The herd works as usual.', strawSentences],
  ['Reading CSV tables', 'By `dawnlist import`, about a file as a whole.', fileSentences],
  [
    'Rows and cells of CSV tables',
    'By `dawnlist import`, with file and line. The other rows are still read.',
    rowSentences,
  ],
  ['Reading ICAR ADE', 'By `dawnlist import FILE --ade EVENTS`.', adeSentences],
  ['Commands', 'On standard error.', commandSentences],
  ['On the screen', 'On the line above the keys: what was not done, and why.', whys],
  ['In a form', 'Below the field.', wrongWords],
]

/** Values that are reckoned with, as one would read them: days of the calendar, counts, a reason by its code. */
const reckoned: Readonly<Record<string, number | string>> = {
  weeks: 7,
  unserved: 3,
  heats: 3,
  why: 'hold',

  day: 20_614,
  from: 20_607,
  to: 20_614,
  ready: 46,
  count: 12,
}

/** Values that name themselves. */
const named = new Proxy({} as Values, {
  get: (_values, name) => reckoned[String(name)] ?? `{${String(name)}}`,
})

const words = (sentence: Sentences[string]): string =>
  typeof sentence === 'string' ? sentence : sentence(named)

/** Every sentence that the program says when something is wrong, by the place where it is said. */
export const messagesPage = (): string =>
  page(
    'Every message',
    `What the program says when something is wrong or was not done; each sentence says what to do. Your own file, number or
date stands in the place of words in braces. The codes are for who looks into the source.
What to do step by step: [when something is wrong](when-something-is-wrong.md).
`,
    places
      .map(
        ([title, about, sentences]) =>
          `## ${title}\n\n${about}\n\n${table(
            ['Code', 'Sentence'],
            Object.entries(sentences).map(([name, sentence]) => [code(name), words(sentence)]),
          )}`,
      )
      .join('\n'),
  )
