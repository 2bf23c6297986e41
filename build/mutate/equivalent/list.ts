/** Of the list: marks, rows and their order, and who has none. */
import type { Equivalent } from './entry.ts'

const breeding = (name: string): string => `source/breeding/${name}.ts`

export const ofList: readonly Equivalent[] = [
  {
    file: breeding('blocks'),
    at: 'if (current === undefined) «continue»',
    becomes: [''],
    why: 'a block is known by its seasons, of which one is always shown',
  },
  {
    file: breeding('blocks'),
    at: '? (seasons.find((one) => «one.matingStart > today») ?? current)',
    becomes: ['(one.matingStart) >= (today)'],
    why: 'a season is not closed on its mating start',
  },
  {
    file: breeding('marks'),
    at: 'else if (planned !== undefined && «planned < today» && planned > (marks.plannedBefore ?? -Infinity))',
    becomes: ['(planned) <= (today)'],
    why: 'a plan for today was taken by the line before',
  },
  {
    file: breeding('marks'),
    at: 'else if (planned !== undefined && planned < today && «planned > (marks.plannedBefore ?? -Infinity)»)',
    becomes: ['(planned) >= ((marks.plannedBefore ?? -Infinity))'],
    why: 'the same day again',
  },
  {
    file: breeding('not-on-list'),
    at: 'if («days < policy.watchFrom»)',
    becomes: ['(days) <= (policy.watchFrom)'],
    why: 'on the day that the watch begins she has a row',
  },
  {
    file: breeding('not-on-list'),
    at: "if («season === undefined || s === undefined») return { code: 'no-season' }",
    becomes: ['(season === undefined) && (s === undefined)'],
    why: 'a day of the season is known where the season is',
  },
  {
    file: breeding('not-on-list'),
    at: 'return «s < 0»',
    becomes: ['(s) <= (0)'],
    why: 'a season is not closed on its days -35 to 83',
  },
  {
    file: breeding('not-on-list'),
    at: 'return s < «0»',
    becomes: ['1', '(-1)'],
    why: 'a season is not closed on its days -35 to 83',
  },
  {
    file: breeding('order'),
    at: 'if (plain.test(a) && plain.test(b)) «return Number(a) - Number(b)»',
    becomes: [''],
    why: 'the long way round gives the same order, more slowly',
  },
  {
    file: breeding('order'),
    at: 'if (p !== q) return «p < q» ? -1 : 1',
    becomes: ['(p) <= (q)'],
    why: 'they are not equal here',
  },
  ...['if (p !== q) return p < q ? -«1» : 1', 'if (p !== q) return p < q ? -1 : «1»'].map((at) => ({
    file: breeding('order'),
    at,
    becomes: ['2'],
    why: 'only the sign of a comparison counts',
  })),
  {
    file: breeding('order'),
    at: '«return 0»',
    becomes: [''],
    why: 'nothing orders no more than 0 does',
  },
  {
    file: breeding('morning-list'),
    at: 'const placeOf = (block: string): number => order.get(block) ?? «0»',
    becomes: ['1', '(-1)'],
    why: 'a visit is planned for a block that is shown',
  },
  ...['if (found !== undefined) «return found»', '«byBlock.set(standing.block, watched)»'].map((at) => ({
    file: breeding('row-maker'),
    at,
    becomes: [''],
    why: 'what is not kept is worked out again',
  })),
  {
    file: breeding('row-maker'),
    at: '«return undefined»',
    becomes: [''],
    why: 'the end of a function gives nothing by itself',
  },
  {
    file: breeding('row-maker'),
    at: 'latestHeat === undefined ? «0» : (latestHeat.day - today) * 1440 + latestHeat.minute',
    becomes: ['1', '(-1)'],
    why: 'who is served on a heat has one',
  },
  ...['if (service === undefined) «return undefined»', 'if (heat === undefined) «return undefined»'].map(
    (at) => ({
      file: breeding('row-maker'),
      at,
      becomes: [''],
      why: 'who is watched since a service or a heat has one',
    }),
  ),
  {
    file: breeding('standing'),
    at: 'dryOff: due === undefined ? undefined : dryOffDay(due, parity, (condition ?? «5») < 3, book.policy),',
    becomes: ['6', '(4)'],
    why: 'an animal without a score is not thin',
  },
]
