import { afterEach, describe, expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import { dayIso } from '../../source/breeding/day.ts'
import { golden } from './support/golden.ts'
import { cow, herd, now } from './support/herd.ts'
import { closeAll, openOn, type Screen } from './support/screen.ts'

afterEach(closeAll)

const setUp = async (columns = 80, rows = 24, colours = true, ascii = false): Promise<Screen> => {
  const screen = await openOn(herd(), { now, by: 'MK', columns, rows, colours, ascii })
  await screen.press('go', 'go-set-up')
  return screen
}
const book = (screen: Screen) => openBook(screen.session.desk.log)
const retype = async (screen: Screen, text: string): Promise<void> => screen.type(text)

for (const [columns, rows] of [
  [80, 24],
  [120, 40],
  [60, 20],
] as const) {
  for (const part of ['farm', 'seasons', 'policy', 'animals'] as const) {
    test(`${part} at ${columns}x${rows}`, async () => {
      const screen = await setUp(columns, rows)
      for (const name of ['farm', 'seasons', 'policy', 'animals']) {
        if (name === part) break
        await screen.press('next-part')
      }
      await expect(golden(screen)).toMatchFileSnapshot(`golden/set-up-${part}-${columns}x${rows}.txt`)
    })
  }
}

test('without colours and in ASCII nothing is lost', async () => {
  const screen = await setUp(80, 24, false, true)
  await screen.press('next-part', 'next-part')
  expect(screen.text).toMatch(/^[\x20-\x7e\n]*$/)
  expect(screen.text).toContain('When a heat is served')
})

describe('the farm', () => {
  test('is changed in a form; what is wrong is said', async () => {
    const screen = await setUp()
    await screen.press('change-entry')
    await retype(screen, 'Long Acre')
    await screen.press('next-field')
    await retype(screen, 'Atlantis')
    await screen.press('accept')
    expect(screen.text).toContain('"Atlantis" is not a time zone.')
    await retype(screen, 'Pacific/Auckland')
    await screen.press('accept')
    expect(book(screen).farm).toMatchObject({ name: 'Long Acre', zone: 'Pacific/Auckland' })
    await screen.press('undo')
    expect(book(screen).farm.name).not.toBe('Long Acre')
  })
})

describe('seasons', () => {
  const seasons = async (): Promise<Screen> => {
    const screen = await setUp()
    await screen.press('next-part')
    return screen
  }

  test('a year on: the same season a year later', async () => {
    const screen = await seasons()
    const before = book(screen).allSeasons
    await screen.press('next-year', 'accept')
    const after = book(screen).allSeasons
    expect(after).toHaveLength(before.length + 1)
  })

  test('the planned calving start sets the mating start', async () => {
    const screen = await seasons()
    await screen.press('add-entry')
    await retype(screen, 'winter')
    await screen.press('next-field', 'next-field')
    await retype(screen, '2027-08-01')
    await screen.press('accept')
    // 282 days: served 23 October, due 1 August. Source: NZ vet group, BCS and mating, 2021.
    const [winter] = book(screen).seasons.get('winter') ?? []
    expect(winter === undefined ? '' : dayIso(winter.matingStart)).toBe('2026-10-23')
    expect(screen.text).toContain('Fri 23 Oct 2026')
  })

  test('each start follows the other while it is typed, and Enter without a change records nothing', async () => {
    const screen = await seasons()
    const { length } = screen.session.desk.log
    await screen.press('change-entry', 'accept')
    expect(screen.text).toContain('Nothing was changed')
    expect(screen.session.desk.log).toHaveLength(length)
    await screen.press('add-entry', 'next-field')
    await retype(screen, '23 oct 2026')
    expect(screen.line('Calving from')).toContain('Sun 1 Aug 2027')
    await screen.press('next-field')
    await retype(screen, '2 aug 2027')
    expect(screen.line('Mating start')).toContain('Sat 24 Oct 2026')
    // What is no date leaves the other as it is.
    await retype(screen, 'soon')
    expect(screen.line('Mating start')).toContain('Sat 24 Oct 2026')
    await screen.press('accept')
    expect(screen.text).toContain('soon')
  })

  test('blocks that animals are said to be of are offered, as they are written', async () => {
    const screen = await openOn([...herd(), ...cow('880', 'Wren', 90, [], { block: 'Winter' })], {
      now,
      by: 'MK',
    })
    await screen.press('go', 'go-set-up', 'next-part', 'add-entry')
    await retype(screen, 'winter')
    await screen.press('next-field')
    await retype(screen, '2026-10-23')
    await screen.press('accept')
    expect([...book(screen).seasons.keys()]).toContain('Winter')
    expect([...book(screen).seasons.keys()]).not.toContain('winter')
  })

  test('below a season: the last day of AI, the days of the bull, calving, visits', async () => {
    const screen = await seasons()
    expect(screen.text).toContain('AI until Thu 11 Jun 2026.')
    expect(screen.text).toContain('The bull from Fri 12 Jun 2026 to Thu 2 Jul 2026.')
    expect(screen.text).toContain('No scanning visit is planned.')
  })

  test('neither start given, weeks out of range, an overlap: each is said at its field', async () => {
    const screen = await seasons()
    await screen.press('add-entry')
    await retype(screen, 'winter')
    await screen.press('accept')
    expect(screen.text).toContain('Give the mating start, or the day calving should begin.')
    await retype(screen, '2027-01-04')
    await screen.press('next-field', 'next-field')
    await retype(screen, '40')
    await screen.press('accept')
    expect(screen.text).toContain('40 does not fit: type 1 to 20.')
    await retype(screen, '6')
    await screen.press('accept')
    expect(book(screen).seasons.get('winter')).toHaveLength(1)
    await screen.press('add-entry')
    await retype(screen, 'winter')
    await screen.press('next-field')
    await retype(screen, '2027-03-01')
    await screen.press('accept')
    expect(screen.text).toContain('The season of this block from 4 Jan 2027')
    await screen.press('cancel')
    expect(book(screen).seasons.get('winter')).toHaveLength(1)
  })

  test('changing keeps the old one on record, voided; striking out asks first', async () => {
    const screen = await seasons()
    const before = book(screen).allSeasons.length
    await screen.press('change-entry', 'next-field', 'next-field', 'next-field')
    await retype(screen, '5')
    await screen.press('accept')
    const { log } = screen.session.desk
    expect(log.at(-2)?.kind).toBe('correction')
    expect(book(screen).allSeasons).toHaveLength(before)
    await screen.press('strike-entry')
    expect(screen.text).toContain('Strike this out?')
    await screen.press('agree')
    expect(book(screen).allSeasons).toHaveLength(before - 1)
    await screen.press('undo')
    expect(book(screen).allSeasons).toHaveLength(before)
  })
})

describe('the policy', () => {
  test('says what a setting means, its range, default and source; takes a value; gives it back', async () => {
    const screen = await setUp()
    await screen.press('next-part', 'next-part', 'down', 'down', 'down', 'down')
    expect(screen.text).toContain('From this day after calving she is served.')
    expect(screen.text).toContain('From 20 to 120 days.')
    await screen.press('change-entry')
    await retype(screen, '500')
    await screen.press('accept')
    expect(screen.text).toContain('500 does not fit: type 20 to 120.')
    await retype(screen, '50')
    await screen.press('accept')
    expect(book(screen).policy.calvedToServe).toBe(50)
    expect(screen.line('Served from, days calved')).toContain('yours')
    await screen.press('strike-entry', 'agree')
    expect(book(screen).policy.calvedToServe).toBe(42)
  })

  test('a share is typed in percent', async () => {
    const screen = await setUp()
    await screen.press('next-part', 'next-part')
    for (let i = 0; i < 60 && !screen.line('► ').includes('Late returns'); i += 1) await screen.press('down')
    expect(screen.line('► ')).toContain('5 %')
    await screen.press('change-entry')
    expect(screen.line('► Value')).toContain('5▁  percent')
    await retype(screen, '7.5')
    await screen.press('accept')
    expect(screen.line('► ')).toContain('7.5 %')
    expect(Object.values(book(screen).policy)).toContain(0.075)
    await screen.press('change-entry')
    await retype(screen, '900')
    await screen.press('accept')
    expect(screen.text).toMatch(/900 does not fit: type 0 to \d+\./)
  })

  test('a choice and a yes or no', async () => {
    const screen = await setUp()
    await screen.press('next-part', 'next-part', 'change-entry', 'turn-on', 'accept', 'down')
    expect(book(screen).policy.servingTime).toBe('by-the-hour')
    await screen.press('change-entry', 'turn-on', 'accept')
    expect(book(screen).policy.sexedHoursStrict).toBe(true)
  })
})

describe('animals', () => {
  const animals = async (): Promise<Screen> => {
    const screen = await setUp()
    await screen.press('previous-part')
    return screen
  }

  test('a number leads to its line, Space to her page', async () => {
    const screen = await animals()
    await screen.type('412')
    expect(screen.line('►')).toContain('412')
    await screen.press('her-page')
    expect(screen.text).toContain('412  Buttercup')
  })

  test('a new animal; a number that is taken is refused', async () => {
    const screen = await animals()
    await screen.press('add-entry')
    await retype(screen, '412')
    await screen.press('accept')
    expect(screen.text).toContain('412 is the number of another animal')
    await retype(screen, '9001')
    await screen.press('next-field')
    await retype(screen, 'Primrose')
    await screen.press('accept')
    expect(book(screen).byNumber.get('9001')?.record).toMatchObject({ name: 'Primrose', sex: 'F' })
  })

  test('changing her record voids the old one in the same action', async () => {
    const screen = await animals()
    await screen.type('412')
    await screen.press('change-entry', 'next-field')
    await retype(screen, 'Marigold')
    await screen.press('accept')
    expect(book(screen).byNumber.get('412')?.record.name).toBe('Marigold')
    await screen.press('undo')
    expect(book(screen).byNumber.get('412')?.record.name).toBe('Buttercup')
  })
})
