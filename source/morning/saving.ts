/** Whether what was recorded is on the disk: shown always, and asked about before leaving. */
import type { Problem } from '../breeding/problem.ts'

export interface Saving {
  readonly state: 'saved' | 'saving' | 'not-saved' | 'read-only'
  /** Facts recorded and not on the disk yet. */
  readonly waiting: number
  /** What stands in the way, or was noticed. */
  readonly problems: readonly Problem[]
}

export const allSaved: Saving = { state: 'saved', waiting: 0, problems: [] }

/** An older copy stands in the place of the file, and the user may say that it is to be written over. */
export const olderCopyInPlace = (saving: Saving): boolean =>
  saving.problems.some((problem) => problem.code === 'herd-older')
