/** Inbreeding and known generations as the straw chooser asks for them. */
import { kinshipOf } from '../kinship/herd-kinship.ts'

/** Inbreeding of the calf of a dam and a sire, 0-1, and the generations of its ancestors that are known in full. */
export type Kinship = ReturnType<typeof kinshipOf>

export { kinshipOf as kinshipIn }
