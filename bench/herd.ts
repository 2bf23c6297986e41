/**
 * A herd of any size for measuring, from a seed: two thirds in the spring block in its fourth week of AI, the rest
 * in the autumn block in calf. Plain on purpose, quick to make at 100,000 cows; the herd that behaves as cows do
 * stands in sample-herd.
 */

import { type Random, randomFrom } from '../sample-herd/growing/random.ts'
import { type Recorder, recorderFrom } from '../sample-herd/growing/recorder.ts'
import { type Day, dayIso, isoDay, plusDays } from '../source/breeding/day.ts'
import { type Fact, HERD, type NewFact, type StrawKind } from '../source/breeding/facts.ts'

/** The morning that the herd is made for, unless another is asked for: every date below is moved along with it. */
export const benchDay: Day = isoDay('2026-05-28')

/** The day of a date below, moved to the morning that the herd is for. */
type Calendar = (date: string) => Day

/** Facts told of each animal, her own record among them. */
export const factsPerAnimal = 15

const gestationDays = 282
const sires = ['SB01', 'SB02', 'SB03', 'SB04', 'SB05', 'SB06', 'SB07', 'SB08']
const strawKinds: readonly StrawKind[] = ['conventional', 'sexed', 'beef']

type Told = Omit<NewFact, 'about' | 'date'> & Record<string, unknown>

/** Writes down facts about one animal, or of the herd. */
type Tell = (day: Day, told: Told) => void

function teller(recorder: Recorder, random: Random, about: string): Tell {
  return (day, told) => {
    const written = { day, minute: random.whole(330, 1200), by: random.pick(['AB', 'CD']) }
    recorder.record({ about, date: dayIso(day), ...told } as NewFact, written)
  }
}

function tellHerd(tell: Tell, at: Calendar): void {
  const start = at('2025-01-02')
  tell(start, { kind: 'farm', name: 'Measuring Farm', zone: 'Europe/Dublin', milkings: ['05:30', '15:30'] })
  for (const [block, matingStart] of [
    ['spring', '2025-05-01'],
    ['autumn', '2025-11-24'],
    ['spring', '2026-05-01'],
    ['autumn', '2026-11-23'],
  ] as const)
    tell(start, { kind: 'season', block, matingStart: dayIso(at(matingStart)), aiWeeks: 6, bullWeeks: 3 })
  for (const sire of sires)
    for (const straw of strawKinds)
      tell(at('2026-04-20'), {
        kind: 'stock-take',
        sire,
        straw,
        breed: 'HO',
        flask: '1',
        canister: '1',
        count: 200,
      })
}

/** Heats and AI services from a first heat on, a cycle apart, as long as they lie before a day. */
function tellServices(tell: Tell, random: Random, first: Day, count: number, before: Day): Day {
  let day = first
  let last = first
  for (let order = 0; order < count && day < before; order += 1) {
    tell(day, { kind: 'heat', time: '06:10', how: 'activity', certainty: 'sure' })
    tell(day, { kind: 'service', time: 'evening', sire: random.pick(sires), straw: random.pick(strawKinds) })
    last = day
    day = plusDays(day, random.whole(18, 24))
  }
  return last
}

/** A breeding year that is over: served, checked in calf, dried off, calved. Returns the day she calved. */
function tellPastYear(tell: Tell, random: Random, matingStart: Day, morning: Day): Day {
  const services = random.chance(0.4) ? 2 : 1
  const conceived = tellServices(tell, random, plusDays(matingStart, random.whole(0, 20)), services, morning)
  tell(plusDays(conceived, 35), { kind: 'check', method: 'ultrasound', result: 'pregnant', foetalAge: 35 })
  tell(plusDays(conceived, gestationDays - 60), { kind: 'dry' })
  const calved = plusDays(conceived, gestationDays + random.whole(-8, 8))
  tell(calved, {
    kind: 'calving',
    ease: random.whole(1, 3),
    calves: 1,
    dead: 0,
    calfSex: random.pick(['F', 'M']),
  })
  return calved
}

/** This spring: seen before the mating start or not, then served once, twice, not yet, or in heat this morning. */
function tellThisSpring(tell: Tell, random: Random, matingStart: Day, morning: Day): void {
  if (random.chance(0.8))
    tell(plusDays(matingStart, -random.whole(2, 20)), { kind: 'heat', how: 'paint', certainty: 'sure' })
  const fate = random.share()
  if (fate < 0.08) tell(morning, { kind: 'heat', time: '05:10', how: 'standing', certainty: 'sure' })
  else if (fate < 0.85)
    tellServices(tell, random, plusDays(matingStart, random.whole(0, 26)), random.whole(1, 2), morning)
  if (random.chance(0.3)) tell(plusDays(matingStart, random.whole(5, 26)), { kind: 'looked' })
}

function tellAnimal(recorder: Recorder, random: Random, place: number, at: Calendar): void {
  const morning = at(dayIso(benchDay))
  const id = `cow${String(place).padStart(9, '0')}`
  let told = 0
  const write = teller(recorder, random, id)
  const tell: Tell = (day, fact) => {
    told += 1
    write(day, fact)
  }
  const spring = random.chance(0.67)
  const maiden = spring && random.chance(0.2)
  tell(at('2025-01-03'), {
    kind: 'animal',
    number: String(place + 1),
    officialId: `XD${String(place + 1).padStart(10, '0')}`,
    sex: 'F',
    born: dayIso(plusDays(at(maiden ? '2024-02-20' : '2020-02-20'), random.whole(0, 40))),
    breed: 'HO',
    sire: random.pick(sires),
    ...(place > 20 ? { dam: String(random.whole(1, place)) } : {}),
    block: spring ? 'spring' : 'autumn',
    lactation: maiden ? 0 : random.whole(1, 5),
    ...(maiden ? { ready: true } : {}),
    plan: 'dairy',
  })
  if (spring && !maiden) {
    const calved = tellPastYear(tell, random, at('2025-05-01'), morning)
    tell(plusDays(calved, 30), { kind: 'score', condition: 3 })
  }
  if (spring) tellThisSpring(tell, random, at('2026-05-01'), morning)
  else {
    tell(plusDays(at('2025-09-01'), random.whole(0, 50)), { kind: 'calving', ease: 1, calfSex: 'F' })
    const served = tellServices(tell, random, plusDays(at('2025-11-24'), random.whole(0, 20)), 2, morning)
    tell(plusDays(served, 35), { kind: 'check', method: 'ultrasound', result: 'pregnant' })
  }
  while (told < factsPerAnimal)
    tell(plusDays(at('2025-06-01'), random.whole(0, 355)), { kind: 'note', note: 'milked and seen' })
}

/**
 * The facts of a herd, in the order they were recorded.
 *
 * @param cows 1-1,000,000; each has 15 facts, and the herd as a whole 29
 * @param morning the day that it is in its fourth week of AI
 * @param seed any whole number; another makes another herd
 * @example benchHerd(500).length // 7529
 */
export function benchHerd(cows: number, morning: Day = benchDay, seed = 2): Fact[] {
  const at: Calendar = (date) => plusDays(isoDay(date), morning - benchDay)
  const recorder = recorderFrom(1)
  const random = randomFrom(seed)
  tellHerd(teller(recorder, random, HERD), at)
  for (let place = 0; place < cows; place += 1) tellAnimal(recorder, random, place, at)
  return recorder.facts()
}
