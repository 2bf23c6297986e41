/** Facts from the words that a herdsperson uses for them. */
import { type AnimalFact, type Fact, HERD, type NewFact } from '../../../source/breeding/facts.ts'
import { type CowBlock, dateOf, type Group } from './parse.ts'

type Told<F extends AnimalFact = AnimalFact> = F extends AnimalFact
  ? Omit<F, 'id' | 'about' | 'date' | 'at' | 'by' | 'action'>
  : never

const AT = '2026-01-01T08:00:00.000Z'
/** Her id and number. */
const COW = '1'

/** What the words say, but for when: `heat 19:30 suspect`, `scanned in calf 40 days to 3 May`. */
function told(words: string): Told {
  const has = (word: string): boolean => words.includes(word)
  const number = (pattern: RegExp): number => Number(pattern.exec(words)?.[1])
  const time = /\b(\d\d:\d\d|morning|evening)\b/.exec(words)?.[1]
  const at = time === undefined ? {} : { time }
  const [first] = words.split(/[ :]/)
  switch (first) {
    case 'heat':
      return {
        kind: 'heat',
        time: time ?? 'morning',
        how: has('activity') ? 'activity' : 'standing',
        certainty: has('suspect') ? 'suspect' : 'sure',
      }
    case 'served':
      return has('by the bull')
        ? { kind: 'service', natural: true, sire: 'B1', ...at }
        : {
            kind: 'service',
            time: time ?? '08:00',
            sire: 'K1',
            straw: 'conventional',
            session: time === 'evening' ? 'evening' : 'morning',
          }
    case 'scanned':
    case 'felt':
    case 'milk': {
      const method = first === 'scanned' ? 'ultrasound' : first === 'felt' ? 'hand' : 'milk'
      const result = has('in calf') ? 'pregnant' : has('empty') ? 'empty' : 'unsure'
      const named = / to (\d+ [A-Z][a-z]{2})/.exec(words)?.[1]
      return {
        kind: 'check',
        method,
        result,
        ...(has(' days') ? { foetalAge: number(/(\d+) days/) } : {}),
        ...(has('twins') ? { foetuses: 2 } : {}),
        ...(named === undefined ? {} : { serviceDate: dateOf(named) }),
      }
    }
    case 'calved':
      return {
        kind: 'calving',
        ease: has('hard') ? 4 : 1,
        ...(has('twins') ? { calves: 2 } : {}),
        ...(has('dead') ? { dead: 1 } : {}),
      }
    case 'vet': {
      const serveOn = /serve on (\d+ [A-Z][a-z]{2})/.exec(words)?.[1]
      return {
        kind: 'examined',
        ...(serveOn === undefined
          ? {}
          : { serveOn: dateOf(serveOn), session: has('evening') ? 'evening' : 'morning' }),
      }
    }
    case 'hold': {
      const until = /until (\d+ [A-Z][a-z]{2})/.exec(words)?.[1]
      return { kind: 'hold', ...(until === undefined ? {} : { until: dateOf(until) }) }
    }
    case 'moved':
      return { kind: 'block', block: words.split(' to ')[1] ?? '' }
    default:
      return plain(words)
  }
}

function plain(words: string): Told {
  const kinds: Readonly<Record<string, Told>> = {
    looked: { kind: 'looked' },
    lost: { kind: 'loss' },
    'do not breed': { kind: 'bar' },
    'may be bred again': { kind: 'unbar' },
    'left to the bull': { kind: 'to-bull' },
    'with the bull': { kind: 'with-bull', bull: 'B1' },
    'from the bull': { kind: 'from-bull', bull: 'B1' },
    'dried off': { kind: 'dry' },
    'left the herd': { kind: 'left' },
  }
  const found = kinds[words]
  if (found === undefined) throw new Error(`no such fact: ${words}`)
  return found
}

/** The herd that a cow stands in: one spring season of six weeks of AI and three with the bull, one sire in the flask. */
function herdFacts(group: Group): NewFact[] {
  const date = '2025-01-01'
  const scanDates = group.settings
    .filter((line) => line.startsWith('scan '))
    .map((line) => dateOf(line.slice(5)))
  const set = Object.fromEntries(
    group.settings
      .filter((line) => line.startsWith('set '))
      .map((line) => line.split(' ').slice(1) as [string, string]),
  )
  return [
    {
      about: HERD,
      date,
      kind: 'farm',
      name: 'The cows',
      zone: 'Europe/Dublin',
      milkings: ['05:30', '15:30'],
    },
    { about: HERD, date, kind: 'policy', set: { useSexed: false, beefLastWeek: false, ...set } },
    {
      about: HERD,
      date,
      kind: 'season',
      block: 'spring',
      matingStart: '2026-05-01',
      aiWeeks: 6,
      bullWeeks: 3,
      scanDates,
    },
    {
      about: HERD,
      date,
      kind: 'stock-take',
      sire: 'K1',
      straw: 'conventional',
      count: 500,
      breed: 'Holstein-Friesian',
      easyCalving: true,
    },
  ]
}

function recordOf(animal: string): NewFact {
  const maiden = animal.startsWith('maiden')
  const born = /born (\d+ [A-Z][a-z]{2} \d{4})/.exec(animal)?.[1]
  return {
    about: COW,
    date: '2025-06-01',
    kind: 'animal',
    number: COW,
    sex: 'F',
    born: born === undefined ? (maiden ? '2025-03-10' : '2020-03-01') : dateOf(born),
    sire: 'P1',
    dam: 'P2',
    block: animal.includes('autumn') ? 'autumn' : 'spring',
    plan: 'dairy',
    ...(maiden
      ? { lactation: 0, ready: !animal.includes('not ready') }
      : { lactation: Number(/lactation (\d+)/.exec(animal)?.[1] ?? 1) }),
  }
}

/**
 * The facts of a cow and of the herd that she stands in. `struck out: served of 4 May` voids a fact of that day,
 * `restored: served of 4 May` voids the striking.
 */
export function factsOf(group: Group, cow: CowBlock): Fact[] {
  const facts: Fact[] = []
  const add = (fact: NewFact): void => {
    facts.push({ id: `f${facts.length + 1}`, at: AT, ...fact } as Fact)
  }
  for (const fact of [...herdFacts(group), recordOf(cow.animal)]) add(fact)
  for (const { date, words } of cow.facts) {
    const strike = /^(struck out|restored): (\w+) of (.+)$/.exec(words)
    if (strike === null) {
      add({ about: COW, date, ...told(words) } as NewFact)
      continue
    }
    const kind = told(strike[2] === 'scan' ? 'scanned empty' : (strike[2] ?? '')).kind
    const wrong = facts.findLast((fact) => fact.kind === kind && fact.date === dateOf(strike[3] ?? ''))
    const voids =
      strike[1] === 'restored'
        ? facts.findLast((fact) => fact.kind === 'correction' && fact.voids === wrong?.id)
        : wrong
    if (voids === undefined) throw new Error(`nothing to strike out: ${words}`)
    add({ about: COW, date: voids.date, kind: 'correction', voids: voids.id })
  }
  return facts
}
