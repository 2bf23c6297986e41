import { expect, test } from 'vitest'
import { ticksRow } from '../../source/breeding/done.ts'
import type { FactKind } from '../../source/breeding/facts.ts'
import { type Section, sections } from '../../source/breeding/sections.ts'

const kinds: readonly FactKind[] = [
  'service',
  'to-bull',
  'hold',
  'looked',
  'check',
  'heat',
  'examined',
  'left',
  'bar',
  'note',
  'calving',
]

/** What ticks a row by its kind alone; a heat may move her, and the first and sixth sections ask for more. */
const ticking: Readonly<Record<Section, string>> = {
  'take-care': '',
  serve: 'service to-bull hold left bar',
  'second-service': 'service to-bull hold left bar',
  'repeat-heat-watch': 'service looked check left bar',
  'pregnancy-check': 'check left bar',
  'sweep-bull': '',
  'no-heat-seen': 'service hold check examined left bar',
  'heat-record': 'service hold check examined left bar',
}

test.each(sections)('%s is ticked by these kinds alone', (section) => {
  expect(kinds.filter((kind) => ticksRow(section, kind)).join(' ')).toBe(ticking[section])
})
