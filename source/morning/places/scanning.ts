/** The scanning visit: what its keys do. A number, a result, an age where there is one, Enter: and it is recorded. */

import { type Day, isoDay, plusDays } from '../../breeding/day.ts'
import type { CheckFact, CheckResult, CorrectionFact, KeptResultFact, NewFact } from '../../breeding/facts.ts'
import { bookNow } from '../book-now.ts'
import type { Desk } from '../desk.ts'
import { checkMethods } from '../forms/check.ts'
import { voiding } from '../history.ts'
import { because, type Message } from '../message.ts'
import type { ScanEntry, ScanningPlace } from '../place.ts'
import { ageIsOdd, type Judged, judged, neverRecorded } from '../scanning/judged.ts'
import { keep, keptIn, sameResult } from '../scanning/kept.ts'
import { scanLines, visitOf } from '../scanning/lines.ts'
import { cleared, emptyEntry, rubbed, typeDigits, withResult, withTwins } from '../scanning/typing.ts'
import { asking, recording, refused, type Step } from '../step.ts'
import { withPlace } from './with-place.ts'

/** What can be done here besides moving about. */
export type ScanningAct =
  | { readonly is: 'type'; readonly digits: string }
  | { readonly is: 'result'; readonly result: CheckResult }
  | { readonly is: 'twins' }
  | { readonly is: 'rub' }
  | { readonly is: 'enter' }
  /** Keeps what is typed for later. */
  | { readonly is: 'keep' }
  /** Strikes out the result, or drops the kept one, that is pointed at. */
  | { readonly is: 'strike' }
  | { readonly is: 'method' }
  | { readonly is: 'day'; readonly by: 1 | -1 }
  | { readonly is: 'back' }

/** The screen as it opens; one that lies open goes on where it was. */
export const openScanning = (desk: Desk): ScanningPlace =>
  desk.places.find((place) => place.at === 'scanning') ?? {
    at: 'scanning',
    pointer: 0,
    day: Math.min(desk.page.list.day, desk.now.day) as Day,
    method: desk.book.policy.checkMethod,
    entry: emptyEntry,
    to: 'number',
    fresh: false,
    settles: undefined,
    corrects: undefined,
    backTo: undefined,
  }

/** What the line being typed means. */
export const judgedEntry = (desk: Desk, place: ScanningPlace): Judged =>
  judged(bookNow(desk), place, visitOf(desk, place))

export function actScanning(desk: Desk, place: ScanningPlace, act: ScanningAct): Step {
  switch (act.is) {
    case 'type':
      return typed(desk, typeDigits(place, act.digits))
    case 'result':
      return typed(desk, withResult(place, act.result))
    case 'twins':
      return typed(desk, withTwins(place))
    case 'rub':
      return typed(desk, rubbed(place))
    case 'enter':
      return enter(desk, place)
    case 'keep':
      return place.entry.typed === '' || place.entry.result === undefined
        ? refused(desk, 'scan-nothing-to-keep')
        : keep(desk, place, 'by-hand')
    case 'strike':
      return strike(desk, place)
    case 'method': {
      const method = checkMethods[(checkMethods.indexOf(place.method) + 1) % checkMethods.length]
      return typed(desk, method === undefined ? place : { ...place, method })
    }
    case 'day': {
      const day = plusDays(place.day, act.by)
      return day > desk.now.day ? refused(desk, 'scan-day-ahead') : typed(desk, { ...place, day })
    }
    case 'back':
      return back(desk, place)
  }
}

const typed = (desk: Desk, place: ScanningPlace | { readonly whyNot: string }): Step =>
  'whyNot' in place ? refused(desk, place.whyNot) : { desk: withPlace({ ...desk, said: undefined }, place) }

/** One step back: what is typed, then the screen. */
function back(desk: Desk, place: ScanningPlace): Step {
  if (place.entry !== emptyEntry && (place.entry.typed !== '' || place.entry.result !== undefined))
    return typed(desk, cleared(place))
  return { desk: { ...desk, said: undefined, places: desk.places.slice(0, -1) } }
}

function enter(desk: Desk, place: ScanningPlace): Step {
  const { entry } = place
  if (entry.typed === '') return place.pointer > 0 ? takeUp(desk, place) : refused(desk, 'scan-number-first')
  if (entry.result === undefined) return refused(desk, 'scan-result-first')
  if (ageIsOdd(entry)) return refused(desk, 'scan-age-odd', { age: entry.age })
  const { animal, check, replaces, outcome, unexpected } = judgedEntry(desk, place)
  if (animal === undefined || check === undefined || (unexpected && neverRecorded.includes(unexpected)))
    return keep(desk, place, unexpected ?? 'no-such-number')
  if (outcome?.doubt !== undefined) return ask(desk, place, `scan-${outcome.doubt}`, check, replaces)
  if (replaces !== undefined && place.corrects !== replaces.id) {
    if (sameResult(replaces, check))
      return refused(withPlace(desk, cleared(place)), 'scan-same', { number: animal.number })
    return ask(desk, place, 'scan-again', check, replaces)
  }
  if (unexpected !== undefined)
    return place.settles === undefined
      ? keep(desk, place, unexpected)
      : ask(desk, place, `scan-${unexpected}`, check, replaces)
  const facts = factsOf(desk, place, check, replaces)
  return recording(withPlace(desk, cleared(place)), facts, { tone: 'done', code: 'recorded', facts: [check] })
}

/** The check, and the correction of the ones whose place it takes. */
function factsOf(
  desk: Desk,
  place: ScanningPlace,
  check: NewFact<CheckFact>,
  replaces: CheckFact | undefined,
): readonly NewFact[] {
  const corrected = visitOf(desk, place).results.find(({ id }) => id === place.corrects)
  const wrong = [...new Set([replaces, corrected])].filter((one) => one !== undefined)
  return [
    check,
    ...wrong.map(
      (one): NewFact<CorrectionFact> => ({ ...entersAnew, about: one.about, date: one.date, voids: one.id }),
    ),
    ...keptIn(desk, place).map((one) => voiding(one, 'settled')),
  ]
}

const entersAnew = { kind: 'correction', reason: 'entered anew' } as const

/** Asks before a result is recorded that something speaks against; the line stays as it is until then. */
function ask(
  desk: Desk,
  place: ScanningPlace,
  code: string,
  check: NewFact<CheckFact>,
  replaces: CheckFact | undefined,
): Step {
  const said: Message = { tone: 'care', code: 'recorded', facts: [check] }
  const asked = asking(desk, code, factsOf(desk, place, check, replaces), said).desk
  const { slip } = asked
  return { desk: slip?.is === 'question' ? { ...asked, slip: { ...slip, after: cleared(place) } } : asked }
}

/** Takes the line pointed at up again: a kept one with its number to be typed, a recorded one to be corrected. */
function takeUp(desk: Desk, place: ScanningPlace): Step {
  const line = scanLines(desk, place)[place.pointer - 1]
  if (line === undefined) return refused(desk, 'scan-number-first')
  const from = cleared(place)
  if (line.is === 'kept') {
    const { fact } = line
    const { day, method } = from
    return typed(desk, {
      ...from,
      day: isoDay(fact.date),
      method: fact.method,
      backTo: { day, method },
      entry: entryOf(fact.number, fact),
      to: 'number',
      fresh: true,
      settles: fact.id,
    })
  }
  const entry = entryOf(line.animal.number, line.check)
  return typed(desk, { ...from, entry, to: 'age', fresh: true, corrects: line.check.id })
}

/** What was read, as it stands on the line that is typed. */
const entryOf = (typed: string, { result, foetalAge, foetuses }: CheckFact | KeptResultFact): ScanEntry => ({
  typed,
  result,
  age: foetalAge === undefined ? '' : String(foetalAge),
  twins: (foetuses ?? 1) > 1,
})

function strike(desk: Desk, place: ScanningPlace): Step {
  const line = place.pointer === 0 ? undefined : scanLines(desk, place)[place.pointer - 1]
  if (line === undefined) return refused(desk, 'scan-point-first')
  if (line.is === 'result')
    return recording(desk, [voiding(line.check, 'recorded by mistake')], {
      tone: 'done',
      code: 'voided',
      facts: [line.check],
    })
  const { fact } = line
  const dropped = because('scan-dropped', { number: fact.number })
  return recording(withPlace(desk, { ...place, pointer: 0 }), [voiding(fact, 'dropped')], dropped)
}
