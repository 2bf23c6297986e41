/** Words of the straws: why one is proposed, how it is thawed, and the cautions of the flask. */

import type { NitrogenState } from '../breeding/straws/nitrogen.ts'
import type { StrawReason, StrawReasonCode } from '../breeding/straws/reason.ts'
import type { ThawingCard, ThawingStep } from '../breeding/straws/thawing.ts'
import { capital } from './capital.ts'
import { counted } from './counted.ts'
import { plainDate } from './plain-date.ts'
import { filled, type Sentences, type Values } from './sentences.ts'

/** A sentence for every reason of a kind and of a sire. */
export const strawReasonWords: Readonly<Record<StrawReasonCode, string>> = {
  'last-week-beef': 'Beef: it is the last week of AI, and a calf this late is not kept as a replacement.',
  'plan-beef': 'Beef: her calves are meant as beef.',
  'sexed-fits': 'Sexed: she meets every condition for a sexed straw.',
  'sexed-hours-best': 'The milking falls in the best hours, 14-20 after the onset.',
  'sexed-off': 'No sexed straw: the farm does not use them.',
  'calved-often': 'No sexed straw: she has calved {calvings} times, more than {most}.',
  'not-first-service': 'No sexed straw: it is not her first service of the season.',
  'outside-sexed-days': 'No sexed straw: they are for the first {until} days of mating.',
  'calving-unknown': 'No sexed straw: her calving date is not known.',
  'calved-lately': 'No sexed straw: she calved {calved} days ago, fewer than {least}.',
  thin: 'No sexed straw: her last condition score was {score}, below {least}.',
  'not-seen-cycling': 'No sexed straw: no sure heat was seen before this one.',
  'hard-calving': 'No sexed straw: her last calving was hard, of twins, or of a dead calf.',
  'lost-calf': 'No sexed straw: she lost a pregnancy since she last calved.',
  treated: 'No sexed straw: the vet has treated her since she last calved.',
  'heifers-enough': 'No sexed straw: those used so far should bring the {wanted} replacements wanted.',
  'no-heat-hours': 'No sexed straw: a service at a fixed time has no heat to count the hours from.',
  'outside-sexed-hours': 'No sexed straw: the milking is {hours} hours after the heat, outside their hours.',
  'kind-out': 'Another kind: the one she should have is not in stock.',
  'kind-related': 'Another kind: of the one she should have only close relatives of hers are in stock.',
  'kind-not-easy': 'Another kind: of the one she should have no easy-calving sire is in stock.',
  'proposed-kind': 'Of the proposed kind.',
  'other-kind': 'Another kind than proposed.',
  'sexed-not-now': 'Sexed, and she does not meet every condition for it.',
  'easy-calving': 'Easy calving, as a maiden needs.',
  'not-easy-calving': 'Not marked easy calving, and she is a maiden.',
  'related-6': 'Related: the calf would be inbred {percent} %.',
  'related-12': 'Closely related: the calf would be inbred {percent} %. Not without your say.',
  'parents-unknown': 'Her sire or her dam is not known, and counts as unrelated to him.',
  'above-share': 'Used for {used} of {services} services: one more puts him above {share} %.',
  'placed-alone': 'The only sire of this kind in the flask.',
  'placed-confirm': '{first} before {second}, who is a close relative of hers.',
  'placed-easy': '{first} before {second}, who is not marked easy calving.',
  'placed-related': '{first} before {second}, who is related to her.',
  'placed-share': '{first} before {second}, who has had his share of the services.',
  'placed-inbreeding': '{first} before {second}: her calf would be less inbred.',
  'placed-use': '{first} before {second}: used less so far, {used} against {usedBySecond} services.',
  'placed-name': '{first} before {second}: they are alike, so the name decides.',
  'later-calves': 'His calves come {days} days later than usual: late in the block.',
  'earlier-calves': 'His calves come {days} days earlier than usual: good for a late service.',
}

/**
 * A reason as a sentence.
 *
 * @example strawReason({ code: 'calved-lately', values: { calved: 44, least: 50 } }) // 'No sexed straw: she calved 44 …'
 */
export const strawReason = ({ code, values }: StrawReason): string => filled(strawReasonWords[code], values)

/**
 * The relationship of a proposed sire, in a sentence.
 *
 * @param inbreeding of the calf, 0-1, @param generations of ancestors that are known of both
 * @example strawCalf({ inbreeding: 0.0078, generations: 3 }) // 'The calf would be inbred 0.8 %; 3 generations …'
 */
export const strawCalf = ({
  inbreeding,
  generations,
}: {
  readonly inbreeding: number
  readonly generations: number
}): string =>
  `The calf would be inbred ${(100 * inbreeding).toFixed(1)} %; ${counted(generations, 'generation')} of both known in full.`

/**
 * Why a straw has its place among the others, in sentences.
 *
 * @example strawWhy(ranked) // 'Of the proposed kind. S17 before S18: used less so far, 3 against 5 services.'
 */
export const strawWhy = ({ reasons }: { readonly reasons: readonly StrawReason[] }): string =>
  reasons.map(strawReason).join(' ')

const dated =
  (text: string) =>
  (values: Values): string =>
    filled(text, { ...values, date: plainDate(String(values.date ?? '')) })

/** What is odd about the stock. */
export const strawSentences: Sentences = {
  'service-without-stock': dated(
    'The service of {date} took a {straw} straw of {sire} that was not in stock by the book. Count the flask.',
  ),
  'spoiled-without-stock': dated(
    '{count} of the {straw} straws of {sire} spoiled on {date} were not in stock by the book. Count the flask.',
  ),
  'service-without-straw': dated(
    'The service of {date} does not say which straw was used, so it is not taken off the stock. Correct it.',
  ),
}

const thawingSteps: Readonly<Record<ThawingStep, (card: ThawingCard) => string>> = {
  'supplier-card': () => 'The supplier’s own card comes before this one.',
  'right-straw': () => 'Read the name on the straw and the number on the animal before it leaves the flask.',
  'canister-low': (card) =>
    `Keep the canister below the frost line of the neck, and up for ${card.canisterSeconds} seconds at most.`,
  'one-straw': (card) =>
    card.strawsAtOnce === 1
      ? 'Thaw one straw at a time.'
      : `Thaw ${card.strawsAtOnce} straws at a time at most.`,
  thaw: (card) => capital(waterWords(card)),
  dry: () => 'Dry the straw: water kills what is in it.',
  'keep-warm': () => 'Keep straw and gun warm and out of the sun until she is served.',
  'sexed-hours': () => 'A sexed straw holds fewer sperm: its hours matter, 14-20 after the heat began.',
  'serve-soon': (card) =>
    `In the cow within ${card.minutes} minutes of thawing, ${card.minutesAtMost} at the very most.`,
}

const waterWords = (card: ThawingCard): string =>
  `water of ${card.water[0]}-${card.water[1]} °C, measured with a thermometer: ${secondsInWater(card)}.`

const secondsInWater = ({ seconds, volumeMl }: ThawingCard): string =>
  seconds === undefined
    ? volumeMl === undefined
      ? '30 seconds for a straw of 0.25 ml, 45 for one of 0.5 ml'
      : `as long as the supplier says for ${volumeMl} ml`
    : `${seconds} seconds for a straw of ${volumeMl} ml`

/**
 * The steps of a thawing card as sentences.
 *
 * @example thawingWords(thawingCard('conventional', 0.25))[0] // 'The supplier’s own card comes before this one.'
 */
export const thawingWords = (card: ThawingCard): readonly string[] =>
  card.steps.map((step) => thawingSteps[step](card))

/** A card, and the sires whose straws are thawed by it. */
export interface CardFor {
  readonly card: ThawingCard
  readonly sires: readonly string[]
}

/**
 * The steps for all the straws of a morning, each said once; the thawing for each kind and size of straw.
 *
 * @param cards of that morning; none: no steps
 * @example servingSteps([{ card: thawingCard('sexed', 0.25), sires: ['S17'] }]).length // 9
 */
export const servingSteps = (cards: readonly CardFor[]): readonly string[] => {
  const longest = cards.reduce<CardFor | undefined>(
    (most, one) => (one.card.steps.length > (most?.card.steps.length ?? 0) ? one : most),
    undefined,
  )
  return (longest?.card.steps ?? []).flatMap((step) =>
    step === 'thaw'
      ? cards.map(({ card, sires }) => `${capital(card.straw)} (${sires.join(', ')}): ${waterWords(card)}`)
      : longest === undefined
        ? []
        : [thawingSteps[step](longest.card)],
  )
}

/**
 * The card on one line, for the form in which she is served.
 *
 * @example thawingLine(thawingCard('sexed', 0.25)) // 'Supplier’s card, else 35-37 °C, 30 s (0.25 ml); in the cow …'
 */
export const thawingLine = ({ water, seconds, volumeMl, minutes }: ThawingCard): string => {
  const time =
    seconds === undefined
      ? volumeMl === undefined
        ? '30 s (0.5 ml: 45)'
        : 'the time it says'
      : `${seconds} s (${volumeMl} ml)`
  return `Supplier’s card, else ${water[0]}-${water[1]} °C, ${time}; in the cow within ${minutes} min.`
}

/** What each depth of liquid nitrogen asks for. */
export const nitrogenWords: Readonly<Record<NitrogenState, string>> = {
  enough: 'enough',
  order: 'order nitrogen',
  alarm: 'fill it today: the straws are in danger',
}

/**
 * Cautions beside the flask. Source: SDSU extension; British Compressed Gases Association, CP30;
 * the last one is common practice, no source.
 */
export const nitrogenCautions: readonly string[] = [
  'Liquid nitrogen is at -196 °C and burns skin and eyes: eye protection, loose dry gloves, closed boots.',
  'It drives out the air without a smell or a warning: only in a place with moving air, never in a closed vehicle with people.',
  'Never seal the flask, and stand it where it cannot fall.',
]
