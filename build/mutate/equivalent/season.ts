/** Of forecast, figures and ahead. */
import type { Equivalent } from './entry.ts'

const forecast = (name: string): string => `source/breeding/forecast/${name}.ts`
const figures = (name: string): string => `source/breeding/figures/${name}.ts`
const ahead = (name: string): string => `source/breeding/ahead/${name}.ts`

const pauses: readonly Equivalent[] = [
  forecast('block'),
  forecast('point'),
  figures('season-figures'),
  figures('season-view'),
  ahead('ahead'),
].map((file) => ({
  file,
  at: '«yield»',
  becomes: [''],
  why: 'a step more or less gives the same in the end',
}))

const kept: readonly Equivalent[] = [
  [forecast('anchor'), 'if (found) «return found»'],
  [forecast('anchor'), '«firstHeats.set(firstHeat, days)»'],
  [figures('service-results'), 'if (found !== undefined) «return found»'],
  [figures('service-results'), '«known.set(standing, results)»'],
  [ahead('moves-due'), '«known.set(book, ofBook)»'],
  [ahead('moves-due'), '«ofBook.set(key, found)»'],
].map(([file = '', at = '']) => ({ file, at, becomes: [''], why: 'what is kept only saves time' }))

export const ofSeason: readonly Equivalent[] = [
  ...pauses,
  ...kept,
  {
    file: ahead('ahead'),
    at: 'const placed = «each.filter(mayComeUp)»',
    becomes: ['each'],
    why: 'who has left stands on no list and is awaited on no day: leaving her out saves time',
  },
  {
    file: figures('season-view'),
    at: 'const VIEWS_KEPT = «8»',
    becomes: ['9', '(7)'],
    why: 'what is kept only saves time',
  },
  {
    file: forecast('anchor'),
    at: 'const past = Math.max(«0», season.today - day)',
    becomes: ['1', '(-1)'],
    why: 'no heat comes on the day of the service, nor before it',
  },
  {
    file: forecast('animal'),
    at: 'for (let i = «0»; i < byDay.length; i += 1) {',
    becomes: ['(-1)'],
    why: 'before the first day nothing is conceived',
  },
  {
    file: forecast('animal'),
    at: 'for (let i = 0; «i < byDay.length»; i += 1) {',
    becomes: ['(i) <= (byDay.length)'],
    why: 'after the last day nothing is conceived',
  },
  {
    file: forecast('animal'),
    at: 'if («today > lastBullDay») settle(course, today)',
    becomes: ['(today) >= (lastBullDay)'],
    why: 'on his last day all was settled in its turn, and settled again it stays as it is',
  },
  {
    file: forecast('conceived'),
    at: 'const held = share * (survival[Math.min(Math.max(«0», on - day), survival.length - 1)] as number)',
    becomes: ['1'],
    why: 'nothing is lost in the first day',
  },
  {
    file: forecast('course'),
    at: 'if (lost === «0») return',
    becomes: ['1', '(-1)'],
    why: 'nothing lost, nothing moves',
  },
  {
    file: forecast('each-animal'),
    at: 'if (bulls !== undefined && «season.today <= season.lastAiDay») {',
    becomes: ['(season.today) < (season.lastAiDay)'],
    why: 'the other way gives the same, more slowly',
  },
  {
    file: forecast('each-animal'),
    at: 'endAi(course, «season.lastAiDay + 1»)',
    becomes: ['(season.lastAiDay) - (1)'],
    why: 'no heat is left of the days that are over',
  },
  {
    file: forecast('each-animal'),
    at: 'endAi(course, season.lastAiDay + «1»)',
    becomes: ['(0)'],
    why: 'no heat is left of the days that are over',
  },
  {
    file: forecast('outlook-of'),
    at: 'if (season.today <= season.lastAiDay + «1») return watch.before',
    becomes: ['2', '(0)'],
    why: 'what is not watched matters only of days that are over',
  },
  {
    file: forecast('outlook-of'),
    at: 'const afterCalving = calved === undefined ? «0» : seasonDay(season, calved) + calvedToServe',
    becomes: ['(-1)'],
    why: 'nobody is served before the mating start',
  },
]
