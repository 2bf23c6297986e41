/** Of the book and of what her facts come to: files that lie in source/breeding itself. */
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
  ...[
    [
      'let year = «Math.floor((day + 719162) / 365.2425) + 1»',
      '(Math.floor((day + 719162) / 365.2425)) - (1)',
    ],
    ['let year = Math.floor((day + 719162) / 365.2425) + «1»', '(0)'],
    ['let year = Math.floor((day + «719162») / 365.2425) + 1', '(719161)'],
    ['let year = Math.floor((day + 719162) / «365.2425») + 1', '366.2425'],
  ].map(([at = '', becomes = '']) => ({
    file: breeding('day'),
    at,
    becomes: [becomes],
    why: 'a year that is too early is counted on',
  })),
  {
    file: breeding('day'),
    at: 'if (known.size > 50_000) «known.clear()»',
    becomes: [''],
    why: 'what is kept is what would be worked out again',
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
    file: breeding('watched-weeks'),
    at: 'if («day >= season.matingStart» || day >= today) break',
    becomes: ['(day) > (season.matingStart)'],
    why: 'from the mating start on every day is watched',
  },
]
