/** The loop against animals simulated one by one, by other code. Seeds are fixed; the bar is four standard errors. */
import { expect, test } from 'vitest'
import { defaultRates, type Rates, serviceClass } from '../../../source/breeding/chances/rates.ts'
import type { StrawKind } from '../../../source/breeding/facts.ts'
import { forecastAnimal } from '../../../source/breeding/forecast/animal.ts'
import { conceivedChances } from '../../../source/breeding/forecast/conceived.ts'
import { type AnimalOutlook, type SeasonDays, strawOn } from '../../../source/breeding/forecast/outlook.ts'
import { cow, planFrom, seasonOn } from './cow.ts'

/** Mulberry32: small, seeded, good enough for some hundred thousand animals. */
function dice(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

interface Life {
  inCalfNow: boolean
  byAi: boolean
  atEnd: boolean
  taken: Record<StrawKind, number>
  services: number
}

function live(
  animal: AnimalOutlook,
  season: SeasonDays,
  rates: Rates,
  random: () => number,
): Life | undefined {
  const whole = ({ mean, sd, from, to }: { mean: number; sd: number; from: number; to: number }): number => {
    for (;;) {
      const normal = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
      const day = Math.round(mean + sd * normal)
      if (day >= from && day <= to) return day
    }
  }
  const cycle = (): number => whole({ ...rates.cycle, mean: animal.cycleMean })
  const afterService = (): number => (random() < rates.lateReturn.share ? whole(rates.lateReturn) : cycle())
  /** Age in days at which a pregnancy known at an age is lost; Infinity where it goes to term. */
  const lossAfter = (known: number): number => {
    for (const { from, to, lost } of rates.losses)
      for (let age = Math.max(from, known) + 1; age <= to; age += 1)
        if (random() < 1 - (1 - lost) ** (1 / (to - from))) return age
    return Number.POSITIVE_INFINITY
  }
  let used = animal.chancesUsed
  let heat = Number.POSITIVE_INFINITY
  let conceived: number | undefined
  let lostOn = Number.POSITIVE_INFINITY
  const conceive = (day: number, known = 0): void => {
    conceived = day
    lostOn = day + lossAfter(known)
  }
  const { anchor, emptyCheck } = animal
  /** The last AI service: in the AI weeks a heat too soon after it is let pass, and tells nothing. */
  let served = anchor.kind === 'served' && anchor.by !== 'natural' ? anchor.day : Number.NEGATIVE_INFINITY
  if (anchor.kind === 'in-calf') conceive(anchor.conceived, anchor.confirmed - anchor.conceived)
  else if (anchor.kind === 'served') {
    if (random() < rates.conception[serviceClass(animal.maiden, anchor.by)]) conceive(anchor.day)
    else heat = anchor.day + afterService()
  } else if (anchor.kind === 'heat') heat = anchor.day + cycle()
  else if (anchor.kind === 'calved') {
    const [most, slow] = rates.firstHeat
    if (most && slow) heat = anchor.day + whole(random() < most.share ? most : slow)
  } else if (anchor.kind === 'anywhere') {
    heat = anchor.day - 2000 - Math.floor(random() * 50)
    while (heat < anchor.day) heat += cycle()
  } else if (anchor.kind === 'evenly') heat = anchor.day + Math.floor(random() * anchor.days)
  else heat = season.today
  const life: Life = {
    inCalfNow: false,
    byAi: false,
    atEnd: false,
    taken: { conventional: 0, sexed: 0, beef: 0 },
    services: 0,
  }
  const first = Math.min(
    season.today,
    Number.isFinite(heat) ? heat : season.today,
    Number.isFinite(lostOn) ? lostOn : 0,
    emptyCheck?.on ?? 0,
  )
  for (let day = first; day <= season.lastBullDay; day += 1) {
    if (day - 1 === emptyCheck?.on && conceived !== undefined && conceived <= emptyCheck.rulesOutTo)
      return undefined
    if (day === season.today) life.inCalfNow = conceived !== undefined
    if (day === Math.max(season.today, season.lastAiDay + 1))
      life.byAi = conceived !== undefined && conceived <= season.lastAiDay
    if (day === lostOn) {
      conceived = undefined
      lostOn = Number.POSITIVE_INFINITY
      heat = day + cycle()
    }
    if (day !== heat) continue
    const seen = random() < rates.heatSeen
    heat = day + cycle()
    const tooSoon = day - served < season.returnsFrom
    if (day < season.today && seen && !tooSoon && !animal.unwatched.has(day)) return undefined
    let held: number | undefined
    if (day > season.lastAiDay) {
      if (day >= animal.earliestDay && random() < rates.bullFinds) held = rates.conception.natural
    } else if (day >= season.today) {
      const certain = anchor.kind === 'serve-today' && day === season.today
      const may = certain || (seen && day >= animal.earliestDay && !animal.leftToBull)
      if (may && !tooSoon && used < season.chances) {
        const straw = strawOn(animal, used, day)
        held = rates.conception[serviceClass(animal.maiden, straw)]
        used += 1
        served = day
        life.services += 1
        life.taken[straw] += 1
      }
    }
    if (held === undefined) continue
    if (random() < held) {
      heat = Number.POSITIVE_INFINITY
      conceive(day)
    } else heat = day + afterService()
  }
  life.atEnd = conceived !== undefined
  return life
}

const mixed: AnimalOutlook = { ...cow, straws: [planFrom('sexed'), planFrom('conventional')] }
const night = new Set(Array.from({ length: 7 }, (_, i) => i - 14))

const bullDays = new Set(Array.from({ length: 63 }, (_, i) => i))

const herd: readonly (readonly [string, AnimalOutlook, SeasonDays])[] = [
  ['nothing known', mixed, seasonOn(0)],
  [
    'calved 20 days before, day -10, a week without watching',
    { ...mixed, anchor: { kind: 'calved', day: -30 }, earliestDay: 12, unwatched: night },
    seasonOn(-5),
  ],
  ['still to calve', { ...mixed, anchor: { kind: 'calved', day: -20 }, earliestDay: 22 }, seasonOn(-25)],
  [
    'maiden anywhere in her cycle',
    { ...mixed, anchor: { kind: 'anywhere', day: -35 }, maiden: true, cycleMean: 21 },
    seasonOn(-20),
  ],
  ['heat before the start', { ...mixed, anchor: { kind: 'heat', day: -12 } }, seasonOn(3)],
  [
    'served early, not returned',
    { ...mixed, anchor: { kind: 'served', day: -20, by: 'sexed', gestation: 280 }, chancesUsed: 1 },
    seasonOn(20),
  ],
  [
    'served, seen in the bull weeks',
    { ...mixed, anchor: { kind: 'served', day: 20, by: 'conventional', gestation: 280 }, chancesUsed: 2 },
    seasonOn(50),
  ],
  [
    'checked empty, her embryo lost or never there',
    {
      ...mixed,
      anchor: { kind: 'served', day: -30, by: 'conventional', gestation: 280 },
      chancesUsed: 1,
      emptyCheck: { on: 15, rulesOutTo: -15 },
    },
    seasonOn(16),
  ],
  [
    'with the bull, checked empty while he is with her',
    { ...mixed, leftToBull: true, emptyCheck: { on: 58, rulesOutTo: 50 }, unwatched: bullDays },
    seasonOn(60),
  ],
  [
    'in calf, confirmed',
    {
      ...mixed,
      anchor: { kind: 'in-calf', conceived: -30, confirmed: 5, by: 'beef', gestation: 283 },
      chancesUsed: 1,
    },
    seasonOn(6),
  ],
  ['served today', { ...mixed, anchor: { kind: 'serve-today' } }, seasonOn(18)],
  ['nothing known, no heat served within 18 days', mixed, { ...seasonOn(0), returnsFrom: 18 }],
  [
    'served 10 days ago, no heat served within 18',
    { ...mixed, anchor: { kind: 'served', day: 5, by: 'sexed', gestation: 280 }, chancesUsed: 1 },
    { ...seasonOn(15), returnsFrom: 18 },
  ],
  [
    'served late, then the bull, who serves any heat',
    { ...mixed, anchor: { kind: 'served', day: 33, by: 'beef', gestation: 283 }, chancesUsed: 1 },
    { ...seasonOn(36), returnsFrom: 18 },
  ],
]

// Losses five times as many as by default, so that an error in them shows.
const rates: Rates = {
  ...defaultRates,
  heatSeen: 0.8,
  lateReturn: { ...defaultRates.lateReturn, share: 0.2 },
  losses: [
    { from: 30, to: 60, lost: 0.5 },
    { from: 60, to: 280, lost: 0.3 },
  ],
}

test.each(herd)('%s', (name, animal, season) => {
  const random = dice(20260528 + name.length)
  const lives: Life[] = []
  for (let tries = 0; lives.length < 40_000; tries += 1) {
    const life = live(animal, season, rates, random)
    if (life) lives.push(life)
    if (tries > 4_000_000) throw new Error('too few lives fit')
  }
  const forecast = forecastAnimal(animal, season, rates)
  const shownOn = Math.max(season.today - 1, season.lastAiDay)
  const [byAi = Number.NaN] = conceivedChances(
    forecast.conceptions,
    [season.lastAiDay],
    shownOn,
    rates.losses,
  )
  const share = (what: string, counted: (life: Life) => boolean, chance: number): void => {
    const found = lives.filter(counted).length / lives.length
    const error = Math.sqrt(Math.max(0, chance * (1 - chance)) / lives.length)
    expect(Math.abs(found - chance), `${what}: simulated ${found}, computed ${chance}`).toBeLessThanOrEqual(
      4 * error + 1e-9,
    )
  }
  share('in calf now', (life) => life.inCalfNow, forecast.inCalf[0] ?? Number.NaN)
  share('in calf by AI', (life) => life.byAi, byAi)
  share('in calf at the end', (life) => life.atEnd, forecast.inCalf.at(-1) ?? Number.NaN)
  for (const kind of ['conventional', 'sexed', 'beef'] as const)
    for (const n of [0, 1, 2])
      share(`${n} ${kind}`, (life) => life.taken[kind] === n, forecast.straws[kind][n] ?? 0)
  const mean = lives.reduce((sum, life) => sum + life.services, 0) / lives.length
  const spread = Math.sqrt(lives.reduce((sum, life) => sum + (life.services - mean) ** 2, 0) / lives.length)
  expect(Math.abs(mean - forecast.services)).toBeLessThanOrEqual(
    (4 * spread) / Math.sqrt(lives.length) + 1e-9,
  )
})
