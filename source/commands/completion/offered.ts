import type { Command, Takes } from '../command.ts'

/** Whether the shell's own completion of file names serves. */
export const isPath = (takes: Takes | undefined): boolean => takes === 'file' || takes === 'folder'

/**
 * The words that can be offered; undefined where there are none.
 *
 * @example wordsFor(['morning', 'evening'], commands) // ['morning', 'evening']
 */
export function wordsFor(
  takes: Takes | undefined,
  commands: readonly Command[],
): readonly string[] | undefined {
  if (takes === 'command') return commands.map(({ name }) => name)
  return typeof takes === 'string' ? undefined : takes
}
