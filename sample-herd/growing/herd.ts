/** Grows the herd day by day, from the first page of its book to the morning that it is shown on. */
import { type Day, isoDay, plusDays } from '../../source/breeding/day.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { bullsLeave } from './bulls.ts'
import type { Farm } from './farm.ts'
import { AUTUMN_SCAN, enterBull, foundFarm, scanFoundlings } from './founding.ts'
import { heatsOf } from './heats.ts'
import { leavingOfToday, overdueCow } from './leaving.ts'
import { pregnancyOfToday } from './pregnancies.ts'
import { randomFrom } from './random.ts'
import { recorderFrom } from './recorder.ts'
import { dryOff, workOfToday } from './routine.ts'
import { planOn } from './seasons.ts'
import { serveFixedTime, serveWaiting } from './serving.ts'
import { aiSires, sweepBulls } from './sires.ts'
import { strayBull } from './story/stray-bull.ts'
import { tellStory } from './story/tell.ts'
import { lookForReturns } from './watch.ts'

/** The seed of the sample herd. */
export const SEED = 75
/** First page of the herd book, and the morning that the herd is shown on. */
const FIRST_DAY = isoDay('2023-01-02')
export const LAST_MORNING = isoDay('2026-05-28')
const FIRST_NUMBER = 31

/**
 * Grows a herd.
 *
 * @param seed a whole number: the same seed gives the same facts
 * @returns its facts in the order they were written down, until early on the last morning
 */
export function growHerd(seed: number = SEED): Fact[] {
  const farm: Farm = {
    random: randomFrom(seed),
    recorder: recorderFrom(seed + 1),
    day: FIRST_DAY,
    lastMorning: LAST_MORNING,
    animals: [],
    calves: [],
    shelves: [],
    bulls: new Map(),
    waiting: [],
    nextNumber: FIRST_NUMBER,
  }
  foundFarm(farm)
  for (let day: Day = FIRST_DAY; day <= LAST_MORNING; day = plusDays(day, 1)) {
    farm.day = day
    oneDay(farm)
  }
  tellStory(farm)
  return farm.recorder.facts()
}

function oneDay(farm: Farm): void {
  const lastMorning = farm.day === farm.lastMorning
  for (const bull of [...aiSires, ...sweepBulls]) {
    if ((bull.from ?? 0) > 2023 && farm.day === isoDay(`${bull.from}-04-08`)) enterBull(farm, bull)
  }
  bullsLeave(farm)
  if (farm.day === AUTUMN_SCAN) scanFoundlings(farm)
  for (const animal of farm.animals) {
    if (animal.gone) continue
    pregnancyOfToday(farm, animal)
    heatsOf(farm, animal, planOn(animal.block, farm.day))
    if (lastMorning) continue
    serveFixedTime(farm, animal)
    overdueCow(farm, animal)
    dryOff(farm, animal)
    leavingOfToday(farm, animal)
  }
  serveWaiting(farm)
  if (lastMorning) return
  strayBull(farm)
  lookForReturns(farm)
  workOfToday(farm)
}
