/** The line that is being typed at a scanning visit, whom it means, and what it comes to. Always three lines. */
import type { Standing } from '../../breeding/standing.ts'
import type { ScanningPlace } from '../../morning/place.ts'
import { type Judged, neverRecorded } from '../../morning/scanning/judged.ts'
import { dayAndMonth } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import { type Bit, bit, type Line, spread } from '../line.tsx'
import type { Room } from '../page-lines.ts'
import { animalWords } from '../words/animal.ts'
import { doubtWords, keptWords, remarkWords, resultNames, scanningWords } from '../words/scanning.ts'
import { comesTo } from './comes-to.ts'

export const entryLines = (place: ScanningPlace, judged: Judged, room: Room): readonly Line[] => [
  spread(
    typedLine(place, room),
    [bit(scanningWords.method(place.method), 'faint'), bit(' ')],
    room.cells,
    room.theme.signs.cut,
  ),
  whomLine(place, judged, room),
  outcomeLine(judged, room),
]

/** Number, result, age; the sign of where the next character goes. */
function typedLine({ entry, to, pointer }: ScanningPlace, { theme }: Room): Line {
  const { caret, pointer: sign } = theme.signs
  const line: Bit[] = [
    bit(pointer === 0 ? `${sign} ` : '  ', 'light'),
    bit(`${scanningWords.number} `),
    bit(safeText(entry.typed), 'entry'),
    ...(to === 'number' ? [bit(caret, 'light')] : []),
  ]
  if (entry.result === undefined) {
    if (entry.typed !== '') line.push(bit(`   ${scanningWords.resultFirst}`, 'faint'))
    return line
  }
  line.push(bit('   '), bit(resultNames[entry.result], 'strong'))
  if (entry.result !== 'pregnant') return [...line, bit(`   ${scanningWords.enter}`, 'faint')]
  if (entry.age !== '') line.push(bit(', '), bit(entry.age, 'entry'))
  if (to === 'age') line.push(bit(entry.age === '' ? ` ${caret}` : caret, 'light'))
  line.push(
    entry.age === '' ? bit(` ${scanningWords.ageOrEnter}`, 'faint') : bit(` ${scanningWords.ageUnit}`),
  )
  if (entry.twins) line.push(bit(`, ${scanningWords.twins}`, 'strong'))
  return line
}

/** Name, where she belongs, and what is known of her before the result; or why there is none. */
function whomLine({ entry, day }: ScanningPlace, judged: Judged, { theme }: Room): Line {
  if (entry.typed === '') return []
  const { animal, unexpected, replaces, before } = judged
  const never = unexpected !== undefined && neverRecorded.includes(unexpected) ? unexpected : undefined
  if (animal === undefined || before === undefined)
    return [bit(`  ${theme.signs.warning} ${keptWords[never ?? 'no-such-number']}`, 'care')]
  const name = animal.record.name === undefined ? '' : `${safeText(animal.record.name)}, `
  const who = bit(`${name}${animalWords.belongs(before)}`, 'strong')
  if (never !== undefined) return [bit(`  ${theme.signs.warning} ${keptWords[never]}: `, 'care'), who]
  const read = replaces === undefined ? '' : `${scanningWords.before.checked(resultNames[replaces.result])}; `
  return [bit('    '), who, bit(`: ${read}${knownBefore(before, day)}`)]
}

function knownBefore(standing: Standing, day: Standing['today']): string {
  const conceived = standing.pregnancy?.conception?.day
  if (standing.inCalf)
    return conceived === undefined
      ? scanningWords.before.inCalfUnknown
      : scanningWords.before.inCalf(dayAndMonth(conceived))
  const service = standing.lastService
  if (service === undefined) return scanningWords.before.open
  const age = day - service.day
  const when = dayAndMonth(service.day)
  return service.ai
    ? scanningWords.before.served(when, age, safeText(service.sire ?? ''))
    : scanningWords.before.servedByBull(when, age)
}

/** What speaks against it, else why she was not expected, else what it comes to. */
function outcomeLine({ outcome, check, unexpected }: Judged, { theme }: Room): Line {
  const warning = (words: string): Line => [bit(`  ${theme.signs.warning} ${words}`, 'care')]
  if (outcome?.doubt !== undefined) return warning(doubtWords[outcome.doubt])
  if (unexpected === 'other-block' || unexpected === 'not-due') return warning(keptWords[unexpected])
  if (outcome === undefined || check === undefined) return []
  const words = check.result === 'pregnant' ? comesTo(outcome.pregnancy, outcome.due) : ''
  const remark = outcome.remark === undefined ? '' : remarkWords[outcome.remark]
  return [
    bit('    '),
    bit(words, 'good'),
    bit(remark === '' ? '' : `${words === '' ? '' : '. '}${remark}`, 'care'),
  ]
}
