/** What becomes of a late calver or an empty, decided on her row with one key. */

import type { LastChanceReason } from '../../breeding/ahead/last-chances.ts'
import { dayIso } from '../../breeding/day.ts'
import type { NewFact } from '../../breeding/facts.ts'
import type { EmptyReason } from '../../breeding/figures/probably-empty.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import { dayOfSeason } from '../../breeding/season.ts'
import type { Desk } from '../desk.ts'
import { voiding } from '../history.ts'
import { because } from '../message.ts'
import { recording, type Step } from '../step.ts'
import { decidedNow, type EmptyRow } from './empties.ts'

export type Decision = 'block' | 'bar' | 'to-bull'

/** The reason that goes on record with "not to be bred": why she stands on the list. */
const barredFor: Readonly<Record<LastChanceReason | EmptyReason, string>> = {
  'calves-late': 'calves too late for the block',
  'calved-late': 'calved too late for the block',
  empty: 'empty after the season',
  'checked-empty': 'checked empty',
  'came-back': 'came back, not in calf',
  doubtful: 'probably empty',
  'not-served': 'not served',
  'with-bull': 'not in calf by AI',
}

/** The block that she would go to: the one whose season comes next for her, else the only other one. */
function otherBlock(view: SeasonView, row: EmptyRow): string | undefined {
  if ('otherBlock' in row && row.otherBlock !== undefined) return row.otherBlock.block
  const others = [...view.book.seasons.keys()].filter((block) => block !== view.season.block)
  return others.length === 1 ? others[0] : undefined
}

/**
 * Records a decision of today. One in the place of another strikes that out, so that taking back brings it back.
 *
 * @param row the animal pointed at, @param view the season it is decided for
 * @example decide(desk, view, row, 'bar').record // [{ kind: 'bar', reason: 'empty after the season', … }]
 */
export function decide(desk: Desk, view: SeasonView, row: EmptyRow, decision: Decision): Step {
  const { animal } = row.standing
  const { number } = animal
  const { season } = view
  const refuse = (code: string): Step => ({ desk: { ...desk, said: because(code, { number }) } })
  const before = decidedNow(desk, animal.id, season)
  if (before?.fact.kind === 'left') return refuse('has-left')
  if (before?.fact.kind === decision) return refuse('decided-already')
  const about = { about: animal.id, date: dayIso(desk.now.day) }
  const record = (fact: NewFact): Step =>
    recording(desk, [...(before === undefined ? [] : [voiding(before.fact, 'decided otherwise')]), fact])
  if (decision === 'bar') return record({ kind: 'bar', ...about, reason: barredFor[row.reason] })
  if (decision === 'to-bull') {
    const bullIsOver = season.bullEnd === season.aiEnd || desk.now.day > dayOfSeason(season, season.bullEnd)
    return bullIsOver ? refuse('bull-weeks-over') : record({ kind: 'to-bull', ...about })
  }
  const block = otherBlock(view, row)
  return block === undefined ? refuse('which-block') : record({ kind: 'block', ...about, block })
}
