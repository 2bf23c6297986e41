/** Marks of an animal that go on over calvings and losses: block, bar, hold, left to the bull, examined, score. */
import type { AnimalRecord } from './book.ts'
import { type Day, isoDay } from './day.ts'
import type { AnimalFact, ExaminedFact } from './facts.ts'

interface Marks {
  block: string | undefined
  barred: boolean
  onHold: boolean
  leftOn: Day | undefined
  toBull: Day[]
  examinedOn: Day | undefined
  /** Planned for today. */
  fixedTime: ExaminedFact | undefined
  /** The latest day before today for which one was planned. */
  plannedBefore: Day | undefined
  driedOff: Day | undefined
  condition: { day: Day; value: number } | undefined
  todays: AnimalFact[]
}

/** Her marks on the morning of a day; of the day itself a changed block counts. */
export function marksOn(animal: AnimalRecord, today: Day): Marks {
  const marks: Marks = {
    block: undefined,
    barred: false,
    onHold: false,
    leftOn: undefined,
    toBull: [],
    examinedOn: undefined,
    fixedTime: undefined,
    plannedBefore: undefined,
    driedOff: undefined,
    condition: undefined,
    todays: [],
  }
  /** A hold without an end lasts until the next hold says when it ended. */
  let openHold = false
  /** Services planned by the vet; a new plan takes the place of those still to come. */
  let plans: readonly { on: Day; fact: ExaminedFact }[] = []
  for (const { fact, day } of animal.happenings) {
    if (day > today) break
    if (day === today) marks.todays.push(fact)
    if (fact.kind === 'block') marks.block = fact.block
    if (day === today) continue
    if (fact.kind === 'bar') marks.barred = true
    else if (fact.kind === 'unbar') marks.barred = false
    else if (fact.kind === 'hold') {
      openHold = fact.until === undefined
      if (!openHold) marks.onHold ||= isoDay(fact.until as string) >= today
    } else if (fact.kind === 'left') marks.leftOn ??= day
    else if (fact.kind === 'to-bull') marks.toBull.push(day)
    else if (fact.kind === 'dry') marks.driedOff = day
    else if (fact.kind === 'score') marks.condition = { day, value: fact.condition }
    else if (fact.kind === 'examined') {
      marks.examinedOn = day
      if (fact.serveOn !== undefined) {
        const on = isoDay(fact.serveOn)
        plans = [...plans.filter((plan) => plan.on < day), { on, fact }]
      }
    }
  }
  marks.onHold ||= openHold
  for (const { on, fact } of plans) {
    if (on === today) marks.fixedTime = fact
    else if (on < today && on > (marks.plannedBefore ?? -Infinity)) marks.plannedBefore = on
  }
  return marks
}
