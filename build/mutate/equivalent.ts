/** Mutants that change nothing that can be seen, each with the reason. They do not count. */
interface Equivalent {
  readonly file: string
  /** The line with what is changed between « and », and what it becomes, as the list of survivors shows them. */
  readonly at: string
  readonly becomes: readonly string[]
  readonly why: string
}

const rule = (name: string): string => `source/breeding/rules/${name}.ts`
const breeding = (name: string): string => `source/breeding/${name}.ts`

export const equivalents: readonly Equivalent[] = [
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
    file: rule('no-heat-seen'),
    at: 'const from = long && standing.season !== undefined ? standing.season.matingStart + CYCLING_FROM : «0»',
    becomes: ['1', '(-1)'],
    why: 'no heat is as old as 1970',
  },
  {
    file: rule('no-heat-seen'),
    at: 'if (!mayBeServed(standing, policy.chances)) «return false»',
    becomes: [''],
    why: 'in the AI weeks the sweep bull comes first for her',
  },
  {
    file: rule('no-heat-seen'),
    at: 'if (!mayBeServed(standing, policy.chances)) return «false»',
    becomes: ['true'],
    why: 'in the AI weeks the sweep bull comes first for her',
  },
  {
    file: rule('pregnancy-check'),
    at: 'if (conceived === undefined || standing.due === undefined) «return false»',
    becomes: [''],
    why: 'no comparison with an unknown day holds',
  },
  {
    file: rule('pregnancy-check'),
    at: 'if («season === undefined || s === undefined» || standing.inCalf) return false',
    becomes: ['(season === undefined) && (s === undefined)'],
    why: 'a day of the season is known where the season is',
  },
  {
    file: rule('repeat-heat-watch'),
    at: '«return undefined»',
    becomes: [''],
    why: 'the end of a function gives nothing by itself',
  },
  {
    file: rule('serve'),
    at: 'const open = onHeat(standing) ? LATE_RETURN : «1»',
    becomes: ['(0)'],
    why: 'a service of today is not yet the last one',
  },
  {
    file: rule('serve'),
    at: 'if («reasons === undefined || serving === undefined») return undefined',
    becomes: ['(reasons === undefined) && (serving === undefined)'],
    why: 'where there is a reason there is a milking',
  },
  {
    file: rule('serve'),
    at: '? { session: service.session, hours: undefined, fromOnset: «false» }',
    becomes: ['true'],
    why: 'an onset is asked about only where hours are known',
  },
  {
    file: rule('take-care'),
    at: 'const PLAN_MISSED_FROM = «1»',
    becomes: ['(0)'],
    why: 'a plan of before today is a day old or more',
  },
  {
    file: rule('take-care'),
    at: 'if («pregnancy === undefined || conceived === undefined» || service === undefined) return undefined',
    becomes: ['(pregnancy === undefined) && (conceived === undefined)'],
    why: 'no comparison with an unknown day holds',
  },
  {
    file: rule('take-care'),
    at: 'return service.day - conceived >= «2» && standing.countingCheck === undefined',
    becomes: ['(1)'],
    why: 'a service a day after another is the same one',
  },
  {
    file: rule('sweep-bull'),
    at: "['late', «ready !== undefined && season !== undefined» && ready > season.aiEnd && ready <= season.bullEnd],",
    becomes: ['(ready !== undefined) || (season !== undefined)'],
    why: 'no comparison with an unknown day holds, and a day of the season is known only with the season',
  },
  {
    file: rule('sweep-bull'),
    at: '(«ready !== undefined && standing.season !== undefined» && ready > standing.season.bullEnd)',
    becomes: ['(ready !== undefined) || (standing.season !== undefined)'],
    why: 'no comparison with an unknown day holds, and a day of the season is known only with the season',
  },
]
