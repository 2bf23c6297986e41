/** Texts that would do harm, in every field of a herd, on every screen: harmless, and all stays in line. */
import { afterEach, expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import type { KeyMeaning } from '../../source/screens/words/keys.ts'
import { hostileTexts } from '../herd/support/hostile.ts'
import { cow, frame, heat, herd, now, served } from './support/herd.ts'
import { closeAll, openOn, type Screen } from './support/screen.ts'

afterEach(closeAll)

/** Fields that hold what somebody typed. */
const typed = new Set([
  'name',
  'number',
  'officialId',
  'electronicId',
  'internationalId',
  'breed',
  'sire',
  'dam',
  'block',
  'batch',
  'flask',
  'canister',
  'inseminator',
  'signs',
  'finding',
  'treatment',
  'reason',
  'note',
  'bull',
  'by',
  'sireName',
])

/** The model of a terminal counts pictures as one cell, which terminals draw on two: they cannot be in line on it. */
const inLine = hostileTexts.filter((text) => !/\p{Extended_Pictographic}|\p{Regional_Indicator}/u.test(text))

/** The herd with such a text before each that somebody typed; the same one before the same text. */
function hostileHerd(texts: readonly string[], from: number): Fact[] {
  const given = new Map<string, string>()
  const hostile = (text: string): string => {
    const known = given.get(text)
    if (known !== undefined) return known
    const made = `${texts[(from + given.size) % texts.length]}${text}`
    given.set(text, made)
    return made
  }
  const more: readonly Fact[] = [
    ...frame(),
    ...cow('3', 'Thrift', 90, [
      served(30),
      heat(0, { signs: 'mounted', by: 'OB' }),
      { kind: 'examined', date: '2026-05-27', finding: 'cyst', treatment: 'none', by: 'VT' },
      { kind: 'note', date: '2026-05-27', note: 'quiet', by: 'OB' },
      { kind: 'left', date: '2026-05-27', reason: 'sold' },
    ]),
    ...cow('B1', 'Boss', undefined, [{ kind: 'hold', date: '2026-05-20', reason: 'lame' }], { sex: 'M' }),
    ...cow('4', 'Sorrel', 90, [
      { kind: 'with-bull', date: '2026-05-20', bull: 'B1' },
      { kind: 'looked', date: '2026-05-28', by: 'OB' },
      { kind: 'note', date: '2026-05-28', note: 'seen', by: 'OB' },
    ]),
  ]
  const extra = more.map((fact) => ({ ...fact, id: `more-${fact.id}` }))
  return [...herd(), ...extra].map(
    (fact) =>
      Object.fromEntries(
        Object.entries(fact).map(([field, value]) => [
          field,
          typed.has(field) && typeof value === 'string' ? hostile(value) : value,
        ]),
      ) as unknown as Fact,
  )
}

const unseen = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u
/** What a terminal would act upon, and no screen of ours sends. */
const commands = [
  '\u001b]',
  '\u001bP',
  '\u009b',
  '\u0090',
  '\u0007',
  '\b',
  '\u202e',
  '\u200b',
  '\u2028',
  '\u001b[31mred',
]

function expectHarmless(screen: Screen, wide: boolean): void {
  for (const line of screen.lines) expect(line).not.toMatch(unseen)
  expect(screen.lines[0]).toMatch(/all saved · MK$/)
  expect(screen.lines.at(-1)).not.toBe('')
  if (!wide) return
  // The rule beside the list stands in one column, in every row of the body.
  const rows = Array.from({ length: screen.lines.length - 5 }, (_, index) => index + 3)
  expect(new Set(rows.map((row) => screen.cell(80, row).text))).toEqual(new Set(['║']))
}

const places: readonly KeyMeaning[] = [
  'go-ahead',
  'go-season',
  'go-scanning',
  'go-straws',
  'go-bulls',
  'go-set-up',
]

for (const [columns, rows, from] of [
  [80, 24, 0],
  [120, 40, 7],
  [60, 20, 13],
] as const) {
  test(`every screen at ${columns}x${rows}`, { timeout: 120_000 }, async () => {
    const screen = await openOn(hostileHerd(columns === 120 ? inLine : hostileTexts, from), {
      now,
      by: 'MK',
      columns,
      rows,
    })
    const sent: string[] = []
    const asked: string[] = []
    screen.output.onWrite = (data) => sent.push(data)
    screen.output.terminal.onTitleChange(() => asked.push('title'))
    screen.output.terminal.onBell(() => asked.push('bell'))
    const { length } = screen.session.desk.page.items
    for (let at = 0; at < length; at += 1) {
      await screen.press('down')
      expectHarmless(screen, columns >= 100)
    }
    await screen.press('first', 'open-animal')
    expectHarmless(screen, columns >= 100)
    await screen.press('note')
    expectHarmless(screen, false)
    await screen.press('cancel', 'back', 'fill-in')
    expectHarmless(screen, false)
    await screen.press('cancel')
    for (const place of places) {
      await screen.press('go', place)
      await screen.reckoned()
      expectHarmless(screen, false)
      await screen.press('down', 'down')
      expectHarmless(screen, false)
      await screen.press('back')
    }
    for (const command of commands) expect(sent.some((data) => data.includes(command))).toBe(false)
    expect(asked).toEqual([])
  })
}
