/** Prints what a herd file says on days, as JSON: in whatever time zone this program runs. Words: file, dates. */
import { openBook } from '../../../source/breeding/book.ts'
import { isoDay } from '../../../source/breeding/day.ts'
import { morningList } from '../../../source/breeding/morning-list.ts'
import { openHerdFile } from '../../../source/herd/open.ts'
import { dateInZone } from '../../../source/herd/zone.ts'
import { good } from './herds.ts'

const [path = '', ...dates] = process.argv.slice(2)
const { facts } = good(await openHerdFile(path))
const book = openBook(facts)
/** Instants a minute before and after midnights on which clocks change, in zones where they do. */
const midnights: readonly (readonly [string, string])[] = [
  ['Pacific/Auckland', '2026-04-04T10:59:00Z'],
  ['Pacific/Auckland', '2026-04-04T11:01:00Z'],
  ['Pacific/Auckland', '2026-09-26T11:59:00Z'],
  ['Pacific/Auckland', '2026-09-26T12:01:00Z'],
  ['Europe/Dublin', '2026-03-28T23:59:00Z'],
  ['Europe/Dublin', '2026-03-29T00:01:00Z'],
  ['Europe/Dublin', '2026-10-24T22:59:00Z'],
  ['Europe/Dublin', '2026-10-24T23:01:00Z'],
  ['Australia/Lord_Howe', '2026-04-04T12:59:00Z'],
  ['Australia/Lord_Howe', '2026-04-04T13:01:00Z'],
  ['America/Santiago', '2026-09-06T03:59:00Z'],
  ['America/Santiago', '2026-09-06T04:01:00Z'],
]
process.stdout.write(
  JSON.stringify({
    offset: new Date('2026-09-06T12:00:00Z').getTimezoneOffset(),
    order: facts.map((fact) => fact.id),
    days: dates.map((date) => facts.map((fact) => isoDay(date) - isoDay(fact.date))),
    lists: dates.map((date) => morningList(book, isoDay(date))),
    dates: midnights.map(([zone, instant]) => dateInZone(new Date(instant), zone)),
  }),
)
