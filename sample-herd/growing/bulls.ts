/** The sweep bulls: turned out on the day after the last AI, taken out when their weeks are over. */
import { dayIso, isoDay } from '../../source/breeding/day.ts'
import type { Animal } from './animal.ts'
import { isMaiden } from './animal.ts'
import { type Farm, ofBlock, tell } from './farm.ts'
import { people } from './names.ts'
import type { Plan } from './seasons.ts'
import { inYear, sweepBulls } from './sires.ts'

/** Every animal of the block that is not known in calf goes with a bull. */
export function turnOut(farm: Farm, plan: Plan): void {
  const bulls = inYear(sweepBulls, plan.year)
  const youngest = bulls.at(-1)
  const action = farm.recorder.action()
  let turn = 0
  for (const animal of ofBlock(farm, plan.block)) {
    if (animal.inCalfSince !== undefined || animal.barred || (isMaiden(animal) && !animal.ready)) continue
    const older = bulls.slice(0, -1)
    const bull = isMaiden(animal) ? youngest : older[turn % older.length]
    if (bull === undefined) continue
    turn += 1
    animal.bull = bull.code
    tell(farm, animal, { kind: 'with-bull', bull: bull.code }, { minute: 10 * 60, by: people.farmer, action })
  }
}

export function takeOut(farm: Farm, plan: Plan): void {
  const action = farm.recorder.action()
  for (const animal of ofBlock(farm, plan.block)) leavesBull(farm, animal, action)
}

/** A bull is sold in the spring after his last season. */
export function bullsLeave(farm: Farm): void {
  for (const { code, to = 0 } of sweepBulls) {
    const about = farm.bulls.get(code)
    if (about === undefined || farm.day !== isoDay(`${to + 1}-04-01`)) continue
    farm.recorder.record(
      { about, date: dayIso(farm.day), kind: 'left', reason: 'sold' },
      { day: farm.day, minute: 11 * 60, by: people.farmer },
    )
  }
}

function leavesBull(farm: Farm, animal: Animal, action: string): void {
  if (animal.bull === undefined) return
  tell(farm, animal, { kind: 'from-bull', bull: animal.bull }, { minute: 10 * 60, by: people.farmer, action })
  animal.bull = undefined
}
