/**
 * The shape of every kind of fact, strictly: types, ranges, dates that exist. It judges only: what is kept is the
 * JSON as it was read, unknown fields included. Loaded when needed; see reading.ts.
 */
import { z } from 'zod'
import { readDay } from '../breeding/day.ts'
import { type FactKind, HERD } from '../breeding/facts.ts'
import { settings } from '../breeding/policy.ts'
import { isZone } from './zone.ts'

/** Longest text of one field, characters. */
export const textLimit = 10_000

const text = z.string().max(textLimit)
const name = text.min(1)
const id = z.string().regex(/^[0-9A-Za-z][\w.:-]{0,99}$/, { error: 'id' })
const date = z.string().refine((value) => readDay(value) !== undefined, { error: 'date' })
const wallTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, { error: 'time' })
const session = z.enum(['morning', 'evening'])
const time = z.string().regex(/^(([01]\d|2[0-3]):[0-5]\d|morning|evening)$/, { error: 'time-of-day' })
const instant = z.string().refine(isInstant, { error: 'instant' })
const zone = z.string().refine(isZone, { error: 'zone' })
const whole = (from: number, to: number) => z.int().min(from).max(to)
const straw = z.enum(['conventional', 'sexed', 'beef'])

const envelope = {
  id,
  about: id,
  date,
  time: time.exactOptional(),
  by: text.exactOptional(),
  at: instant,
  action: id.exactOptional(),
}
const ofAnimal = { ...envelope, about: id.refine((about) => about !== HERD, { error: 'about-animal' }) }
const ofHerd = { ...envelope, about: z.literal(HERD) }
const reason = { reason: text.exactOptional() }
const lot = {
  sire: name,
  straw,
  batch: text.exactOptional(),
  flask: text.exactOptional(),
  canister: text.exactOptional(),
}
const sireTraits = {
  easyCalving: z.boolean().exactOptional(),
  gestationDays: whole(260, 300).exactOptional(),
}

const checkResult = {
  method: z.enum(['ultrasound', 'hand', 'milk', 'blood']),
  result: z.enum(['pregnant', 'empty', 'unsure']),
  foetalAge: whole(20, 290).exactOptional(),
  foetuses: whole(1, 5).exactOptional(),
}

const calving = z
  .looseObject({
    ...ofAnimal,
    kind: z.literal('calving'),
    ease: whole(1, 5).exactOptional(),
    calves: whole(1, 5).exactOptional(),
    dead: whole(0, 5).exactOptional(),
    calfSex: z
      .string()
      .regex(/^[FM]{1,5}$/, { error: 'calf-sex' })
      .exactOptional(),
  })
  .refine((fact) => (fact.dead ?? 0) <= (fact.calves ?? 1), { path: ['dead'], error: 'more-dead-than-born' })
  .refine((fact) => fact.calfSex === undefined || fact.calfSex.length === (fact.calves ?? 1), {
    path: ['calfSex'],
    error: 'calf-sex-count',
  })

const farm = z.looseObject({
  ...ofHerd,
  kind: z.literal('farm'),
  name,
  zone,
  milkings: z
    .array(wallTime)
    .min(1)
    .max(2)
    .refine((times) => times.length < 2 || (times[0] ?? '') < (times[1] ?? ''), { error: 'milkings-order' }),
})

const policy = z.looseObject({
  ...ofHerd,
  kind: z.literal('policy'),
  set: z.looseObject(
    Object.fromEntries(settings.map((setting) => [setting.key, settingShape(setting).exactOptional()])),
  ),
})

/** One shape a kind of fact. */
export const factShapes = {
  heat: z.looseObject({
    ...ofAnimal,
    kind: z.literal('heat'),
    how: z.enum(['activity', 'standing', 'paint', 'mucus', 'other']),
    certainty: z.enum(['sure', 'suspect']),
    signs: text.exactOptional(),
  }),
  looked: z.looseObject({ ...ofAnimal, kind: z.literal('looked') }),
  service: z.looseObject({
    ...ofAnimal,
    kind: z.literal('service'),
    natural: z.boolean().exactOptional(),
    sire: text.exactOptional(),
    straw: straw.exactOptional(),
    batch: text.exactOptional(),
    inseminator: text.exactOptional(),
    session: session.exactOptional(),
    proposed: z.looseObject({ sire: text, straw }).exactOptional(),
  }),
  check: z.looseObject({
    ...ofAnimal,
    kind: z.literal('check'),
    ...checkResult,
    serviceDate: date.exactOptional(),
  }),
  examined: z.looseObject({
    ...ofAnimal,
    kind: z.literal('examined'),
    finding: text.exactOptional(),
    treatment: text.exactOptional(),
    serveOn: date.exactOptional(),
    session: session.exactOptional(),
  }),
  calving,
  loss: z.looseObject({ ...ofAnimal, kind: z.literal('loss') }),
  bar: z.looseObject({ ...ofAnimal, kind: z.literal('bar'), ...reason }),
  unbar: z.looseObject({ ...ofAnimal, kind: z.literal('unbar'), ...reason }),
  'to-bull': z.looseObject({ ...ofAnimal, kind: z.literal('to-bull') }),
  'with-bull': z.looseObject({ ...ofAnimal, kind: z.literal('with-bull'), bull: text.exactOptional() }),
  'from-bull': z.looseObject({ ...ofAnimal, kind: z.literal('from-bull'), bull: text.exactOptional() }),
  hold: z.looseObject({ ...ofAnimal, kind: z.literal('hold'), until: date.exactOptional(), ...reason }),
  score: z.looseObject({
    ...ofAnimal,
    kind: z.literal('score'),
    condition: z.number().min(1).max(5).multipleOf(0.25),
  }),
  dry: z.looseObject({ ...ofAnimal, kind: z.literal('dry') }),
  block: z.looseObject({ ...ofAnimal, kind: z.literal('block'), block: name }),
  left: z.looseObject({ ...ofAnimal, kind: z.literal('left'), ...reason }),
  note: z.looseObject({ ...ofAnimal, kind: z.literal('note'), note: text }),
  correction: z.looseObject({
    ...envelope,
    kind: z.literal('correction'),
    voids: id,
    with: id.exactOptional(),
    ...reason,
  }),
  farm,
  policy,
  season: z.looseObject({
    ...ofHerd,
    kind: z.literal('season'),
    block: name,
    matingStart: date,
    aiWeeks: whole(1, 20),
    bullWeeks: whole(0, 20),
    scanDates: z.array(date).max(100).exactOptional(),
  }),
  animal: z.looseObject({
    ...ofAnimal,
    kind: z.literal('animal'),
    number: name,
    name: text.exactOptional(),
    officialId: text.exactOptional(),
    electronicId: text.exactOptional(),
    internationalId: text.exactOptional(),
    sex: z.enum(['F', 'M']),
    born: date.exactOptional(),
    breed: text.exactOptional(),
    sire: text.exactOptional(),
    dam: text.exactOptional(),
    block: text.exactOptional(),
    lactation: whole(0, 30).exactOptional(),
    ready: z.boolean().exactOptional(),
    ...sireTraits,
    plan: z.enum(['dairy', 'beef']).exactOptional(),
  }),
  'stock-take': z.looseObject({
    ...ofHerd,
    kind: z.literal('stock-take'),
    ...lot,
    count: whole(0, 100_000),
    sireName: text.exactOptional(),
    breed: text.exactOptional(),
    volumeMl: z.number().min(0.1).max(5).exactOptional(),
    ...sireTraits,
  }),
  delivery: z.looseObject({ ...ofHerd, kind: z.literal('delivery'), ...lot, count: whole(1, 100_000) }),
  spoiled: z.looseObject({ ...ofHerd, kind: z.literal('spoiled'), ...lot, count: whole(1, 100_000) }),
  nitrogen: z.looseObject({
    ...ofHerd,
    kind: z.literal('nitrogen'),
    flask: text.exactOptional(),
    depthCm: z.number().min(0).max(200),
  }),
  archive: z.looseObject({
    ...ofHerd,
    kind: z.literal('archive'),
    before: date,
    file: name,
    took: z.array(id),
  }),
  'kept-result': z.looseObject({
    ...ofHerd,
    kind: z.literal('kept-result'),
    number: name,
    ...checkResult,
    why: name,
  }),
} satisfies Record<FactKind, z.ZodType>

function settingShape(setting: (typeof settings)[number]): z.ZodType {
  if (setting.choices !== undefined) return z.enum(setting.choices as [string, ...string[]])
  if (setting.unit === 'yes-no') return z.boolean()
  return z
    .number()
    .min(setting.min ?? 0)
    .max(setting.max ?? Number.MAX_SAFE_INTEGER)
}

function isInstant(value: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}T([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d{1,3})?Z$/.test(value)) return false
  return readDay(value.slice(0, 10)) !== undefined
}
