/** Services by AI: the straw, the record, and what comes of it. */
import { dayIso, plusDays } from '../../source/breeding/day.ts'
import type { SessionName } from '../../source/breeding/facts.ts'
import { type Animal, isMaiden, isYoung } from './animal.ts'
import { conceptionRate, PREGNANCY_ENDED_BY_SERVICE, returnAfterService } from './biology.ts'
import { type Farm, ofBlock, tell } from './farm.ts'
import { people } from './names.ts'
import { conceive, loses } from './pregnancies.ts'
import { wallTime } from './recorder.ts'
import { type Plan, planOn } from './seasons.ts'
import { kindFor, takeStraw } from './straws.ts'

/** What a fixed-time service is worth against one on a heat. */
const FIXED_TIME_FACTOR = 0.8
/** Now and then a service is entered for the wrong cow, and put right the same day. */
const WRONG_COW = 0.006

/** Does the services that wait for today. */
export function serveWaiting(farm: Farm): void {
  if (farm.day === farm.lastMorning) return
  const today = farm.waiting.filter((one) => one.day === farm.day)
  farm.waiting = farm.waiting.filter((one) => one.day > farm.day)
  for (const { animal, session, falseHeat } of today)
    if (!animal.gone && !animal.leftToBull) serve(farm, animal, session, { falseHeat })
}

/** Does the fixed-time services that the vet planned for today. */
export function serveFixedTime(farm: Farm, animal: Animal): void {
  if (animal.fixedTime !== farm.day || farm.day === farm.lastMorning) return
  animal.fixedTime = undefined
  if (animal.services.length === 0) serve(farm, animal, 'morning', { fixedTime: true })
}

function serve(
  farm: Farm,
  animal: Animal,
  session: SessionName,
  how: { falseHeat?: boolean; fixedTime?: boolean },
): void {
  const { random, day } = farm
  const plan = planOn(animal.block, day)
  if (plan === undefined) return
  const shelf = takeStraw(farm, animal, kindFor(farm, animal, plan), isMaiden(animal))
  const minute =
    session === 'morning' ? random.whole(7 * 60 + 40, 8 * 60 + 50) : random.whole(17 * 60, 18 * 60)
  const inseminator = random.chance(0.65) ? people.farmer : people.milker
  const service = {
    kind: 'service',
    time: wallTime(minute),
    sire: shelf.bull.code,
    straw: shelf.lot.straw,
    batch: shelf.batch,
    inseminator,
    session,
  } as const
  const written = { minute: minute + 10, by: inseminator }
  if (random.chance(WRONG_COW)) entersWrongCow(farm, animal, plan, service, written)
  tell(farm, animal, service, written)
  animal.services.push(day)
  animal.chances += 1
  const { straw } = shelf.lot
  if (animal.pregnancy !== undefined) {
    if (random.chance(PREGNANCY_ENDED_BY_SERVICE)) loses(farm, animal)
    return
  }
  if (how.falseHeat === true) return
  const rate = conceptionRate(isMaiden(animal), straw) * (how.fixedTime === true ? FIXED_TIME_FACTOR : 1)
  if (random.chance(rate)) conceive(farm, animal, { day, sire: shelf.bull.code, straw })
  else animal.nextHeat = plusDays(day, returnAfterService(random, isYoung(animal)))
}

function entersWrongCow(
  farm: Farm,
  animal: Animal,
  plan: Plan,
  service: Parameters<typeof tell>[2],
  written: { minute: number; by: string },
): void {
  const other = farm.random.pick(ofBlock(farm, plan.block).filter((one) => one !== animal && one.parity > 0))
  const wrong = tell(farm, other, service, { ...written, minute: written.minute - 2 })
  farm.recorder.record(
    {
      about: other.id,
      date: dayIso(farm.day),
      kind: 'correction',
      voids: wrong,
      reason: `it was ${animal.number}`,
    },
    { day: farm.day, minute: written.minute, by: written.by },
  )
}
