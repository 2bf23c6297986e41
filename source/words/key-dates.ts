/** The key dates of a season in words. */
import type { KeyDate, KeyDateCode } from '../breeding/ahead/key-dates.ts'
import { cautions } from './cautions.ts'

/** What a date is, without its block, and what to do by then. */
interface KeyDateWords {
  readonly name: string
  readonly todo: string
}

const words: Readonly<Record<KeyDateCode, KeyDateWords>> = {
  'pre-mating-start': {
    name: 'watch for heats from today',
    todo: 'Write down every heat from now on: by the mating start 85 of 100 should have been seen.',
  },
  'bull-soundness-check': {
    name: 'bulls: soundness check and feet',
    todo: `Have the bulls checked by the vet, and their feet seen to. ${cautions.bull.full}`,
  },
  'mating-start': {
    name: 'mating starts',
    todo: 'First day of AI. Count the straws and measure the nitrogen.',
  },
  'bull-on-farm': {
    name: 'bulls on the farm by today',
    todo: `They need ten days to settle in. ${cautions.bull.full}`,
  },
  'ai-end': { name: 'last day of AI', todo: 'The last straws are used this evening.' },
  'bull-in': { name: 'sweep bull goes in', todo: cautions.bull.full },
  'bull-out': { name: 'sweep bull comes out', todo: cautions.bull.full },
  'scanning-visit': { name: 'scanning visit', todo: cautions.hygiene.full },
  'scan-tells-sires-from': {
    name: 'a scan tells AI calves from bull calves from today',
    todo: 'Plan a visit between this day and the one marked as the last.',
  },
  'scan-tells-sires-to': {
    name: 'last day on which a scan tells AI calves from bull calves',
    todo: 'Later the foetal age is too unsure for it.',
  },
  'final-check-from': {
    name: 'final pregnancy checks from today',
    todo: 'Whoever is not known to be in calf is checked once more: this finds the empty ones.',
  },
  'season-end': { name: 'season ends', todo: 'From tomorrow the block stands on no list.' },
  'first-due': { name: 'first calf due', todo: cautions.catching.full },
  'dry-off-group': { name: 'to dry off this week', todo: 'The list of an animal says her own day.' },
}

/**
 * A key date on one line.
 *
 * @example keyDateName({ code: 'ai-end', block: 'spring', … }) // 'spring block: last day of AI'
 */
export function keyDateName({ code, block, count }: KeyDate): string {
  const name = `${block === '' ? '' : `${block} block: `}${words[code].name}`
  return count === undefined ? name : `${name} (${count})`
}

/** What to do by a key date, and the caution that belongs to it. */
export const keyDateTodo = ({ code }: KeyDate): string => words[code].todo
