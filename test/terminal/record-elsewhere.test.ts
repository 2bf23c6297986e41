/** Recording from the lists of other screens, with the keys of the morning list. */
import { afterEach, expect, test } from 'vitest'
import { now } from './support/herd.ts'
import type { MemoryHerd } from './support/memory-herd.ts'
import { closeAll, openOn, type Screen } from './support/screen.ts'
import { seasonHerd } from './support/season-herd.ts'

afterEach(closeAll)

const recorded = (screen: Screen) => (screen.herd as MemoryHerd).state.facts.slice(seasonHerd().length)

/** The animals who are probably empty. */
async function empties(): Promise<Screen> {
  const screen = await openOn(seasonHerd(), { now, by: 'MK' })
  await screen.press('go', 'go-season', 'previous-part', 'previous-part')
  await screen.reckoned()
  return screen
}
const pointed = (screen: Screen): string => /► (\d+)/.exec(screen.line('► '))?.[1] ?? ''

test('among the empties of the season: a heat and a note of the animal pointed at', async () => {
  const screen = await empties()
  const number = pointed(screen)
  expect(screen.lines.at(-1)).toContain('m record')
  await screen.press('heat-now')
  expect(screen.text).toContain(`${number}: heat seen (standing), 05:15.`)
  await screen.press('note')
  expect(screen.text).toContain(`━━ Note: ${number}`)
  await screen.type('lame')
  await screen.press('accept')
  const [heat, note] = recorded(screen)
  expect([heat?.kind, note?.kind]).toEqual(['heat', 'note'])
  expect(heat?.about).toBe(note?.about)
  expect(screen.session.desk.book.animals.get(heat?.about ?? '')?.number).toBe(number)
  await screen.press('undo')
  expect(screen.text).toContain('Taken back')
})

test('among the animals behind a figure: all that can be recorded, by its key', async () => {
  const screen = await openOn(seasonHerd(), { now, by: 'MK' })
  await screen.press('go', 'go-season')
  await screen.reckoned()
  await screen.press('look-into')
  const number = pointed(screen)
  await screen.press('menu')
  expect(screen.text).toContain(number)
  await screen.press('to-bull')
  await screen.press('accept')
  expect(recorded(screen).map(({ kind }) => kind)).toEqual(['to-bull'])
})

test('where no animal is pointed at nothing is recorded, whatever the morning list points at', async () => {
  const screen = await openOn(seasonHerd(), { now, by: 'MK' })
  await screen.press('go', 'go-season')
  await screen.reckoned()
  expect(screen.lines.at(-1)).not.toContain('m record')
  await screen.press('heat-now', 'usual', 'note')
  expect(recorded(screen)).toEqual([])
  expect(screen.text).toContain('Point at an animal or type her number first.')
})

test('on the bulls: a bull’s service of the number typed; a hold of the bull pointed at, and no heat of his', async () => {
  const screen = await openOn(seasonHerd(), { now, by: 'MK' })
  const number = [...screen.session.desk.book.animals.values()].find(
    ({ record }) => record.sex === 'F',
  )?.number
  await screen.press('go', 'go-bulls')
  await screen.reckoned()
  await screen.type(number ?? '')
  await screen.press('bull-service')
  expect(screen.text).toContain(`━━ Served by a bull: ${number}`)
  await screen.press('accept')
  expect(recorded(screen)).toMatchObject([{ kind: 'service', natural: true }])
  await screen.press('last')
  const bull = pointed(screen)
  await screen.press('heat-now')
  expect(recorded(screen)).toHaveLength(1)
  await screen.press('hold')
  expect(screen.text).toContain(`: ${bull}`)
})
