/** Words of the days ahead: the next two weeks, scanning visits, key dates. */

import type { Day } from '../../breeding/day.ts'
import type { Section } from '../../breeding/sections.ts'
import { counted } from '../../words/counted.ts'
import { dateInWords, shortDate } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import type { Sentences, Values } from '../../words/sentences.ts'

/** A section above a column of counts. */
export const columnNames: Readonly<Record<Section, string>> = {
  'take-care': 'care',
  serve: 'serve',
  'second-service': '2nd',
  'repeat-heat-watch': 'watch',
  'pregnancy-check': 'check',
  'sweep-bull': 'bull',
  'no-heat-seen': 'vet',
  'heat-record': 'heat',
}

const animals = (count: number): string => counted(count, 'animal')
const block = (name: string): string => `${safeText(name)} block`

export const aheadWords = {
  daysTitle: 'The next two weeks',
  asIf: 'as if nothing else happened',
  reckoning: 'being reckoned',
  weekend: (sign: string): string => `${sign} weekend`,
  returns: 'back',
  visitsTitle: 'Scanning visits',
  planFor: (name: string): string => `V plans for the ${block(name)}`,
  noVisits: 'Nobody is ready for a check within four months.',
  datesTitle: 'Key dates',
  noDates: 'None within four months.',
  planned: (ready: number): string => (ready === 0 ? 'planned' : `planned, ${ready} ready`),
  ready: (ready: number): string => `${ready} ready`,
  tellsShort: 'tells the sires',
  tells: 'tells AI calves from the bull’s',
  /** About the line pointed at. */
  dayTitle: (day: Day): string => `What may come on ${shortDate(day)}`,
  row: (section: string, count: number): string => `${section}: ${count}`,
  nothing: 'Nothing, as far as is known today.',
  returnsExpected: (count: number): string =>
    `Returns to be expected that day: about ${count < 10 ? count.toFixed(1) : Math.round(count)}.`,
  openDay: 'Enter opens the list of that day.',
  scan: (name: string, day: Day, ready: number): string =>
    `${animals(ready)} of the ${block(name)} ${ready === 1 ? 'is' : 'are'} ready on ${dateInWords(day)}.`,
  tellsLong: 'The foetal age then tells calves by AI from calves by the bull.',
  tellsNot: (from: Day, to: Day): string =>
    `To tell AI calves from the bull’s, scan between ${shortDate(from)} and ${shortDate(to)}.`,
  planHow: 'V plans a visit on this day, M moves the planned one to it.',
  cancelHow: 'M on another day moves it there, X takes it out of the plan.',
} as const

const day = ({ day: value = 0 }: Values): string => dateInWords(Number(value) as Day)
const from = ({ from: value = 0 }: Values): string => shortDate(Number(value) as Day)
const of = ({ block: name = '' }: Values): string => block(String(name))
const readyThen = ({ ready = 0 }: Values): string => `${animals(Number(ready))} ready then`

/** What is said once it is done, or why it is not. */
export const aheadMessages: Sentences = {
  'visit-planned': (values) => `Planned: scanning visit of the ${of(values)} on ${day(values)}.`,
  'visit-moved': (values) =>
    `Moved: the scanning visit of the ${of(values)}, from ${from(values)} to ${day(values)}.`,
  'visit-cancelled': (values) =>
    `Taken out of the plan: the scanning visit of the ${of(values)} on ${day(values)}.`,
  'no-visit-to-move': (values) => `No visit of the ${of(values)} is planned: V plans one.`,
  'point-at-visit': 'Point at a planned visit first.',
  'no-season-then': (values) =>
    `The ${of(values)} has no season on ${day(values)}: Set-up holds the seasons.`,
  'visit-planned-already': (values) => `A visit of the ${of(values)} is planned for ${day(values)} already.`,
}

export const aheadQuestions: Sentences = {
  'plan-visit-planned': (values) =>
    `Plan a scanning visit of the ${of(values)} on ${day(values)}, with ${readyThen(values)}? Until then their checks stand on that day’s list only.`,
  'plan-visit-moved': (values) =>
    `Move the scanning visit of the ${of(values)} from ${from(values)} to ${day(values)}, with ${readyThen(values)}?`,
  'plan-visit-cancelled': (values) =>
    `Take the scanning visit of the ${of(values)} on ${day(values)} out of the plan? Checks then stand on the list as they come due.`,
}
