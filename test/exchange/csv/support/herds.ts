/** Invented herds of every sort, contradictory ones too, as lists of facts that the schema accepts. */
import fc from 'fast-check'
import type { Fact } from '../../../../source/breeding/facts.ts'

/** Words that are hard on a table, and plain ones so that they meet. */
const word = fc.oneof(
  fc.constantFrom('spring', 'autumn', 'S17', 'B4', '2', '412'),
  fc.constantFrom('=1+1', "'=1", '-7', 'a,b', 'a;b', 'say "x"', 'Bläss', 'x\ny', '٣', '😀'),
)
const phrase = fc
  .oneof(word, fc.string({ unit: 'grapheme', minLength: 1, maxLength: 20 }))
  .filter((text) => text.trim() !== '')
const date = fc.integer({ min: 0, max: 420 }).map((days) => {
  const day = new Date(Date.UTC(2025, 0, 1 + days))
  return day.toISOString().slice(0, 10)
})
const fewDates = fc.constantFrom('2025-05-01', '2025-05-02', '2025-05-22', '2025-06-05', '2025-12-30')
const time = fc.constantFrom('00:10', '05:30', '06:10', '15:30', '23:59', 'morning', 'evening')
const straw = fc.constantFrom('conventional', 'sexed', 'beef')
const session = fc.constantFrom('morning', 'evening')

/** Some of the fields, and never one that is undefined. */
const some = (
  fields: Readonly<Record<string, fc.Arbitrary<unknown>>>,
  required: readonly string[] = [],
): fc.Arbitrary<Record<string, unknown>> => fc.record(fields, { requiredKeys: [...required] })

const whole = (min: number, max: number) => fc.integer({ min, max })

const calving = fc
  .tuple(whole(1, 5), some({ ease: whole(1, 5), dead: whole(0, 5) }), fc.boolean(), fc.boolean())
  .chain(([calves, fields, counted, sexed]) =>
    fc.string({ unit: fc.constantFrom('F', 'M'), minLength: calves, maxLength: calves }).map((calfSex) => ({
      ...fields,
      ...(fields.dead === undefined ? {} : { dead: Math.min(Number(fields.dead), counted ? calves : 1) }),
      ...(counted ? { calves } : {}),
      ...(sexed ? { calfSex: counted ? calfSex : calfSex.slice(0, 1) } : {}),
    })),
  )

/** The fields of each kind of fact about an animal. */
const happenings: Readonly<Record<string, fc.Arbitrary<object>>> = {
  heat: some(
    {
      how: fc.constantFrom('activity', 'standing', 'paint', 'mucus', 'other'),
      certainty: fc.constantFrom('sure', 'suspect'),
      signs: phrase,
    },
    ['how', 'certainty'],
  ),
  looked: fc.constant({}),
  service: some({
    sire: word,
    straw,
    batch: word,
    inseminator: word,
    natural: fc.boolean(),
    session,
    proposed: fc.record({ sire: word, straw }),
  }),
  check: some(
    {
      method: fc.constantFrom('ultrasound', 'hand', 'milk', 'blood'),
      result: fc.constantFrom('pregnant', 'empty', 'unsure'),
      foetalAge: whole(20, 290),
      foetuses: whole(1, 5),
      serviceDate: date,
    },
    ['method', 'result'],
  ),
  examined: some({ finding: phrase, treatment: phrase, serveOn: date, session }),
  calving,
  loss: fc.constant({}),
  bar: some({ reason: phrase }),
  unbar: some({ reason: phrase }),
  'to-bull': fc.constant({}),
  'with-bull': some({ bull: word }),
  'from-bull': some({ bull: word }),
  hold: some({ until: date, reason: phrase }),
  score: fc.record({ condition: whole(4, 20).map((quarters) => quarters / 4) }),
  dry: fc.constant({}),
  block: fc.record({ block: word }),
  left: some({ reason: phrase }),
  note: fc.record({ note: phrase }),
}

/** Heats and services are most of what happens. */
const kind = fc.oneof(
  fc.constantFrom('heat', 'service', 'service', 'check', 'calving'),
  fc.constantFrom(...Object.keys(happenings)),
)

const animalFields = some(
  {
    name: word,
    officialId: word,
    electronicId: word,
    internationalId: word,
    sex: fc.constantFrom('F', 'F', 'F', 'M'),
    born: fc.constantFrom('2019-03-01', '2023-02-11', '2025-05-02'),
    breed: fc.constantFrom('HF', 'Jersey', 'AA'),
    sire: word,
    // No name is both a sire's and a dam's: whose it is would then depend on who was recorded first.
    dam: word.map((name) => `d${name}`),
    block: fc.constantFrom('spring', 'autumn'),
    lactation: whole(0, 9),
    ready: fc.boolean(),
    easyCalving: fc.boolean(),
    gestationDays: whole(260, 300),
    plan: fc.constantFrom('dairy', 'beef'),
  },
  ['sex'],
)

const lot = { sire: word, straw, batch: word, flask: fc.constantFrom('F1', '2'), canister: word }
const stock = fc.oneof(
  some(
    {
      kind: fc.constant('stock-take'),
      ...lot,
      count: whole(0, 60),
      sireName: word,
      breed: word,
      volumeMl: fc.constantFrom(0.25, 0.5),
      easyCalving: fc.boolean(),
      gestationDays: whole(260, 300),
    },
    ['kind', 'sire', 'straw', 'count'],
  ),
  some({ kind: fc.constantFrom('delivery', 'spoiled'), ...lot, count: whole(1, 60) }, [
    'kind',
    'sire',
    'straw',
    'count',
  ]),
  some(
    {
      kind: fc.constant('nitrogen'),
      flask: fc.constantFrom('F1', '2'),
      depthCm: whole(1, 80).map((half) => half / 2),
    },
    ['kind', 'depthCm'],
  ),
)

const season = some(
  {
    kind: fc.constant('season'),
    block: fc.constantFrom('spring', 'autumn'),
    matingStart: fc.constantFrom('2025-05-01', '2025-11-20', '2026-05-01'),
    aiWeeks: whole(1, 12),
    bullWeeks: whole(0, 9),
    scanDates: fc.array(date, { minLength: 1, maxLength: 3 }),
  },
  ['kind', 'block', 'matingStart', 'aiWeeks', 'bullWeeks'],
)

const policy = fc.record(
  {
    calvedToServe: whole(20, 120),
    heatDetection: fc.constantFrom(0.5, 0.75),
    useSexed: fc.boolean(),
    checkMethod: fc.constantFrom('hand', 'milk'),
  },
  { requiredKeys: [] },
)

const when = some({ date: fc.oneof(fewDates, date), time }, ['date'])
const numbers = fc.uniqueArray(
  fc.oneof(whole(1, 40).map(String), fc.constantFrom('A3', 'herd', '=7', 'a b', 'Ü1')),
  {
    minLength: 1,
    maxLength: 5,
  },
)

/** What a farm fact of all these herds says. */
export const farm = {
  about: 'herd',
  date: '2025-01-01',
  kind: 'farm',
  name: 'Long Acre',
  zone: 'Europe/Dublin',
  milkings: ['05:30', '15:30'],
}

/** Facts of a herd, in an order of recording of their own; some are corrected, some taken back. */
export const herds: fc.Arbitrary<Fact[]> = numbers.chain((names) => {
  const about = fc.constantFrom(...names.map((_, place) => `a${place}`))
  const happened = fc
    .tuple(about, when, kind)
    .chain(([id, at, name]) =>
      (happenings[name] ?? fc.constant({})).map((fields) => ({ about: id, ...at, kind: name, ...fields })),
    )
  return fc
    .tuple(
      fc.tuple(
        ...names.map((number, place) =>
          animalFields
            .filter(({ sire, dam }) => sire !== number && dam !== number)
            .map((fields) => ({
              about: `a${place}`,
              date: '2025-01-01',
              kind: 'animal',
              number,
              ...fields,
              ...(fields.internationalId === undefined
                ? {}
                : { internationalId: `${fields.internationalId}${place}` }),
            })),
        ),
      ),
      fc.array(happened, { maxLength: 40 }),
      fc.array(
        fc.tuple(when, stock).map(([at, fields]) => ({ about: 'herd', ...at, ...fields })),
        { maxLength: 12 },
      ),
      fc.array(
        season.map((fields) => ({ about: 'herd', date: '2025-01-01', ...fields })),
        { maxLength: 4 },
      ),
      fc.array(
        policy.map((set) => ({ about: 'herd', date: '2025-01-01', kind: 'policy', set })),
        { maxLength: 2 },
      ),
      fc.array(fc.nat(60), { maxLength: 6 }),
    )
    .map(([animals, happenedFacts, stockFacts, seasons, policies, voids]) => {
      const said: readonly object[] = [
        farm,
        ...policies,
        ...seasons,
        ...animals,
        ...happenedFacts,
        ...stockFacts,
      ]
      const plain = said.map(
        (fact, place) => ({ id: `f${place}`, at: '2026-06-01T05:00:00.000Z', ...fact }) as unknown as Fact,
      )
      const first = plain.length - happenedFacts.length - stockFacts.length
      const corrections = voids
        .map((pick) => plain[first + pick])
        .filter((fact) => fact !== undefined)
        .map((fact, place) => ({
          id: `c${place}`,
          at: fact.at,
          about: fact.about,
          date: fact.date,
          kind: 'correction',
          voids: fact.id,
        }))
      return [...plain, ...(corrections as Fact[])]
    })
})
