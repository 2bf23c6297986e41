/** The scanning visit on the screen: how it is opened and typed in, and what it recorded. */
import type { Fact } from '../../../source/breeding/facts.ts'
import type { KeyMeaning } from '../../../source/screens/words/keys.ts'
import { now } from './herd.ts'
import type { MemoryHerd } from './memory-herd.ts'
import { openOn, type Screen, type Settings } from './screen.ts'
import { visitHerd } from './visit.ts'

/** Every fact of the herd on the screen. */
export const factsOf = (screen: Screen): readonly Fact[] => (screen.herd as MemoryHerd).state.facts
/** What was recorded about animals; what was kept to be settled, and is settled, is asked for by name. */
export function recorded(screen: Screen, before: readonly Fact[] = visitHerd()): readonly Fact[] {
  const since = factsOf(screen).slice(before.length)
  const kept = new Set(since.filter(({ kind }) => kind === 'kept-result').map(({ id }) => id))
  return since.filter((fact) => !kept.has(fact.id) && !(fact.kind === 'correction' && kept.has(fact.voids)))
}
/** What a fact says, without who recorded it and when. */
export const bare = ({ id: _id, at: _at, action: _action, by: _by, ...rest }: Fact) => rest

/** The scanning visit, opened from the list. */
export async function visit(facts: readonly Fact[] = visitHerd(), settings: Settings = {}): Promise<Screen> {
  const screen = await openOn(facts, { now, by: 'MK', ...settings })
  await screen.press('go', 'go-scanning')
  screen.pressed = 0
  return screen
}

/** Types a number, the keys of its result, an age, and Enter. */
export async function scan(screen: Screen, number: string, result: KeyMeaning, age = ''): Promise<void> {
  await screen.type(number)
  await screen.press(result)
  await screen.type(age)
  await screen.press('scan-enter')
}

/** The counts of a block as they stand on the screen. */
export const tally = (screen: Screen, block = 'spring'): readonly number[] =>
  [...screen.line(` ${block} `).matchAll(/\d+/g)].map(([count]) => Number(count))
