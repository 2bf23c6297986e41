/** An animal as she truly is, and beside it what the farm believes. */
import type { Day } from '../../source/breeding/day.ts'

interface Pregnancy {
  readonly conceived: Day
  readonly sire: string
  readonly natural: boolean
  /** One letter a calf. */
  readonly calves: string
  readonly calvesOn: Day
  readonly lostOn: Day | undefined
  readonly heatOn: Day | undefined
}

export interface Animal {
  readonly id: string
  readonly number: string
  readonly name: string
  readonly born: Day
  readonly breed: string
  readonly sire: string | undefined
  readonly dam: string | undefined
  readonly plan: 'dairy' | 'beef'
  readonly lactationAtEntry: number
  readonly statedBlock: string
  block: string
  ready: boolean
  gone: boolean

  /** What is true. */
  parity: number
  calvedOn: Day | undefined
  pregnancy: Pregnancy | undefined
  nextHeat: Day | undefined
  /** The bull that runs with her. */
  bull: string | undefined

  /** What the farm believes and plans. */
  services: Day[]
  /** The day that the farm takes for the conception. */
  inCalfSince: Day | undefined
  checkedOn: Day | undefined
  /** The last scan could not tell. */
  unsure: boolean
  /** Sure heats seen since calving. */
  heatsSeen: Day[]
  chances: number
  leftToBull: boolean
  barred: boolean
  heldUntil: Day | undefined
  condition: number
  hardCalving: boolean
  examined: boolean
  fixedTime: Day | undefined
  isDry: boolean
  /** The day she goes, once that is settled. */
  goesOn: Day | undefined
  goesBecause: string
}

export const isMaiden = (animal: Animal): boolean => animal.parity === 0
export const isYoung = (animal: Animal): boolean => animal.parity <= 1

type Given = Pick<
  Animal,
  'id' | 'number' | 'name' | 'born' | 'breed' | 'sire' | 'dam' | 'plan' | 'statedBlock'
> &
  Partial<Animal>

/** An animal about whom nothing has happened yet, but for what is given. */
export const newAnimal = (given: Given): Animal => ({
  lactationAtEntry: 0,
  block: given.statedBlock,
  ready: false,
  gone: false,
  parity: given.lactationAtEntry ?? 0,
  calvedOn: undefined,
  pregnancy: undefined,
  nextHeat: undefined,
  bull: undefined,
  services: [],
  inCalfSince: undefined,
  checkedOn: undefined,
  unsure: false,
  heatsSeen: [],
  chances: 0,
  leftToBull: false,
  barred: false,
  heldUntil: undefined,
  condition: 3,
  hardCalving: false,
  examined: false,
  fixedTime: undefined,
  isDry: false,
  goesOn: undefined,
  goesBecause: '',
  ...given,
})

/** A new cycle begins: what was believed of the last one is over. */
export function startCycle(animal: Animal): void {
  animal.services = []
  animal.heatsSeen = []
  animal.inCalfSince = undefined
  animal.checkedOn = undefined
  animal.unsure = false
  animal.fixedTime = undefined
}
