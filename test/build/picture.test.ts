/** The picture of the README, drawn from the real screen on the sample herd. `npm run picture` draws it anew. */
import { afterEach, expect, test } from 'vitest'
import { below } from '../../build/paths.ts'
import { pictureOf } from '../../build/picture/svg.ts'
import { isoDay } from '../../source/breeding/day.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { closeAll, openOn } from '../terminal/support/screen.ts'

afterEach(closeAll)

const columns = 120
const rows = 30

test('the picture of the README shows the morning list as it is drawn now', async () => {
  const opened = await openHerdFile(below('sample-herd/sample-herd.json'))
  if (!opened.ok) throw new Error('the sample herd cannot be opened')
  const { facts } = opened.value
  await opened.value.close()
  const now = { day: isoDay('2026-05-28'), time: '05:15' }
  const screen = await openOn(facts, { now, columns, rows, by: 'MK' })
  await screen.press('next-section', 'usual', 'usual')
  await screen.reckoned()
  const cells = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_unused, column) => screen.cell(column, row)),
  )
  await expect(pictureOf(cells, `The morning list of the sample herd:\n${screen.text}`)).toMatchFileSnapshot(
    below('docs/morning.svg'),
  )
})
