/** What a command is, what it is given and what it may do to the world around it. */
import type { Problem } from '../breeding/problem.ts'

/** What stands as a value: a file, a folder, a command, or one of some words. Absent: nothing a shell could offer. */
export type Takes = 'file' | 'folder' | 'command' | readonly string[]

/** A word after the command's name: `FILE`, `NUMBER`. */
export interface Argument {
  readonly name: string
  readonly help: string
  readonly optional?: boolean
  readonly takes?: Takes
}

/** `--date D`: `value` is the name of its value; without one it is a switch. */
export interface Option {
  readonly name: string
  readonly short?: string
  readonly value?: string
  readonly required?: boolean
  readonly help: string
  readonly takes?: Takes
}

/** One entry of the table of commands. */
export interface Command {
  readonly name: string
  /** What it does, in one sentence without a full stop. */
  readonly summary: string
  /** More, where there is more to say: paragraphs of the help. */
  readonly details?: readonly string[]
  readonly args: readonly Argument[]
  readonly options: readonly Option[]
  /** Words as they may be typed after `dawnlist`. */
  readonly examples: readonly string[]
  readonly load: () => Promise<CommandModule>
}

/** A file of a command exports `run`; it is imported only when the command is called. */
interface CommandModule {
  readonly run: Run
}

/**
 * Runs a command.
 *
 * @param commands the whole table, for those that explain or complete it
 * @returns the exit status: 0 done, 1 a problem in data or file, 2 wrong usage
 */
export type Run = (given: Given, shell: Shell, commands: readonly Command[]) => Promise<number>

/** What was typed after the command's name, by the names of the table. */
export interface Given {
  /** By the argument's name: `given.args.FILE`. */
  readonly args: Readonly<Record<string, string>>
  /** By the option's name, without dashes: `given.options.date`. */
  readonly options: Readonly<Record<string, string>>
  /** Names of the switches that were set: `given.switches.has('json')`. */
  readonly switches: ReadonlySet<string>
}

/** The world around a command. */
export interface Shell {
  /**
   * Data, to standard output, as it is. Text that comes from a file goes through `safeText` (words/safe.ts)
   * first, except where the format escapes it (JSON, CSV).
   */
  readonly print: (text: string) => void
  /** A message, to standard error, on a line of its own. */
  readonly say: (message: string) => void
  /** Each problem in words, to standard error. */
  readonly tell: (problems: readonly Problem[]) => void
  /**
   * How far long work has got: a line that the next one takes the place of, and that an empty one takes away. Absent
   * where standard error is no terminal: a pipe holds messages only.
   */
  readonly passing?: (text: string) => void
  readonly env: Readonly<Record<string, string | undefined>>
  /** Whether someone sits before a screen: standard input and output are both terminals that can draw one. */
  readonly interactive: boolean
}
