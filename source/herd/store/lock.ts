import type { DatabaseSync } from 'node:sqlite'

/** Frees a lock. */
export type Release = () => void

/** Keeps two programs from saving at once. */
export interface Lock {
  /** Loads what the lock is made with. */
  prepare(): void
  /**
   * Tries once.
   *
   * @param path the side file that carries the lock; made where missing, stays empty, is never deleted
   * @returns undefined where another program holds it
   */
  tryLock(path: string): Release | undefined
}

/**
 * A lock of the operating system, taken through an exclusive transaction on an empty database. The system drops
 * it when the program that holds it dies, so nothing is ever left locked, and a frozen program keeps it.
 */
export const systemLock: Lock = {
  prepare() {
    database()
  },
  tryLock(path) {
    const Database = database()
    const side = new Database(path, { timeout: 0 })
    try {
      side.exec('PRAGMA journal_mode=MEMORY')
      side.exec('BEGIN EXCLUSIVE')
    } catch (error) {
      side.close()
      if (isBusy(error)) return undefined
      throw error
    }
    return () => side.close()
  },
}

const busy = 5
/** The lower eight bits tell the kind of a failure; an error without a number is no such failure. */
const isBusy = (error: unknown): boolean => (Number((error as { errcode?: unknown }).errcode) & 0xff) === busy

/** Loads the database at the first save, not at the start, and without its warning that it is new to Node. */
function database(): typeof DatabaseSync {
  const { emitWarning } = process
  process.emitWarning = () => undefined
  try {
    return process.getBuiltinModule('node:sqlite').DatabaseSync
  } finally {
    process.emitWarning = emitWarning
  }
}
