/** Of the files that lie in source/breeding itself. */
import type { Equivalent } from './entry.ts'

const breeding = (name: string): string => `source/breeding/${name}.ts`

export const ofBreeding: readonly Equivalent[] = [
  ...[
    ['let sorted = «true»', 'false'],
    ['if («before > order») sorted = false', '(before) >= (order)'],
    ['if («before > order») sorted = false', '(before) <= (order)'],
  ].map(([at = '', becomes = '']) => ({
    file: breeding('animal-record'),
    at,
    becomes: [becomes],
    why: 'what is sorted already stays as it is when it is sorted again',
  })),
  {
    file: breeding('animal-record'),
    at: 'const order = (day * 1440 + minute) * «32» + kindRank(fact.kind)',
    becomes: ['33', '(31)'],
    why: 'any number above the ranks keeps them apart',
  },
  {
    file: breeding('animal-record'),
    at: 'const order = (day * «1440» + minute) * 32 + kindRank(fact.kind)',
    becomes: ['1441'],
    why: 'any number above the minutes of a day keeps them apart',
  },
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
    file: breeding('book-with'),
    at: 'const byAnimal = Map.groupBy(«changed.filter(isOfOneAnimal)», (fact) => fact.about)',
    becomes: ['changed'],
    why: 'where a fact of the herd changed the book is opened anew',
  },
  {
    file: breeding('book-with'),
    at: 'const theirs = «live.filter((fact) => concerned.has(fact.about))».filter(isOfOneAnimal)',
    becomes: ['live'],
    why: 'only animals that something changed for are asked for',
  },
  {
    file: breeding('moment'),
    at: '«this.#minutes.set(time, minute)»',
    becomes: [''],
    why: 'what is not kept is worked out again',
  },
  ...['(a < b ? -«1» : a > b ? 1 : 0)', '(a < b ? -1 : a > b ? «1» : 0)'].map((end) => ({
    file: breeding('compare-texts'),
    at: `export const compareTexts = (a: string, b: string): number => ${end}`,
    becomes: ['2'],
    why: 'only the sign of a comparison counts',
  })),
  {
    file: breeding('steps'),
    at: 'const A_STEP = «16»',
    becomes: ['17', '(15)'],
    why: 'how often the work rests changes nothing that comes of it',
  },
  {
    file: breeding('contradictions'),
    at: 'const early = first !== undefined && animal.born !== undefined && «first.day < animal.born»',
    becomes: ['(first.day) <= (animal.born)'],
    why: 'each fact is held against her birth again',
  },
  {
    file: breeding('contradictions'),
    at: 'if (leftOn === undefined && female && !early) «return []»',
    becomes: [''],
    why: 'a quick way: none of her facts would be out of place',
  },
  {
    file: breeding('cycle'),
    at: 'return calves >= 2 || calving.facts.some((fact) => (fact.ease ?? «1») >= 4 || (fact.dead ?? 0) > 0)',
    becomes: ['2', '(0)'],
    why: 'any ease below 4 is an easy one',
  },
  {
    file: breeding('cycle'),
    at: 'return calves >= 2 || calving.facts.some((fact) => (fact.ease ?? 1) >= 4 || (fact.dead ?? «0») > 0)',
    becomes: ['(-1)'],
    why: 'fewer than none dead is none',
  },
  {
    file: breeding('cycle'),
    at: 'return calves >= 2 || «calving.facts.some((fact) => (fact.ease ?? 1) >= 4 || (fact.dead ?? 0) > 0)»',
    becomes: ['calving.facts.every((fact) => (fact.ease ?? 1) >= 4 || (fact.dead ?? 0) > 0)'],
    why: 'two facts of one calving have two calves or more, and are hard by that',
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
  ...[
    'if (p !== q) return p < q ? -«1» : 1',
    'if (p !== q) return p < q ? -1 : «1»',
    'return left.length - right.length || (a < b ? -«1» : a > b ? 1 : 0)',
    'return left.length - right.length || (a < b ? -1 : a > b ? «1» : 0)',
  ].map((at) => ({
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
    file: breeding('pregnancy'),
    at: 'const named = «services.find((service) => service.facts.some((fact) => fact.date === serviceDate))»',
    becomes: ['services.findLast((service) => service.facts.some((fact) => fact.date === serviceDate))'],
    why: 'the services of a day are one service',
  },
  {
    file: breeding('pregnancy'),
    at: 'Math.max(from - day, day - (to ?? checked), «0»),',
    becomes: ['(-1)'],
    why: 'of two bulls that were there on the day neither is known to be the sire, whichever is taken',
  },
  {
    file: breeding('pregnancy'),
    at: 'opened === undefined || «day > opened» ? day : opened',
    becomes: ['(day) >= (opened)'],
    why: 'the same day either way',
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
