/** The day of the move: which days it may have, and the day that is typed. */
import { type Day, plusDays } from '../../breeding/day.ts'
import { dayOfSeason } from '../../breeding/season.ts'
import type { Desk } from '../desk.ts'
import { readTypedDay } from '../forms/reader.ts'
import type { TurnOutPlace } from '../place.ts'
import { type Move, moveOf } from './move.ts'

/** Whether a move on that day can be recorded: what has happened, and what is agreed for the next morning. */
export const canBeRecorded = (desk: Desk, day: Day): boolean => day <= plusDays(desk.now.day, 1)

/** Whether the move can be on that day: not before mating; in by the bull's last day, out within 60 days from today. */
export function isDayOfMove(desk: Desk, place: TurnOutPlace, { season }: Move, day: Day): boolean {
  const last = place.what === 'in' ? dayOfSeason(season, season.bullEnd) : plusDays(desk.now.day, 60)
  return day >= season.matingStart && day <= last
}

/**
 * The day of a move that is typed: it may have been, where the move is recorded late. A day without a year is the one
 * within the season.
 *
 * @returns the day, or the code of what is the matter with it
 * @example moveDayTyped(desk, place, '30 feb') // 'no-date'
 */
export function moveDayTyped(
  desk: Desk,
  place: TurnOutPlace,
  text: string,
): Day | 'no-date' | 'move-outside-season' {
  const days = [false, true].flatMap((ahead) => readTypedDay(text, desk.now.day, ahead) ?? [])
  const move = moveOf(desk, place)
  if (days.length === 0 || move === undefined) return 'no-date'
  return days.find((day) => isDayOfMove(desk, place, move, day)) ?? 'move-outside-season'
}
