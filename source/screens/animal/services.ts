/** Her services, each with the days since the one before, their class, and how it ended. */
import { intervalClass } from '../../breeding/cycle.ts'
import { dayIso } from '../../breeding/day.ts'
import { type ServiceResult, serviceResults } from '../../breeding/figures/service-results.ts'
import { dateInWords } from '../../words/dates.ts'
import { strawWords } from '../../words/facts.ts'
import { intervalMeanings } from '../../words/figures.ts'
import { plainDate } from '../../words/plain-date.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { fill, widthOf, wrap } from '../width.ts'
import { animalWords } from '../words/animal.ts'
import { type About, paragraph } from './about.ts'

/** From so many cells on there is room for the weekday and the kind of straw. */
const WIDE = 56
/** Services that are told. */
const MOST = 12
const SHORTEST_INTERVAL = 2

export function serviceLines(about: About): readonly Line[] {
  const { standing, desk } = about
  if (!standing.female) return []
  const results = serviceResults(standing, desk.book)
  const title: Line = [bit(animalWords.services, 'heading')]
  if (results.length === 0) return [title, ...paragraph(about, animalWords.noServices, 'faint')]
  return [
    title,
    ...results
      .map((result, index) => lineOf(result, results[index - 1], about))
      .toReversed()
      .slice(0, MOST)
      .flat(),
  ]
}

function lineOf(result: ServiceResult, before: ServiceResult | undefined, about: About): readonly Line[] {
  const { cells, theme } = about
  const { service, end, cycle } = result
  const wide = cells >= WIDE
  const date = fill(
    wide ? dateInWords(service.day) : plainDate(dayIso(service.day)),
    wide ? 16 : 12,
    theme.signs.cut,
  )
  const sire = safeText(service.sire ?? '')
  const by = service.ai
    ? safeText(strawWords(service.sire, wide ? service.straw : undefined))
    : animalWords.bullServed(sire)
  const ended = bit(animalWords.ends[end], end === 'held' ? 'good' : 'plain')
  const since = before !== undefined && before.cycle === cycle ? service.day - before.service.day : undefined
  const room = cells - widthOf(date) - widthOf(ended.text) - 2
  const line: Line = [bit(date), bit(` ${fill(by, room, theme.signs.cut)} `, 'strong'), ended]
  if (since === undefined || since < SHORTEST_INTERVAL) return [line]
  const told = `${animalWords.interval(since)}: ${intervalMeanings[intervalClass(since)]}`
  return [line, ...wrap(told, cells - 2, 2, theme.signs.cut).map((text): Line => [bit(`  ${text}`, 'faint')])]
}
