/** Her pregnancy checks, each with what it counts for. */
import { type CheckCounted, checksCounted } from '../../breeding/checks-counted.ts'
import { dayAndMonth } from '../../words/dates.ts'
import { factWords } from '../../words/facts.ts'
import { plainDate } from '../../words/plain-date.ts'
import { bit, type Line } from '../line.tsx'
import { comesTo } from '../scanning/comes-to.ts'
import { wrap } from '../width.ts'
import { animalWords } from '../words/animal.ts'
import { type About, paragraph } from './about.ts'

/** Checks that are told. */
const MOST = 8

export function checkLines(about: About): readonly Line[] {
  const { standing, desk, cells, theme } = about
  if (!standing.female) return []
  const checks = checksCounted(standing, desk.book)
  const title: Line = [bit(animalWords.checks, 'heading')]
  if (checks.length === 0) return [title, ...paragraph(about, animalWords.noChecks, 'faint')]
  return [
    title,
    ...checks.slice(0, MOST).flatMap((counted): readonly Line[] => {
      // The service that it named is told with what it counts for.
      const { serviceDate: _named, ...fact } = counted.check.fact
      const words = `${plainDate(fact.date)}  ${factWords(fact)}`
      return [
        ...paragraph(about, words, 'plain', 2),
        ...wrap(countsFor(counted), cells - 2, 2, theme.signs.cut).map(
          (text): Line => [bit(`  ${text}`, 'faint')],
        ),
      ]
    }),
  ]
}

function countsFor({ check, conception, service, served }: CheckCounted): string {
  if (check.fact.result === 'pregnant')
    return conception === undefined ? animalWords.noneFits : comesTo({ check, conception }, undefined)
  if (service !== undefined) return animalWords.countsFor(dayAndMonth(service.day))
  return served ? animalWords.countsForNone : animalWords.noServiceBefore
}
