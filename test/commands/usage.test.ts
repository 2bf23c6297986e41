import { describe, expect, test } from 'vitest'
import program from '../../package.json' with { type: 'json' }
import { usageOf } from '../../source/commands/help-text.ts'
import { parse } from '../../source/commands/parse.ts'
import { commandNamed, commands } from '../../source/commands/table.ts'
import { ANIMAL_VERSION } from '../../source/exchange/animal/json.ts'
import { LIST_VERSION } from '../../source/exchange/list/json.ts'
import { SEASON_VERSION } from '../../source/exchange/season/json.ts'
import { currentFormat } from '../../source/herd/format.ts'
import { call, Folder } from './support/run.ts'

const list = commandNamed('list')
const codes = (...words: string[]): string[] => {
  if (list === undefined) throw new Error('no list')
  const given = parse(list, words)
  return given.ok ? [] : given.problems.map(({ code }) => code)
}

describe('parsing', () => {
  test('arguments, options with = or a space, switches, in any order', () => {
    for (const words of [
      ['a.json', '--date', '2026-05-28', '--json'],
      ['--json', '--date=2026-05-28', 'a.json'],
      ['--date', '2026-05-28', '--json', '--', 'a.json'],
    ]) {
      const given = list && parse(list, words)
      expect(given?.ok && given.value.args).toEqual({ FILE: 'a.json' })
      expect(given?.ok && given.value.options).toEqual({ date: '2026-05-28' })
      expect(given?.ok && [...given.value.switches]).toEqual(['json'])
    }
  })

  test('a file that begins with a dash stands behind --', () => {
    const given = list && parse(list, ['--', '--odd.json'])
    expect(given?.ok && given.value.args.FILE).toBe('--odd.json')
  })

  test.each([
    [[], ['argument-missing']],
    [['a', 'b'], ['argument-extra']],
    [['a', '--date'], ['option-value']],
    [['a', '--date', '--json'], ['option-value']],
    [['a', '--date=x', '--date=y'], ['option-twice']],
    [['a', '--jsn'], ['option-unknown']],
    [['a', '-x'], ['option-unknown']],
    [['a', '--json=yes'], ['option-no-value']],
    [['--help'], []],
    [['-h', 'a', 'b'], []],
  ])('%j', (words, expected) => {
    expect(codes(...words)).toEqual(expected)
  })

  test('a required option that is missing', () => {
    const command = commandNamed('new')
    const given = command && parse(command, ['a.json', '--farm', 'x'])
    expect(given?.ok === false && given.problems).toEqual([
      {
        code: 'option-missing',
        severity: 'fault',
        path: '',
        values: { command: 'new', option: 'zone', value: 'IANA' },
      },
    ])
  })
})

describe('the table', () => {
  test('each command has a module that runs, and its examples are typed as the table says', async () => {
    for (const command of commands) {
      expect((await command.load()).run).toBeTypeOf('function')
      for (const example of command.examples) {
        const words = (example.match(/'[^']*'|\S+/g) ?? []).map((word) => word.replaceAll("'", ''))
        const given = parse(command, words[0] === command.name ? words.slice(1) : words)
        expect(given.ok ? [] : given.problems, example).toEqual([])
      }
    }
  })
})

describe('the program', () => {
  test('help of the program names every command, help of a command its usage', async () => {
    const all = await call('--help')
    expect(all.status).toBe(0)
    for (const { name } of commands) expect(all.out).toContain(`  ${name} `)
    for (const command of commands) {
      const { status, out, err } = await call(command.name, '--help')
      expect([status, err]).toEqual([0, ''])
      expect(out.replace(/\s+/g, ' ')).toContain(usageOf(command))
      expect((await call('help', command.name)).out).toBe(out)
      const examples = command.examples.map((each) => `  dawnlist ${each}`)
      expect(out.split('\n').filter((line) => line.length > 80 && !examples.includes(line))).toEqual([])
    }
  })

  test('version, as a program of its own', () => {
    const { status, out, err } = new Folder().run('--version')
    expect([status, err]).toEqual([0, ''])
    expect(out).toBe(
      `${program.version}
herd file: format ${currentFormat}
JSON: list ${LIST_VERSION}, animal ${ANIMAL_VERSION}, season ${SEASON_VERSION}
`,
    )
  })

  test.each([
    [['lst'], 'There is no command "lst"'],
    [['help', 'lst'], 'There is no command "lst"'],
    [['list'], 'list needs FILE'],
    [['list', 'a.json', '--jsn'], 'list has no option --jsn'],
    [['import', 'a.json'], 'import needs at least one file'],
    [['import', 'a.json', '--facts', 'f.csv', '--dates', 'guess'], '"guess" is no form of dates'],
    [['check', 'a.json', '--accept-edits', '--merge', 'b.json'], 'give either --accept-edits or --merge'],
    [['new', 'a.json', '--farm', 'x', '--zone', 'Atlantis/Deep'], '"Atlantis/Deep" is not a time zone'],
    [['new', 'a.json', '--farm', ' ', '--zone', 'UTC'], '--farm is empty'],
    [
      ['new', 'a.json', '--farm', 'x', '--zone', 'UTC', '--milkings', '15:30,05:30'],
      'is not one or two times',
    ],
    [['new', 'a.json', '--farm', 'x', '--zone', 'UTC', '--milkings', '5am'], 'is not one or two times'],
    [['new', 'a.json', '--farm', 'x'], 'new needs --zone IANA'],
  ])('wrong usage is status 2 with a sentence: %j', async (words, sentence) => {
    const { status, out, err } = await call(...words)
    expect([status, out]).toEqual([2, ''])
    expect(err).toContain(sentence)
  })

  test('a date that is none is wrong usage', async () => {
    const folder = new Folder()
    await folder.herd()
    const { status, err } = folder.run('list', 'herd.json', '--date', '2026-02-30')
    expect(status).toBe(2)
    expect(err).toContain('"2026-02-30" is not a date of the calendar')
  })
})
