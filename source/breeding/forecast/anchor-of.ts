/**
 * The last fact that fixes an animal's cycle, from her standing.
 */
import type { HerdBook } from '../book.ts'
import type { Service } from '../cycle.ts'
import type { Day } from '../day.ts'
import { gestationDays } from '../gestation.ts'
import { checkCountsFrom } from '../pregnancy.ts'
import { checkedEmpty, returned } from '../questions.ts'
import { PRE_MATING, type Season, seasonDay } from '../season.ts'
import { sireOf } from '../sire.ts'
import type { Standing } from '../standing.ts'
import type { Anchor, ServedBy } from './outlook.ts'

/** Where the forecast starts, and the day she will have calved where she is still to calve. */
interface Anchored {
  readonly anchor: Anchor
  readonly calves: Day | undefined
}

/** Straw kind of a service, or the bull. */
const servedBy = (service: Service | undefined): ServedBy =>
  service?.ai === true ? (service.straw ?? 'conventional') : 'natural'

const gestationOf = (service: Service, book: HerdBook): number =>
  gestationDays(service.sire === undefined ? {} : sireOf(book, service.sire), service.maiden, book.policy)

/** A calving to come on a day, or today where the day is past. */
function toCalve(standing: Standing, season: Season, due: Day): Anchored {
  const calves = due > standing.today ? due : standing.today
  return { anchor: { kind: 'calved', day: seasonDay(season, calves) }, calves }
}

const here = (anchor: Anchor): Anchored => ({ anchor, calves: undefined })

function inCalf(standing: Standing, season: Season, book: HerdBook): Anchored | undefined {
  const { pregnancy, due } = standing
  if (pregnancy === undefined) return undefined
  const { check, conception } = pregnancy
  // Where no service and no bull fits she conceived at the latest when the check could first tell it.
  const conceived =
    conception?.day ?? check.day - checkCountsFrom(check.fact.method, standing.maiden, book.policy)
  const gestation = due === undefined ? book.policy.defaultGestation : due - conceived
  if (conceived - season.matingStart < PRE_MATING)
    return toCalve(standing, season, (conceived + gestation) as Day)
  return here({
    kind: 'in-calf',
    conceived: conceived - season.matingStart,
    confirmed: seasonDay(season, check.day),
    by: servedBy(conception?.service),
    gestation,
  })
}

function served(standing: Standing, season: Season, book: HerdBook): Anchored | undefined {
  const service = standing.lastService
  if (service === undefined || returned(standing, book.policy.watchFrom)) return undefined
  const day = seasonDay(season, service.day)
  const gestation = gestationOf(service, book)
  if (day >= PRE_MATING || checkedEmpty(standing))
    return here({ kind: 'served', day, by: servedBy(service), gestation })
  // Served for an earlier season: she calves to it, or would have by now.
  const due = (service.day + gestation) as Day
  return standing.today - due <= book.policy.overdueDays ? toCalve(standing, season, due) : undefined
}

/**
 * The anchor of an animal's forecast, from what is known of her this morning.
 *
 * @param servedToday she stands under Serve or Second service
 * @param watchedFrom first season day on which the block was watched
 * @example anchorOf(standing, season, book, false, -35).anchor // { kind: 'heat', day: -7 }
 */
export function anchorOf(
  standing: Standing,
  season: Season,
  book: HerdBook,
  servedToday: boolean,
  watchedFrom: number,
): Anchored {
  const known = inCalf(standing, season, book)
  if (known !== undefined) return known
  if (servedToday) return here({ kind: 'serve-today' })
  const service = served(standing, season, book)
  if (service !== undefined) return service
  const heat = standing.heats.findLast((one) => one.sure && one.service === undefined)
  if (heat !== undefined) return here({ kind: 'heat', day: seasonDay(season, heat.day) })
  const { cycle, waitFrom } = standing
  if (cycle.openedBy === 'loss' && cycle.opened !== undefined && cycle.opened !== waitFrom)
    return here({ kind: 'heat', day: seasonDay(season, cycle.opened) })
  if (waitFrom !== undefined) return here({ kind: 'calved', day: seasonDay(season, waitFrom) })
  return here({ kind: 'anywhere', day: watchedFrom })
}
