/** The moment at which something is done. The shell reads the clock; the reducer is told. */
import type { Day } from '../breeding/day.ts'

export interface Now {
  /** Today on the farm, in the farm's own time zone. */
  readonly day: Day
  /** Wall time on the farm, `HH:MM`. */
  readonly time: string
}
