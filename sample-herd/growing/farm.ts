/** The farm on one day, and how people on it write things down. */
import { type Day, dayIso } from '../../source/breeding/day.ts'
import type { AnimalFact, NewFact, SessionName } from '../../source/breeding/facts.ts'
import type { Animal } from './animal.ts'
import { people } from './names.ts'
import type { Random } from './random.ts'
import type { Recorder } from './recorder.ts'
import type { Bull, Lot } from './sires.ts'

/** A heifer calf that may be kept. */
export interface Calf {
  readonly born: Day
  readonly dam: Animal
  readonly sire: string
  readonly block: string
}

/** A service that is to be done at a later milking. */
interface Waiting {
  readonly animal: Animal
  readonly day: Day
  readonly session: SessionName
  /** The heat was none. */
  readonly falseHeat: boolean
}

export interface Shelf {
  readonly bull: Bull
  readonly lot: Lot
  batch: string
  left: number
  used: number
}

export interface Farm {
  readonly random: Random
  readonly recorder: Recorder
  day: Day
  /** The morning that the herd is shown on: nothing is written down after it. */
  readonly lastMorning: Day
  readonly animals: Animal[]
  readonly calves: Calf[]
  readonly shelves: Shelf[]
  /** Ids of the sweep bulls by their codes. */
  readonly bulls: Map<string, string>
  waiting: Waiting[]
  nextNumber: number
}

interface Wording {
  readonly minute?: number
  readonly by?: string
  readonly day?: Day
  readonly action?: string
}

type Told<F extends AnimalFact = AnimalFact> = F extends AnimalFact
  ? Omit<F, 'id' | 'about' | 'date' | 'at' | 'by' | 'action'>
  : never

/**
 * Writes down what happened to an animal today.
 *
 * @param wording minute of the day and initials of the writer; about noon and the farmer where absent
 * @returns the id of the fact
 */
export function tell(farm: Farm, animal: Animal, told: Told, wording: Wording = {}): string {
  const day = wording.day ?? farm.day
  return farm.recorder.record({ about: animal.id, date: dayIso(day), ...told } as NewFact, {
    day,
    minute: wording.minute ?? 12 * 60,
    by: wording.by ?? people.farmer,
    ...(wording.action === undefined ? {} : { action: wording.action }),
  })
}

/** Animals of a block that are still here. */
export const ofBlock = (farm: Farm, block: string): Animal[] =>
  farm.animals.filter((animal) => !animal.gone && animal.block === block)

export const daysCalved = (animal: Animal, day: Day): number | undefined =>
  animal.calvedOn === undefined ? undefined : day - animal.calvedOn
