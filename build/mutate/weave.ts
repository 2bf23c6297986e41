import type { Mutant } from './mutants.ts'

/**
 * A source text with all its mutants in it, each behind a switch: `isMutant(7)` says whether mutant 7 is meant to be.
 *
 * @param first number of the first mutant
 * @example weave('a < 3', mutants, 0) // '(isMutant(0)?((a) <= (3)):…:(a < 3))'
 */
export function weave(text: string, mutants: readonly Mutant[], first: number): string {
  const before = new Map<number, string>()
  const after = new Map<number, string>()
  const put = (at: number, opening: string, end: number, closing: string): void => {
    before.set(at, (before.get(at) ?? '') + opening)
    after.set(end, closing + (after.get(end) ?? ''))
  }
  // What stands outside is found first, so that it is opened first and closed last.
  for (const [place, { from, to, becomes, isStatement }] of mutants.entries()) {
    const asked = `isMutant(${first + place})`
    if (isStatement) put(from, `{if(!${asked}) `, to, '}')
    else put(from, `(${asked}?(${becomes}):(`, to, '))')
  }
  let woven = ''
  for (let at = 0; at <= text.length; at += 1)
    woven += (after.get(at) ?? '') + (before.get(at) ?? '') + text.slice(at, at + 1)
  return woven
}
