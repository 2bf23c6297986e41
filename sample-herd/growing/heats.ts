/** Heats of a day: who comes on heat, who is seen, what is done about it. */
import { plusDays } from '../../source/breeding/day.ts'
import { type Animal, isMaiden, isYoung } from './animal.ts'
import { BULL_FINDS, conceptionRate, cycleLength, returnAfterService } from './biology.ts'
import { daysCalved, type Farm, tell } from './farm.ts'
import { people } from './names.ts'
import { conceive } from './pregnancies.ts'
import { wallTime } from './recorder.ts'
import type { Plan } from './seasons.ts'

/** How well heats are seen: tail paint before the mating start, paint and sharp eyes in the weeks of AI. */
const SEEN_BEFORE = 0.85
const SEEN_IN_AI = 0.92
/** Paint rubbed off for nothing, per animal and day. */
const FALSE_HEAT = 0.0011

/** The heats of one animal on one day. */
export function heatsOf(farm: Farm, animal: Animal, plan: Plan | undefined): void {
  const { day, random } = farm
  const s = plan === undefined ? Number.NEGATIVE_INFINITY : day - plan.start
  const before = s >= -33 && s < 0
  const ai = plan !== undefined && s >= 0 && s <= plan.aiEnd
  const seen = ai ? SEEN_IN_AI : before ? SEEN_BEFORE : 0
  const young = isYoung(animal)
  if (animal.nextHeat === day) {
    animal.nextHeat = plusDays(day, cycleLength(random, young))
    if (animal.bull !== undefined) meetsBull(farm, animal)
    else if (random.chance(seen)) seesHeat(farm, animal, plan, ai, false)
  } else if (animal.pregnancy?.heatOn === day && random.chance(seen)) {
    seesHeat(farm, animal, plan, ai, true)
  } else if (ai && animal.parity + Number(animal.ready) > 0 && random.chance(FALSE_HEAT)) {
    seesHeat(farm, animal, plan, ai, true)
  }
}

function meetsBull(farm: Farm, animal: Animal): void {
  const { day, random } = farm
  if (animal.pregnancy !== undefined || !random.chance(BULL_FINDS)) return
  const bull = animal.bull as string
  if (random.chance(0.2)) {
    tell(farm, animal, { kind: 'service', natural: true, sire: bull }, { minute: 9 * 60, by: people.milker })
    animal.services.push(day)
  }
  if (random.chance(conceptionRate(isMaiden(animal), undefined)))
    conceive(farm, animal, { day, sire: bull, straw: undefined })
  else animal.nextHeat = plusDays(day, returnAfterService(random, isYoung(animal)))
}

interface Moment {
  readonly time: string
  readonly minute: number
  readonly by: string
  /** Milking at which she is served: today's first or last, or tomorrow's first. */
  readonly serve: 'morning' | 'evening' | 'tomorrow'
}

/** When a heat is seen: mostly at milking, the rest in the field. */
function momentOfHeat(farm: Farm): Moment {
  const { random } = farm
  const drawn = random.share()
  if (drawn < 0.52)
    return { time: 'morning', minute: random.whole(6 * 60, 7 * 60 + 30), by: people.milker, serve: 'morning' }
  if (drawn < 0.78)
    return {
      time: 'evening',
      minute: random.whole(16 * 60, 17 * 60 + 20),
      by: people.relief,
      serve: 'evening',
    }
  const midday = random.chance(0.35)
  const minute = midday ? random.whole(10 * 60, 14 * 60) : random.whole(18 * 60, 21 * 60 + 30)
  return {
    time: wallTime(minute),
    minute: minute + 5,
    by: people.farmer,
    serve: midday ? 'evening' : 'tomorrow',
  }
}

function seesHeat(farm: Farm, animal: Animal, plan: Plan | undefined, ai: boolean, falseHeat: boolean): void {
  const { random, day } = farm
  const moment = momentOfHeat(farm)
  const suspect = random.chance(falseHeat ? 0.4 : 0.02)
  const drawn = random.share()
  const how = drawn < 0.55 ? 'paint' : drawn < 0.9 ? 'standing' : drawn < 0.97 ? 'mucus' : 'other'
  if (day === farm.lastMorning && moment.serve !== 'morning') return
  tell(
    farm,
    animal,
    {
      kind: 'heat',
      time: moment.time,
      how,
      certainty: suspect ? 'suspect' : 'sure',
      ...(how === 'mucus' && random.chance(0.4) ? { signs: 'clear string' } : {}),
    },
    moment,
  )
  if (suspect) return
  if (
    ai &&
    maybeServed(farm, animal) &&
    (moment.serve !== 'tomorrow' || day < (plan?.start ?? 0) + (plan?.aiEnd ?? 0))
  ) {
    farm.waiting.push({
      animal,
      falseHeat,
      day: moment.serve === 'tomorrow' ? plusDays(day, 1) : day,
      session: moment.serve === 'evening' ? 'evening' : 'morning',
    })
  }
  animal.heatsSeen.push(day)
}

/** Whether the farmer would serve an animal that he sees in heat. */
function maybeServed(farm: Farm, animal: Animal): boolean {
  const { day, random } = farm
  if (animal.barred || animal.leftToBull || animal.inCalfSince !== undefined || animal.chances >= 2)
    return false
  if (animal.heldUntil !== undefined && animal.heldUntil >= day) return false
  if (isMaiden(animal) && !animal.ready) return false
  const calved = isMaiden(animal) ? 999 : (daysCalved(animal, day) ?? 0)
  if (calved < 42) return calved >= 36 && random.chance(0.15)
  const last = animal.services.at(-1)
  return last === undefined || day - last > 17 || random.chance(0.6)
}
