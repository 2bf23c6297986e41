/** AI goes on for a week more. */
import { dayIso, plusDays } from '../../breeding/day.ts'
import { HERD, type NewFact, type SeasonFact } from '../../breeding/facts.ts'
import type { Desk } from '../desk.ts'
import type { Message } from '../message.ts'
import type { TurnOutPlace } from '../place.ts'
import { asking, refused, type Step } from '../step.ts'
import { blockOf, type Move } from './move.ts'

/** AI goes on for a week in the place of the bull's first; he comes out on the same day as planned. */
export function longer(desk: Desk, place: TurnOutPlace, move: Move): Step {
  const phase = blockOf(desk, place)?.phase
  if (place.what !== 'in' || (phase !== 'ai' && phase !== 'before')) return refused(desk, 'ai-is-over')
  const fact = desk.book.live.find(
    (one): one is SeasonFact => one.kind === 'season' && one.id === move.season.factId,
  )
  if (fact === undefined || fact.bullWeeks < 1) return refused(desk, 'no-bull-week-left')
  const { id: _id, at: _at, by: _by, action: _action, ...season } = fact
  const facts: readonly NewFact[] = [
    {
      ...season,
      about: HERD,
      date: dayIso(desk.now.day),
      aiWeeks: fact.aiWeeks + 1,
      bullWeeks: fact.bullWeeks - 1,
    },
  ]
  const closes = plusDays(move.planned, 6)
  const said: Message = {
    tone: 'done',
    code: 'ai-longer',
    values: { block: place.block, day: closes, weeks: fact.aiWeeks + 1 },
    facts,
  }
  const asked = asking(desk, 'ai-longer', facts, said).desk
  const after = { ...place, day: plusDays(move.planned, 7) }
  return { desk: asked.slip?.is === 'question' ? { ...asked, slip: { ...asked.slip, after } } : asked }
}
