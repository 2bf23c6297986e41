/** Of the chances, of kinship, and of the statistics below them. */
import type { Equivalent } from './entry.ts'

const entry =
  (file: string) =>
  (why: string, ...changes: readonly (readonly [at: string, ...becomes: string[]])[]): Equivalent[] =>
    changes.map(([at, ...becomes]) => ({ file: `source/breeding/${file}.ts`, at, becomes, why }))
const kinship = (name: string) => entry(`kinship/${name}`)
const statistics = (name: string) => entry(`statistics/${name}`)

const keptFew = 'only how many are kept: made anew they are the same'

export const ofChances: readonly Equivalent[] = [
  entry('chances')(keptFew, ['const kept = keeping<string, Returns>(«200»)', '201', '(199)']),
  entry('chances')(
    'what is not kept is made anew and is the same',
    [
      'if (unwatched && «unwatched.size > 0») return compute(start, mean, rates, unwatched)',
      '(unwatched.size) >= (0)',
    ],
    ['if (unwatched && unwatched.size > «0») return compute(start, mean, rates, unwatched)', '(-1)'],
  ),
  entry('chances')(
    'no cycle is a day long, or none',
    ['for (let d = «1»; d < cycle.length && d <= k; d += 1)', '2'],
    ['for (let d = 1; d < cycle.length && «d <= k»; d += 1)', '(d) < (k)'],
  ),
  entry('chances/cycle')(keptFew, ['const kept = keeping<string, DaysToHeat>(«200»)', '201', '(199)']),
  entry('chances/cycle')('no heat comes on the day of the last', [
    'for (let e = «1»; e < cycle.length; e += 1)',
    '(0)',
  ]),
  entry('chances/losses')('on the first day of a period nothing of it is lost yet', [
    'if («age <= from») break',
    '(age) < (from)',
  ]),
  entry('rates-of-herd')(keptFew, ['const DAYS_KEPT = «32»', '33', '(31)']),
  kinship('generations')(
    'what is not kept is made anew and is the same',
    ['if (found) «return found»', ''],
    ['if («found») return found', '!(found)'],
    ['«known.set(pedigree, complete)»', ''],
  ),
  kinship('generations')(
    'an animal with an unknown parent keeps its 0: no whole number comes of what is not known',
    [
      'if («sire >= 0 && dam >= 0») complete[i] = 1 + Math.min(complete[sire] as number, complete[dam] as number)',
      '(sire >= 0) || (dam >= 0)',
    ],
    [
      'if (sire >= «0» && dam >= 0) complete[i] = 1 + Math.min(complete[sire] as number, complete[dam] as number)',
      '(-1)',
    ],
    [
      'if (sire >= 0 && dam >= «0») complete[i] = 1 + Math.min(complete[sire] as number, complete[dam] as number)',
      '(-1)',
    ],
  ),
  kinship('herd-kinship')('what is not kept is made anew and is the same', ['«bySire.set(sire, kin)»', '']),
  kinship('pedigree')(
    'any number below 0 is an unknown parent',
    ['const sires = new Int32Array(numbers.size).fill(-«1»)', '2'],
    ['const dams = new Int32Array(numbers.size).fill(-«1»)', '2'],
    ['sires[number] = known.get(sire) ?? -«1»', '2'],
    ['dams[number] = known.get(dam) ?? -«1»', '2'],
  ),
  kinship('relationship')(
    'the long way round gives the same, more slowly',
    [
      'if («(sires[animal] as number) < 0 || (dams[animal] as number) < 0») return 0',
      '((sires[animal] as number) < 0) && ((dams[animal] as number) < 0)',
    ],
    ['if ((sires[animal] as number) < «0» || (dams[animal] as number) < 0) return 0', '(-1)'],
    ['if ((sires[animal] as number) < 0 || (dams[animal] as number) < «0») return 0', '(-1)'],
    ['if ((sires[animal] as number) < 0 || (dams[animal] as number) < 0) «return 0»', ''],
    ['«known.set(pedigree, inbreeding)»', ''],
    ['if (part === «0») continue', '1', '(-1)'],
    ['if (part === 0) «continue»', ''],
    ['const own = up[i] === «0» ? 0 : (up[i] as number) * mendelian(pedigree, inbreeding, i)', '(-1)'],
  ),
  kinship('relationship')(
    'an unknown parent has no place that could be written to',
    ['if (sire >= «0») up[sire] = (up[sire] as number) + part', '(-1)'],
    ['if (dam >= «0») up[dam] = (up[dam] as number) + part', '(-1)'],
    ['for (let i = animal; i >= «0»; i -= 1) {', '(-1)'],
  ),
  statistics('beta')('more steps than any sum takes', [
    'for (let m = 1; m <= «10_000»; m += 1) {',
    '10001',
    '(9999)',
  ]),
  statistics('beta')(
    'the search ends at the same number, in more steps or fewer',
    ['if («q <= 0») return 0', '(q) < (0)'],
    ['if («q >= 1») return 1', '(q) > (1)'],
    ['let low = «0»', '(-1)'],
    ['let high = «1»', '2'],
    [
      'const density = Math.exp(scale + (alpha - «1») * Math.log(x) + (beta - 1) * Math.log1p(-x))',
      '(0)',
      '2',
    ],
    [
      'const density = Math.exp(scale + (alpha - 1) * Math.log(x) + (beta - «1») * Math.log1p(-x))',
      '(0)',
      '2',
    ],
    [
      'if («Math.abs(next - x) <= 1e-15 * x || next <= low» || next >= high) return next',
      '(Math.abs(next - x) <= 1e-15 * x) && (next <= low)',
    ],
    ['if (Math.abs(next - x) <= 1e-15 * x || «next <= low» || next >= high) return next', '(next) < (low)'],
    ['if (Math.abs(next - x) <= 1e-15 * x || next <= low || «next >= high») return next', '(next) > (high)'],
  ),
  statistics('normal')(
    'near 3 both ways are right to the last digit, and so is one term more or less',
    ['if («x > 3») return 1 - tail(x)', '(x) >= (3)'],
    ['if (x > «3») return 1 - tail(x)', '(2)', '4'],
    ['if («x < -3») return tail(-x)', '(x) <= (-3)'],
    ['if (x < -«3») return tail(-x)', '(2)', '4'],
    ['for (let odd = 3; «Math.abs(term) > 1e-18»; odd += 2) {', '(Math.abs(term)) >= (1e-18)'],
    ['for (let n = «200»; n >= 1; n -= 1) below = x + n / below', '201', '(199)'],
  ),
  statistics('poisson-binomial')(
    'what is cut off is too small to be seen, and never all',
    ['const sum = new Float64Array(chances.length + part.chances.length - «1»)', '(0)'],
    [
      'while (to - from > 1 && «(chances[from] as number) < negligible») from += 1',
      '((chances[from] as number)) <= (negligible)',
    ],
    [
      'while (to - from > 1 && «(chances[to - 1] as number) < negligible») to -= 1',
      '((chances[to - 1] as number)) <= (negligible)',
    ],
    ['while («to - from» > 1 && (chances[to - 1] as number) < negligible) to -= 1', '(to) + (from)'],
    ['while («to - from» > 1 && (chances[from] as number) < negligible) from += 1', '(to) + (from)'],
  ),
  statistics('quantiles')('no sum of chances lies just there', [
    'if («below >= q - rounding») return first + i',
    '(below) > (q - rounding)',
  ]),
].flat()
