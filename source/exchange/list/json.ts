/** The morning list as JSON, version 1. The version rises only when a key goes or changes its meaning. */
import { dayIso } from '../../breeding/day.ts'
import type { MorningList } from '../../breeding/list.ts'

export const LIST_VERSION = 1

const rounded = (chance: number | undefined): number | null =>
  chance === undefined ? null : Math.round(chance * 10_000) / 10_000

/**
 * The list as a JSON value: every key is always there, null where there is nothing; chances to 4 decimals.
 *
 * @example listJson(list).rows[0].section // 'take-care'
 */
export const listJson = (list: MorningList) => ({
  version: LIST_VERSION,
  date: dayIso(list.day),
  blocks: list.blocks.map((block) => ({
    block: block.block,
    phase: block.phase,
    day: block.day,
    mating_start: dayIso(block.season.matingStart),
    closes: block.closes === undefined ? null : dayIso(block.closes),
  })),
  visits: list.visits.map((visit) => ({ block: visit.block, date: dayIso(visit.visit), ready: visit.ready })),
  rows: list.rows.map((row) => ({
    section: row.section,
    animal: row.number,
    block: row.block ?? null,
    days: row.days ?? null,
    since: row.since ?? null,
    chance: rounded(row.chance),
    session: row.session ?? null,
    straw: row.straw === undefined ? null : { sire: row.straw.sire, kind: row.straw.straw },
    reasons: row.reasons,
    warnings: row.warnings,
    also: row.also ?? null,
    done: row.done,
  })),
})
