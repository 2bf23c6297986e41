/**
 * What cows do, whether somebody looks or not: cycles, conception, losses, calvings. The numbers are those that the
 * breeding rules name; where they name none, a judgement is marked as one. Nothing here is taken from the program's
 * own calculations, so that the herd can be used to test them.
 */
import { type Day, plusDays } from '../../source/breeding/day.ts'
import type { StrawKind } from '../../source/breeding/facts.ts'
import type { Random } from './random.ts'

/** A whole number drawn from a bell about a mean, drawn again until it lies between two limits. */
function wholeNormal(random: Random, mean: number, spread: number, from: number, to: number): number {
  for (;;) {
    const drawn = Math.round(random.normal(mean, spread))
    if (drawn >= from && drawn <= to) return drawn
  }
}

/**
 * Days from one heat to the next. Source: mode 22 days, 21 in first-calvers (Remnant et al. 2015, J Dairy Sci
 * 98:889-897); 70 % on days 18-24 (Survey of reproductive performance in dairy herds, Animal Science).
 */
export const cycleLength = (random: Random, young: boolean): number =>
  wholeNormal(random, young ? 21 : 22, 3.2, 8, 40)

/** Share of failed services whose embryo died late, and of those after which the cow stops cycling (a judgement). */
const LATE_RETURN = 0.05
const STOPS_CYCLING = 0.02

/** Days from a service that failed to the next heat. */
export function returnAfterService(random: Random, young: boolean): number {
  if (random.chance(STOPS_CYCLING)) return random.whole(45, 80)
  return random.chance(LATE_RETURN) ? wholeNormal(random, 34, 5, 22, 48) : cycleLength(random, young)
}

/** Days from calving to the first heat: nine in ten cycle by about 40 days, one in ten late (common practice). */
export const firstHeat = (random: Random): number =>
  random.chance(0.9) ? wholeNormal(random, 38, 12, 14, 80) : wholeNormal(random, 95, 20, 45, 150)

/** How likely a service holds. */
export function conceptionRate(maiden: boolean, straw: StrawKind | undefined): number {
  if (straw === undefined) return 0.55
  const plain = maiden ? 0.65 : 0.55
  if (straw !== 'sexed') return plain
  return plain * (maiden ? 0.87 : 0.85)
}

/**
 * The day a pregnancy is lost, or undefined where it holds: 10 % from day 30 to 60, 2 % to day 90, 3 % later.
 * Source: JDS Communications 4:144-148, 2023, and three others named in the breeding rules.
 */
export function lossDay(random: Random, conceived: Day): Day | undefined {
  const age = random.chance(0.1)
    ? random.whole(31, 60)
    : random.chance(0.02)
      ? random.whole(61, 90)
      : random.chance(0.03)
        ? random.whole(91, 265)
        : undefined
  return age === undefined ? undefined : plusDays(conceived, age)
}

/** About 6 % of pregnant cows show heat (Oestrus during pregnancy in the cow). */
export const heatWhenPregnant = (random: Random, conceived: Day): Day | undefined =>
  random.chance(0.057) ? plusDays(conceived, random.whole(12, 160)) : undefined

/** Serving a pregnant cow ends the pregnancy in about half (53.1 to 24.2 % pregnant; NZ artificial-breeding series VIII). */
export const PREGNANCY_ENDED_BY_SERVICE = 0.54

/** Days of gestation about the sire's figure, standard deviation 5 (Norman et al. 2009, J Dairy Sci 92:2259-2269). */
export const gestation = (random: Random, figure: number): number =>
  wholeNormal(random, figure, 5, figure - 15, figure + 15)

/** Share of cows that a bull finds in heat, and that hold to him. */
export const BULL_FINDS = 0.9

/** One letter a calf. Sexed straws give nine heifers in ten; otherwise 48.5 % are heifers. */
export function calfSexes(random: Random, maiden: boolean, straw: StrawKind | undefined): string {
  const female = straw === 'sexed' ? 0.9 : 0.485
  const calves = random.chance(maiden ? 0.006 : 0.035) ? 2 : 1
  return Array.from({ length: calves }, () => (random.chance(female) ? 'F' : 'M')).join('')
}

/** Ease of a calving, 1-5, and how many calves were dead (a judgement). */
export function birth(random: Random, maiden: boolean, calves: number): { ease: number; dead: number } {
  const hard = (maiden ? 2 : 1) * (calves > 1 ? 2 : 1)
  const drawn = random.share()
  const ease =
    drawn < 0.006 * hard ? 5 : drawn < 0.025 * hard ? 4 : drawn < 0.09 * hard ? 3 : drawn < 0.3 ? 2 : 1
  const dying = ease >= 4 ? 0.35 : ease === 3 ? 0.12 : 0.025 * (calves > 1 ? 3 : 1)
  let dead = 0
  for (let i = 0; i < calves; i += 1) if (random.chance(dying)) dead += 1
  return { ease, dead }
}
