/** Kinship of a whole herd with every sire of a large flask, the pedigree read anew each time. */
import { randomFrom } from '../sample-herd/growing/random.ts'
import type { Parents } from '../source/breeding/kinship/impossible.ts'
import { pedigreeOf } from '../source/breeding/kinship/pedigree.ts'
import { calfInbreeding } from '../source/breeding/kinship/relationship.ts'
import { type Finding, median, ms, time } from './measure.ts'

const ANIMALS = 5000
const SIRES = 30
/** Milliseconds that it may take. */
const MOST = 1000

/** Cows of eight generations, each of a dam of the generation before and one of 30 sires, who are related themselves. */
function herdOfRelatives(): Map<string, Parents> {
  const random = randomFrom(20260528)
  const parents = new Map<string, Parents>()
  for (let sire = 0; sire < SIRES; sire += 1)
    parents.set(`S${sire}`, sire < 5 ? {} : { sire: `S${random.whole(0, sire - 1)}` })
  for (let cow = 0; cow < ANIMALS; cow += 1) {
    const older = Math.max(0, cow - ANIMALS / 8)
    const dam = older < 1 ? {} : { dam: String(random.whole(0, older - 1)) }
    parents.set(String(cow), { sire: `S${random.whole(0, SIRES - 1)}`, ...dam })
  }
  return parents
}

/** Inbreeding of the calf of each of 5,000 cows and each of 30 sires. */
export async function kinshipOfLargeHerd(): Promise<Finding[]> {
  const parents = herdOfRelatives()
  const took: number[] = []
  let inbred = 0
  for (let round = 0; round < 8; round += 1) {
    const spent = await time(() => {
      const pedigree = pedigreeOf(parents)
      for (let sire = 0; sire < SIRES; sire += 1) {
        const calf = calfInbreeding(pedigree, `S${sire}`)
        for (let cow = 0; cow < ANIMALS; cow += 1) inbred += Number(calf(String(cow)) > 0)
      }
    })
    if (round > 0) took.push(spent)
  }
  if (inbred === 0) throw new Error('nobody is related')
  const middle = median(took)
  return [
    {
      what: `kinship of ${ANIMALS.toLocaleString('en')} animals with ${SIRES} sires, in process`,
      value: ms(middle),
      against: ms(MOST),
      ratio: middle / MOST,
      bar: 1,
    },
  ]
}
