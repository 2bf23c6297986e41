/** Setting up the farm, as lines: four parts, the one that is open below a line that names them all. */
import { calvingStartFor, isoDay } from '../../breeding/day.ts'
import type { SeasonFact } from '../../breeding/facts.ts'
import type { Policy, Setting } from '../../breeding/policy.ts'
import { dayOfSeason } from '../../breeding/season.ts'
import type { Desk } from '../../morning/desk.ts'
import { type SetUpPlace, setUpParts } from '../../morning/place.ts'
import { entryAt, type SetUpEntry, setUpEntries } from '../../morning/places/set-up.ts'
import { dateInWords, shortDate } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { type DrawPage, type PointedLine, pointedPage } from '../page-lines.ts'
import type { Theme } from '../theme.ts'
import { fill, wrap } from '../width.ts'
import { rangeWords, settingWords, setUpWords, valueWords } from '../words/set-up.ts'

const NAME = 36
const VALUE = 22
/** Cells from which the planned calving start has room in the line of a season. */
const ROOM_FOR_CALVING = 100

export const setUpPage: DrawPage<SetUpPlace> = (desk, place, room) => {
  const { theme, cells } = room
  const entries = setUpEntries(desk, place.part)
  const lines =
    entries.length === 0
      ? wrap(setUpWords.none[place.part], cells - 2, 4, theme.signs.cut).map(
          (text): PointedLine => ({ line: [bit(` ${text}`, 'faint')] }),
        )
      : entries.map((entry) => pointedLine(entryLine(entry, desk, cells, theme), theme))
  const more = explained(entryAt(desk, place), desk, room.beside === 0 ? cells - 2 : room.beside, theme)
  return {
    ...pointedPage(lines, place.pointer, room, [partsLine(place, theme), []]),
    beside: more,
    strip: more.map((line): Line => [bit(' '), ...line]),
  }
}

/** The parts by name, the open one strong. */
const partsLine = (place: SetUpPlace, theme: Theme): Line => [
  bit(' '),
  ...setUpParts.flatMap((part, index) => [
    ...(index === 0 ? [] : [bit(`  ${theme.signs.dot}  `, 'rule')]),
    bit(setUpWords.parts[part], part === place.part ? 'heading' : 'faint'),
  ]),
]

const pointedLine = (line: Line, theme: Theme): PointedLine => ({
  line: [bit('  '), ...line],
  pointed: [
    bit(`${theme.signs.pointer} `, 'light'),
    ...line.map((one) => ({ ...one, tone: 'pointed' as const })),
  ],
})

function entryLine(entry: SetUpEntry, desk: Desk, cells: number, theme: Theme): Line {
  const { signs } = theme
  switch (entry.is) {
    case 'farm': {
      const { name, zone, milkings } = desk.book.farm
      return [bit(`${safeText(name)}, ${safeText(zone)}, ${setUpWords.milked(milkings)}`)]
    }
    case 'season': {
      const { fact } = entry
      const start = isoDay(fact.matingStart)
      const calving = calvingStartFor(start, desk.book.policy.defaultGestation)
      const visits = fact.scanDates?.length ?? 0
      return [
        bit(fill(safeText(fact.block), 10, signs.cut), 'strong'),
        bit(
          `${setUpWords.season(dateInWords(start), fact.aiWeeks, fact.bullWeeks)}${cells < ROOM_FOR_CALVING ? '' : `  ${setUpWords.calvingFrom(dateInWords(calving))}`}`,
        ),
        bit(visits === 0 ? '' : `  ${setUpWords.visits(visits)}`, 'faint'),
      ]
    }
    case 'setting':
      return [
        bit(fill(settingWords[entry.setting.key].name, NAME, signs.cut)),
        bit(fill(shownValue(entry.setting, desk.book.policy), VALUE, signs.cut), 'strong'),
        bit(isChanged(entry.setting, desk.book.policy) ? setUpWords.changed : '', 'good'),
      ]
    case 'animal': {
      const { record } = entry.animal
      const said = [
        record.sex === 'M' ? setUpWords.male : '',
        record.born === undefined ? '' : setUpWords.born(dateInWords(isoDay(record.born))),
        record.breed === undefined ? '' : safeText(record.breed),
        record.block === undefined ? '' : setUpWords.block(safeText(record.block)),
        record.ready === true ? setUpWords.ready : '',
      ]
      return [
        bit(fill(safeText(record.number), 7, signs.cut), 'strong'),
        bit(fill(safeText(record.name ?? ''), 16, signs.cut)),
        bit(said.filter((part) => part !== '').join(', '), 'faint'),
      ]
    }
  }
}

const shownValue = (setting: Setting, policy: Policy): string => valueWords(policy[setting.key], setting.unit)

const isChanged = (setting: Setting, policy: Policy): boolean => policy[setting.key] !== setting.standard

/** All about the line pointed at: a season's days; what a setting means, its range, its default and their source. */
function explained(entry: SetUpEntry | undefined, desk: Desk, cells: number, theme: Theme): readonly Line[] {
  const sentences =
    entry?.is === 'season'
      ? seasonSentences(entry.fact, desk)
      : entry?.is === 'setting'
        ? settingSentences(entry.setting, desk.book.policy)
        : []
  return sentences.flatMap((text) =>
    wrap(text, cells - 1, 4, theme.signs.cut).map((line): Line => [bit(line)]),
  )
}

function seasonSentences(fact: SeasonFact, { book }: Desk): readonly string[] {
  const season = book.allSeasons.find(({ factId }) => factId === fact.id)
  if (season === undefined) return []
  const { aiEnd, bullEnd, matingStart } = season
  const day = (s: number): string => dateInWords(dayOfSeason(season, s))
  const visits = (fact.scanDates ?? []).map((date) => shortDate(isoDay(date)))
  return [
    setUpWords.aiUntil(day(aiEnd)),
    bullEnd > aiEnd ? setUpWords.bullFromTo(day(aiEnd + 1), day(bullEnd)) : setUpWords.noBull,
    setUpWords.calvesFrom(dateInWords(calvingStartFor(matingStart, book.policy.defaultGestation))),
    visits.length === 0 ? setUpWords.noVisits : setUpWords.visitsOn(visits),
  ]
}

function settingSentences(setting: Setting, policy: Policy): readonly string[] {
  const { standard, unit, source, key } = setting
  const range = rangeWords(setting)
  const standing = isChanged(setting, policy)
    ? setUpWords.standard(valueWords(standard, unit))
    : setUpWords.isStandard
  return [
    settingWords[key].meaning,
    [standing, range === '' ? '' : `${range}.`].filter((part) => part !== '').join(' '),
    setUpWords.source(source),
  ]
}
