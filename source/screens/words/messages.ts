/** Messages in words: what was recorded, or why it was not. One line each. */
import { type Day, isoDay } from '../../breeding/day.ts'
import { type AnimalFact, HERD, type HerdFact, type NewFact } from '../../breeding/facts.ts'
import type { Desk } from '../../morning/desk.ts'
import type { Message } from '../../morning/message.ts'
import { dateInWords, shortDate } from '../../words/dates.ts'
import { factWords } from '../../words/facts.ts'
import { herdFactWords } from '../../words/herd-facts.ts'
import { sectionNames } from '../../words/list.ts'
import { notOnListPhrase } from '../../words/not-on-list.ts'
import { plainDate } from '../../words/plain-date.ts'
import { safeText } from '../../words/safe.ts'
import { filled, type Sentences } from '../../words/sentences.ts'
import { aheadMessages } from './ahead.ts'
import { turnOutMessages } from './turn-out.ts'

/** Why something was not done, and what was done that is no fact. */
export const whys: Sentences = {
  'no-such-number': 'There is no animal {typed}. / finds her by name or ear tag.',
  'many-such-tags': '{many} ear tags end in {typed}: type more of it.',
  'her-page-already': 'This is her page. Type another number to go to that animal.',
  'no-animal-here': 'Point at an animal or type her number first.',
  'not-on-list': '{number} is not on this list: nothing is usual for her. H, S, P … record by name.',
  'already-done': '{number} is ticked already. F opens the form to record more.',
  'no-usual': '{number} has no row on the list: choose what to record.',
  'keep-from-bull': '{number} is to be kept from the bull. W opens the form all the same.',
  'list-ahead': 'This list is still to come: nothing can be recorded on it. T goes to today.',
  'list-past': 'This is a past list, to look at. A form can record for that date: F, or Shift+H, S, C …',
  'has-left': '{number} has left the herd: only a note can be recorded.',
  'is-male': '{number} is a male: this is recorded about females.',
  'no-watch': 'No row of the repeat-heat watch is left to look at.',
  'nothing-to-take-back': 'Nothing is left to take back.',
  'nothing-to-put-back': 'Nothing was taken back that could be put back.',
  'not-past': 'Only a past list can be shown as it was known then: the comma goes to the day before.',
  'archived-since': ({ before, file }) =>
    `${safeText(String(file))} has facts from before ${plainDate(String(before))} that this list may lack.`,
  'nothing-folded': 'No animals run with the bull today.',
  'nothing-to-change': 'There is no entry to change: A adds one.',
  'no-season-here': 'Point at a season first: Tab leads to the seasons.',
  'nothing-to-strike':
    'Only a season or a setting of your own can be struck out here; an animal leaves the herd on her page (Shift+G).',
  'is-default': 'This setting is what it is without your own.',
  'nothing-said': 'Nothing is said just now.',
  'nothing-here': 'There is nothing here to point at.',
  'no-bull-here': 'Point at a bull first.',
  'bull-not-on-record': 'He has no record here: E under G records an animal.',
  'one-block': 'There is one block only.',
  'decided-already': 'That is decided of {number} already. U takes the last decision back.',
  'bull-weeks-over': 'The bull’s last day in this season is over: {number} cannot be left to him.',
  'which-block': 'No one other block is planned: M says to which block {number} goes.',
  'none-used-up': 'No straws are used up.',
  ...aheadMessages,
  ...turnOutMessages,
  'scan-number-first': 'Type her number first.',
  'scan-result-first': 'P in calf, E empty, U unsure: then Enter.',
  'scan-age-in-calf-only': 'An age belongs to a result that says in calf. Enter records.',
  'scan-age-long': 'Three digits of age at most. Enter records.',
  'scan-age-odd': '{age} days does not fit: 20 to 290.',
  'scan-twins-in-calf-only': 'Twins belong to a result that says in calf.',
  'scan-nothing-to-keep': 'Type a number and a result first: K then keeps them for later.',
  'scan-day-ahead': 'That day is still to come: only what has happened can be recorded.',
  'scan-same': '{number}: the same result is recorded already.',
  'nothing-changed': 'Nothing was changed, so nothing was recorded.',
  'facts-first': 'Tab goes back to her facts: point at one there.',
  'scan-kept': '{number} counts for no animal yet: it is kept under To settle.',
  'scan-dropped': '{number} is dropped: it counts for no animal.',
  'scan-point-first': 'Point at a result below first.',
  'not-in-a-form': 'This is not changed in a form: X strikes it out.',
  'no-fact-here': 'There is no fact to strike out.',
  cancelled: 'Nothing recorded.',
  'changed-elsewhere': 'Another program recorded something: the list is up to date.',
  'nobody-records': 'Recording without initials.',
  records: 'Recording as {by}.',
  'not-a-key': '{key} does nothing here. ? shows the keys.',
  'no-older-copy': 'No older copy stands in the place of the file.',
  copied: 'A copy of the whole herd is saved as {path}.',
  'leaves-when-saved': 'Saving. The program leaves as soon as that is done.',
  'no-suspend': 'This terminal cannot be suspended.',
}

/** What words need of the desk: whose numbers, which facts, which day it is. */
type Told = Pick<Desk, 'book' | 'log' | 'now'>

/** A message on one line. Harmless for a terminal. */
export function messageWords(message: Message, desk: Told): string {
  const facts = message.facts ?? []
  const values = message.values ?? {}
  switch (message.code) {
    case 'recorded':
      return withPlace(`${deedWords(facts, desk)}.`, message)
    case 'taken-back':
      return withPlace(`Taken back: ${deedWords(facts, desk)}.`, message)
    case 'put-back':
      return withPlace(`Put back: ${deedWords(facts, desk)}.`, message)
    case 'voided':
      return withPlace(`Struck out: ${deedWords(facts, desk)}.`, message)
    case 'new-day':
      return `It is ${dateInWords((values.day ?? 0) as Day)} now: this is the new day’s list.`
    case 'refused':
      return `Not recorded: ${String(values.sentence ?? '')}`
    case 'not-copied':
      return `No copy saved: ${String(values.sentence ?? '')}`
    default: {
      const known = whys[message.code]
      return typeof known === 'function' ? known(values) : filled(known ?? message.code, values)
    }
  }
}
/** Every code that has a sentence here. */
export const messageCodes: readonly string[] = [
  ...Object.keys(whys),
  'recorded',
  'taken-back',
  'put-back',
  'voided',
  'new-day',
  'refused',
  'not-copied',
]

function withPlace(text: string, { stands, notOnList }: Message): string {
  if (stands !== undefined) return `${text} Now under ${sectionNames[stands]}.`
  return notOnList === undefined ? text : `${text} No row: ${notOnListPhrase(notOnList)}.`
}

/** Different things that one line tells of an action. */
const MOST_TOLD = 3

/**
 * What an action recorded.
 *
 * @param desk facts of another day than its today say which
 * @example deedWords([service], desk) // '412: served by AI, S17 sexed, 05:41'
 */
export function deedWords(facts: readonly NewFact[], desk: Told): string {
  // A fact that takes the place of another is told, not the correction that goes with it.
  const told = facts.filter((fact) => fact.kind !== 'correction')
  const shown = told.length === 0 ? facts : told
  const [first] = shown
  if (first === undefined) return ''
  const animals = new Set(shown.map((fact) => fact.about))
  const number = desk.book.animals.get(first.about)?.number ?? ''
  const who = animals.size === 1 ? safeText(number) : `${animals.size} animals`
  const words = [...new Set(withAllBulls(shown).map((fact) => whatOf(fact, desk)))]
  const kinds = new Set(shown.map((fact) => fact.kind))
  const what = kinds.size === 1 && words.length <= MOST_TOLD ? words.join('; ') : `${shown.length} facts`
  return first.about === HERD && animals.size === 1 ? what : `${who}: ${what}`
}

/** Animals put with several bulls have a fact for each: the bulls are told together. */
function withAllBulls(facts: readonly NewFact[]): readonly NewFact[] {
  const bulls = new Set(facts.flatMap((fact) => (fact.kind === 'with-bull' ? (fact.bull ?? []) : [])))
  if (bulls.size < 2) return facts
  const bull = [...bulls].join(', ')
  return facts.map((fact) => (fact.kind === 'with-bull' ? { ...fact, bull } : fact))
}

function whatOf(fact: NewFact, desk: Told): string {
  if (fact.kind === 'correction') {
    const voided = desk.log.find((one) => one.id === fact.voids)
    return voided === undefined ? 'struck out' : `struck out, ${whatOf(voided, desk)}`
  }
  const time = fact.time === undefined ? '' : `, ${safeText(fact.time)}`
  const day = isoDay(fact.date)
  const words = isAboutAnimal(fact) ? `${factWords(fact)}${time}` : herdFactWords(fact)
  return `${words}${day === desk.now.day ? '' : `, ${shortDate(day)}`}`
}

const herdKinds: ReadonlySet<string> = new Set<HerdFact['kind']>([
  'farm',
  'policy',
  'season',
  'animal',
  'stock-take',
  'delivery',
  'spoiled',
  'nitrogen',
  'kept-result',
])
const isAboutAnimal = (fact: NewFact<AnimalFact | HerdFact>): fact is NewFact<AnimalFact> =>
  !herdKinds.has(fact.kind)
