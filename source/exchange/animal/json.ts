/** One animal as JSON, version 1: what the rules make of her facts on a day. */

import { chanceInCalf } from '../../breeding/animal-chances.ts'
import type { HerdBook } from '../../breeding/book.ts'
import type { Rates } from '../../breeding/chances/rates.ts'
import { type Cycle, intervalClass } from '../../breeding/cycle.ts'
import { type Day, dayIso, plusDays } from '../../breeding/day.ts'
import { DUE_BAND } from '../../breeding/gestation.ts'
import type { Row } from '../../breeding/list.ts'
import { nextReturn } from '../../breeding/next-return.ts'
import { serviceCounted } from '../../breeding/pregnancy.ts'
import { daysCalved } from '../../breeding/questions.ts'
import type { Standing } from '../../breeding/standing.ts'
import { strawsOnList } from '../../breeding/straws-on-list.ts'
import { strawWhy } from '../../words/straws.ts'

export const ANIMAL_VERSION = 1

const iso = (day: Day | undefined): string | null => (day === undefined ? null : dayIso(day))

/**
 * The animal as a JSON value: every key is always there, null where there is nothing.
 *
 * @param standing of the animal on the day asked for, @param rates that the chances rest on
 * @param rows of the list of that day, for the straws that are promised to others
 * @example animalJson(book, standing, rates, morningList(book, standing.today).rows).parity // 2
 */
export function animalJson(book: HerdBook, standing: Standing, rates: Rates, rows: readonly Row[]) {
  const { animal, cycle, pregnancy, due } = standing
  const chance = chanceInCalf(standing, book, rates)
  const conception = pregnancy?.conception
  const next = nextReturn(standing, book.policy)
  return {
    version: ANIMAL_VERSION,
    date: dayIso(standing.today),
    number: animal.number,
    name: animal.record.name ?? null,
    block: standing.block ?? null,
    parity: standing.parity,
    maiden: standing.maiden,
    ready: standing.ready,
    in_herd: standing.inHerd,
    barred: standing.barred,
    on_hold: standing.onHold,
    calved: daysCalved(standing) ?? null,
    calving: iso(standing.calvings.at(-1)?.day),
    heats: cycle.heats.map((heat) => ({
      date: dayIso(heat.day),
      sure: heat.sure,
      service:
        heat.service === undefined
          ? null
          : {
              date: dayIso(heat.service.day),
              natural: !heat.service.ai,
              sire: heat.service.sire ?? null,
              kind: heat.service.straw ?? null,
            },
    })),
    chances: standing.chancesUsed,
    checks: cycle.checks.map((check) => ({
      date: dayIso(check.day),
      method: check.fact.method,
      result: check.fact.result,
      foetal_age: check.fact.foetalAge ?? null,
      counts_for: iso(serviceCounted(cycle, check, book.policy)?.day),
    })),
    in_calf: standing.inCalf,
    conception:
      conception === undefined
        ? null
        : {
            date: dayIso(conception.day),
            sire: conception.sire ?? null,
            ai_or_bull: conception.aiOrBull,
          },
    due: iso(due),
    due_low: iso(due === undefined ? undefined : plusDays(due, -DUE_BAND)),
    due_high: iso(due === undefined ? undefined : plusDays(due, DUE_BAND)),
    dry_off: iso(standing.dryOff),
    chance_pregnant: chance === undefined ? null : Math.round(chance * 10_000) / 10_000,
    next_return:
      next === undefined
        ? null
        : { from: dayIso(next.from), to: dayIso(next.to), likely: dayIso(next.likely) },
    intervals: intervalsOf(cycle),
    straws: strawsOnList(book, rows, standing).ranked.map((ranked) => ({
      sire: ranked.sire,
      kind: ranked.straw,
      inbreeding: Math.round(ranked.inbreeding * 1_000_000) / 1_000_000,
      generations: ranked.generations,
      left: ranked.left,
      reasons: ranked.reasons.map((reason) => reason.code),
      why: strawWhy(ranked),
    })),
    facts: animal.happenings
      .filter((happening) => happening.day <= standing.today)
      .map(({ fact }) => {
        // Who recorded it and when stays in the herd file: a herd read from its tables prints the same.
        const { at, by, action, about, ...said } = fact
        return said
      }),
  }
}

/** Days between the services of a cycle, and their class. */
function intervalsOf(cycle: Cycle): readonly { days: number; class: string }[] {
  const days = cycle.heats.flatMap((heat) => (heat.service === undefined ? [] : [heat.service.day]))
  return days.slice(1).map((day, index) => {
    const between = day - (days[index] as Day)
    return { days: between, class: intervalClass(between) }
  })
}
