import { child, works } from './child.ts'

/** Starts a program with disks of its own, so that what it mounts is seen by nobody else and goes with it. */
const ownDisks = ['unshare', '--mount', '--map-root-user']
const smallDisk = ['mount', '-t', 'tmpfs', '-o', 'size=1m', 'tmpfs']

/** What was seen on a disk of 1 MB that was filled again and again while ticks were recorded. */
interface FullDisk {
  readonly rooms: readonly {
    /** Codes of the refusal; none where the tick was saved. */
    readonly refused: readonly string[]
    readonly untouched: boolean
    /** Half-written files left behind. */
    readonly left: readonly string[]
    readonly unsaved: number
  }[]
  readonly retried: boolean
  /** Notes in the file after there was room again. */
  readonly notes: readonly string[]
}

/**
 * Fills a small disk mounted on a folder.
 *
 * @returns undefined where a disk cannot be mounted here
 */
export async function fillDisk(folder: string): Promise<FullDisk | undefined> {
  const [program = '', ...words] = [...ownDisks, ...smallDisk, folder]
  if (!(await works(program, words))) return undefined
  return (await child('./full-disk-child.ts', [folder], { through: ownDisks })) as FullDisk
}
