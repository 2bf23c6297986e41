/** Whether there is a terminal that a full screen can be drawn on, and how. */

/** Standard input and output, as far as the question goes. */
interface Streams {
  readonly stdin: { readonly isTTY?: boolean }
  readonly stdout: { readonly isTTY?: boolean }
}
type Environment = Readonly<Record<string, string | undefined>>
type WhyNoScreen = 'no-terminal' | 'dumb-terminal'

/**
 * Why no full screen can be drawn; undefined where one can. A `CI` variable does not matter: what counts is
 * whether someone sits at both ends.
 *
 * @example whyNoScreen({ stdin: { isTTY: true }, stdout: {} }, {}) // 'no-terminal'
 */
export function whyNoScreen({ stdin, stdout }: Streams, env: Environment): WhyNoScreen | undefined {
  if (stdin.isTTY !== true || stdout.isTTY !== true) return 'no-terminal'
  if (env.TERM === 'dumb') return 'dumb-terminal'
  return undefined
}

/** Text for a screen reader where DAWNLIST_SCREEN_READER is set to anything but 0. */
export const wantsReader = ({ DAWNLIST_SCREEN_READER: wish }: Environment): boolean =>
  wish !== undefined && wish !== '' && wish !== '0'

/** Colours unless NO_COLOR is set to anything (https://no-color.org). */
export const wantsColours = (env: Environment): boolean => env.NO_COLOR === undefined || env.NO_COLOR === ''

/**
 * Whether the terminal should be given ASCII only: the Linux console has few characters, and a locale that is
 * set but not UTF-8 cannot draw the rest.
 */
export function asciiOnly(env: Environment): boolean {
  if (env.TERM === 'linux') return true
  const locale = [env.LC_ALL, env.LC_CTYPE, env.LANG].find((value) => value !== undefined && value !== '')
  return locale !== undefined && !/utf-?8/i.test(locale)
}
