import { setTimeout } from 'node:timers/promises'
import type { Migration } from '../migrations.ts'
import { migrations } from '../migrations.ts'
import { diskFiles, type Files } from './files.ts'
import { type Lock, systemLock } from './lock.ts'

/** The world around the store, handed in so that tests can make it fail. */
export interface Environment {
  readonly files: Files
  readonly lock: Lock
  /** The clock. */
  readonly now: () => Date
  readonly platform: NodeJS.Platform
  /** Waits, milliseconds. */
  readonly pause: (milliseconds: number) => Promise<void>
  readonly migrations: readonly Migration[]
}

/** This computer. */
export const thisComputer: Environment = {
  files: diskFiles,
  lock: systemLock,
  now: () => new Date(),
  platform: process.platform,
  pause: (milliseconds) => setTimeout(milliseconds),
  migrations,
}
