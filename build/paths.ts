import { fileURLToPath } from 'node:url'

/** Top folder of the repository. */
export const top = fileURLToPath(new URL('..', import.meta.url))

/** A path below the top folder, from its parts. */
export const below = (...parts: string[]): string =>
  fileURLToPath(new URL(parts.join('/'), new URL('..', import.meta.url)))
