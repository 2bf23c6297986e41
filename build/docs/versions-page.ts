import { versions } from '../../source/commands/version.ts'
import { page, table } from './markdown.ts'

/** Which number stands for what, and when each rises. */
export const versionsPage = (): string =>
  page(
    'Formats and versions',
    `\`dawnlist version\` prints these numbers. Each rises for a reason of its own.
`,
    table(
      ['What', 'Now', 'Rises when', 'What it means for you'],
      [
        [
          'the program',
          versions.program,
          'anything changes: the last number for repairs, the middle one for what is new, the first for what no longer works as before',
          'a newer program opens every older herd file',
        ],
        [
          'the herd file',
          String(versions.file),
          'a fact or a line stands in it that an older program could not read',
          'it is brought up to date when it is first saved; the day copy of before is kept. An older program says so and writes nothing',
        ],
        [
          '`list --json`',
          String(versions.list),
          'a key goes, or changes its meaning',
          'new keys may come at any time. Shape: [list.schema.json](schemas/list.schema.json)',
        ],
        [
          '`animal --json`',
          String(versions.animal),
          'the same',
          'Shape: [animal.schema.json](schemas/animal.schema.json)',
        ],
        [
          '`season --json`',
          String(versions.season),
          'the same',
          'Shape: [season.schema.json](schemas/season.schema.json)',
        ],
        [
          'CSV tables',
          '-',
          'columns are only ever added',
          'what is exported today can be read by every later program. [Columns](exchange.md)',
        ],
        ['ICAR ADE', 'ADE-1', 'the standard does', '[What is carried](exchange.md#icar-ade)'],
        ['calendar', 'RFC 5545', 'the standard does', '[What is in it](exchange.md#calendar)'],
      ],
    ),
    `Node.js 22.13 or newer runs the packed program; \`npm install\` in the source folder brings its own.
`,
  )
