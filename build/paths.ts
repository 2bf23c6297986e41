import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const top = fileURLToPath(new URL('..', import.meta.url))

/** A path below the top folder of the repository; without parts, that folder. */
export const below = (...parts: string[]): string => join(top, ...parts)
