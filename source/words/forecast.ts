/** Words of the forecast: what it rests on, and what a change of the plan is called. */
import type { Assumption, AssumptionCode } from '../breeding/forecast/assumptions.ts'
import type { Change } from '../breeding/forecast/what-if.ts'

const percent = (share: number | undefined): string => `${Math.round(100 * (share ?? 0))} %`

const assumptionSentences: Readonly<Record<AssumptionCode, (values: Assumption['values']) => string>> = {
  'conception-own': ({ rate, services }) =>
    `Services hold as they did on this farm: ${percent(rate)} for cows and conventional straws, from the farm’s guess and ${services} services of the past two years. Seasons differ, so no more than 100 services’ worth of certainty is taken from them.`,
  'conception-guessed': ({ rate }) =>
    `Services hold as guessed: ${percent(rate)} for cows and conventional straws. No service of this farm has a result yet.`,
  'heat-seen-own': ({ rate, heats }) =>
    `Of the heats of an open animal ${percent(rate)} are seen, from the farm’s guess and ${heats} heats that were or were not seen again.`,
  'heat-seen-guessed': ({ rate }) =>
    `Of the heats of an open animal ${percent(rate)} are seen: the farm’s guess.`,
  cycle: ({ days, young }) => `Heats come ${days} days apart, ${young} in maidens and first-calvers.`,
  'late-returns': ({ share }) =>
    `Of failed services ${percent(share)} come back late, the embryo having died.`,
  losses: ({ share, by }) =>
    `Of pregnancies known at 30 days ${percent(share)} are lost by day ${by}, few after it.`,
  'first-heats': () => 'Nine in ten cows are cycling about 40 days after calving, one in ten is late.',
  'heats-served': ({ chances, from }) =>
    `Every heat that is seen in the AI weeks is served, but none sooner than ${from} days after a service, and ${chances} times an animal at most.`,
  'straws-last': () => 'Straws of the planned kind do not run out.',
  'bulls-on-hand': ({ bulls, finds, openPerBull }) =>
    `The ${bulls === 1 ? 'one bull' : `${bulls} bulls`} on the farm find ${percent(finds)} of the heats as long as each has ${openPerBull} open animals or fewer.`,
  'bulls-as-needed': ({ finds }) =>
    `There are as many bulls as are needed, and they find ${percent(finds)} of the heats.`,
  'no-bull': () => 'No bull follows the AI weeks.',
  'nobody-comes-or-goes': ({ animals }) =>
    `All ${animals} animals of the block that may be bred stay, and none joins them.`,
  band: ({ holds, of }) =>
    `A range holds at least ${holds} times in ${of}. It takes in chance and what is not known of the farm’s rates, not a wrong loss rate or failed services that stop cycling.`,
}

/**
 * An assumption of the forecast as a sentence.
 *
 * @example assumptionWords({ code: 'cycle', values: { days: 22, young: 21 } }) // 'Heats come 22 days apart, 21 in …'
 */
export const assumptionWords = ({ code, values }: Assumption): string => assumptionSentences[code](values)

/** @example bandWords // 'at least 8 times in 10' */
export const bandWords = 'at least 8 times in 10'

/**
 * A change of the plan in words.
 *
 * @example changeWords({ aiWeeks: -1 }) // 'AI one week shorter'
 */
export function changeWords({ aiWeeks, heatSeen, cowConception, bulls }: Change): string {
  const said: string[] = []
  if (aiWeeks !== undefined && aiWeeks !== 0) {
    const weeks = Math.abs(aiWeeks) === 1 ? 'one week' : `${Math.abs(aiWeeks)} weeks`
    said.push(`AI ${weeks} ${aiWeeks > 0 ? 'longer' : 'shorter'}`)
  }
  if (heatSeen !== undefined) said.push(`${percent(heatSeen)} of heats seen`)
  if (cowConception !== undefined) said.push(`${percent(cowConception)} of services hold`)
  if (bulls !== undefined) said.push(bulls === 0 ? 'no bull' : bulls === 1 ? 'one bull' : `${bulls} bulls`)
  return said.length === 0 ? 'as planned' : said.join(', ')
}
