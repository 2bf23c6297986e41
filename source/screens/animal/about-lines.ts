/** An animal in a column of text: why she is on the list, her cycle, her chances, the straw. For the page and beside the list. */

import { chanceInCalf } from '../../breeding/animal-chances.ts'
import { type Day, plusDays } from '../../breeding/day.ts'
import { DUE_BAND } from '../../breeding/gestation.ts'
import { nextReturn } from '../../breeding/next-return.ts'
import { notOnList } from '../../breeding/not-on-list.ts'
import { daysCalved } from '../../breeding/questions.ts'
import { ratesOfPolicy } from '../../breeding/rates-of-policy.ts'
import { cautions, cautionsOf } from '../../words/cautions.ts'
import { dateInWords, shortDate } from '../../words/dates.ts'
import { reasonWords, sectionNames, warningWords } from '../../words/list.ts'
import { notOnListSentence } from '../../words/not-on-list.ts'
import { safeText } from '../../words/safe.ts'
import { strawCalf, strawReason } from '../../words/straws.ts'
import { bit, type Line } from '../line.tsx'
import { parted } from '../text.ts'
import type { Tone } from '../theme.ts'
import { animalWords } from '../words/animal.ts'
import { type About, paragraph } from './about.ts'
import { cycleRuler } from './ruler.ts'
import { strawFor } from './straw.ts'
import { cycleLines } from './timeline.ts'

/** Number and name, where she belongs, her tags. */
export function titleLines(about: About): Line[] {
  const { animal, standing } = about
  const { name, officialId, electronicId } = animal.record
  const lines: Line[] = [
    [bit(safeText(animal.number), 'strong'), bit(name === undefined ? '' : `  ${safeText(name)}`, 'strong')],
    ...paragraph(about, animalWords.belongs(standing), 'plain', 2),
  ]
  const tags = [officialId, electronicId].filter((tag) => tag !== undefined).map(safeText)
  if (tags.length > 0) lines.push(...paragraph(about, animalWords.tags(tags), 'faint', 1))
  return lines
}

/** Why she stands where she stands: the rule's sentence with its numbers, then the warnings. */
function whySentences({ row, desk, standing, theme }: About): readonly { text: string; tone: Tone }[] {
  const { policy } = desk.book
  if (row === undefined)
    return [
      { text: `${animalWords.notOnList} ${notOnListSentence(notOnList(standing, policy))}`, tone: 'faint' },
    ]
  const since = animalWords.since(row, standing)
  const tone = row.section === 'take-care' ? 'care' : 'plain'
  const reasons = row.reasons.map((reason) => reasonWords[reason].sentence(policy)).join(' ')
  return [
    { text: since === '' ? reasons : `${since} ${reasons}`, tone },
    ...row.warnings.map((warning) => ({
      text: `${theme.signs.warning} ${warningWords[warning].sentence(policy)}`,
      tone: 'care' as const,
    })),
    ...(row.also === undefined
      ? []
      : [{ text: animalWords.otherwise(sectionNames[row.also]), tone: 'faint' as const }]),
  ]
}

export const whyLines = (about: About): readonly Line[] =>
  whySentences(about).flatMap(({ text, tone }) => paragraph(about, text, tone))

/** The same on few lines: warnings first where not all fits. */
export function shortWhy(about: About, most: number): readonly Line[] {
  const all = whyLines(about)
  if (all.length <= most) return all
  const [reason, ...rest] = whySentences(about)
  const warned = rest
    .filter(({ tone }) => tone === 'care')
    .flatMap(({ text, tone }) => paragraph(about, text, tone, 1))
  const kept = warned.slice(0, most - 1)
  return [
    ...(reason === undefined ? [] : paragraph(about, reason.text, reason.tone, most - kept.length)),
    ...kept,
  ]
}

/** Chances used, in calf or not, what is due and when. */
export function standingLines(about: About): Line[] {
  const { desk, standing } = about
  const { policy } = desk.book
  const said: string[] = []
  const calved = daysCalved(standing)
  if (calved !== undefined && !standing.inCalf) said.push(animalWords.calved(calved))
  if (standing.season !== undefined && standing.female && !standing.inCalf)
    said.push(animalWords.chances(standing.chancesUsed, policy.chances))
  const conceived = standing.pregnancy?.conception
  if (standing.inCalf)
    said.push(
      conceived === undefined ? animalWords.inCalf : animalWords.inCalfSince(standing.today - conceived.day),
    )
  const chance = chanceInCalf(standing, desk.book, ratesOfPolicy(policy))
  if (chance !== undefined && !standing.inCalf) said.push(animalWords.chanceInCalf(chance))
  const lines = said.length === 0 ? [] : [...paragraph(about, `${said.join(', ')}.`)]
  if (standing.due !== undefined) lines.push(...paragraph(about, dueWords(standing.due, standing.dryOff)))
  const next = nextReturn(standing, policy)
  if (next !== undefined && standing.lastService !== undefined)
    lines.push(
      ...paragraph(
        about,
        // Known not to be in calf, she does not come back: she comes on heat.
        (chance === 0 ? animalWords.nextHeat : animalWords.nextReturn)(
          shortDate(next.from),
          shortDate(next.to),
        ),
      ),
    )
  return lines
}

const dueWords = (due: Day, dryOff: Day | undefined): string =>
  animalWords.due(
    dateInWords(due),
    shortDate(plusDays(due, -DUE_BAND)),
    shortDate(plusDays(due, DUE_BAND)),
    dryOff === undefined ? undefined : shortDate(dryOff),
  )

/** The proposed straw and why it is this one. */
export function strawLines(about: About): Line[] {
  const { row, desk, standing } = about
  const choice = strawFor(desk, standing, row)
  if (row?.straw === undefined && choice === undefined) return []
  const lines: Line[] = []
  if (row?.straw !== undefined)
    lines.push([bit(animalWords.straw), bit(`${safeText(row.straw.sire)} ${row.straw.straw}`, 'strong')])
  for (const reason of choice?.reasons ?? []) lines.push(...paragraph(about, strawReason(reason), 'faint', 2))
  if (choice?.sire !== undefined && choice.sire.straw !== 'beef')
    lines.push(...paragraph(about, strawCalf(choice.sire), 'faint', 2))
  return lines
}

/** The cautions of her section in full. */
const cautionLines = (about: About): readonly Line[] =>
  about.row === undefined
    ? []
    : cautionsOf[about.row.section].flatMap((name) => paragraph(about, cautions[name].full, 'faint'))

/** The whole column. */
export const aboutLines = (about: About): readonly Line[] =>
  parted([
    titleLines(about),
    whyLines(about),
    [...cycleRuler(about), ...standingLines(about)],
    strawLines(about),
    cycleLines(about, 8),
    cautionLines(about),
  ])
