/** The work of the year: what is done on which day of a season, and through the year. */
import { dayIso, plusDays } from '../../source/breeding/day.ts'
import { HERD } from '../../source/breeding/facts.ts'
import { type Animal, isMaiden } from './animal.ts'
import { takeOut, turnOut } from './bulls.ts'
import { type Farm, ofBlock, tell } from './farm.ts'
import { barSome, sellSurplus, settleEmpties } from './leaving.ts'
import { notes, people } from './names.ts'
import { enterMaidens, markReady } from './rearing.ts'
import { RESCAN_AFTER, scanBlock, scanUnsure } from './scanning.ts'
import { PLANNED_AHEAD, type Plan, plans, VET_DAYS } from './seasons.ts'
import { buyStraws, spoilStraw } from './straws.ts'
import { lookAtHardCalvings, lookAtNotSeen } from './vet.ts'

const jobs: readonly {
  readonly on: (plan: Plan) => number
  readonly does: (farm: Farm, plan: Plan) => void
}[] = [
  { on: () => PLANNED_AHEAD, does: planSeason },
  { on: () => -130, does: enterMaidens },
  { on: () => -36, does: newChances },
  { on: () => -30, does: markReady },
  { on: () => VET_DAYS.hardCalvings, does: lookAtHardCalvings },
  { on: () => -20, does: barSome },
  { on: () => -15, does: scoreBlock },
  { on: () => -12, does: buyStraws },
  { on: () => VET_DAYS.notSeen, does: lookAtNotSeen },
  { on: () => 9, does: holdSome },
  { on: () => 12, does: (farm) => spoilStraw(farm) },
  { on: () => VET_DAYS.stillNotSeen, does: lookAtNotSeen },
  { on: () => 20, does: leaveSomeToBull },
  { on: (plan) => plan.aiEnd + 1, does: turnOut },
  { on: (plan) => plan.bullEnd + 1, does: takeOut },
  { on: (plan) => finalDay(plan) + 16, does: settleEmpties },
  { on: () => 205, does: sellSurplus },
]

const finalDay = (plan: Plan): number => (plan.visits.at(-1) ?? plan.start) - plan.start

/** Does today's work of every season, and what comes round through the year. */
export function workOfToday(farm: Farm): void {
  for (const plan of plans) {
    const s = farm.day - plan.start
    for (const job of jobs) if (job.on(plan) === s) job.does(farm, plan)
    if (plan.visits.includes(farm.day)) scanBlock(farm, plan)
    if (plan.visits.includes(plusDays(farm.day, -RESCAN_AFTER))) scanUnsure(farm, plan)
  }
  if (farm.day % 14 === 3) measureNitrogen(farm)
  if (farm.random.chance(0.02)) writeNote(farm)
}

export function planSeason(farm: Farm, plan: Plan): void {
  farm.recorder.record(
    {
      about: HERD,
      date: dayIso(farm.day),
      kind: 'season',
      block: plan.block,
      matingStart: dayIso(plan.start),
      aiWeeks: plan.aiWeeks,
      bullWeeks: plan.bullWeeks,
      scanDates: plan.visits.map(dayIso),
    },
    { day: farm.day, minute: 20 * 60, by: people.farmer },
  )
}

function newChances(farm: Farm, plan: Plan): void {
  for (const animal of ofBlock(farm, plan.block)) {
    animal.chances = 0
    animal.leftToBull = false
  }
}

function scoreBlock(farm: Farm, plan: Plan): void {
  const action = farm.recorder.action()
  for (const animal of ofBlock(farm, plan.block)) {
    if (isMaiden(animal) && !animal.ready) continue
    if (animal.barred) continue
    scoreAnimal(farm, animal, farm.random.normal(isMaiden(animal) ? 3.4 : 3, 0.28), action)
  }
}

function scoreAnimal(farm: Farm, animal: Animal, drawn: number, action?: string): void {
  animal.condition = Math.min(Math.max(Math.round(drawn * 4) / 4, 2), 4)
  tell(
    farm,
    animal,
    { kind: 'score', condition: animal.condition },
    { minute: 10 * 60 + 30, ...(action === undefined ? {} : { action }) },
  )
}

/** Dries off the cows whose time has come: 60 days before the date that the farm expects. */
export function dryOff(farm: Farm, animal: Animal): void {
  if (animal.isDry || animal.parity === 0 || animal.inCalfSince === undefined) return
  const early = animal.parity === 1 || animal.condition < 3 ? 84 : 60
  if (farm.day - animal.inCalfSince < 281 - early || farm.day % 7 !== 0) return
  animal.isDry = true
  tell(farm, animal, { kind: 'dry' }, { minute: 8 * 60 + 30 })
}

function holdSome(farm: Farm, plan: Plan): void {
  const cows = ofBlock(farm, plan.block).filter((one) => one.parity > 0 && one.inCalfSince === undefined)
  for (let i = 0; i < Math.round(cows.length / 40); i += 1) {
    const cow = farm.random.pick(cows)
    const until = plusDays(farm.day, farm.random.whole(5, 14))
    cow.heldUntil = until
    const reason = farm.random.pick(['mastitis, under treatment', 'lame', 'discharge'])
    tell(farm, cow, { kind: 'hold', until: dayIso(until), reason }, { minute: 9 * 60 })
  }
}

function leaveSomeToBull(farm: Farm, plan: Plan): void {
  const cows = ofBlock(farm, plan.block).filter(
    (one) =>
      one.parity > 3 &&
      one.inCalfSince === undefined &&
      !one.barred &&
      one.services.length === 0 &&
      one.fixedTime === undefined,
  )
  for (const cow of cows.slice(0, 2)) {
    cow.leftToBull = true
    tell(farm, cow, { kind: 'to-bull' }, { minute: 9 * 60 })
  }
}

/** Depth of nitrogen in both flasks; filled up when it is low. */
function measureNitrogen(farm: Farm): void {
  for (const [flask, full, loss] of [
    ['house', 44, 34],
    ['travel', 31, 19],
  ] as const) {
    const since = (farm.day + (flask === 'house' ? 0 : 21)) % 56
    const depthCm = Math.round(full - (since / 56) * loss + farm.random.normal(0, 0.8))
    farm.recorder.record(
      { about: HERD, date: dayIso(farm.day), kind: 'nitrogen', flask, depthCm },
      { day: farm.day, minute: 9 * 60 + 15, by: people.farmer },
    )
  }
}

function writeNote(farm: Farm): void {
  const cows = farm.animals.filter((one) => !one.gone && one.parity > 0)
  tell(farm, farm.random.pick(cows), { kind: 'note', note: farm.random.pick(notes) }, { minute: 18 * 60 })
}
