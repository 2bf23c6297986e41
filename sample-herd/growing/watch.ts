/** The watch for returns, ticked each morning: since the spring season of 2026 the farm writes down when it sees none. */
import { isoDay } from '../../source/breeding/day.ts'
import { type Farm, tell } from './farm.ts'
import { people } from './names.ts'

const SINCE = isoDay('2026-03-01')
const FIRST = 18
const LAST = 24
/** Watched, and written down. */
const WRITTEN = 0.85

export function lookForReturns(farm: Farm): void {
  if (farm.day < SINCE) return
  const action = farm.recorder.action()
  for (const animal of farm.animals) {
    const last = animal.services.at(-1)
    if (animal.gone || last === undefined || animal.inCalfSince !== undefined || animal.bull !== undefined)
      continue
    if (animal.chances === 0) continue
    const k = farm.day - last
    if (k < FIRST || k > LAST || animal.heatsSeen.some((seen) => seen > last)) continue
    if (!farm.random.chance(WRITTEN)) continue
    tell(
      farm,
      animal,
      { kind: 'looked', time: 'morning' },
      { minute: 7 * 60 + 50, by: people.milker, action },
    )
  }
}
